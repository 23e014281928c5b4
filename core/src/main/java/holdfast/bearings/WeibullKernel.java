// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Arrays;
import java.util.Objects;

/**
 * Weibull distribution of lives, {@code S(t) = exp(-((t - γ)/η)^β)}: β slope, η scale (characteristic life less γ),
 * γ minimum life (0 in the two-parameter form).
 */
@Source(document = "derivation", locator = "definition of the Weibull distribution", provenance = Provenance.DERIVED)
public final class WeibullKernel {
  /** Least slope that is taken. */
  public static final double LEAST_SLOPE = 0.1;

  /** Greatest slope that is taken. */
  public static final double GREATEST_SLOPE = 1000;

  private WeibullKernel() {}

  /**
   * Share of items that survive a time.
   *
   * @param time t in the unit of all lives, 0 or more
   * @param slope β (dimensionless), from 0.1 to 1000
   * @param scale η in the unit of all lives, over 0
   * @param minimum γ in the unit of all lives, 0 or more
   * @return share from 0 to 1
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double survival(double time, double slope, double scale, double minimum) {
    Check.notNegative(time, "time t", "", "time runs from 0");
    check(slope, scale, minimum);
    return time <= minimum ? 1 : Math.exp(-Math.pow((time - minimum) / scale, slope));
  }

  /**
   * Time that a share of items survives: the inverse of {@link #survival}.
   *
   * @param share share that survives, over 0 up to 1
   * @param slope β (dimensionless), from 0.1 to 1000
   * @param scale η in the unit of all lives, over 0
   * @param minimum γ in the unit of all lives, 0 or more
   * @return t
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double life(double share, double slope, double scale, double minimum) {
    Check.overUpTo(share, 0, 1, "share that survives", "", "a share");
    check(slope, scale, minimum);
    return minimum + scale * Math.pow(-Math.log(share), 1 / slope);
  }

  /**
   * Scale from the life that a share survives.
   *
   * @param life life that the share survives, over the minimum
   * @param share share that survives, over 0 and below 1
   * @param slope β (dimensionless), from 0.1 to 1000
   * @param minimum γ in the unit of all lives, 0 or more
   * @return η
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double scale(double life, double share, double slope, double minimum) {
    if (!(share > 0 && share < 1)) {
      throw Refusal.of("share that survives", share, "", "over 0 and below 1", "the share fixes the scale");
    }
    check(slope, 1, minimum);
    Check.positive(life - minimum, "life less the minimum life", "", "the life lies above the minimum");
    return (life - minimum) / Math.pow(-Math.log(share), 1 / slope);
  }

  /**
   * Slope of the two-parameter distribution by maximum likelihood from complete data:
   * {@code Σ t^β ln t / Σ t^β - 1/β = mean of ln t}, by bisection.
   *
   * @param lives lives of all items in the unit of all lives, at least two of them different, each over 0
   * @return β
   * @throws holdfast.quantity.InputException if there are too few lives or one is not above zero
   */
  @Source(document = "derivation", locator = "likelihood equations, two parameters",
      provenance = Provenance.DERIVED)
  public static double maximumLikelihoodSlope(double[] lives) {
    return maximumLikelihoodSlope(lives, allFailed(lives));
  }

