// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Geometry and elasticity of two bodies in contact. Curvatures are reciprocal radii in 1/mm: positive for a convex
 * surface, 0 for a straight one, negative for a concave one. Plane 1 of the first body and plane 1 of the second
 * enclose the angle φ. The gap of the surfaces is A x² + B y² with A ≤ B.
 */
@Source(document = "Johnson 1985", locator = "section 4.1, gap of two curved surfaces", provenance = Provenance.MEMORY)
public final class ContactGeometryKernel {
  private ContactGeometryKernel() {}

  /**
   * Sum of the curvatures of the gap.
   *
   * @param c1 curvature of body 1 in its plane 1, 1/mm
   * @param c1t curvature of body 1 in its plane 2, 1/mm
   * @param c2 curvature of body 2 in its plane 1, 1/mm
   * @param c2t curvature of body 2 in its plane 2, 1/mm
   * @return A + B = half the sum, 1/mm
   * @throws holdfast.quantity.InputException if a curvature is not finite or the surfaces do not close on a point
   */
  public static double sum(double c1, double c1t, double c2, double c2t) {
    Check.finite(c1, "curvature of body 1 in plane 1", "1/mm");
    Check.finite(c1t, "curvature of body 1 in plane 2", "1/mm");
    Check.finite(c2, "curvature of body 2 in plane 1", "1/mm");
    Check.finite(c2t, "curvature of body 2 in plane 2", "1/mm");
    return Check.positive(
        0.5 * ((c1 + c2) + (c1t + c2t)), "curvature sum A + B", "1/mm", "the surfaces must bend away from each other");
  }

  /**
   * The greater curvature of the gap; it acts along the minor axis b of the contact ellipse.
   *
   * @param c1 curvature of body 1 in its plane 1, 1/mm
   * @param c1t curvature of body 1 in its plane 2, 1/mm
   * @param c2 curvature of body 2 in its plane 1, 1/mm
   * @param c2t curvature of body 2 in its plane 2, 1/mm
   * @param angle φ between plane 1 of body 1 and plane 1 of body 2, rad
   * @return B in 1/mm
   * @throws holdfast.quantity.InputException if an argument is not finite or A + B is not positive
   */
  public static double greater(double c1, double c1t, double c2, double c2t, double angle) {
    double sum = sum(c1, c1t, c2, c2t);
    Check.finite(angle, "angle between the planes", "rad");
    double d1 = c1 - c1t;
    double d2 = c2 - c2t;
    // The law of cosines, written so that equal and opposite differences cancel exactly at φ = 0 and 90°.
    double sin = Math.sin(angle);
    double cos = Math.cos(angle);
    double parallel = (d1 + d2) * cos;
    double crossed = (d1 - d2) * sin;
    return 0.5 * (sum + 0.5 * Math.sqrt(parallel * parallel + crossed * crossed));
  }

  /**
   * The lesser curvature of the gap; it acts along the major axis a of the contact ellipse. 0 means line contact,
   * below 0 the surfaces touch at more than one place.
   *
   * @param c1 curvature of body 1 in its plane 1, 1/mm
   * @param c1t curvature of body 1 in its plane 2, 1/mm
   * @param c2 curvature of body 2 in its plane 1, 1/mm
   * @param c2t curvature of body 2 in its plane 2, 1/mm
   * @param angle φ between plane 1 of body 1 and plane 1 of body 2, rad
   * @return A in 1/mm
   * @throws holdfast.quantity.InputException if an argument is not finite or A + B is not positive
   */
  @Source(
      document = "derivation",
      locator = "4AB is the determinant of the summed curvature matrices: no difference of nearly equal numbers",
      provenance = Provenance.DERIVED)
  public static double lesser(double c1, double c1t, double c2, double c2t, double angle) {
    double greater = greater(c1, c1t, c2, c2t, angle);
    double sin = Math.sin(angle);
    double cos = Math.cos(angle);
    double determinant = (c1 + c2) * (c1t + c2t) * cos * cos + (c1 + c2t) * (c1t + c2) * sin * sin;
    // Where both are equal, rounding must not lift A over B.
    return Math.min(greater, determinant / (4 * greater));
  }

  /**
   * Combined modulus of two materials.
   *
   * @param modulus1 modulus of elasticity of body 1 in MPa
   * @param poisson1 Poisson's ratio of body 1
   * @param modulus2 modulus of elasticity of body 2 in MPa
   * @param poisson2 Poisson's ratio of body 2
   * @return E* from 1/E* = (1 - ν1²)/E1 + (1 - ν2²)/E2, in MPa
   * @throws holdfast.quantity.InputException if a modulus is not positive or a ratio outside 0 to 0.5
   */
  public static double combinedModulus(double modulus1, double poisson1, double modulus2, double poisson2) {
    Check.positive(modulus1, "modulus of elasticity E1", "MPa", "an elastic body has stiffness");
    Check.positive(modulus2, "modulus of elasticity E2", "MPa", "an elastic body has stiffness");
    Check.within(poisson1, 0, 0.5, "Poisson's ratio of body 1", "", "range of engineering materials");
    Check.within(poisson2, 0, 0.5, "Poisson's ratio of body 2", "", "range of engineering materials");
    return 1 / ((1 - poisson1 * poisson1) / modulus1 + (1 - poisson2 * poisson2) / modulus2);
  }
}
