// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Stress on the axis below the centre of a Hertz contact, as a multiple of the peak pressure p0 (compression
 * negative). ζ is the depth divided by the minor semi-axis b; k = b/a from 0 (line contact, plane strain) to 1
 * (circle). The three stresses are principal stresses.
 *
 * <p>Derivation. The potential of the Hertz pressure is V = ½ π a b p0 ∫ (1 - x²/(a²+w) - y²/(b²+w) - z²/w) dw/√Q with
 * Q = (a²+w)(b²+w)w. Its derivatives on the axis are Ix = ∫ dw/((a²+w)√Q) and Iy, from w = z² upwards, which are
 * Carlson integrals; the part with 1 - 2ν is their integral over depth and elementary. With sa = √(a²+z²) and
 * sb = √(b²+z²): σz = -ab/(sa sb), σx = -2ν ab/(sa sb) - (1-2ν) ab/(sa(sa+sb)) + ab z (Ix + ν Iy), σy likewise.
 */
@Source(
    document = "derivation",
    locator = "Boussinesq potentials of the Hertz pressure, second derivatives as Carlson integrals R_D",
    provenance = Provenance.DERIVED)
@Source(document = "Johnson 1985", locator = "sections 3.4 and 4.2, stress on the axis", provenance = Provenance.MEMORY)
public final class AxisStressKernel {
  /** Below this axis ratio k² is lost in the double range and the contact is a line to every digit. */
  private static final double LINE = 1e-100;
  /** Deeper than this the stress is a million millionth of the pressure. */
  private static final double DEEPEST = 1e6;

  private AxisStressKernel() {}

  /**
   * Stress parallel to the major axis (along the roller's length in line contact).
   *
   * @param ratio axis ratio k = b/a, from 0 for line contact to 1
   * @param poisson Poisson's ratio ν of the body
   * @param depth relative depth ζ = z/b, from 0 to 10⁶
   * @return σx/p0
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double alongMajor(double ratio, double poisson, double depth) {
    check(ratio, poisson, depth);
    return x(ratio, poisson, depth);
  }

  /**
   * Stress parallel to the minor axis (in the rolling direction in line contact).
   *
   * @param ratio axis ratio k = b/a, from 0 for line contact to 1
   * @param poisson Poisson's ratio ν of the body
   * @param depth relative depth ζ = z/b, from 0 to 10⁶
   * @return σy/p0
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double alongMinor(double ratio, double poisson, double depth) {
    check(ratio, poisson, depth);
    return y(ratio, poisson, depth);
  }

  /**
   * Stress normal to the surface.
   *
   * @param ratio axis ratio k = b/a, from 0 for line contact to 1
   * @param depth relative depth ζ = z/b, from 0 to 10⁶
   * @return σz/p0
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double normal(double ratio, double depth) {
    check(ratio, 0, depth);
    return z(ratio, depth);
  }

  static double x(double k, double nu, double depth) {
    return x(k, nu, depth, majorIntegral(k, depth), minorIntegral(k, depth));
  }

  static double x(double k, double nu, double depth, double major, double minor) {
    double ta = majorDistance(k, depth);
    double sb = minorDistance(depth);
    return -2 * nu / (ta * sb)
        - (1 - 2 * nu) * k / (ta * (ta + k * sb))
        + depth * (major + nu * minor);
  }

  static double y(double k, double nu, double depth) {
    return y(k, nu, depth, majorIntegral(k, depth), minorIntegral(k, depth));
  }

  static double y(double k, double nu, double depth, double major, double minor) {
    double ta = majorDistance(k, depth);
    double sb = minorDistance(depth);
    return -2 * nu / (ta * sb)
        - (1 - 2 * nu) / (sb * (ta + k * sb))
        + depth * (minor + nu * major);
  }

  static double z(double k, double depth) {
    return -1 / (majorDistance(k, depth) * minorDistance(depth));
  }

  static double slopeX(double k, double nu, double depth, double major, double minor) {
    double ta = majorDistance(k, depth);
    return major + nu * minor - k * k * depth / (ta * ta * ta * minorDistance(depth));
  }

  static double slopeY(double k, double nu, double depth, double major, double minor) {
    double sb = minorDistance(depth);
    return minor + nu * major - depth / (majorDistance(k, depth) * sb * sb * sb);
  }

  static double slopeZ(double k, double depth) {
    double ta = majorDistance(k, depth);
    double sb = minorDistance(depth);
    return depth / (ta * sb) * (k * k / (ta * ta) + 1 / (sb * sb));
  }

  /** √(a² + z²)/a. */
  private static double majorDistance(double k, double depth) {
    double x = k * depth;
    return Math.sqrt(1 + x * x);
  }

  /** √(b² + z²)/b. */
  private static double minorDistance(double depth) {
    return Math.sqrt(1 + depth * depth);
  }

  /** a b² Ix. */
  static double majorIntegral(double k, double depth) {
    if (k < LINE) {
      return 0;
    }
    double k2 = k * k;
    double square = depth * depth;
    return 2.0 / 3 * k2 * EllipticIntegralKernel.rd(k2 * square, k2 * (1 + square), 1 + k2 * square);
  }

  /** a b² Iy; for the line the integral is elementary. */
  static double minorIntegral(double k, double depth) {
    double square = depth * depth;
    if (k < LINE) {
      double sb = Math.sqrt(1 + square);
      return 2 / (sb * (sb + depth));
    }
    // R_D is homogeneous of degree -3/2: scaled by a so that it stays finite as the ellipse becomes a line.
    double k2 = k * k;
    return 2.0 / 3 * k2 * EllipticIntegralKernel.rd(k2 * square, 1 + k2 * square, k2 * (1 + square));
  }

  private static void check(double ratio, double poisson, double depth) {
    Check.within(ratio, 0, 1, "axis ratio b/a", "", "a is the greater semi-axis");
    Check.within(poisson, 0, 0.5, "Poisson's ratio", "", "range of engineering materials");
    Check.within(depth, 0, DEEPEST, "depth z/b", "", "measured from the surface inwards; the stress is gone at the end");
  }
}
