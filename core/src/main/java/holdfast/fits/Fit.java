// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Unit;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A fit: a hole and a shaft of one nominal size with their limit deviations (ISO 286-1:2010, 3.3 and 4.3). Clearances
 * are signed: a negative clearance is an interference.
 *
 * @param designation for example {@code "H7/p6"} or {@code "FN2"}
 * @param hole the hole
 * @param shaft the shaft; the same nominal size
 */
@Source(document = "ISO 286-1:2010", locator = "3.3 and 4.3, terms of fits", provenance = Provenance.MEMORY)
public record Fit(String designation, TolerancedSize hole, TolerancedSize shaft) implements Traced, Serializable {
  private static final SourceRef TERMS = SourceRef.memory("ISO 286-1:2010", "3.3, terms of fits");

  /** Share of a nominal size by which its doubles differ when it is written in two units or computed in two ways. */
  private static final double SAME = 1e-12;

  // Refuses parts of different nominal size, and a class of the other feature.
  public Fit {
    Objects.requireNonNull(designation, "designation");
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(shaft, "shaft");
    Feature.HOLE.requireOf(hole.origin());
    Feature.SHAFT.requireOf(shaft.origin());
    if (Math.abs(hole.nominalSize().mm() - shaft.nominalSize().mm()) > SAME * hole.nominalSize().mm()) {
      throw new InputException(
          "nominal size of the shaft",
          shaft.nominalSize().toString(),
          "that of the hole, " + hole.nominalSize(),
          "both parts of a fit have one nominal size (ISO 286-1:2010, 3.3)");
    }
  }

  /**
   * A fit with deviations that come from elsewhere than a tolerance class.
   *
   * @param nominalSize nominal size D
   * @param designation how to name the fit
   * @param hole limit deviations of the hole
   * @param shaft limit deviations of the shaft
   */
  public Fit(Length nominalSize, String designation, LimitDeviations hole, LimitDeviations shaft) {
    this(
        designation,
        TolerancedSize.given(nominalSize, Objects.requireNonNull(hole, "hole"), "hole", GivenDeviations.CALLER),
        TolerancedSize.given(nominalSize, Objects.requireNonNull(shaft, "shaft"), "shaft", GivenDeviations.CALLER));
  }

