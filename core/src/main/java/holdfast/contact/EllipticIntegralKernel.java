// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Complete elliptic integrals by the arithmetic-geometric mean, and Carlson's symmetric integral of the second kind by
 * duplication. The argument is the complementary modulus k' (for a contact ellipse the axis ratio b/a), because the
 * differences K - E and E - k'²K, which a contact needs, lose no digits in it.
 */
@Source(
    document = "Abramowitz and Stegun 1964",
    locator = "section 17.6, process of the arithmetic-geometric mean",
    provenance = Provenance.MEMORY)
@Source(document = "Carlson 1995", locator = "duplication theorem for R_D", provenance = Provenance.MEMORY)
public final class EllipticIntegralKernel {
  /** The mean converges quadratically: below this difference the next step is exact to a double. */
  private static final double AGM_STEP = 1e-8;
  /** The series error of R_D is 3 ε⁶: below the rounding of a double here. */
  private static final double RD_STEP = 0.0015;

  private EllipticIntegralKernel() {}

  /**
   * Complete elliptic integral of the first kind.
   *
   * @param kc complementary modulus k' (dimensionless), over 0 up to 1
   * @return K = ∫ dθ / √(1 - (1 - k'²) sin²θ) over 0 … π/2
   * @throws holdfast.quantity.InputException if k' is outside its range
   */
  public static double first(double kc) {
    return firstUnchecked(check(kc));
  }

  /**
   * Complete elliptic integral of the second kind.
   *
   * @param kc complementary modulus k' (dimensionless), over 0 up to 1
   * @return E = ∫ √(1 - (1 - k'²) sin²θ) dθ over 0 … π/2
   * @throws holdfast.quantity.InputException if k' is outside its range
   */
  public static double second(double kc) {
    check(kc);
    return secondUnchecked(kc, firstUnchecked(kc), excess(kc));
  }

  /**
   * Carlson's symmetric elliptic integral of the second kind.
   *
   * @param x 0 or more (dimensionless), not 0 together with y
   * @param y 0 or more (dimensionless)
   * @param z over 0 (dimensionless)
   * @return R_D = 3/2 ∫ dt / (√(t+x) √(t+y) (t+z)^(3/2)) over 0 … ∞
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double symmetricSecondKind(double x, double y, double z) {
    Check.notNegative(x, "first argument of R_D", "", "the integral diverges or is complex");
    Check.notNegative(y, "second argument of R_D", "", "the integral diverges or is complex");
    Check.positive(x + y, "sum of the first two arguments of R_D", "", "the integral diverges");
    Check.positive(z, "third argument of R_D", "", "the integral diverges");
    return rd(x, y, z);
  }

  static double firstUnchecked(double kc) {
    double a = 1;
    double b = kc;
    while (a - b > AGM_STEP * a) {
      double mean = 0.5 * (a + b);
      b = Math.sqrt(a * b);
      a = mean;
    }
    return Math.PI / (a + b);
  }

  /** E from K and the excess s: (1 - m/2 - m s) K with m = 1 - k'², as a sum of positive terms. */
  static double secondUnchecked(double kc, double first, double excess) {
    return first * ((0.5 - excess) + kc * kc * (0.5 + excess));
  }

  /**
   * s = D/K - 1/2 with D = (K - E)/m: the sum of 2^(n-1) c_n²/m over n ≥ 1 of the mean's half differences c_n. It is
   * 0 for the circle and tends to 1/2 for the line; D = (1/2 + s) K and (E - k'²K)/m = (1/2 - s) K.
   */
  static double excess(double kc) {
    double term = (1 - kc) / (4 * (1 + kc));
    double sum = term;
    double c = 0.5 * (1 - kc);
    double a = 0.5 * (1 + kc);
    double b = Math.sqrt(kc);
    while (c > AGM_STEP * a) {
      double mean = 0.5 * (a + b);
      double square = c * c / (mean * mean);
      term *= square / 8;
      sum += term;
      b = Math.sqrt(a * b);
      c = 0.25 * square * mean;
      a = mean;
    }
    return sum;
  }

  static double rd(double x0, double y0, double z0) {
    double x = x0;
    double y = y0;
    double z = z0;
    double sum = 0;
    double factor = 1;
    while (true) {
      double mean = 0.2 * (x + y + 3 * z);
      double dx = (mean - x) / mean;
      double dy = (mean - y) / mean;
      double dz = (mean - z) / mean;
      if (Math.max(Math.max(Math.abs(dx), Math.abs(dy)), Math.abs(dz)) < RD_STEP) {
        double ea = dx * dy;
        double eb = dz * dz;
        double ec = ea - eb;
        double ed = ea - 6 * eb;
        double ee = ed + 2 * ec;
        double series =
            1
                + ed * (-3.0 / 14 + 9.0 / 88 * ed - 9.0 / 52 * dz * ee)
                + dz * (ee / 6 + dz * (-9.0 / 22 * ec + dz * (3.0 / 26) * ea));
        return 3 * sum + factor * series / (mean * Math.sqrt(mean));
      }
      double rx = Math.sqrt(x);
      double ry = Math.sqrt(y);
      double rz = Math.sqrt(z);
      double lambda = rx * (ry + rz) + ry * rz;
      sum += factor / (rz * (z + lambda));
      factor *= 0.25;
      x = 0.25 * (x + lambda);
      y = 0.25 * (y + lambda);
      z = 0.25 * (z + lambda);
    }
  }

  private static double check(double kc) {
    return Check.within(kc, Check.LEAST, 1, "complementary modulus k'", "", "K is infinite at 0");
  }
}