  /**
   * Slope of the two-parameter distribution by maximum likelihood from a history in which some items have not failed
   * (suspensions, censored at the right): {@code Σ t^β ln t / Σ t^β - 1/β = mean of ln t of the failures}, the sums over
   * all items, by bisection.
   *
   * @param lives time of each item to its failure, or to the day on which it was last seen running, in the unit of all
   *     lives, each over 0
   * @param failed whether the item failed; false for a suspension
   * @return β
   * @throws holdfast.quantity.InputException if a life is not above zero, the arrays differ in length, no item failed, no
   *     failure is shorter than the longest time, or the times scatter so little that β would pass 1000
   */
  @Source(document = "derivation", locator = "likelihood equations, two parameters, censored at the right",
      provenance = Provenance.DERIVED)
  public static double maximumLikelihoodSlope(double[] lives, boolean[] failed) {
    double greatest = greatest(lives, failed);
    double shortestFailure = greatest;
    for (int i = 0; i < lives.length; i++) {
      if (failed[i]) {
        shortestFailure = Math.min(shortestFailure, lives[i]);
      }
    }
    if (!(shortestFailure < greatest)) {
      throw Refusal.of("lives", lives.length + " lives", "at least two different lives, the shorter a failure",
          "failures that all happen at the greatest time have no scatter");
    }
    double low = 1e-3;
    double high = GREATEST_SLOPE;
    if (likelihoodSlope(lives, failed, greatest, high) < 0) {
      throw Refusal.of("lives", lives.length + " lives", "lives whose slope is 1000 or less",
          "the failures scatter too little");
    }
    for (int i = 0; i < 100; i++) {
      double middle = Math.sqrt(low * high);
      if (likelihoodSlope(lives, failed, greatest, middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.sqrt(low * high);
  }

  /**
   * Scale of the two-parameter distribution by maximum likelihood, {@code η = (mean of t^β)^(1/β)}.
   *
   * @param lives lives of all items in the unit of all lives, each over 0
   * @param slope β (dimensionless), from 0.1 to 1000
   * @return η
   * @throws holdfast.quantity.InputException if a value is not above zero
   */
  @Source(document = "derivation", locator = "likelihood equations, two parameters",
      provenance = Provenance.DERIVED)
  public static double maximumLikelihoodScale(double[] lives, double slope) {
    return maximumLikelihoodScale(lives, allFailed(lives), slope);
  }

  /**
   * Scale of the two-parameter distribution by maximum likelihood from a history with suspensions,
   * {@code η = (Σ t^β / r)^(1/β)}, the sum over all items, r the number of failures.
   *
   * @param lives time of each item to its failure, or to the day on which it was last seen running, in the unit of all
   *     lives, each over 0
   * @param failed whether the item failed; false for a suspension
   * @param slope β (dimensionless), from 0.1 to 1000
   * @return η
   * @throws holdfast.quantity.InputException if a value is outside its range, the arrays differ in length, or no item failed
   */
  @Source(document = "derivation", locator = "likelihood equations, two parameters, censored at the right",
      provenance = Provenance.DERIVED)
  public static double maximumLikelihoodScale(double[] lives, boolean[] failed, double slope) {
    double greatest = greatest(lives, failed);
    check(slope, 1, 0);
    double sum = 0;
    int failures = 0;
    for (int i = 0; i < lives.length; i++) {
      sum += Math.pow(lives[i] / greatest, slope);
      failures += failed[i] ? 1 : 0;
    }
    return greatest * Math.pow(sum / failures, 1 / slope);
  }

  private static boolean[] allFailed(double[] lives) {
    Objects.requireNonNull(lives, "lives");
    boolean[] failed = new boolean[lives.length];
    Arrays.fill(failed, true);
    return failed;
  }

  /** Greatest time of a history, which is looked through for what no estimate can be made of. */
  private static double greatest(double[] lives, boolean[] failed) {
    Objects.requireNonNull(lives, "lives");
    Objects.requireNonNull(failed, "failed");
    Refusal.sameLength(lives.length, failed.length, "marks of failure");
    if (lives.length == 0) {
      throw Refusal.of("lives", "none", "at least one life", "an estimate needs data");
    }
    double greatest = 0;
    boolean any = false;
    for (int i = 0; i < lives.length; i++) {
      greatest = Math.max(greatest, Check.positive(lives[i], "life", "", "an item that was watched had a life"));
      any |= failed[i];
    }
    if (!any) {
      throw Refusal.of("failures", "none", "at least one", "without a failure the times bound the life from below only");
    }
    return greatest;
  }

  /** Left less right side of the likelihood equation, times over the greatest one. */
  private static double likelihoodSlope(double[] lives, boolean[] failed, double greatest, double slope) {
    double sum = 0;
    double weighted = 0;
    double ofFailures = 0;
    int failures = 0;
    for (int i = 0; i < lives.length; i++) {
      double log = Math.log(lives[i] / greatest);
      double power = Math.exp(slope * log);
      sum += power;
      weighted += power * log;
      if (failed[i]) {
        ofFailures += log;
        failures++;
      }
    }
    return weighted / sum - 1 / slope - ofFailures / failures;
  }

  static double checkSlope(double slope) {
    return Check.within(slope, LEAST_SLOPE, GREATEST_SLOPE, "Weibull slope", "",
        "lives of machines have slopes of about 0.5 to 10; far outside, the quantiles leave the range of the numbers");
  }

  private static void check(double slope, double scale, double minimum) {
    checkSlope(slope);
    Check.positive(scale, "Weibull scale η", "", "a scale above zero");
    Check.notNegative(minimum, "minimum life γ", "", "a life is not negative");
  }
}
