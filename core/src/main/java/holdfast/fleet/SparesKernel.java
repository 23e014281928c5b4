// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Spares for a random demand that follows the distribution of Poisson. */
@Source(document = "derivation", locator = "distribution of Poisson: P(N ≤ s) = e^−m Σ m^k/k!, k from 0 to s",
    provenance = Provenance.DERIVED)
public final class SparesKernel {
  /** Greatest mean demand that is taken. */
  public static final double GREATEST_MEAN = 1e5;

  private SparesKernel() {}

  /**
   * Probability that a demand is met from stock.
   *
   * @param mean mean demand m (a count), 0 up to 100000
   * @param stock parts in stock s, 0 or more
   * @return P(N ≤ s), from 0 to 1
   * @throws InputException if an argument is outside its range
   */
  public static double serviceLevel(double mean, int stock) {
    checkMean(mean);
    if (stock < 0) {
      throw new InputException("stock", Integer.toString(stock), "0 or more", "parts are counted");
    }
    double sum = 0;
    int last = Math.min(stock, most(mean));
    for (int k = 0; k <= last; k++) {
      sum += probability(mean, k);
    }
    return Math.min(1, sum);
  }

  /**
   * Least stock that meets the demand with a wanted probability.
   *
   * @param mean mean demand m (a count), 0 up to 100000
   * @param level wanted service level (dimensionless), 0 or more and below 1
   * @return least s with P(N ≤ s) ≥ level
   * @throws InputException if an argument is outside its range
   */
  public static int stock(double mean, double level) {
    checkMean(mean);
    if (!(level >= 0 && level < 1)) {
      throw new InputException("service level", Numbers.shortest(level), "from 0 to below 1",
          "no stock meets every demand for certain");
    }
    double sum = 0;
    int most = most(mean);
    for (int k = 0; k < most; k++) {
      sum += probability(mean, k);
      if (sum >= level) {
        return k;
      }
    }
    return most;
  }

  /** Ten deviations above the mean the sum is 1 within rounding: loops end there at the latest. */
  private static int most(double mean) {
    return (int) (mean + 40 + 10 * Math.sqrt(mean));
  }

  private static double probability(double mean, int k) {
    return mean == 0 ? (k == 0 ? 1 : 0) : Math.exp(k * Math.log(mean) - mean - logFactorial(k));
  }

  /** ln k!; Stirling's series from 20 on, exact to 15 digits there. */
  private static double logFactorial(int k) {
    if (k < 20) {
      double product = 1;
      for (int i = 2; i <= k; i++) {
        product *= i;
      }
      return Math.log(product);
    }
    double x = k + 1.0;
    double r = 1 / (x * x);
    return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI)
        + (1 / 12.0 - r * (1 / 360.0 - r * (1 / 1260.0 - r / 1680))) / x;
  }

  private static void checkMean(double mean) {
    Check.within(mean, 0, GREATEST_MEAN, "mean demand", "", "a count of parts that a store can hold");
  }
}
