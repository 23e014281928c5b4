// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Areas and torsion moduli of stud sections: round, with an axial bore, and with a radial cross hole. Units: mm, mm²,
 * mm³. D outer diameter, di axial bore (0 for none), dq cross hole.
 *
 * <p>A cross hole through the axis takes the strip |x| ≤ dq/2 out of the section, which is exact at the hole's axis.
 * The moduli are nominal ones, without stress concentration.
 */
public final class SectionKernel {
  private SectionKernel() {}

  /**
   * Elastic polar modulus of a ring, WP = (π/16)·(D⁴ − di⁴)/D.
   *
   * @param diameter D in mm, over 0
   * @param bore di in mm, 0 or more, less than D
   * @return WP in mm³
   * @throws InputException if the section is empty
   */
  @Source(document = "derivation", locator = "elastic torsion of a round section", provenance = Provenance.DERIVED)
  public static double elasticModulus(double diameter, double bore) {
    ThreadGeometryKernel.checkBore(diameter, bore);
    double ratio = bore / diameter;
    return Math.PI / 16 * diameter * diameter * diameter * (1 - ratio * ratio * ratio * ratio);
  }

  /**
   * Fully plastic polar modulus of a ring, WP = (π/12)·(D³ − di³).
   *
   * @param diameter D in mm, over 0
   * @param bore di in mm, 0 or more, less than D
   * @return WP in mm³
   * @throws InputException if the section is empty
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "assembly preload, fully plastic torsion",
      provenance = Provenance.MEMORY)
  public static double plasticModulus(double diameter, double bore) {
    ThreadGeometryKernel.checkBore(diameter, bore);
    return Math.PI / 12 * (diameter * diameter * diameter - bore * bore * bore);
  }

  /**
   * Area of a ring with a cross hole.
   *
   * @param diameter D in mm, over 0
   * @param bore di in mm, 0 or more, less than D
   * @param crossHole dq in mm, 0 or more, less than D
   * @return area in mm²
   * @throws InputException if the section is empty
   */
  @Source(document = "derivation", locator = "disc less strip", provenance = Provenance.DERIVED)
  public static double area(double diameter, double bore, double crossHole) {
    check(diameter, bore, crossHole);
    return discArea(0.5 * diameter, 0.5 * crossHole) - discArea(0.5 * bore, 0.5 * crossHole);
  }

  /**
   * Elastic polar modulus of a ring with a cross hole: polar second moment of what is left, over D/2.
   *
   * @param diameter D in mm, over 0
   * @param bore di in mm, 0 or more, less than D
   * @param crossHole dq in mm, 0 or more, less than D
   * @return nominal WP in mm³
   * @throws InputException if the section is empty
   */
  @Source(document = "derivation", locator = "polar second moment of disc less strip", provenance = Provenance.DERIVED)
  public static double elasticModulus(double diameter, double bore, double crossHole) {
    check(diameter, bore, crossHole);
    double a = 0.5 * crossHole;
    return (discPolarMoment(0.5 * diameter, a) - discPolarMoment(0.5 * bore, a)) / (0.5 * diameter);
  }

  /**
   * Fully plastic polar modulus of a ring with a cross hole, ∫ r dA over what is left.
   *
   * @param diameter D in mm, over 0
   * @param bore di in mm, 0 or more, less than D
   * @param crossHole dq in mm, 0 or more, less than D
   * @return nominal WP in mm³
   * @throws InputException if the section is empty
   */
  @Source(document = "derivation", locator = "plastic torsion of disc less strip", provenance = Provenance.DERIVED)
  public static double plasticModulus(double diameter, double bore, double crossHole) {
    check(diameter, bore, crossHole);
    double a = 0.5 * crossHole;
    return discFirstMoment(0.5 * diameter, a) - discFirstMoment(0.5 * bore, a);
  }

  private static void check(double diameter, double bore, double crossHole) {
    ThreadGeometryKernel.checkBore(diameter, bore);
    Check.notNegative(crossHole, "cross hole dq", "mm", "a diameter");
    if (!(crossHole < diameter)) {
      throw new InputException(
          "cross hole dq",
          Numbers.shortest(crossHole) + " mm",
          "less than the section's diameter, " + Numbers.shortest(diameter) + " mm",
          "the hole must leave material");
    }
  }

  /** Area of a disc of radius r outside the strip |x| ≤ a. */
  private static double discArea(double r, double a) {
    if (a >= r) {
      return 0;
    }
    double s = Math.sqrt((r - a) * (r + a));
    return Math.PI * r * r - 2 * (a * s + r * r * Math.asin(a / r));
  }

  /** Polar second moment of a disc outside the strip: (π/2)·r⁴ less the integral of 2·x²·s + (2/3)·s³, s² = r² − x². */
  private static double discPolarMoment(double r, double a) {
    if (a >= r) {
      return 0;
    }
    double r2 = r * r;
    double s = Math.sqrt((r - a) * (r + a));
    double angle = Math.asin(a / r);
    double x2s = 0.125 * (r2 * r2 * angle - a * s * (r2 - 2 * a * a));
    double s3 = 0.125 * (a * s * (5 * r2 - 2 * a * a) + 3 * r2 * r2 * angle);
    return 0.5 * Math.PI * r2 * r2 - 2 * (2 * x2s + 2.0 / 3.0 * s3);
  }

  /** ∫ r dA of a disc outside the strip: 4·∫ (r³ − a³·sec³θ)/3 dθ from 0 to acos(a/r). */
  private static double discFirstMoment(double r, double a) {
    if (a >= r) {
      return 0;
    }
    double r3 = r * r * r;
    if (a == 0) {
      return 2 * Math.PI / 3 * r3;
    }
    double s = Math.sqrt((r - a) * (r + a));
    // a³ times the integral of sec³, so that a narrow hole does not divide by nothing.
    double strip = 0.5 * (a * r * s + a * a * a * (Math.log(r + s) - Math.log(a)));
    return 4.0 / 3.0 * (r3 * Math.acos(a / r) - strip);
  }
}
