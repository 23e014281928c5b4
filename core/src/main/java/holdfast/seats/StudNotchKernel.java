// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Stress concentration of notched studs, and how much of it fatigue feels. Nominal stresses are those of the smaller
 * diameter d.
 */
public final class StudNotchKernel {
  /**
   * Upper limit of the stress concentration at a small cross hole under bending, on the net section. Exact for a hole
   * much smaller than the stud; published curves fall below it as the hole grows.
   */
  public static final double CROSS_HOLE = 3;

  private StudNotchKernel() {}

  /**
   * Stress concentration factor by the polynomials of the handbook (recalled). Outside {@link #isValid} the polynomial of
   * the nearest range is continued; say so to the reader.
   *
   * @param notch kind of notch
   * @param loading how the stud is loaded
   * @param greater greater diameter D in mm
   * @param smaller smaller diameter d in mm, below D
   * @param radius radius r of fillet or groove bottom in mm
   * @return Kt on the nominal stress of d
   * @throws holdfast.quantity.InputException if a size is not positive or d not below D
   */
  @Source(
      document = "Pilkey 1997",
      locator = "stepped shaft and U-grooved shaft, polynomials in 2t/D",
      provenance = Provenance.MEMORY)
  public static double concentration(
      StudNotch notch, StudNotch.Loading loading, double greater, double smaller, double radius) {
    Objects.requireNonNull(notch, "notch");
    Objects.requireNonNull(loading, "loading");
    double x = depthOverRadius(greater, smaller, radius);
    double root = Math.sqrt(x);
    double u = (greater - smaller) / greater;
    double[] set = StudNotchPolynomials.set(notch, loading);
    int start = StudNotchPolynomials.range(set, x) + 2;
    double sum = 0;
    for (int i = 3; i >= 0; i--) {
      int c = start + 3 * i;
      sum = sum * u + (set[c] + set[c + 1] * root + set[c + 2] * x);
    }
    return sum;
  }

  /**
   * Whether the polynomials cover a notch.
   *
   * @param notch kind of notch
   * @param loading how the stud is loaded
   * @param greater greater diameter D in mm
   * @param smaller smaller diameter d in mm, below D
   * @param radius radius r of fillet or groove bottom in mm
   * @return whether t/r lies in the range of the handbook
   * @throws holdfast.quantity.InputException if a size is not positive or d not below D
   */
  @Source(document = "Pilkey 1997", locator = "ranges of t/r beside the polynomials", provenance = Provenance.MEMORY)
  public static boolean isValid(
      StudNotch notch, StudNotch.Loading loading, double greater, double smaller, double radius) {
    Objects.requireNonNull(notch, "notch");
    Objects.requireNonNull(loading, "loading");
    double x = depthOverRadius(greater, smaller, radius);
    return StudNotchPolynomials.covers(StudNotchPolynomials.set(notch, loading), x);
  }

  /**
   * Notch depth over notch radius.
   *
   * @param greater greater diameter D in mm
   * @param smaller smaller diameter d in mm, below D
   * @param radius radius r in mm
   * @return t/r with t = (D - d)/2
   * @throws holdfast.quantity.InputException if a size is not positive or d not below D
   */
  @Source(document = "derivation", locator = "geometry of the notch", provenance = Provenance.DERIVED)
  public static double depthOverRadius(double greater, double smaller, double radius) {
    Check.positive(smaller, "smaller diameter d", "mm", "size of the stud");
    Check.positive(greater - smaller, "step D - d", "mm", "a notch needs a greater diameter beside it");
    Check.positive(radius, "notch radius r", "mm", "a sharp corner has no finite concentration");
    return (greater - smaller) / (2 * radius);
  }

  /**
   * Fatigue notch factor of a stud in bending at the mouth of its press fit: a power law through the recalled table, which
   * runs from 400 to 1200 MPa (1.8 to 2.9) and is met within 0.05. Abstracts of tests print 2 to 3.
   *
   * @param tensile tensile strength Rm of the stud in MPa, from 300 to 2500; continued above 1200
   * @return Kf = 2.7 (Rm/1000)^0.43, at least 1.8
   * @throws holdfast.quantity.InputException if the strength is outside its range
   */
  @Source(
      document = "DIN 743-2",
      locator = "fatigue notch factors of press fits in bending, reference diameter 40 mm",
      provenance = Provenance.MEMORY)
  public static double pressFit(double tensile) {
    Check.within(tensile, 300, 2500, "tensile strength Rm", "MPa", "range of the relation for steels");
    return Math.max(1.8, 2.7 * Math.pow(tensile / 1000, 0.43));
  }

  /**
   * Material length of notch sensitivity of steels.
   *
   * @param strength tensile strength Rm in MPa, from 550 to 2500
   * @return a = 0.0254 (2070/Rm)^1.8 in mm
   * @throws holdfast.quantity.InputException if the strength is outside the range of the rule
   */
  @Source(
      document = "Peterson 1959",
      locator = "notch sensitivity of steels in bending and tension",
      provenance = Provenance.MEMORY)
  public static double materialLength(double strength) {
    Check.within(strength, 550, 2500, "tensile strength Rm", "MPa", "range of the rule for steels");
    return 0.0254 * Math.pow(2070 / strength, 1.8);
  }

  /**
   * Fatigue notch factor.
   *
   * @param concentration stress concentration factor Kt, 1 or more
   * @param radius notch radius r in mm, over 0
   * @param length material length a in mm, 0 for full sensitivity
   * @return Kf = 1 + (Kt - 1)/(1 + a/r)
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Peterson 1959", locator = "q = 1/(1 + a/r)", provenance = Provenance.MEMORY)
  public static double fatigueFactor(double concentration, double radius, double length) {
    Check.atLeast(concentration, 1, "stress concentration Kt", "", "a notch does not lower the stress");
    Check.positive(radius, "notch radius r", "mm", "a sharp corner has no finite concentration");
    Check.notNegative(length, "material length a", "mm", "0 means full sensitivity");
    return 1 + (concentration - 1) / (1 + length / radius);
  }
}
