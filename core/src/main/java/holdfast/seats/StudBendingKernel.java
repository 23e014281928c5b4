// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Stresses of a stud that carries a roller as a cantilever. The load is spread evenly over the width B of the outer
 * ring; between ring and seat mouth lies the gap g. Forces in N, lengths in mm, moments in N·mm, stresses in MPa.
 */
public final class StudBendingKernel {
  private StudBendingKernel() {}

  /**
   * Bending moment at the mouth of the seat.
   *
   * @param force radial load F in N
   * @param width width B over which it is spread in mm
   * @param gap distance g from the seat mouth to the near edge of the load in mm
   * @return M = F (B/2 + g)
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Cam followers catalogue 2008", locator = "technical section, stud strength: M = F (B/2 + gap)")
  public static double moment(double force, double width, double gap) {
    checkLoad(force, width, gap);
    return force * (width / 2 + gap);
  }

  /**
   * Bending moment at a distance from the seat mouth.
   *
   * @param force radial load F in N
   * @param width width B over which it is spread in mm, over 0
   * @param gap distance g from the seat mouth to the near edge of the load in mm
   * @param distance distance x from the seat mouth outwards in mm, 0 or more
   * @return the moment; within the load F (B + g - x)²/(2B), beyond it 0
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "equilibrium of the stud beyond the section", provenance = Provenance.DERIVED)
  public static double momentAt(double force, double width, double gap, double distance) {
    checkLoad(force, width, gap);
    Check.positive(width, "load width B", "mm", "the load is spread over it");
    Check.notNegative(distance, "distance x", "mm", "measured from the seat mouth outwards");
    if (distance <= gap) {
      return force * (width / 2 + gap - distance);
    }
    double rest = Math.max(0, width + gap - distance);
    return force * rest * rest / (2 * width);
  }

  /**
   * Nominal bending stress.
   *
   * @param moment bending moment M in N·mm
   * @param diameter stud diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return σb = 32 M/(π d³ (1 - (di/d)⁴))
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Gere and Timoshenko 1997", locator = "flexure formula", provenance = Provenance.MEMORY)
  public static double bendingStress(double moment, double diameter, double bore) {
    Check.notNegative(moment, "bending moment M", "N·mm", "its size, without direction");
    return moment / StudSectionKernel.modulus(diameter, bore);
  }

  /**
   * Bending stress as an inch catalogue rounds it: 10 M/d³ for a solid stud, 1.8 % low. A check, not a replacement.
   *
   * @param moment bending moment M in N·mm
   * @param diameter stud diameter d in mm
   * @return 10 M/d³
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Cam followers catalogue 2008", locator = "technical section, stud strength: 10 M/d³")
  public static double roundedBendingStress(double moment, double diameter) {
    Check.notNegative(moment, "bending moment M", "N·mm", "its size, without direction");
    Check.positive(diameter, "stud diameter d", "mm", "size of the stud");
    return 10 * moment / (diameter * diameter * diameter);
  }

  /**
   * Radial load at which the nominal bending stress reaches a limit.
   *
   * @param stress permitted bending stress in MPa
   * @param width width B over which the load is spread in mm
   * @param gap distance g from the seat mouth to the near edge of the load in mm; B/2 + g must not be 0
   * @param diameter stud diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return F = σ W/(B/2 + g)
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "flexure formula solved for the load", provenance = Provenance.DERIVED)
  public static double loadAtStress(double stress, double width, double gap, double diameter, double bore) {
    Check.notNegative(stress, "permitted stress", "MPa", "a limit");
    double arm = Check.positive(moment(1, width, gap), "arm B/2 + g", "mm", "without an arm nothing bends");
    return stress * StudSectionKernel.modulus(diameter, bore) / arm;
  }

  /**
   * Largest shear stress of the radial load, on the neutral axis.
   *
   * @param force radial load F in N
   * @param diameter stud diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return 4/3 F/A solid, up to 2 F/A for a thin tube
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Gere and Timoshenko 1997", locator = "shear stress in circular beams", provenance = Provenance.MEMORY)
  public static double shearStress(double force, double diameter, double bore) {
    Check.notNegative(force, "radial load F", "N", "its size, without direction");
    return StudSectionKernel.shearPeak(diameter, bore) * force / StudSectionKernel.area(diameter, bore);
  }

  /**
   * Mean shear stress of a pin held at both ends.
   *
   * @param force radial load F on the roller between the ends in N
   * @param diameter pin diameter d in mm
   * @param bore bore di in mm, 0 for a solid pin
   * @return F/(2A); 2 F/(π d²) for a solid pin
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Cam followers catalogue 2008", locator = "technical section, yoke pin in double shear")
  public static double doubleShear(double force, double diameter, double bore) {
    Check.notNegative(force, "radial load F", "N", "its size, without direction");
    return force / (2 * StudSectionKernel.area(diameter, bore));
  }

  /**
   * Axial stress of the preload.
   *
   * @param preload preload of the nut FV in N
   * @param diameter stud diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return σa = FV/A
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "force over area", provenance = Provenance.DERIVED)
  public static double axialStress(double preload, double diameter, double bore) {
    Check.notNegative(preload, "preload FV", "N", "a nut only pulls");
    return preload / StudSectionKernel.area(diameter, bore);
  }

  /**
   * Torsional stress at the surface, of a tightening torque that is still held in the shank.
   *
   * @param torque torque T in N·mm
   * @param diameter stud diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return τt = T/(2W)
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Gere and Timoshenko 1997", locator = "torsion formula", provenance = Provenance.MEMORY)
  public static double torsionStress(double torque, double diameter, double bore) {
    Check.notNegative(torque, "torque T", "N·mm", "its size, without direction");
    return torque / (2 * StudSectionKernel.modulus(diameter, bore));
  }

  /**
   * Equivalent stress (von Mises) on the fibre with the largest bending tension. The shear of the radial load is 0 there.
   *
   * @param bending bending stress σb in MPa, concentration included if wanted
   * @param axial axial stress σa in MPa
   * @param torsion torsional stress τt in MPa
   * @return √((σb + σa)² + 3 τt²)
   * @throws holdfast.quantity.InputException if an argument is not finite
   */
  @Source(document = "derivation", locator = "von Mises, uniaxial tension with shear", provenance = Provenance.DERIVED)
  public static double atTensionFibre(double bending, double axial, double torsion) {
    return mises(
        Check.finite(bending, "bending stress", "MPa") + Check.finite(axial, "axial stress", "MPa"),
        Check.finite(torsion, "torsional stress", "MPa"));
  }

