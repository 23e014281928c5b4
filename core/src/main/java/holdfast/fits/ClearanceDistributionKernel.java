// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.Root;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import org.apache.commons.numbers.gamma.Erfc;

/**
 * Distribution of the difference of two independent sizes, each normal or uniform, in closed form. The difference is
 * given by its mean and by the standard deviation and shape of both sizes; all lengths in one unit, any. A standard
 * deviation may be 0: the size is then fixed. Thread-safe. The error function of the library allocates some 60 B a call, its
 * root search in {@link #quantile} about 1 kB.
 */
@Source(
    document = "derivation",
    locator = "convolution of two independent normal or uniform distributions",
    provenance = Provenance.DERIVED)
public final class ClearanceDistributionKernel {
  private static final double SQRT_2 = Math.sqrt(2);
  private static final double SQRT_3 = Math.sqrt(3);
  private static final double INV_SQRT_2_PI = 1 / Math.sqrt(2 * Math.PI);
  private static final double LEAST_PROBABILITY = 1e-300;
  /** So many deviations out, the probability of the normal distribution is below the least double. */
  private static final double FARTHEST = 40;

  /** Beside a uniform part so much wider, a normal one is lost in rounding. */
  private static final double SHARP = 1e-15;

  /** Below this ratio of half width to standard deviation the uniform part only adds its variance. */
  private static final double NARROW = 1e-3;

  private ClearanceDistributionKernel() {}

  /**
   * Probability that the difference does not exceed a value.
   *
   * @param x the value in the unit of all lengths
   * @param mean mean of the difference in the unit of all lengths
   * @param deviation1 standard deviation of the first size in the unit of all lengths, 0 or more
   * @param normal1 whether the first size is normal; uniform otherwise
   * @param deviation2 standard deviation of the second size in the unit of all lengths, 0 or more
   * @param normal2 whether the second size is normal; uniform otherwise
   * @return probability from 0 to 1
   * @throws holdfast.quantity.InputException if an argument is not finite or a deviation negative
   */
  public static double probability(
      double x, double mean, double deviation1, boolean normal1, double deviation2, boolean normal2) {
    Check.finite(x, "clearance", "");
    Check.finite(mean, "mean clearance", "");
    Check.notNegative(deviation1, "standard deviation of the hole", "", "it is the root of a variance");
    Check.notNegative(deviation2, "standard deviation of the shaft", "", "it is the root of a variance");
    double z = x - mean;
    if (normal1 && normal2) {
      return normal(z, Math.hypot(deviation1, deviation2));
    }
    if (!normal1 && !normal2) {
      return trapezoid(z, SQRT_3 * deviation1, SQRT_3 * deviation2);
    }
    return normal1 ? mixed(z, deviation1, SQRT_3 * deviation2) : mixed(z, deviation2, SQRT_3 * deviation1);
  }

  /** Probability that the difference is less than a value: other than {@link #probability} only if both sizes are fixed. */
  static double probabilityBelow(
      double x, double mean, double deviation1, boolean normal1, double deviation2, boolean normal2) {
    double atMost = probability(x, mean, deviation1, normal1, deviation2, normal2);
    return deviation1 == 0 && deviation2 == 0 && x <= mean ? 0 : atMost;
  }

  /**
   * Value that the difference does not exceed with a probability.
   *
   * @param p the probability, from 1e-300 to 1 - 1e-16
   * @param mean mean of the difference in the unit of all lengths
   * @param deviation1 standard deviation of the first size in the unit of all lengths, 0 or more
   * @param normal1 whether the first size is normal; uniform otherwise
   * @param deviation2 standard deviation of the second size in the unit of all lengths, 0 or more
   * @param normal2 whether the second size is normal; uniform otherwise
   * @return the quantile
   * @throws holdfast.quantity.InputException if p is not within 0 and 1, an argument not finite or a deviation negative
   */
  public static double quantile(
      double p, double mean, double deviation1, boolean normal1, double deviation2, boolean normal2) {
    Check.within(p, LEAST_PROBABILITY, 1 - 1e-16, "probability p", "", "further out the quantile loses its digits");
    Check.finite(mean, "mean clearance", "");
    Check.notNegative(deviation1, "standard deviation of the hole", "", "it is the root of a variance");
    Check.notNegative(deviation2, "standard deviation of the shaft", "", "it is the root of a variance");
    double spread = Math.hypot(deviation1, deviation2);
    if (spread == 0) {
      return mean;
    }
    // Both shapes are symmetrical about the mean, and small probabilities keep their digits.
    double tail = Math.min(p, 1 - p);
    // Neither shape has longer tails than exp(-t² / 2), t in standard deviations; a little room for rounding. Searched in
    // standard deviations, because the least of them leave no room for digits.
    double share1 = deviation1 / spread;
    double share2 = deviation2 / spread;
    double reach = Math.hypot(share1, share2) * (1e-9 + Math.sqrt(-2 * Math.log(tail)));
    double z = spread * Root.between(
        t -> probability(t, 0, share1, normal1, share2, normal2) / tail - 1, -reach, reach, 1e-14, 1e-13, "quantile");
    return p < 0.5 ? mean + z : mean - z;
  }

  private static double normal(double z, double deviation) {
    if (deviation == 0) {
      return z < 0 ? 0 : 1;
    }
    return 0.5 * Erfc.value(-z / (deviation * SQRT_2));
  }

  /** Sum of two uniform variables of mean 0 and half widths a and b. */
  private static double trapezoid(double z, double a, double b) {
    double wide = Math.max(a, b);
    double narrow = Math.min(a, b);
    if (wide == 0) {
      return z < 0 ? 0 : 1;
    }
    double below = z + wide + narrow;
    if (below <= 0) {
      return 0;
    }
    if (z >= wide + narrow) {
      return 1;
    }
    if (z < narrow - wide) {
      return below / wide * (below / narrow) / 8;
    }
    if (z > wide - narrow) {
      double above = wide + narrow - z;
      return 1 - above / wide * (above / narrow) / 8;
    }
    return (z + wide) / (2 * wide);
  }

  /** Sum of a normal variable and a uniform one of half width a, both of mean 0. */
  private static double mixed(double z, double deviation, double a) {
    if (deviation == 0) {
      return trapezoid(z, a, 0);
    }
    if (a < NARROW * deviation) {
      // The next cumulant is of the fourth order in a / deviation; the difference quotient would lose more digits.
      return normal(z, Math.hypot(deviation, a / SQRT_3));
    }
    if (Math.abs(z) > a + FARTHEST * deviation) {
      return z < 0 ? 0 : 1;
    }
    if (deviation < SHARP * a) {
      return trapezoid(z, a, 0);
    }
    double high = (z + a) / deviation;
    double low = (z - a) / deviation;
    // Taken on the side where both terms are small, so that tails keep their digits.
    if (z > 0) {
      return 1 - deviation / (2 * a) * (primitive(-low) - primitive(-high));
    }
    return deviation / (2 * a) * (primitive(high) - primitive(low));
  }

  /** Integral of the standard normal distribution function up to t. */
  private static double primitive(double t) {
    return t * 0.5 * Erfc.value(-t / SQRT_2) + INV_SQRT_2_PI * Math.exp(-0.5 * t * t);
  }
}
