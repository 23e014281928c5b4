// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Fatigue load limit Cu: the bearing load at which the greatest contact stress just reaches the fatigue limit of the
 * material. Results in N.
 */
public final class FatigueLimitKernel {
  /** Contact stress at the fatigue limit for commonly used high-quality material, in MPa. */
  public static final double FATIGUE_STRESS = 1500;
  private static final double SIZE_START = 100;

  private FatigueLimitKernel() {}

  /**
   * Simplified estimate: ball {@code C0/22}, roller {@code C0/8.2}; above Dpw = 100 mm times (100/Dpw)^0.5 and
   * (100/Dpw)^0.3.
   *
   * @param family family of the bearing
   * @param c0 basic static load rating in N, over 0
   * @param dpw pitch diameter in mm, over 0
   * @return Cu in N
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "B.3.3, simplified method")
  public static double simplified(BearingFamily family, double c0, double dpw) {
    Objects.requireNonNull(family, "family");
    Check.positive(c0, "basic static load rating C0", "N", "a rating is a force above zero");
    return c0 / (family.ball() ? 22 : 8.2) * sizeFactor(family, dpw);
  }

  /**
   * Factor for bearings with a pitch diameter above 100 mm.
   *
   * @param family family of the bearing
   * @param dpw pitch diameter in mm, over 0
   * @return 1 up to 100 mm, (100/Dpw)^0.5 (ball) or (100/Dpw)^0.3 (roller) above
   * @throws holdfast.quantity.InputException if the diameter is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "B.3.2 and B.3.3")
  public static double sizeFactor(BearingFamily family, double dpw) {
    Objects.requireNonNull(family, "family");
    checkPitch(dpw);
    if (dpw <= SIZE_START) {
      return 1;
    }
    return family.ball() ? Math.sqrt(SIZE_START / dpw) : Math.pow(SIZE_START / dpw, 0.3);
  }

  /**
   * Load of the more heavily stressed contact of a ball bearing at 1500 MPa: the smaller of inner and outer ring.
   *
   * <p>For self-aligning ball bearings the standard admits a value up to 60 % higher at the outer ring; it is not taken
   * here.
   *
   * @param dw ball diameter in mm, over 0
   * @param gamma Dw cos α/Dpw (dimensionless), 0 or more, below 1
   * @param innerGroove groove radius of the inner ring over Dw (dimensionless), over 0.5
   * @param outerGroove groove radius of the outer ring over Dw (dimensionless), over 0.5
   * @return Qu in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "B.3.2")
  public static double ballContact(double dw, double gamma, double innerGroove, double outerGroove) {
    return Math.min(
        PointContactKernel.innerLoadAtStress(FATIGUE_STRESS, dw, gamma, innerGroove),
        PointContactKernel.outerLoadAtStress(FATIGUE_STRESS, dw, gamma, outerGroove));
  }

  /**
   * Load of the more heavily stressed contact of a roller bearing at 1500 MPa for even pressure along the roller,
   * {@code Qu = 2 π (1-ν²) σ² Lwe / (E Σρ)} with {@code Σρ = 2 / (Dwe (1-γ))} at the inner ring. Edge stress lowers it;
   * the standard wants the real profile, so this is an upper bound.
   *
   * @param dwe roller diameter in mm, over 0
   * @param lwe effective roller length in mm, over 0
   * @param gamma Dwe cos α/Dpw (dimensionless), 0 or more, below 1
   * @return Qu in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "Hertz line contact of roller and inner ring, even pressure",
      provenance = Provenance.DERIVED)
  public static double rollerContact(double dwe, double lwe, double gamma) {
    Check.positive(dwe, "roller diameter Dwe", "mm", "a roller has a diameter");
    DynamicRatingKernel.checkLength(lwe);
    if (!(gamma >= 0 && gamma < 1)) {
      throw Refusal.of("ratio γ = Dwe cos α/Dpw", gamma, "", "0 or more, below 1",
          "rollers lie on a pitch circle wider than they");
    }
    double curvatureSum = 2 / (dwe * (1 - gamma));
    double compliance = 2 * Math.PI * (1 - PointContactKernel.STEEL_POISSON * PointContactKernel.STEEL_POISSON);
    return compliance * FATIGUE_STRESS * FATIGUE_STRESS * lwe / (PointContactKernel.STEEL_MODULUS * curvatureSum);
  }

  /**
   * Fatigue load limit of a bearing from that of its most heavily loaded contact: radial ball
   * {@code 0.2288 Z Qu i cos α}, radial roller {@code 0.2453 Z Qu i cos α}, thrust {@code Z Qu sin α}; with
   * {@link #sizeFactor}.
   *
   * @param family family of the bearing
   * @param qu load of the contact at the fatigue limit in N, over 0
   * @param z rolling elements per row (a count)
   * @param rows rows i, 1 or more
   * @param alpha contact angle in rad
   * @param dpw pitch diameter in mm, over 0
   * @return Cu in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "B.3.2, equations for the complete bearing")
  public static double fromContact(BearingFamily family, double qu, double z, int rows, double alpha, double dpw) {
    Objects.requireNonNull(family, "family");
    Check.positive(qu, "load Qu of the contact at the fatigue limit", "N", "a force above zero is needed");
    DynamicRatingKernel.checkElements(z);
    double size = sizeFactor(family, dpw);
    if (family.thrust()) {
      return z * qu * Math.sin(ContactAngle.thrust(alpha)) * size;
    }
    double share = family.ball() ? 0.2288 : 0.2453;
    return share * z * qu * DynamicRatingKernel.checkRows(rows) * Math.cos(ContactAngle.radial(alpha)) * size;
  }

  static double checkPitch(double dpw) {
    return Check.positive(dpw, "pitch diameter Dpw", "mm", "a bearing has a pitch diameter");
  }
}
