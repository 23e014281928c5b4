// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Hertz contact over a strip: two parallel cylinders, or a cylinder on a plane, pressed together over a length L. The
 * pressure is the same along the length; ends, tilt and crowning are not part of the theory.
 */
@Source(
    document = "Johnson 1985",
    locator = "section 4.2, two-dimensional contact of cylinders",
    provenance = Provenance.MEMORY)
public final class LineContactKernel {
  private LineContactKernel() {}

  /**
   * Half width of the contact strip.
   *
   * @param force normal force F in N
   * @param length contact length L in mm
   * @param radius relative radius R in mm, 1/R = 1/R1 + 1/R2
   * @param modulus combined modulus E* in MPa
   * @return b = √(4FR/(π L E*)) in mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double halfWidth(double force, double length, double radius, double modulus) {
    check(force, length, radius, modulus);
    return Math.sqrt(4 * force * radius / (Math.PI * length * modulus));
  }

  /**
   * Peak pressure.
   *
   * @param force normal force F in N
   * @param length contact length L in mm
   * @param radius relative radius R in mm
   * @param modulus combined modulus E* in MPa
   * @return p0 = √(F E* / (π L R)) in MPa; the mean pressure is π/4 of it
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double peakPressure(double force, double length, double radius, double modulus) {
    check(force, length, radius, modulus);
    return Math.sqrt(force * modulus / (Math.PI * length * radius));
  }

  /**
   * Peak pressures under many forces.
   *
   * @param forces normal forces in N
   * @param length contact length L in mm
   * @param radius relative radius R in mm
   * @param modulus combined modulus E* in MPa
   * @param pressures receives p0 in MPa; as long as the forces
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void peakPressures(double[] forces, double length, double radius, double modulus, double[] pressures) {
    Objects.requireNonNull(forces, "forces");
    Objects.requireNonNull(pressures, "pressures");
    Check.within(pressures.length, forces.length, forces.length, "length of the result array", "", "one result a force");
    for (int i = 0; i < forces.length; i++) {
      pressures[i] = peakPressure(forces[i], length, radius, modulus);
    }
  }

  /**
   * Force at which the peak pressure reaches a limit.
   *
   * @param pressure permitted peak pressure in MPa
   * @param length contact length L in mm
   * @param radius relative radius R in mm
   * @param modulus combined modulus E* in MPa
   * @return F = π L R p² / E* in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double forceAtPressure(double pressure, double length, double radius, double modulus) {
    Check.notNegative(pressure, "permitted pressure", "MPa", "a contact only pushes");
    check(0, length, radius, modulus);
    return Math.PI * length * radius * pressure * pressure / modulus;
  }

  /**
   * Compression of a half-space between its surface and a depth. Line contact has no approach of its own: without the
   * depth the answer is infinite. The depth stands for the thickness of the track over its support.
   *
   * @param pressure peak pressure p0 in MPa
   * @param halfWidth half width b in mm
   * @param modulus modulus of elasticity E of this body in MPa
   * @param poisson Poisson's ratio ν
   * @param depth depth d in mm, 0 or more
   * @return δ = (p0 b/E) [(1 - ν²) t - ν(1 + ν)(1 - e^(-2t))/2] with t = arsinh(d/b), in mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(
      document = "derivation",
      locator = "integral of the axial strain of the plane-strain field from 0 to the depth",
      provenance = Provenance.DERIVED)
  public static double compressionToDepth(
      double pressure, double halfWidth, double modulus, double poisson, double depth) {
    checkBody(pressure, halfWidth, modulus, poisson);
    double t = arsinh(Check.notNegative(depth, "depth d", "mm", "measured from the surface inwards") / halfWidth);
    return pressure * halfWidth / modulus
        * ((1 - poisson * poisson) * t + 0.5 * poisson * (1 + poisson) * Math.expm1(-2 * t));
  }

  /**
   * Compression of a solid cylinder between its surface and its axis, when the load is carried through to the opposite
   * side. A hollow ring is softer than that.
   *
   * @param pressure peak pressure p0 in MPa
   * @param halfWidth half width b in mm
   * @param modulus modulus of elasticity E of the cylinder in MPa
   * @param poisson Poisson's ratio ν
   * @param radius radius R of the cylinder in mm, at least b
   * @return the compression in mm; for R much over b it is (p0 b (1 - ν²)/(2E)) (2 ln(4R/b) - 1)
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(
      document = "Johnson 1985",
      locator = "section 5.6, cylinder between opposite contacts",
      provenance = Provenance.MEMORY)
  public static double compressionToAxis(
      double pressure, double halfWidth, double modulus, double poisson, double radius) {
    checkBody(pressure, halfWidth, modulus, poisson);
    Check.within(radius, halfWidth, Check.GREATEST, "radius R", "mm", "the contact must be smaller than the cylinder");
    double t = arsinh(radius / halfWidth);
    double plane = 1 - poisson * poisson;
    double across = poisson * (1 + poisson);
    // The half-space field, the opposite line force and the radial tension that frees the rim.
    return pressure * halfWidth / modulus
        * (plane * (t + Math.log(2) - 0.5) + across * (0.5 + 0.5 * Math.expm1(-2 * t)));
  }

  private static double arsinh(double x) {
    return Math.log(x + Math.sqrt(1 + x * x));
  }

  private static void checkBody(double pressure, double halfWidth, double modulus, double poisson) {
    Check.notNegative(pressure, "peak pressure p0", "MPa", "a contact only pushes");
    Check.positive(halfWidth, "half width b", "mm", "no contact area without load");
    Check.positive(modulus, "modulus of elasticity E", "MPa", "an elastic body has stiffness");
    Check.within(poisson, 0, 0.5, "Poisson's ratio", "", "range of engineering materials");
  }

  private static void check(double force, double length, double radius, double modulus) {
    Check.notNegative(force, "normal force F", "N", "a contact only pushes");
    Check.positive(length, "contact length L", "mm", "line contact needs a length");
    Check.positive(radius, "relative radius R", "mm", "a concave track must be flatter than the roller");
    Check.positive(modulus, "combined modulus E*", "MPa", "an elastic body has stiffness");
  }
}
