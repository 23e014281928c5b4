// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
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
    Objects.requireNonNull(lives, "lives");
    double greatest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (double life : lives) {
      Check.positive(life, "life", "", "an item that failed had a life");
      greatest = Math.max(greatest, life);
      least = Math.min(least, life);
    }
    if (!(least < greatest)) {
      throw Refusal.of("lives", lives.length + " lives", "at least two different lives", "equal lives have no scatter");
    }
    double low = 1e-3;
    double high = 1e3;
    for (int i = 0; i < 100; i++) {
      double middle = Math.sqrt(low * high);
      if (likelihoodSlope(lives, greatest, middle) < 0) {
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
    Objects.requireNonNull(lives, "lives");
    check(slope, 1, 0);
    if (lives.length == 0) {
      throw Refusal.of("lives", "none", "at least one life", "a scale needs data");
    }
    double greatest = 0;
    for (double life : lives) {
      greatest = Math.max(greatest, Check.positive(life, "life", "", "an item that failed had a life"));
    }
    double sum = 0;
    for (double life : lives) {
      sum += Math.pow(life / greatest, slope);
    }
    return greatest * Math.pow(sum / lives.length, 1 / slope);
  }

  private static double likelihoodSlope(double[] lives, double greatest, double slope) {
    double sum = 0;
    double weighted = 0;
    double mean = 0;
    for (double life : lives) {
      double log = Math.log(life / greatest);
      double power = Math.exp(slope * log);
      sum += power;
      weighted += power * log;
      mean += log / lives.length;
    }
    return weighted / sum - 1 / slope - mean;
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
