// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * The largest stresses below a Hertz contact, as multiples of the peak pressure p0 and of the minor semi-axis b. They
 * are searched on the axis, where Hertz contact without friction has its largest principal shear stress; no constants
 * are read from a table. k = b/a runs from 0 (line contact) to 1 (circle).
 */
@Source(
    document = "derivation",
    locator = "roots of the derivative of the axis stresses of AxisStressKernel",
    provenance = Provenance.DERIVED)
public final class SubsurfaceKernel {
  private static final int XZ = 0;
  private static final int YZ = 1;
  private static final int EQUIVALENT = 2;
  /** The largest values lie above 3b; the interval is searched in steps before the root is refined. */
  private static final double DEEPEST = 3;
  private static final int STEPS = 30;
  private static final int REFINEMENTS = 100;

  private SubsurfaceKernel() {}

  /**
   * Depth of the largest principal shear stress on the axis.
   *
   * @param ratio axis ratio k = b/a, from 0 for line contact to 1
   * @param poisson Poisson's ratio ν of the body
   * @return z/b; for a narrow ellipse and ν below about 0.2 the stress along the major axis governs, near the surface
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double depthOfLargestShear(double ratio, double poisson) {
    check(ratio, poisson);
    // σz is the lowest of the three at every depth, so the partner is σx or σy.
    double minor = depth(YZ, ratio, poisson);
    double major = depth(XZ, ratio, poisson);
    return shear(ratio, poisson, major) > shear(ratio, poisson, minor) ? major : minor;
  }

  /**
   * Largest principal shear stress on the axis: half the difference of the extreme principal stresses.
   *
   * @param ratio axis ratio k = b/a, from 0 for line contact to 1
   * @param poisson Poisson's ratio ν of the body
   * @return τ/p0, for example 0.3003 for line contact and 0.310 for a circle with ν = 0.3
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double largestShear(double ratio, double poisson) {
    return shear(ratio, poisson, depthOfLargestShear(ratio, poisson));
  }

  /**
   * Depth of the largest equivalent stress (von Mises) on the axis.
   *
   * @param ratio axis ratio k = b/a, from 0 for line contact to 1
   * @param poisson Poisson's ratio ν of the body
   * @return z/b
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double depthOfLargestEquivalent(double ratio, double poisson) {
    check(ratio, poisson);
    return depth(EQUIVALENT, ratio, poisson);
  }

  /**
   * Largest equivalent stress (von Mises) on the axis. Its reciprocal times the yield strength is the peak pressure at
   * which yielding starts.
   *
   * @param ratio axis ratio k = b/a, from 0 for line contact to 1
   * @param poisson Poisson's ratio ν of the body
   * @return σv/p0
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double largestEquivalent(double ratio, double poisson) {
    return equivalent(ratio, poisson, depthOfLargestEquivalent(ratio, poisson));
  }

  /**
   * Amplitude of the shear stress parallel to the surface in the plane of the minor axis. It reverses as the contact
   * rolls over in that direction, so its range is twice this value.
   *
   * @param ratio axis ratio k = b/a, from 0 for line contact to 1
   * @return τ0/p0, 0.25 for line contact
   * @throws holdfast.quantity.InputException if the ratio is outside its range
   */
  @Source(
      document = "Lundberg and Palmgren 1947",
      locator = "orthogonal shear stress, parameter t",
      provenance = Provenance.MEMORY)
  public static double orthogonalShear(double ratio) {
    double t = parameter(ratio);
    return Math.sqrt(2 * t - 1) / (2 * t * (t + 1));
  }

  /**
   * Depth of the largest shear stress parallel to the surface.
   *
   * @param ratio axis ratio k = b/a, from 0 for line contact to 1
   * @return z0/b, 0.5 for line contact
   * @throws holdfast.quantity.InputException if the ratio is outside its range
   */
  @Source(
      document = "Lundberg and Palmgren 1947",
      locator = "orthogonal shear stress, parameter t",
      provenance = Provenance.MEMORY)
  public static double depthOfOrthogonalShear(double ratio) {
    double t = parameter(ratio);
    return 1 / ((t + 1) * Math.sqrt(2 * t - 1));
  }

