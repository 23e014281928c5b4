// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Limits of the plug gauge for a hole, or of the ring or gap gauge for a shaft, of grade 6 or 7 by GOST 24853-81. Gauges made by
 * ISO 1938-1:2015 have other tolerances; that standard was not at hand.
 *
 * @param toleranceClass class of the work, grade 6 or 7
 * @param nominalSize nominal size D, over 0 up to 500 mm
 */
@Source(document = "GOST 24853-81", locator = "table of gauges for work of grades 6 and 7")
@Source(document = "GOST 24853-81", locator = "sizes of gauges by z, y, alpha and H", provenance = Provenance.MEMORY)
public record PlainGauge(ToleranceClass toleranceClass, Length nominalSize) implements Traced, Serializable {
  private static final SourceRef RULE = SourceRef.memory("GOST 24853-81", "sizes of gauges by z, y, alpha and H");

  // Refuses a grade or size that the table does not hold.
  public PlainGauge {
    Objects.requireNonNull(toleranceClass, "toleranceClass");
    Objects.requireNonNull(nominalSize, "nominalSize");
    row(toleranceClass, nominalSize, "alpha");
    // Refuses a class that is not defined for the size.
    toleranceClass.limitDeviations(nominalSize);
  }

  private static boolean hole(ToleranceClass c) {
    return c.feature() == Feature.HOLE;
  }

  private static Table table() {
    return TableSet.bundled().table("fits/gost-24853/1981/plain-gauges");
  }

  private static int row(ToleranceClass c, Length size, String quantity) {
    Table table = table();
    for (int row = 0; row < table.size(); row++) {
      if (table.text(row, "grade").equals(c.grade().number())
          && table.text(row, "quantity").equals(quantity)
          && size.mm() > table.number(row, "over_mm")
          && size.mm() <= table.number(row, "up_to_mm")) {
        return row;
      }
    }
    throw new InputException(
        "work of a plain gauge",
        c + " at " + size,
        "grade 6 or 7, over 0 mm up to 500 mm",
        "the table that was found holds these");
  }

  private double micrometres(String ofPlug, String ofRing) {
    String quantity = hole(toleranceClass) ? ofPlug : ofRing;
    return table().number(row(toleranceClass, nominalSize, quantity), "value");
  }

  /**
   * Limits of the new go side.
   *
   * @return its limit deviations from the nominal size of the work
   */
  public LimitDeviations go() {
    return around(mostMaterial() + inward() * micrometres("z", "z1"));
  }

  /**
   * Worn limit of the go side: a gauge beyond it is taken out of use.
   *
   * @return its deviation from the nominal size of the work
   */
  public Length worn() {
    return KnownUnits.UM.of(mostMaterial() - inward() * (micrometres("y", "y1") - micrometres("alpha", "alpha")));
  }

  /**
   * Limits of the no-go side.
   *
   * @return its limit deviations from the nominal size of the work
   */
  public LimitDeviations noGo() {
    LimitDeviations work = toleranceClass.limitDeviations(nominalSize);
    double least = (hole(toleranceClass) ? work.upper() : work.lower()).in(KnownUnits.UM);
    return around(least - inward() * micrometres("alpha", "alpha"));
  }

  /** Direction from the limit with most material into the tolerance. */
  private int inward() {
    return hole(toleranceClass) ? 1 : -1;
  }

  private double mostMaterial() {
    LimitDeviations work = toleranceClass.limitDeviations(nominalSize);
    return (hole(toleranceClass) ? work.lower() : work.upper()).in(KnownUnits.UM);
  }

  private LimitDeviations around(double middle) {
    double half = micrometres("H", "H1") / 2;
    return new LimitDeviations(KnownUnits.UM.of(middle - half), KnownUnits.UM.of(middle + half));
  }

  /** The limits of the work, the cells of the table, then the limits of the gauge. */
  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of(this.toString()).steps(toleranceClass.explain(nominalSize));
    for (String quantity : hole(toleranceClass) ? List.of("z", "y", "H", "alpha") : List.of("z1", "y1", "H1", "alpha")) {
      var cell = table().cell(row(toleranceClass, nominalSize, quantity), "value");
      steps.step(quantity, "value of the table", cell.address(), cell.value(), "µm", cell.source());
    }
    return steps
        .step("go+", "upper limit of the go side", "most material ± z + H/2", go().upper().in(KnownUnits.UM), "µm", RULE)
        .step("worn", "worn limit of the go side", "most material ∓ (y - alpha)", worn().in(KnownUnits.UM), "µm", RULE)
        .step(
            "no-go+",
            "upper limit of the no-go side",
            "least material ∓ alpha + H/2",
            noGo().upper().in(KnownUnits.UM),
            "µm",
            RULE)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return List.of(new Warning(
        "not-iso-1938", "by GOST 24853-81; gauges made by ISO 1938-1:2015 have other tolerances", RULE));
  }

  /** For example {@code "plug gauge 18 H7"}. */
  @Override
  public String toString() {
    return (hole(toleranceClass) ? "plug gauge " : "ring gauge ") + Numbers.shortest(nominalSize.mm()) + " " + toleranceClass;
  }
}
