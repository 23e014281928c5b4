// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.Table;
import java.util.Objects;

/** A standard fit of ANSI B4.1-1967 for inch sizes, hole basis, such as RC5 or FN2. */
@Source(document = "ANSI B4.1-1967", locator = "tables of fits RC, LC, LT, LN and FN")
@Source(document = "ANSI B4.1-1967", locator = "description of the fits", provenance = Provenance.MEMORY)
public enum InchFitClass {
  /** Close sliding fit. */
  RC1(0, Family.RUNNING, "close sliding fit"),
  /** Sliding fit. */
  RC2(1, Family.RUNNING, "sliding fit"),
  /** Precision running fit. */
  RC3(2, Family.RUNNING, "precision running fit"),
  /** Close running fit. */
  RC4(3, Family.RUNNING, "close running fit"),
  /** Medium running fit. */
  RC5(4, Family.RUNNING, "medium running fit"),
  /** Medium running fit. */
  RC6(5, Family.RUNNING, "medium running fit"),
  /** Free running fit. */
  RC7(6, Family.RUNNING, "free running fit"),
  /** Loose running fit. */
  RC8(7, Family.RUNNING, "loose running fit"),
  /** Loose running fit. */
  RC9(8, Family.RUNNING, "loose running fit"),
  /** Locational clearance fit. */
  LC1(9, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC2(10, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC3(11, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC4(12, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC5(13, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC6(14, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC7(15, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC8(16, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC9(17, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC10(18, Family.CLEARANCE, "locational clearance fit"),
  /** Locational clearance fit. */
  LC11(19, Family.CLEARANCE, "locational clearance fit"),
  /** Locational transition fit. */
  LT1(20, Family.TRANSITION, "locational transition fit"),
  /** Locational transition fit. */
  LT2(21, Family.TRANSITION, "locational transition fit"),
  /** Locational transition fit; no sizes up to 0.24 in. */
  LT3(22, Family.TRANSITION, "locational transition fit"),
  /** Locational transition fit; no sizes up to 0.24 in. */
  LT4(23, Family.TRANSITION, "locational transition fit"),
  /** Locational transition fit. */
  LT5(24, Family.TRANSITION, "locational transition fit"),
  /** Locational transition fit. */
  LT6(25, Family.TRANSITION, "locational transition fit"),
  /** Locational interference fit. */
  LN1(26, Family.INTERFERENCE, "locational interference fit"),
  /** Locational interference fit. */
  LN2(27, Family.INTERFERENCE, "locational interference fit"),
  /** Locational interference fit. */
  LN3(28, Family.INTERFERENCE, "locational interference fit"),
  /** Light drive fit. */
  FN1(29, Family.FORCE, "light drive fit"),
  /** Medium drive fit. */
  FN2(30, Family.FORCE, "medium drive fit"),
  /** Heavy drive fit; no sizes up to 0.95 in. */
  FN3(31, Family.FORCE, "heavy drive fit"),
  /** Force fit. */
  FN4(32, Family.FORCE, "force fit"),
  /** Force fit. */
  FN5(33, Family.FORCE, "force fit");

  /** The five families of fits. */
  public enum Family {
    /** RC: running and sliding fits. */
    RUNNING(0, "running and sliding fits"),
    /** LC: locational clearance fits. */
    CLEARANCE(1, "locational clearance fits"),
    /** LT: locational transition fits. */
    TRANSITION(2, "locational transition fits"),
    /** LN: locational interference fits. */
    INTERFERENCE(3, "locational interference fits"),
    /** FN: force and shrink fits. */
    FORCE(4, "force and shrink fits");

    final int index;
    private final String label;

    Family(int index, String label) {
      this.index = index;
      this.label = label;
    }

    @Override
    public String toString() {
      return label;
    }
  }

  private static final InchFitClass[] ALL = values();

  private final int code;
  private final Family family;
  private final String description;

  InchFitClass(int code, Family family, String description) {
    this.code = code;
    this.family = family;
    this.description = description;
  }

  /**
   * Reads the name of a fit class.
   *
   * @param text for example {@code "FN2"} or {@code "RC 5"}, in capital or small letters
   * @return the class
   * @throws InputException if there is no such class
   */
  public static InchFitClass of(String text) {
    Objects.requireNonNull(text, "text");
    return InchText.fitClass(text);
  }

  /**
   * The number by which {@link InchLimitsKernel} knows the class.
   *
   * @return 0 or more
   */
  public int code() {
    return code;
  }

  /**
   * The family.
   *
   * @return for example force and shrink fits for FN2
   */
  public Family family() {
    return family;
  }

  /**
   * What the standard calls the fit; recalled.
   *
   * @return for example {@code "medium drive fit"}
   */
  public String description() {
    return description;
  }

  /**
   * Symbol of the tolerance zone of the hole.
   *
   * @return for example {@code "H7"}
   */
  public String holeZone() {
    return zone("hole_zone");
  }

  /**
   * Symbol of the tolerance zone of the shaft.
   *
   * @return for example {@code "s6"}; empty where the standard gives none (RC9, LC10, LC11, FN1)
   */
  public String shaftZone() {
    return zone("shaft_zone");
  }

  /**
   * The fit at a size.
   *
   * @param nominalSize nominal size D, over 0 (LT3, LT4: over 0.24 in, FN3: over 0.95 in) up to 19.69 in
   * @return the fit
   * @throws InputException if the class has no row for the size
   */
  public Fit at(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    double[] deviations = new double[4];
    InchLimitsKernel.fit(nominalSize.mm(), code, deviations);
    return new Fit(
        name(),
        part(nominalSize, deviations[1], deviations[0], Feature.HOLE),
        part(nominalSize, deviations[3], deviations[2], Feature.SHAFT));
  }

  private TolerancedSize part(Length nominalSize, double lower, double upper, Feature feature) {
    LimitDeviations deviations = new LimitDeviations(KnownUnits.THOU.of(lower), KnownUnits.THOU.of(upper));
    return new TolerancedSize(nominalSize, deviations, new InchDeviations(this, feature));
  }

  private String zone(String column) {
    Table table = InchTables.get().table(this);
    return table.text(InchTables.get().row(InchTables.get().start[code]), column);
  }

  static InchFitClass at(int code) {
    return ALL[code];
  }
}