  /**
   * Reads a fit of ISO 286, or of ANSI B4.1 for inch sizes.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm; for inch fits up to 19.69 in
   * @param fit hole class, slash, shaft class, for example {@code "H7/p6"}, or the class of an inch fit, for example
   *     {@code "FN2"}; spaces are ignored
   * @return the fit
   * @throws InputException if the text is not a fit or a class is not defined for the size
   */
  public static Fit of(Length nominalSize, String fit) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    Objects.requireNonNull(fit, "fit");
    return InchText.isInchFit(fit) ? InchFitClass.of(fit).at(nominalSize) : ClassText.fit(nominalSize, fit);
  }

  /**
   * Reads a size with a fit of ISO 286, or of ANSI B4.1 for inch sizes.
   *
   * @param sizeAndFit nominal size in mm and fit, for example {@code "25 H7/p6"}, or nominal size with its unit and
   *     the class of an inch fit, for example {@code "5/8 in FN2"}
   * @return the fit
   * @throws InputException if the text cannot be read or a class is not defined for the size
   */
  public static Fit of(String sizeAndFit) {
    Objects.requireNonNull(sizeAndFit, "sizeAndFit");
    return InchText.endsWithInchFit(sizeAndFit) ? InchText.sizedFit(sizeAndFit) : ClassText.sizedFit(sizeAndFit);
  }

  /**
   * A fit of two tolerance classes.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @param hole class of the hole
   * @param shaft class of the shaft
   * @return the fit
   * @throws InputException if a class belongs to the other feature or is not defined for the size
   */
  public static Fit of(Length nominalSize, ToleranceClass hole, ToleranceClass shaft) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(shaft, "shaft");
    return of(hole.at(nominalSize), shaft.at(nominalSize));
  }

  /**
   * A fit of any two parts, for example a shaft to ISO 286 in the bore of a bearing ring.
   *
   * @param hole the hole
   * @param shaft the shaft; the same nominal size
   * @return the fit, named by its parts
   * @throws InputException if the nominal sizes differ or a class belongs to the other feature
   */
  public static Fit of(TolerancedSize hole, TolerancedSize shaft) {
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(shaft, "shaft");
    return new Fit(hole.designation() + "/" + shaft.designation(), hole, shaft);
  }

  /**
   * Nominal size of hole and shaft.
   *
   * @return D
   */
  public Length nominalSize() {
    return hole.nominalSize();
  }

  /**
   * Greatest clearance: greatest hole, smallest shaft.
   *
   * @return ES - ei; negative if even the loosest pair interferes
   */
  public Length maximumClearance() {
    return LimitDeviations.difference(hole.upper(), shaft.lower());
  }

  /**
   * Least clearance: smallest hole, greatest shaft.
   *
   * @return EI - es; negative if the tightest pair interferes
   */
  public Length minimumClearance() {
    return LimitDeviations.difference(hole.lower(), shaft.upper());
  }

  /**
   * Greatest interference, of the tightest pair: the opposite of the least clearance.
   *
   * @return es - EI; negative if even the tightest pair has clearance
   */
  public Length maximumInterference() {
    return minimumClearance().negated();
  }

  /**
   * Least interference, of the loosest pair: the opposite of the greatest clearance.
   *
   * @return ei - ES; negative if the loosest pair has clearance
   */
  public Length minimumInterference() {
    return maximumClearance().negated();
  }

  /**
   * Clearance of parts in the middle of their tolerances.
   *
   * @return the mean of greatest and least clearance; negative for an interference
   */
  public Length meanClearance() {
    return maximumClearance().plus(minimumClearance()).times(0.5);
  }

  /**
   * Span of the fit: the sum of both tolerances.
   *
   * @return greatest - least clearance
   */
  public Length tolerance() {
    return hole.tolerance().plus(shaft.tolerance());
  }

  /**
   * Kind of the fit.
   *
   * @return clearance, transition or interference
   */
  public FitKind kind() {
    return FitKind.of(minimumClearance(), maximumClearance());
  }

  /**
   * The fit of the same letters and grades on the other basis: P7/h6 for H7/p6.
   *
   * @return both fits, with the change of the clearances
   * @throws InputException if the fit is not of ISO 286, is on no basis or on both, or the other class is not defined
   */
  public BasisChange onOtherBasis() {
    return BasisChange.of(this);
  }

  /** The cells used for hole and shaft, then greatest and, as the last step, least clearance. */
  @Override
  public Derivation explain() {
    Derivation holeSteps = hole.explain();
    Derivation shaftSteps = shaft.explain();
    Unit<Length> unit = inInches() ? KnownUnits.THOU : KnownUnits.UM;
    String[] deviations = {
      "ES = " + FitText.signed(hole.upper(), unit),
      "EI = " + FitText.signed(hole.lower(), unit),
      "es = " + FitText.signed(shaft.upper(), unit),
      "ei = " + FitText.signed(shaft.lower(), unit)
    };
    return Derivation.of(name() + ", " + kind())
        .steps(holeSteps)
        .steps(shaftSteps)
        .step("C_max", "greatest clearance (negative: interference)", "ES - ei",
            maximumClearance().in(unit), unit.symbol(), TERMS, deviations[0], deviations[3])
        .step("C_min", "least clearance (negative: interference)", "EI - es",
            minimumClearance().in(unit), unit.symbol(), TERMS, deviations[1], deviations[2])
        .build();
  }

  @Override
  public List<Warning> warnings() {
    Set<Warning> warnings = new LinkedHashSet<>(hole.warnings());
    warnings.addAll(shaft.warnings());
    return List.copyOf(warnings);
  }

  /** Size and designation as on a drawing, for example {@code "25 H7/p6"}. */
  String name() {
    return FitText.nominal(nominalSize(), inInches()) + " " + designation;
  }

  private boolean inInches() {
    return hole.origin().inInches();
  }

  /** For example {@code "25 H7/p6: interference fit, 1 µm … 35 µm interference"}. */
  @Override
  public String toString() {
    return name() + ": " + kind() + ", "
        + FitText.clearances(minimumClearance(), maximumClearance(), hole.origin().inInches());
  }
}
