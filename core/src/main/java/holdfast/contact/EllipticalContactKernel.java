// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Hertz contact over an ellipse with semi-axes a ≥ b. Exact: the axis ratio is solved to the accuracy of a double from
 * the complete elliptic integrals, no approximation formula enters. Without allocation, thread-safe.
 */
@Source(document = "Johnson 1985", locator = "section 4.2, elliptical contacts", provenance = Provenance.MEMORY)
@Source(
    document = "derivation",
    locator = "axis ratio from (1 - 2s)/(1 + 2s) = k² B/A with s of the arithmetic-geometric mean",
    provenance = Provenance.DERIVED)
public final class EllipticalContactKernel {
  /** Length of the result of {@link #solve}. */
  public static final int RESULTS = 5;
  /** Newton doubles the digits: a step below this is followed by one at rounding. */
  private static final double LAST_STEP = 1e-7;
  private static final int STEPS = 60;

  private EllipticalContactKernel() {}

  /**
   * Axis ratio of the contact ellipse.
   *
   * @param greater greater curvature B of the gap, 1/mm
   * @param lesser lesser curvature A of the gap, 1/mm; over 0 and at most B
   * @return k = b/a, over 0 up to 1
   * @throws holdfast.quantity.InputException if a curvature is outside its range; A = 0 is line contact
   */
  public static double axisRatio(double greater, double lesser) {
    Check.positive(greater, "greater curvature B", "1/mm", "the surfaces must bend away from each other");
    Check.overUpTo(
        lesser, 0, greater, "lesser curvature A", "1/mm", "at 0 the contact is a line, below 0 it is not single");
    double target = Math.log(Check.positive(greater / lesser, "curvature ratio B/A", "", "too near to a line"));
    if (target == 0) {
      return 1;
    }
    // ln(B/A) falls with x = ln k at a slope between -2 (line) and -3/2 (circle): that is the bracket.
    double low = -2.0 / 3 * target;
    double high = -0.5 * target;
    double x = start(target);
    for (int i = 0; i < STEPS; i++) {
      double k = Math.exp(x);
      double s = EllipticIntegralKernel.excess(k);
      double value = Math.log((1 - 2 * s) / (1 + 2 * s)) - 2 * x - target;
      if (value > 0) {
        low = x;
      } else {
        high = x;
      }
      double next = x - value / slope(k, s);
      if (!(next >= low && next <= high)) {
        next = 0.5 * (low + high);
      }
      double step = Math.abs(next - x);
      x = next;
      if (step <= LAST_STEP * Math.max(1, Math.abs(x)) || high <= low) {
        break;
      }
    }
    return Math.min(1, Math.exp(x));
  }

  /** Start of the search: a fit of ours to ln k, within 0.001 up to B/A of 7 million. It saves steps, no more. */
  private static double start(double target) {
    return -target * (2.0 / 3 + target * (0.174874 + 0.020566 * target)) / (1 + target * (0.257617 + 0.039768 * target));
  }

  /** Derivative of ln(B/A) by ln k. */
  private static double slope(double k, double s) {
    double k2 = k * k;
    double m = (1 - k) * (1 + k);
    if (m == 0) {
      return -1.5;
    }
    double ds = ((m * (0.5 + s) - 2 * s) / m - (0.5 + s) * (0.5 - s)) / (2 * k2);
    return 8 * k2 * ds / ((1 - 2 * s) * (1 + 2 * s)) - 2;
  }

  /**
   * Major semi-axis of the contact ellipse.
   *
   * @param force normal force F in N
   * @param modulus combined modulus E* in MPa
   * @param sum curvature sum A + B, 1/mm
   * @param ratio axis ratio k = b/a of {@link #axisRatio}
   * @return a in mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double majorSemiAxis(double force, double modulus, double sum, double ratio) {
    Check.notNegative(force, "normal force F", "N", "a contact only pushes");
    Check.positive(modulus, "combined modulus E*", "MPa", "an elastic body has stiffness");
    Check.positive(sum, "curvature sum A + B", "1/mm", "the surfaces must bend away from each other");
    return coefficientMajor(ratio) * Math.cbrt(0.75 * force / (modulus * sum));
  }

  /**
   * Coefficient of the major semi-axis: a = m (3F / (4 E* (A + B)))^(1/3).
   *
   * @param ratio axis ratio k = b/a, over 0 up to 1
   * @return m = (2 E(e) / (π k²))^(1/3)
   * @throws holdfast.quantity.InputException if the ratio is outside its range
   */
  public static double coefficientMajor(double ratio) {
    return Math.cbrt(2 / Math.PI * EllipticIntegralKernel.second(ratio) / (ratio * ratio));
  }

  /**
   * Coefficient of the minor semi-axis: b = n (3F / (4 E* (A + B)))^(1/3).
   *
   * @param ratio axis ratio k = b/a, over 0 up to 1
   * @return n = (2 k E(e) / π)^(1/3)
   * @throws holdfast.quantity.InputException if the ratio is outside its range
   */
  public static double coefficientMinor(double ratio) {
    return Math.cbrt(2 / Math.PI * EllipticIntegralKernel.second(ratio) * ratio);
  }

