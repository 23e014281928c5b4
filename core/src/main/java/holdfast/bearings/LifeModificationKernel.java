// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Life modification factor aISO. Symbols: κ viscosity ratio, eC contamination factor, Cu fatigue load limit, P dynamic
 * equivalent load; the argument is {@code eC Cu/P}.
 *
 * <p>The coefficients are legible in the scan that was read; the exponents 0.83, 1/3 and 0.4 and the divisors 3 and 2.5
 * are partly recalled and were confirmed against the charts of the standard.
 */
public final class LifeModificationKernel {
  /** Greatest life modification factor. */
  public static final double GREATEST = 50;
  /** Greatest argument eC Cu/P. */
  public static final double GREATEST_ARGUMENT = 5;
  /** Least contamination factor for which proven additives may raise κ. */
  public static final double LEAST_CONTAMINATION_FOR_ADDITIVES = 0.2;
  /** Greatest life modification factor that additives may give. */
  public static final double GREATEST_WITH_ADDITIVES = 3;

  private LifeModificationKernel() {}

  /**
   * Life modification factor of radial ball bearings,
   * {@code aISO = 0.1 [1 - (2.5671 - A/κ^B)^0.83 (eC Cu/P)^(1/3)]^-9.3}, with A = 2.2649, B = 0.054381 for
   * 0.1 ≤ κ &lt; 0.4; A = 1.9987, B = 0.19087 for 0.4 ≤ κ &lt; 1; A = 1.9987, B = 0.071739 for 1 ≤ κ ≤ 4.
   *
   * @param kappa κ (dimensionless), 0.1 or more; above 4 as 4
   * @param argument eC Cu/P (dimensionless), 0 or more; above 5 as 5
   * @return aISO, from 0.1 to 50
   * @throws holdfast.quantity.InputException if κ is below 0.1 or the argument is negative
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3.4.2, equations (31) to (33)")
  public static double radialBall(double kappa, double argument) {
    double k = checkKappa(kappa);
    double bracket = 2.5671 - (k < 0.4 ? 2.2649 : 1.9987) * Math.pow(k, -exponent(k));
    return capped(1 - Math.pow(bracket, 0.83) * Math.cbrt(checkArgument(argument)), -9.3);
  }

  /**
   * Life modification factor of radial roller bearings,
   * {@code aISO = 0.1 [1 - (1.5859 - A/κ^B) (eC Cu/P)^0.4]^-9.185}, with A = 1.3993 for κ &lt; 0.4 and 1.2348 above, B as
   * for radial ball bearings.
   *
   * @param kappa κ (dimensionless), 0.1 or more; above 4 as 4
   * @param argument eC Cu/P (dimensionless), 0 or more; above 5 as 5
   * @return aISO, from 0.1 to 50
   * @throws holdfast.quantity.InputException if κ is below 0.1 or the argument is negative
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3.4.3, equations (34) to (36)")
  public static double radialRoller(double kappa, double argument) {
    double k = checkKappa(kappa);
    // At κ = 0.1 the printed coefficients give -0.00007 instead of 0, which would let the factor fall with cleanliness.
    double bracket = Math.max(0, 1.5859 - (k < 0.4 ? 1.3993 : 1.2348) * Math.pow(k, -exponent(k)));
    return capped(1 - bracket * Math.pow(checkArgument(argument), 0.4), -9.185);
  }

  /**
   * Life modification factor of thrust ball bearings: {@link #radialBall} with a third of the argument.
   *
   * @param kappa κ (dimensionless), 0.1 or more; above 4 as 4
   * @param argument eC Cu/P (dimensionless), 0 or more; above 5 as 5
   * @return aISO, from 0.1 to 50
   * @throws holdfast.quantity.InputException if κ is below 0.1 or the argument is negative
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3.4.4, equations (37) to (39)")
  public static double thrustBall(double kappa, double argument) {
    return radialBall(kappa, checkArgument(argument) / 3);
  }

  /**
   * Life modification factor of thrust roller bearings: {@link #radialRoller} with the argument divided by 2.5.
   *
   * @param kappa κ (dimensionless), 0.1 or more; above 4 as 4
   * @param argument eC Cu/P (dimensionless), 0 or more; above 5 as 5
   * @return aISO, from 0.1 to 50
   * @throws holdfast.quantity.InputException if κ is below 0.1 or the argument is negative
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3.4.5, equations (40) to (42)")
  public static double thrustRoller(double kappa, double argument) {
    return radialRoller(kappa, checkArgument(argument) / 2.5);
  }

  /**
   * Life modification factor of any family.
   *
   * @param family family of the bearing
   * @param kappa κ (dimensionless), 0.1 or more; above 4 as 4
   * @param argument eC Cu/P (dimensionless), 0 or more; above 5 as 5
   * @return aISO, from 0.1 to 50
   * @throws holdfast.quantity.InputException if κ is below 0.1 or the argument is negative
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3.4")
  public static double factor(BearingFamily family, double kappa, double argument) {
    Objects.requireNonNull(family, "family");
    return switch (family) {
      case RADIAL_BALL -> radialBall(kappa, argument);
      case RADIAL_ROLLER -> radialRoller(kappa, argument);
      case THRUST_BALL -> thrustBall(kappa, argument);
      case THRUST_ROLLER -> thrustRoller(kappa, argument);
    };
  }

  /**
   * Life modification factor with proven extreme-pressure additives: with κ &lt; 1 and eC ≥ 0.2, κ = 1 may be used for eC as
   * well as for aISO, but the factor is then at most 3, or the value for the real κ if that is greater.
   *
   * @param family family of the bearing
   * @param kappa κ (dimensionless), 0.1 or more
   * @param contamination eC at κ (dimensionless), from 0 to 1
   * @param contaminationAtOne eC at κ = 1 (dimensionless), from 0 to 1; the same where eC does not follow κ
   * @param limitOverLoad Cu/P (dimensionless), 0 or more
   * @return aISO, from 0.1 to 50
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3.3.4, lubricants with proven additives")
  public static double withAdditives(
      BearingFamily family, double kappa, double contamination, double contaminationAtOne, double limitOverLoad) {
    Objects.requireNonNull(family, "family");
    ContaminationKernel.checkFactor(contamination);
    ContaminationKernel.checkFactor(contaminationAtOne);
    double real = factor(family, kappa, contamination * limitOverLoad);
    if (kappa >= 1 || contamination < LEAST_CONTAMINATION_FOR_ADDITIVES) {
      return real;
    }
    double raised = factor(family, 1, contaminationAtOne * limitOverLoad);
    return Math.max(real, Math.min(raised, GREATEST_WITH_ADDITIVES));
  }

  /**
   * Modified rating life {@code Lnm = a1 aISO L10}.
   *
   * @param family family of the bearing
   * @param c basic dynamic load rating in N, over 0
   * @param cu fatigue load limit in N, over 0
   * @param p dynamic equivalent load in N, over 0
   * @param reliabilityPercent S in %, from 50 to 99.95
   * @param kappa κ (dimensionless), 0.1 or more; above 4 as 4
   * @param contamination eC (dimensionless), from 0 to 1
   * @return Lnm in million revolutions
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "9.1, equation (29)")
  public static double life(
      BearingFamily family, double c, double cu, double p, double reliabilityPercent, double kappa, double contamination) {
    Objects.requireNonNull(family, "family");
    double l10 = BasicLifeKernel.l10(family, c, p);
    checkLimit(cu);
    double aIso = factor(family, kappa, ContaminationKernel.checkFactor(contamination) * cu / p);
    return ReliabilityKernel.a1(reliabilityPercent) * aIso * l10;
  }

  static double checkLimit(double cu) {
    return Check.positive(cu, "fatigue load limit Cu", "N", "a limit is a force above zero");
  }

  private static double exponent(double kappa) {
    return kappa < 0.4 ? 0.054381 : kappa < 1 ? 0.19087 : 0.071739;
  }

  private static double capped(double base, double exponent) {
    // Where the bracket vanishes the formula has no value: the cap holds.
    return base <= 0 ? GREATEST : Math.min(GREATEST, 0.1 * Math.pow(base, exponent));
  }

  private static double checkKappa(double kappa) {
    if (!(kappa >= LubricationKernel.LEAST_KAPPA && kappa <= Check.GREATEST)) {
      throw Refusal.of("viscosity ratio κ", kappa, "", "0.1 or more",
          "ISO 281:2007, 9.3.3.4: below 0.1 the factor is not defined");
    }
    return Math.min(kappa, LubricationKernel.GREATEST_KAPPA);
  }

  private static double checkArgument(double argument) {
    Check.notNegative(argument, "eC Cu/P", "", "no factor of it is negative");
    return Math.min(argument, GREATEST_ARGUMENT);
  }
}