  /**
   * Equivalent stress (von Mises) on the neutral axis, where the shears of load and torque add.
   *
   * @param axial axial stress σa in MPa
   * @param shear largest shear stress of the radial load τ in MPa
   * @param torsion torsional stress τt in MPa
   * @return √(σa² + 3 (τ + τt)²)
   * @throws holdfast.quantity.InputException if an argument is not finite
   */
  @Source(document = "derivation", locator = "von Mises, uniaxial tension with shear", provenance = Provenance.DERIVED)
  public static double atNeutralAxis(double axial, double shear, double torsion) {
    return mises(
        Check.finite(axial, "axial stress", "MPa"),
        Check.finite(shear, "shear stress", "MPa") + Check.finite(torsion, "torsional stress", "MPa"));
  }

  /**
   * Equivalent stress (von Mises) at the surface of the stud in the mouth of a press fit: stress along the stud and shear,
   * with the pressure of the fit around it.
   *
   * @param along stress along the stud in MPa, for example σb + σa
   * @param shear shear stress across and round the stud in MPa
   * @param pressure pressure p of the fit in MPa, 0 or more
   * @param diameter stud diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return von Mises of (σz, -p, -p (1 + Q²)/(1 - Q²)) and τ, with Q = di/d
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(
      document = "derivation",
      locator = "Lamé stresses of the stud under the pressure of the fit, with axial tension and shear",
      provenance = Provenance.DERIVED)
  public static double atPressedMouth(double along, double shear, double pressure, double diameter, double bore) {
    return mises(
        Check.finite(along, "stress along the stud", "MPa"), -pressure, surfaceHoop(pressure, diameter, bore),
        Check.finite(shear, "shear stress", "MPa"));
  }

  /**
   * Equivalent stress (von Mises) at the wall of the bore of a stud in the mouth of a press fit.
   *
   * @param along stress along the stud at the bore in MPa
   * @param shear shear stress across and round the stud at the bore in MPa
   * @param pressure pressure p of the fit in MPa, 0 or more
   * @param diameter stud diameter d in mm
   * @param bore bore di in mm, 0 for the axis of a solid stud
   * @return von Mises of (σz, 0, -2 p/(1 - Q²)) and τ, with Q = di/d; of (σz, -p, -p) and τ on the axis of a solid stud
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(
      document = "derivation",
      locator = "Lamé stresses at the bore of the stud under the pressure of the fit, with axial tension and shear",
      provenance = Provenance.DERIVED)
  public static double atPressedBore(double along, double shear, double pressure, double diameter, double bore) {
    double surface = surfaceHoop(pressure, diameter, bore);
    double radial = bore == 0 ? -pressure : 0;
    // Radial and hoop stress of a ring add up to the same everywhere.
    return mises(
        Check.finite(along, "stress along the stud", "MPa"), radial, surface - pressure - radial,
        Check.finite(shear, "shear stress", "MPa"));
  }

  /**
   * Elastic peak of stress at the mouth of a small cross hole in the surface of the stud.
   *
   * @param along stress along the stud in MPa, without the hole
   * @param pressure pressure p of the fit round the hole in MPa, 0 or more
   * @param diameter stud diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return 3 σz - σθ with σθ = -p (1 + Q²)/(1 - Q²)
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Kirsch 1898", locator = "small hole in a plate under two stresses", provenance = Provenance.MEMORY)
  public static double holePeak(double along, double pressure, double diameter, double bore) {
    return StudNotchKernel.CROSS_HOLE * Check.finite(along, "stress along the stud", "MPa")
        - surfaceHoop(pressure, diameter, bore);
  }

  /**
   * Bending stress of a stud that clamped faces bend by an angle over its seat.
   *
   * @param angle angle φ in rad, 0 or more: lean of the faces less what the play in the bore leaves free
   * @param modulus modulus of elasticity E in MPa
   * @param diameter stud diameter d in mm
   * @param engaged length L in mm over which it bends, over 0
   * @return σ = E d φ/(2 L)
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "a stud bent to an arc over its seat", provenance = Provenance.DERIVED)
  public static double forcedBending(double angle, double modulus, double diameter, double engaged) {
    Check.notNegative(angle, "angle φ", "rad", "its size, without direction");
    Check.positive(modulus, "modulus of elasticity E", "MPa", "an elastic body has stiffness");
    Check.positive(diameter, "stud diameter d", "mm", "size of the stud");
    Check.positive(engaged, "length L", "mm", "the stud bends over it");
    return modulus * diameter * angle / (2 * engaged);
  }

  private static double surfaceHoop(double pressure, double diameter, double bore) {
    Check.notNegative(pressure, "pressure of the fit", "MPa", "a fit only presses");
    StudSectionKernel.check(diameter, bore);
    double q2 = bore * bore / (diameter * diameter);
    return -pressure * (1 + q2) / (1 - q2);
  }

  /**
   * Bearing pressure at the seat mouth if the stud were rigid and the seat soft: linear over the engaged length.
   *
   * @param force radial load F in N
   * @param arm distance a of its line of action from the seat mouth in mm
   * @param diameter stud diameter d in mm
   * @param engaged engaged length L in mm, over 0
   * @return F/(d L) (4 + 6 a/L)
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "equilibrium of a rigid pin, linear pressure", provenance = Provenance.DERIVED)
  public static double mouthPressure(double force, double arm, double diameter, double engaged) {
    checkSeat(force, arm, diameter, engaged);
    return force / (diameter * engaged) * (4 + 6 * arm / engaged);
  }

  /**
   * Bearing pressure at the far end of the seat, on the opposite side, if the stud were rigid.
   *
   * @param force radial load F in N
   * @param arm distance a of its line of action from the seat mouth in mm
   * @param diameter stud diameter d in mm
   * @param engaged engaged length L in mm, over 0
   * @return F/(d L) (2 + 6 a/L), acting against the pressure at the mouth
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "equilibrium of a rigid pin, linear pressure", provenance = Provenance.DERIVED)
  public static double farEndPressure(double force, double arm, double diameter, double engaged) {
    checkSeat(force, arm, diameter, engaged);
    return force / (diameter * engaged) * (2 + 6 * arm / engaged);
  }

  private static double mises(double normal, double shear) {
    return Math.sqrt(normal * normal + 3 * shear * shear);
  }

  private static double mises(double along, double radial, double hoop, double shear) {
    double a = along - radial;
    double b = radial - hoop;
    double c = hoop - along;
    return Math.sqrt(0.5 * (a * a + b * b + c * c) + 3 * shear * shear);
  }

  private static void checkSeat(double force, double arm, double diameter, double engaged) {
    checkLoad(force, 0, arm);
    Check.positive(diameter, "stud diameter d", "mm", "size of the stud");
    Check.positive(engaged, "engaged length L", "mm", "the seat holds the stud over it");
  }

  static void checkLoad(double force, double width, double gap) {
    Check.notNegative(force, "radial load F", "N", "its size, without direction");
    SeatChecks.gap(width, "load width B", "the load is spread over it");
    SeatChecks.gap(gap, "gap g", "the load lies outside the seat");
    if (width > 0) {
      Check.positive(gap + width - gap, "load width B beside the gap g", "mm", "the load is spread over it");
    }
  }
}
