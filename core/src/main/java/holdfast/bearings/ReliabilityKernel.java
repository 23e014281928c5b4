// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;

/** Life modification factor for reliability a1, from the three-parameter Weibull distribution. */
public final class ReliabilityKernel {
  /** Share Cγ of L10 below which no failure is expected. */
  public static final double MINIMUM_LIFE_SHARE = 0.05;
  /** Weibull exponent e of the life distribution that a1 describes. */
  public static final double WEIBULL_EXPONENT = 1.5;
  /** ln(100/90). */
  private static final double LN_10_PERCENT = Math.log(100.0 / 90);

  private ReliabilityKernel() {}

  /**
   * Life modification factor for reliability,
   * {@code a1 = (1 - Cγ) [ln(100/S) / ln(100/90)]^(1/e) + Cγ} with Cγ = 0.05 and e = 1.5.
   *
   * <p>ISO 281:2007 tabulates 90 % to 99.95 %, every value of which this gives to rounding; below 90 % it is the same
   * distribution, which the standard does not tabulate.
   *
   * @param reliabilityPercent S in %, from 50 to 99.95
   * @return a1, 1 at 90 %
   * @throws holdfast.quantity.InputException if S is outside the range
   */
  @Source(document = "ISO 281:2007", locator = "9.2, Table 12")
  @Source(document = "ISO/TR 1281-2:2008", locator = "three-parameter Weibull distribution, Cγ = 0.05, e = 1.5",
      provenance = holdfast.tables.Provenance.MEMORY)
  public static double a1(double reliabilityPercent) {
    checkPercent(reliabilityPercent);
    if (reliabilityPercent == 90) {
      return 1;
    }
    double r = Math.cbrt(-Math.log(0.01 * reliabilityPercent) / LN_10_PERCENT);
    return (1 - MINIMUM_LIFE_SHARE) * r * r + MINIMUM_LIFE_SHARE;
  }

  /**
   * Reliability at which a1 has a given value: the inverse of {@link #a1}.
   *
   * @param a1 life over L10, from a1(99.95 %) to a1(50 %)
   * @return S in %
   * @throws holdfast.quantity.InputException if a1 is outside the range
   */
  @Source(document = "ISO 281:2007", locator = "9.2, Table 12, solved for S")
  public static double percent(double a1) {
    Check.within(a1, a1(99.95), a1(50), "life modification factor a1", "", "a1 covers 50 % to 99.95 %");
    return 100 * survival(a1);
  }

  /**
   * Share of bearings that survive a life, by the same distribution and without limits on the share.
   *
   * @param lifeOverL10 life divided by L10 (or by Lnm at 90 %), 0 or more
   * @return share from 0 to 1; 1 up to 0.05 L10
   * @throws holdfast.quantity.InputException if the ratio is negative or not finite
   */
  @Source(document = "ISO 281:2007", locator = "9.2, Table 12, solved for S")
  public static double survival(double lifeOverL10) {
    Check.notNegative(lifeOverL10, "life over L10", "", "a life is not negative");
    if (lifeOverL10 <= MINIMUM_LIFE_SHARE) {
      return 1;
    }
    double u = (lifeOverL10 - MINIMUM_LIFE_SHARE) / (1 - MINIMUM_LIFE_SHARE);
    return Math.exp(-LN_10_PERCENT * u * Math.sqrt(u));
  }

  static double checkPercent(double reliabilityPercent) {
    return Check.within(reliabilityPercent, 50, 99.95, "reliability S", "%",
        "ISO 281:2007, Table 12 ends at 99.95 %; 50 % is the median life");
  }
}
