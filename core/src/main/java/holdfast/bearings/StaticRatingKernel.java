// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Basic static load ratings from geometry. Symbols: f0 factor, i rows, Z rolling elements per row, Dw, Dwe, Lwe, Dpw
 * (mm), α contact angle (rad). Results in N.
 */
public final class StaticRatingKernel {
  private static final String F0 = "bearings/iso-76/2006/f0";
  private static final Curve RADIAL = Curve.of(F0, "ratio", "radial");
  private static final Curve SELF_ALIGNING = Curve.of(F0, "ratio", "self_aligning");
  private static final Curve THRUST = Curve.of(F0, "ratio", "thrust");

  private StaticRatingKernel() {}

  /**
   * Factor f0 of ball bearings, by linear interpolation.
   *
   * @param type a ball type
   * @param ratio Dw cos α / Dpw (dimensionless), from 0 to 0.40 (thrust 0.35)
   * @return f0
   * @throws holdfast.quantity.InputException if the ratio is outside the table or the type has no balls
   */
  @Source(document = "ISO 76:2006", locator = "Table 1")
  public static double f0(BearingType type, double ratio) {
    Objects.requireNonNull(type, "type");
    if (!type.family().ball()) {
      throw Refusal.of("type of bearing", type, "a ball bearing", "f0 is for ball bearings");
    }
    Curve column = type == BearingType.SELF_ALIGNING_BALL ? SELF_ALIGNING : type.family().thrust() ? THRUST : RADIAL;
    return column.at(ratio, "ratio Dw cos α / Dpw", "ISO 76:2006, Table 1");
  }

  /**
   * Radial ball bearings, {@code C0r = f0 i Z Dw² cos α}.
   *
   * @param f0 factor f0
   * @param rows rows i, 1 or more
   * @param alpha contact angle, 0 to 45°
   * @param z balls per row (a count)
   * @param dw ball diameter in mm, over 0
   * @return C0r in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 76:2006", locator = "5.1.1, equation (1)")
  public static double radialBall(double f0, int rows, double alpha, double z, double dw) {
    checkBall(f0, z, dw);
    return f0 * DynamicRatingKernel.checkRows(rows) * z * dw * dw * Math.cos(ContactAngle.radial(alpha));
  }

  /**
   * Thrust ball bearings, {@code C0a = f0 Z Dw² sin α}.
   *
   * @param f0 factor f0
   * @param alpha contact angle, over 45° up to 90°
   * @param z balls that carry load in one direction (a count)
   * @param dw ball diameter in mm, over 0
   * @return C0a in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 76:2006", locator = "5.2")
  public static double thrustBall(double f0, double alpha, double z, double dw) {
    checkBall(f0, z, dw);
    return f0 * z * dw * dw * Math.sin(ContactAngle.thrust(alpha));
  }

  /**
   * Radial roller bearings, {@code C0r = 44 (1 - Dwe cos α/Dpw) i Z Lwe Dwe cos α}.
   *
   * @param rows rows i, 1 or more
   * @param alpha contact angle, 0 to 45°
   * @param z rollers per row (a count)
   * @param dwe roller diameter in mm, over 0
   * @param lwe effective roller length in mm, over 0
   * @param dpw pitch diameter in mm, over dwe
   * @return C0r in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 76:2006", locator = "6.1")
  public static double radialRoller(int rows, double alpha, double z, double dwe, double lwe, double dpw) {
    double cos = Math.cos(ContactAngle.radial(alpha));
    return 44 * roller(cos, z, dwe, lwe, dpw) * DynamicRatingKernel.checkRows(rows) * cos;
  }

  /**
   * Thrust roller bearings, {@code C0a = 220 (1 - Dwe cos α/Dpw) Z Lwe Dwe sin α}.
   *
   * @param alpha contact angle, over 45° up to 90°
   * @param z rollers that carry load in one direction (a count)
   * @param dwe roller diameter in mm, over 0
   * @param lwe effective roller length in mm, over 0
   * @param dpw pitch diameter in mm, over dwe
   * @return C0a in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 76:2006", locator = "6.2")
  public static double thrustRoller(double alpha, double z, double dwe, double lwe, double dpw) {
    ContactAngle.thrust(alpha);
    double cos = ContactAngle.is90(alpha) ? 0 : Math.cos(alpha);
    return 220 * roller(cos, z, dwe, lwe, dpw) * Math.sin(alpha);
  }

  private static double roller(double cos, double z, double dwe, double lwe, double dpw) {
    DynamicRatingKernel.checkElements(z);
    DynamicRatingKernel.checkLength(lwe);
    Check.positive(dwe, "roller diameter Dwe", "mm", "a roller has a diameter");
    checkPitch(dpw, dwe);
    return (1 - dwe * cos / dpw) * z * lwe * dwe;
  }

  private static void checkBall(double f0, double z, double dw) {
    Check.positive(f0, "factor f0", "", "a factor above zero");
    DynamicRatingKernel.checkElements(z);
    Check.positive(dw, "ball diameter Dw", "mm", "a ball has a diameter");
  }

  static void checkPitch(double dpw, double dw) {
    if (!(dpw > dw && dpw <= Check.GREATEST)) {
      throw Refusal.of("pitch diameter Dpw", dpw, "mm", "greater than the diameter of the rolling elements, "
          + holdfast.quantity.Numbers.shortest(dw) + " mm", "the rolling elements lie on the pitch circle");
    }
  }
}
