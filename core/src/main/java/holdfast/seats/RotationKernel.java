// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Fits whose two parts turn together: growth by centrifugal load, plane stress. Diameters in mm, densities in kg/m³,
 * moduli in MPa, speed in rpm. A stud that stands still, as under a track roller, does not need this.
 */
@Source(document = "Ugural & Fenster", locator = "example 8.4, rotation of a shrink fit")
public final class RotationKernel {
  /** rpm to rad/s. */
  private static final double OMEGA = Math.PI / 30;
  /** kg/m³ · (mm/s)² to MPa: 1e-3² m²/mm² and 1e-6 MPa/Pa. */
  private static final double TO_MPA = 1e-12;

  private RotationKernel() {}

  /**
   * Growth of the bore of a turning ring, {@code 2u = ρω²·D/(4E)·((3+ν)·c² + (1-ν)·b²)} with radii b of the joint and c
   * outside.
   *
   * @param joint joint diameter D in mm
   * @param outside outside diameter in mm, over D and finite
   * @param density ρ in kg/m³, over 0
   * @param modulus E in MPa
   * @param poisson ν (dimensionless)
   * @param speed speed in rpm, any sign
   * @return growth of the diameter in mm
   * @throws InputException if a value is out of range
   */
  public static double boreGrowth(
      double joint, double outside, double density, double modulus, double poisson, double speed) {
    return joint * boreHoop(joint, outside, density, poisson, speed) / checked(modulus, poisson, "housing");
  }

  /**
   * Growth of a turning stud at the joint, {@code 2u = ρω²·D/(4E)·((3+ν)·a² + (1-ν)·b²)} with radii a of the hole and b
   * of the joint.
   *
   * @param joint joint diameter D in mm
   * @param hole hole of the stud in mm, 0 to less than D
   * @param density ρ in kg/m³, over 0
   * @param modulus E in MPa
   * @param poisson ν (dimensionless)
   * @param speed speed in rpm, any sign
   * @return growth of the diameter in mm
   * @throws InputException if a value is out of range
   */
  public static double studGrowth(double joint, double hole, double density, double modulus, double poisson, double speed) {
    ThickRingKernel.checkHole(hole, joint);
    checked(modulus, poisson, "stud");
    double a = hole / 2;
    double b = joint / 2;
    return joint * rim(density, speed) * ((3 + poisson) * a * a + (1 - poisson) * b * b) / (4 * modulus);
  }

  /**
   * Hoop stress at the bore of a turning ring without pressure, {@code ρω²/4·((3+ν)·c² + (1-ν)·b²)}.
   *
   * @param joint joint diameter D in mm
   * @param outside outside diameter in mm, over D and finite
   * @param density ρ in kg/m³, over 0
   * @param poisson ν (dimensionless)
   * @param speed speed in rpm, any sign
   * @return stress in MPa
   * @throws InputException if a value is out of range
   */
  public static double boreHoop(double joint, double outside, double density, double poisson, double speed) {
    checkTurning(joint, outside);
    checked(1, poisson, "housing");
    double b = joint / 2;
    double c = outside / 2;
    return rim(density, speed) * ((3 + poisson) * c * c + (1 - poisson) * b * b) / 4;
  }

  /**
   * Radial stress of a turning ring or disc without pressure,
   * {@code (3+ν)/8·ρω²·(a² + b² - a²b²/r² - r²)} with radii a of the hole and b outside.
   *
   * @param diameter where, as a diameter 2r in mm, from hole to outside
   * @param hole hole 2a in mm, 0 for a disc, less than the outside
   * @param outside outside diameter 2b in mm, finite
   * @param density ρ in kg/m³, over 0
   * @param poisson ν (dimensionless)
   * @param speed speed in rpm, any sign
   * @return stress in MPa
   * @throws InputException if a value is out of range
   */
  @Source(document = "derivation", locator = "equilibrium of a turning disc in plane stress", provenance = Provenance.DERIVED)
  public static double radialStress(
      double diameter, double hole, double outside, double density, double poisson, double speed) {
    checkDisc(diameter, hole, outside, poisson);
    double a = hole / 2;
    double b = outside / 2;
    double r = diameter / 2;
    double ring = a == 0 ? 0 : a * b / r;
    return rim(density, speed) * (3 + poisson) / 8 * Math.max(0, a * a + b * b - ring * ring - r * r);
  }

