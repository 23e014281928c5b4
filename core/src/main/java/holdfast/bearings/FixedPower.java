// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

/**
 * Powers {@code x^y} of many numbers with one exponent y: {@code x = 2^e m} with 1 ≤ m &lt; 2,
 * {@code x^y = (2^e)^y · m_i^y · (1 + r)^y}, where 1/m_i is near 1/m for each of 128 parts of the mantissa, so that
 * |r| ≤ 1/256, and the last factor is a binomial series. The tables come from {@link Math#pow}. For |y| ≤ 10 the result
 * differs from it by 1e-14 of its value at most; what lies outside 2^-64 to 2^64 goes to it.
 */
final class FixedPower {
  private static final int PARTS = 128;
  private static final int PART_BITS = 7;
  private static final int EXPONENTS = 64;
  private static final int BIAS = 1023;
  private static final int MANTISSA_BITS = 52;
  private static final long MANTISSA = (1L << MANTISSA_BITS) - 1;
  private static final long ONE = (long) BIAS << MANTISSA_BITS;
  /** 1/m_i. */
  private static final double[] RECIPROCAL = new double[PARTS];

  static {
    for (int i = 0; i < PARTS; i++) {
      RECIPROCAL[i] = 1 / (1 + (i + 0.5) / PARTS);
    }
  }

  private final double exponent;
  private final double[] part = new double[PARTS];
  private final double[] scale = new double[2 * EXPONENTS];
  private final double c2;
  private final double c3;
  private final double c4;
  private final double c5;
  private final double c6;
  private final double c7;
  private final double c8;

  /** Tables of one exponent from -10 to 10. */
  FixedPower(double exponent) {
    this.exponent = exponent;
    for (int i = 0; i < PARTS; i++) {
      part[i] = Math.pow(1 / RECIPROCAL[i], exponent);
    }
    for (int e = 0; e < scale.length; e++) {
      // Not 2^(y k): the rounded product would cost two digits far out.
      scale[e] = Math.pow(Math.scalb(1.0, e - EXPONENTS), exponent);
    }
    c2 = exponent * (exponent - 1) / 2;
    c3 = c2 * (exponent - 2) / 3;
    c4 = c3 * (exponent - 3) / 4;
    c5 = c4 * (exponent - 4) / 5;
    c6 = c5 * (exponent - 5) / 6;
    c7 = c6 * (exponent - 6) / 7;
    c8 = c7 * (exponent - 7) / 8;
  }

  /** The power for an exponent of size 4 at most, by five terms. */
  double small(double x) {
    long bits = Double.doubleToRawLongBits(x);
    // Signs, infinities, NaN and numbers below the range leave the table too.
    long e = (bits >> MANTISSA_BITS) - BIAS + EXPONENTS;
    if (e < 0 || e >= 2 * EXPONENTS) {
      return Math.pow(x, exponent);
    }
    int i = (int) (bits >> (MANTISSA_BITS - PART_BITS)) & (PARTS - 1);
    double r = Double.longBitsToDouble((bits & MANTISSA) | ONE) * RECIPROCAL[i] - 1;
    double r2 = r * r;
    double series = 1 + (r * exponent + r2 * (c2 + r * c3 + r2 * (c4 + r * c5)));
    return scale[(int) e] * part[i] * series;
  }

  /** The power for any exponent of the class, by eight terms. */
  double large(double x) {
    long bits = Double.doubleToRawLongBits(x);
    long e = (bits >> MANTISSA_BITS) - BIAS + EXPONENTS;
    if (e < 0 || e >= 2 * EXPONENTS) {
      return Math.pow(x, exponent);
    }
    int i = (int) (bits >> (MANTISSA_BITS - PART_BITS)) & (PARTS - 1);
    double r = Double.longBitsToDouble((bits & MANTISSA) | ONE) * RECIPROCAL[i] - 1;
    double r2 = r * r;
    double series = 1 + (r * exponent
        + r2 * (c2 + r * c3 + r2 * (c4 + r * c5 + r2 * (c6 + r * c7 + r2 * c8))));
    return scale[(int) e] * part[i] * series;
  }
}