  /** Root of (t² - 1)(2t - 1) = k² from 1 upwards. Convex there, so Newton from above cannot miss it. */
  private static double parameter(double ratio) {
    Check.within(ratio, 0, 1, "axis ratio b/a", "", "a is the greater semi-axis");
    double k2 = ratio * ratio;
    double t = 1 + 0.5 * k2;
    for (int i = 0; i < REFINEMENTS; i++) {
      double step = ((t - 1) * (t + 1) * (2 * t - 1) - k2) / (6 * t * t - 2 * t - 2);
      t -= step;
      if (Math.abs(step) < 1e-15) {
        break;
      }
    }
    return t;
  }

  static double shear(double k, double nu, double depth) {
    double major = AxisStressKernel.majorIntegral(k, depth);
    double minor = AxisStressKernel.minorIntegral(k, depth);
    double x = AxisStressKernel.x(k, nu, depth, major, minor);
    double y = AxisStressKernel.y(k, nu, depth, major, minor);
    double z = AxisStressKernel.z(k, depth);
    return 0.5 * (Math.max(x, Math.max(y, z)) - Math.min(x, Math.min(y, z)));
  }

  static double equivalent(double k, double nu, double depth) {
    return Math.sqrt(value(EQUIVALENT, k, nu, depth));
  }

  /** Depth at which one criterion is largest: the surface, or the best root of its derivative. */
  private static double depth(int criterion, double k, double nu) {
    double best = 0;
    double bestValue = value(criterion, k, nu, 0);
    double from = 0;
    double slopeFrom = slope(criterion, k, nu, 0);
    for (int i = 1; i <= STEPS; i++) {
      double to = DEEPEST * i / STEPS;
      double slopeTo = slope(criterion, k, nu, to);
      if (slopeFrom > 0 && slopeTo <= 0) {
        double root = root(criterion, k, nu, from, slopeFrom, to, slopeTo);
        double value = value(criterion, k, nu, root);
        if (value > bestValue) {
          best = root;
          bestValue = value;
        }
      }
      from = to;
      slopeFrom = slopeTo;
    }
    return best;
  }

  /** False position with halving of the stale end (Illinois): never leaves the bracket. */
  private static double root(
      int criterion, double k, double nu, double from, double slopeFrom, double to, double slopeTo) {
    double a = from;
    double fa = slopeFrom;
    double b = to;
    double fb = slopeTo;
    for (int i = 0; i < REFINEMENTS && b - a > 1e-15 && fb != 0; i++) {
      double x = (a * fb - b * fa) / (fb - fa);
      if (!(x > a && x < b)) {
        x = 0.5 * (a + b);
      }
      double fx = slope(criterion, k, nu, x);
      if (fx > 0) {
        a = x;
        fa = fx;
        fb *= 0.5;
      } else if (fx < 0) {
        b = x;
        fb = fx;
        fa *= 0.5;
      } else {
        return x;
      }
    }
    return b;
  }

  private static double value(int criterion, double k, double nu, double depth) {
    double major = AxisStressKernel.majorIntegral(k, depth);
    double minor = AxisStressKernel.minorIntegral(k, depth);
    double x = AxisStressKernel.x(k, nu, depth, major, minor);
    double y = AxisStressKernel.y(k, nu, depth, major, minor);
    double z = AxisStressKernel.z(k, depth);
    return switch (criterion) {
      case XZ -> 0.5 * (x - z);
      case YZ -> 0.5 * (y - z);
      default -> 0.5 * ((x - y) * (x - y) + (y - z) * (y - z) + (z - x) * (z - x));
    };
  }

  private static double slope(int criterion, double k, double nu, double depth) {
    double major = AxisStressKernel.majorIntegral(k, depth);
    double minor = AxisStressKernel.minorIntegral(k, depth);
    double dx = AxisStressKernel.slopeX(k, nu, depth, major, minor);
    double dy = AxisStressKernel.slopeY(k, nu, depth, major, minor);
    double dz = AxisStressKernel.slopeZ(k, depth);
    if (criterion == EQUIVALENT) {
      double x = AxisStressKernel.x(k, nu, depth, major, minor);
      double y = AxisStressKernel.y(k, nu, depth, major, minor);
      double z = AxisStressKernel.z(k, depth);
      return (x - y) * (dx - dy) + (y - z) * (dy - dz) + (z - x) * (dz - dx);
    }
    return switch (criterion) {
      case XZ -> dx - dz;
      default -> dy - dz;
    };
  }

  private static void check(double ratio, double poisson) {
    Check.within(ratio, 0, 1, "axis ratio b/a", "", "a is the greater semi-axis");
    Check.within(poisson, 0, 0.5, "Poisson's ratio", "", "range of engineering materials");
  }
}
