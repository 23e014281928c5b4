// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Stress concentration of a notch in a stud. The polynomials behind it are recalled from a handbook.
 *
 * @param notch kind of notch
 * @param loading how the stud is loaded
 * @param greater greater diameter D beside the notch
 * @param smaller smaller diameter d in the notch, on which nominal stresses are taken; below D
 * @param radius radius r of fillet or groove bottom, over 0
 */
public record StudConcentration(
    StudNotch notch, StudNotch.Loading loading, Length greater, Length smaller, Length radius)
    implements Traced, Serializable {

  private static final SourceRef HANDBOOK =
      SourceRef.memory("Pilkey 1997", "stepped shaft and U-grooved shaft, polynomials in 2t/D");

  // Refuses shapes that are no notch.
  public StudConcentration {
    Objects.requireNonNull(notch, "notch");
    Objects.requireNonNull(loading, "loading");
    Objects.requireNonNull(greater, "greater");
    Objects.requireNonNull(smaller, "smaller");
    Objects.requireNonNull(radius, "radius");
    StudNotchKernel.depthOverRadius(greater.mm(), smaller.mm(), radius.mm());
  }

  /**
   * Stress concentration factor.
   *
   * @return Kt on the nominal stress of the smaller diameter
   */
  public double factor() {
    return StudNotchKernel.concentration(notch, loading, greater.mm(), smaller.mm(), radius.mm());
  }

  /**
   * Fatigue notch factor of a steel stud.
   *
   * @param strength tensile strength Rm, from 550 to 2500 MPa
   * @return Kf, between 1 and Kt
   * @throws holdfast.quantity.InputException if the strength is outside its range, or Kt came out below 1
   */
  public double fatigueFactor(Stress strength) {
    Objects.requireNonNull(strength, "strength");
    return StudNotchKernel.fatigueFactor(
        factor(), radius.mm(), StudNotchKernel.materialLength(strength.megapascal()));
  }

  @Override
  public Derivation explain() {
    double x = StudNotchKernel.depthOverRadius(greater.mm(), smaller.mm(), radius.mm());
    Derivation.Builder steps = Derivation.of("Stress concentration: " + text());
    steps.step(
        "t/r", "notch depth over radius", "(D - d)/(2r)", x, "", SourceRef.derived("geometry of the notch"),
        "D = " + greater, "d = " + smaller, "r = " + radius);
    steps.step(
        "2t/D", "notch depth over radius of the stud", "(D - d)/D", (greater.mm() - smaller.mm()) / greater.mm(), "",
        SourceRef.derived("geometry of the notch"));
    steps.step(
        "Kt", "stress concentration factor", "C1 + C2 (2t/D) + C3 (2t/D)² + C4 (2t/D)³, each C from √(t/r) and t/r",
        factor(), "", HANDBOOK);
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    warnings.add(
        new Warning(
            "recalled-polynomials",
            "the polynomials are recalled, not read: take the factor for comparison, not as the last word", HANDBOOK));
    if (!StudNotchKernel.isValid(notch, loading, greater.mm(), smaller.mm(), radius.mm())) {
      warnings.add(
          new Warning(
              "notch-outside-range",
              "t/r = "
                  + Numbers.significant(
                      StudNotchKernel.depthOverRadius(greater.mm(), smaller.mm(), radius.mm()), 3)
                  + " lies outside the range of the handbook: the polynomial of the nearest range was continued",
              HANDBOOK));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code groove in bending, 20 mm to 16 mm, radius 1 mm: Kt = 1.9}. */
  @Override
  public String toString() {
    return text() + ": Kt = " + Numbers.significant(factor(), 3);
  }

  private String text() {
    return notch + " in " + loading + ", " + greater + " to " + smaller + ", radius " + radius;
  }
}