  /**
   * Hoop stress of a turning ring or disc without pressure,
   * {@code (3+ν)/8·ρω²·(a² + b² + a²b²/r²) - (1+3ν)/8·ρω²·r²} with radii a of the hole and b outside.
   *
   * @param diameter where, as a diameter 2r in mm, from hole to outside
   * @param hole hole 2a in mm, 0 for a disc, less than the outside
   * @param outside outside diameter 2b in mm, finite
   * @param density ρ in kg/m³, over 0
   * @param poisson ν (dimensionless)
   * @param speed speed in rpm, any sign
   * @return stress in MPa
   * @throws InputException if a value is out of range
   */
  @Source(document = "derivation", locator = "equilibrium of a turning disc in plane stress", provenance = Provenance.DERIVED)
  public static double hoopStress(
      double diameter, double hole, double outside, double density, double poisson, double speed) {
    checkDisc(diameter, hole, outside, poisson);
    double a = hole / 2;
    double b = outside / 2;
    double r = diameter / 2;
    double ring = a == 0 ? 0 : a * b / r;
    return rim(density, speed) / 8 * ((3 + poisson) * (a * a + b * b + ring * ring) - (1 + 3 * poisson) * r * r);
  }

  /**
   * Interference lost at speed: growth of the bore less growth of the stud.
   *
   * @param joint joint diameter D in mm
   * @param hole hole of the stud in mm, 0 to less than D
   * @param outside outside diameter of the housing in mm, over D and finite
   * @param innerDensity ρ of the stud in kg/m³
   * @param innerModulus E of the stud in MPa
   * @param innerPoisson ν of the stud (dimensionless)
   * @param outerDensity ρ of the housing in kg/m³
   * @param outerModulus E of the housing in MPa
   * @param outerPoisson ν of the housing (dimensionless)
   * @param speed speed in rpm, any sign
   * @return diametral loss in mm; negative if the stud grows more
   * @throws InputException if a value is out of range
   */
  public static double interferenceLoss(
      double joint,
      double hole,
      double outside,
      double innerDensity,
      double innerModulus,
      double innerPoisson,
      double outerDensity,
      double outerModulus,
      double outerPoisson,
      double speed) {
    return boreGrowth(joint, outside, outerDensity, outerModulus, outerPoisson, speed)
        - studGrowth(joint, hole, innerDensity, innerModulus, innerPoisson, speed);
  }

  /**
   * Speed at which an interference is gone. The loss grows with the square of the speed.
   *
   * @param interference effective interference at standstill in mm, 0 or more
   * @param lossAtOneRpm {@link #interferenceLoss} at 1 rpm in mm
   * @return speed in rpm; infinite if nothing is lost (less than {@link Check#LEAST})
   * @throws InputException if the interference is negative
   */
  public static double lossSpeed(double interference, double lossAtOneRpm) {
    SeatChecks.gap(interference, "interference", "a clearance has nothing to lose");
    Check.finite(lossAtOneRpm, "loss at 1 rpm", "mm");
    return lossAtOneRpm < Check.LEAST ? Double.POSITIVE_INFINITY : Math.sqrt(interference / lossAtOneRpm);
  }

  private static double rim(double density, double speed) {
    Check.overUpTo(density, 0, 1e6, "density", "kg/m³", "a part has mass");
    Check.within(speed, -1e6, 1e6, "speed", "rpm", "no fit turns faster");
    double omega = speed * OMEGA;
    return density * omega * omega * TO_MPA;
  }

  private static double checked(double modulus, double poisson, String part) {
    ThickRingKernel.checkElastic(modulus, poisson, part);
    return modulus;
  }

  private static void checkDisc(double diameter, double hole, double outside, double poisson) {
    SeatChecks.gap(hole, "hole of the turning part", "0 means solid");
    checkTurning(hole == 0 ? outside / 2 : hole, outside);
    checked(1, poisson, "turning part");
    Check.within(diameter, hole, outside, "diameter", "mm", "it lies in the turning part");
  }

  private static void checkTurning(double joint, double outside) {
    ThickRingKernel.checkOutside(joint, outside);
    if (Double.isInfinite(outside)) {
      throw new InputException(
          "outside diameter of the housing", Numbers.shortest(outside), "finite", "a plate without end cannot turn");
    }
  }
}
