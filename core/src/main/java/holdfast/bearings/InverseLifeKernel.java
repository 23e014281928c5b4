// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * Modified life turned round, by bisection. Symbols as in {@link LifeModificationKernel}; lives in million revolutions.
 */
@Source(document = "ISO 281:2007", locator = "9.1, equation (29), solved by bisection")
public final class InverseLifeKernel {
  private static final int HALVINGS = 80;

  private InverseLifeKernel() {}

  /**
   * Greatest load with a wanted modified life. Life falls steadily with the load, so the answer is unique.
   *
   * @param family family of the bearing
   * @param c basic dynamic load rating in N, over 0
   * @param cu fatigue load limit in N, over 0
   * @param reliabilityPercent S in %, from 50 to 99.95
   * @param kappa κ (dimensionless), 0.1 or more
   * @param contamination eC (dimensionless), from 0 to 1
   * @param additives whether the rule for proven additives applies
   * @param contaminationAtOne eC at κ = 1 (dimensionless), from 0 to 1, which that rule needs; else without effect
   * @param life wanted Lnm in million revolutions, over 0
   * @return P in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double allowableLoad(BearingFamily family, double c, double cu, double reliabilityPercent, double kappa,
      double contamination, boolean additives, double contaminationAtOne, double life) {
    Objects.requireNonNull(family, "family");
    Check.positive(life, "wanted life", "million revolutions", "a life above zero is needed");
    LifeModificationKernel.checkLimit(cu);
    double a1 = ReliabilityKernel.a1(reliabilityPercent);
    // aISO lies between 0.1 and 50, which brackets the load.
    double low = BasicLifeKernel.allowableLoad(family, c, life / (a1 * 0.1));
    double high = BasicLifeKernel.allowableLoad(family, c, life / (a1 * LifeModificationKernel.GREATEST));
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      double modification = additives
          ? LifeModificationKernel.withAdditives(family, kappa, contamination, contaminationAtOne, cu / middle)
          : LifeModificationKernel.factor(family, kappa, ContaminationKernel.checkFactor(contamination) * cu / middle);
      if (a1 * modification * BasicLifeKernel.l10(family, c, middle) >= life) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * Least viscosity ratio with a wanted modified life.
   *
   * @param family family of the bearing
   * @param c basic dynamic load rating in N, over 0
   * @param cu fatigue load limit in N, over 0
   * @param p dynamic equivalent load in N, over 0
   * @param reliabilityPercent S in %, from 50 to 99.95
   * @param contamination eC as a function of κ, not falling
   * @param life wanted Lnm in million revolutions, over 0
   * @return κ, from 0.1 to 4
   * @throws holdfast.quantity.InputException if even κ = 4 does not give the life, or an argument is outside its range
   */
  public static double requiredKappa(BearingFamily family, double c, double cu, double p, double reliabilityPercent,
      DoubleUnaryOperator contamination, double life) {
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(contamination, "contamination");
    Check.positive(life, "wanted life", "million revolutions", "a life above zero is needed");
    double low = LubricationKernel.LEAST_KAPPA;
    double high = LubricationKernel.GREATEST_KAPPA;
    double best = LifeModificationKernel.life(family, c, cu, p, reliabilityPercent, high, contamination.applyAsDouble(high));
    if (best < life) {
      throw Refusal.of("wanted life", life, "million revolutions", "up to " + holdfast.quantity.Numbers.significant(best, 5)
          + " million revolutions", "with κ = 4 the bearing reaches no more under this load and contamination");
    }
    if (LifeModificationKernel.life(family, c, cu, p, reliabilityPercent, low, contamination.applyAsDouble(low)) >= life) {
      return low;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      double reached =
          LifeModificationKernel.life(family, c, cu, p, reliabilityPercent, middle, contamination.applyAsDouble(middle));
      if (reached >= life) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }
}
