// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;


/**
 * Modified rating life in hours by powers from tables, for {@link BulkLifeKernel}: the formulas of
 * {@link LubricationKernel}, {@link LifeModificationKernel} and {@link BasicLifeKernel}, in the range in which a bearing
 * runs. Outside, and for refusals, these compute themselves.
 */
final class TabulatedLife {
  /** Below this base of the outer power aISO is at its cap of 50: 0.1 · 0.5^-9.185 = 58. */
  private static final double CAPPED_BASE = 0.5;

  /** Many times the rounding error of κ. */
  private static final double NEAR = 1e-12;
  /** κ at which the coefficients of aISO change with a step. At 1 they change without. */
  private static final double STEP = 0.4;

  private static final FixedPower SPEED = new FixedPower(-0.83);
  private static final FixedPower KAPPA_LOW = new FixedPower(-0.054381);
  private static final FixedPower KAPPA_MIDDLE = new FixedPower(-0.19087);
  private static final FixedPower KAPPA_HIGH = new FixedPower(-0.071739);
  private static final FixedPower BALL_BRACKET = new FixedPower(0.83);
  private static final FixedPower BALL_ARGUMENT = new FixedPower(1 / 3.0);
  private static final FixedPower BALL_FACTOR = new FixedPower(-9.3);
  private static final FixedPower ROLLER_ARGUMENT = new FixedPower(0.4);
  private static final FixedPower ROLLER_FACTOR = new FixedPower(-9.185);
  private static final FixedPower ROLLER_LIFE = new FixedPower(10 / 3.0);

  private TabulatedLife() {}

  /** Whether the inputs of a bearing lie where the tables reach and nothing is refused but, perhaps, κ. */
  static boolean covers(double c, double cu, double p, double rpm, double viscosity, double dpw, double contamination) {
    return c >= 1e-3 && c <= 1e12 && cu >= 1e-6 && cu <= 1e12 && p >= 1e-3 && p <= 1e12 && c <= 1e6 * p
        && p <= 1e6 * c && rpm >= 1e-3 && rpm <= 1e6 && viscosity >= 1e-3 && viscosity <= 1e6 && dpw >= 1e-2
        && dpw <= 1e6 && contamination >= 0 && contamination <= 1;
  }

  static double kappa(double viscosity, double rpm, double dpw) {
    return rpm < 1000
        ? viscosity * Math.sqrt(dpw) / (45000 * SPEED.small(rpm))
        : viscosity * Math.sqrt(rpm * dpw) / 4500;
  }

  /** Whether a branch of the formulas is chosen whatever the rounding of κ: at 0.1 they begin, at 0.4 they step. */
  static boolean decided(double kappa) {
    return kappa > LubricationKernel.LEAST_KAPPA * (1 + NEAR) && Math.abs(kappa - STEP) > NEAR;
  }

  /** Life in hours; κ is 0.1 or more. */
  static double hours(BearingFamily family, double a1, double c, double cu, double p, double rpm, double kappa,
      double contamination) {
    double argument = contamination * cu / p;
    double ratio = c / p;
    if (family.ball()) {
      double factor = ball(kappa, Math.min(argument, LifeModificationKernel.GREATEST_ARGUMENT)
          * (family.thrust() ? 1 / 3.0 : 1));
      return 1e6 / 60 * a1 * factor * (ratio * ratio * ratio) / rpm;
    }
    double factor = roller(kappa, Math.min(argument, LifeModificationKernel.GREATEST_ARGUMENT)
        * (family.thrust() ? 0.4 : 1));
    return 1e6 / 60 * a1 * factor * ROLLER_LIFE.small(ratio) / rpm;
  }

  private static double ball(double kappa, double argument) {
    double bracket = 2.5671 - (kappa < STEP ? 2.2649 : 1.9987) * powerOfKappa(kappa);
    double base = 1 - BALL_BRACKET.small(bracket) * BALL_ARGUMENT.small(argument);
    return base <= CAPPED_BASE ? LifeModificationKernel.GREATEST
        : Math.min(LifeModificationKernel.GREATEST, 0.1 * BALL_FACTOR.large(base));
  }

  private static double roller(double kappa, double argument) {
    double bracket = Math.max(0, 1.5859 - (kappa < STEP ? 1.3993 : 1.2348) * powerOfKappa(kappa));
    double base = 1 - bracket * ROLLER_ARGUMENT.small(argument);
    return base <= CAPPED_BASE ? LifeModificationKernel.GREATEST
        : Math.min(LifeModificationKernel.GREATEST, 0.1 * ROLLER_FACTOR.large(base));
  }

  private static double powerOfKappa(double kappa) {
    double k = Math.min(kappa, LubricationKernel.GREATEST_KAPPA);
    return k < STEP ? KAPPA_LOW.small(k) : k < 1 ? KAPPA_MIDDLE.small(k) : KAPPA_HIGH.small(k);
  }
}