  /**
   * Coefficient of the approach in handbook form.
   *
   * @param ratio axis ratio k = b/a, over 0 up to 1
   * @return λ = 3 K(e) / (2 π m)
   * @throws holdfast.quantity.InputException if the ratio is outside its range
   */
  public static double coefficientApproach(double ratio) {
    return 1.5 / Math.PI * EllipticIntegralKernel.first(ratio) / coefficientMajor(ratio);
  }

  /**
   * Peak pressure.
   *
   * @param force normal force F in N
   * @param a major semi-axis in mm
   * @param b minor semi-axis in mm
   * @return p0 = 3F/(2πab) in MPa; the mean pressure is 2/3 of it
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double peakPressure(double force, double a, double b) {
    Check.notNegative(force, "normal force F", "N", "a contact only pushes");
    Check.positive(a, "major semi-axis a", "mm", "no contact area without load");
    Check.positive(b, "minor semi-axis b", "mm", "no contact area without load");
    return 1.5 * force / (Math.PI * a * b);
  }

  /**
   * Approach of distant points of the two bodies. Exact for half-spaces.
   *
   * @param force normal force F in N
   * @param modulus combined modulus E* in MPa
   * @param a major semi-axis in mm
   * @param ratio axis ratio k = b/a
   * @return δ = 3 F K(e)/(2 π a E*) in mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double approach(double force, double modulus, double a, double ratio) {
    Check.notNegative(force, "normal force F", "N", "a contact only pushes");
    Check.positive(modulus, "combined modulus E*", "MPa", "an elastic body has stiffness");
    Check.positive(a, "major semi-axis a", "mm", "no contact area without load");
    return 1.5 * force * EllipticIntegralKernel.first(ratio) / (Math.PI * a * modulus);
  }

  /**
   * The whole contact at once, into an array of the caller.
   *
   * @param force normal force F in N, over 0
   * @param modulus combined modulus E* in MPa
   * @param greater greater curvature B, 1/mm
   * @param lesser lesser curvature A, 1/mm
   * @param result receives a, b in mm, p0 in MPa, δ in mm, k = b/a; at least {@link #RESULTS} long
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void solve(double force, double modulus, double greater, double lesser, double[] result) {
    Objects.requireNonNull(result, "result");
    Check.positive(force, "normal force F", "N", "no contact area without load");
    Check.positive(modulus, "combined modulus E*", "MPa", "an elastic body has stiffness");
    Check.within(result.length, RESULTS, Integer.MAX_VALUE, "length of the result array", "", "five values are written");
    double k = axisRatio(greater, lesser);
    double first = EllipticIntegralKernel.firstUnchecked(k);
    double second = EllipticIntegralKernel.secondUnchecked(k, first, EllipticIntegralKernel.excess(k));
    double scale = Math.cbrt(1.5 / Math.PI * force * second / (modulus * (greater + lesser) * k * k));
    result[0] = scale;
    result[1] = k * scale;
    result[2] = 1.5 * force / (Math.PI * k * scale * scale);
    result[3] = 1.5 * force * first / (Math.PI * scale * modulus);
    result[4] = k;
  }

  /**
   * Peak pressures of one pair of surfaces under many forces.
   *
   * @param forces normal forces in N, 0 or more
   * @param modulus combined modulus E* in MPa
   * @param greater greater curvature B, 1/mm
   * @param lesser lesser curvature A, 1/mm
   * @param pressures receives p0 in MPa; as long as the forces
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void peakPressures(
      double[] forces, double modulus, double greater, double lesser, double[] pressures) {
    Objects.requireNonNull(forces, "forces");
    Objects.requireNonNull(pressures, "pressures");
    Check.within(pressures.length, forces.length, forces.length, "length of the result array", "", "one result a force");
    double k = axisRatio(greater, lesser);
    double a = majorSemiAxis(1, modulus, greater + lesser, k);
    double unit = peakPressure(1, a, k * a);
    for (int i = 0; i < forces.length; i++) {
      pressures[i] = unit * Math.cbrt(Check.notNegative(forces[i], "normal force F", "N", "a contact only pushes"));
    }
  }

  /**
   * Force at which the peak pressure reaches a limit.
   *
   * @param pressure permitted peak pressure in MPa
   * @param modulus combined modulus E* in MPa
   * @param greater greater curvature B, 1/mm
   * @param lesser lesser curvature A, 1/mm
   * @return F in N; it grows with the cube of the pressure
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double forceAtPressure(double pressure, double modulus, double greater, double lesser) {
    Check.notNegative(pressure, "permitted pressure", "MPa", "a contact only pushes");
    double k = axisRatio(greater, lesser);
    double a = majorSemiAxis(1, modulus, greater + lesser, k);
    double relative = pressure / peakPressure(1, a, k * a);
    return relative * relative * relative;
  }
}
