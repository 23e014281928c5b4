// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Basic dynamic load ratings from geometry. Symbols: bm and fc factors, i rows, α contact angle (rad), Z rolling
 * elements per row (thrust: carrying load in one direction), Dw ball diameter, Dwe mean roller diameter, Lwe effective
 * roller length (mm). Results in N.
 */
public final class DynamicRatingKernel {
  /** Ball diameter in mm at which the exponent of the ball diameter changes. */
  public static final double SIZE_BREAK = 25.4;
  /** Factor of the formulas for balls over 25.4 mm, as printed. */
  public static final double LARGE_BALL_FACTOR = 3.647;

  private DynamicRatingKernel() {}

  /**
   * Radial ball bearings, {@code Cr = bm fc (i cos α)^0.7 Z^(2/3) Dw^1.8}; over 25.4 mm with 3.647 and Dw^1.4.
   *
   * @param bm rating factor
   * @param fc factor for the geometry
   * @param rows rows i, 1 or more
   * @param alpha contact angle, 0 to 45°
   * @param z balls per row (a count), 1 or more
   * @param dw ball diameter in mm, over 0
   * @return Cr in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "5.1, equations (1) and (2)")
  public static double radialBall(double bm, double fc, int rows, double alpha, double z, double dw) {
    check(bm, fc, z, dw);
    return bm * fc * Math.pow(checkRows(rows) * Math.cos(ContactAngle.radial(alpha)), 0.7) * powTwoThirds(z) * size(dw);
  }

  /**
   * Thrust ball bearings with one row, {@code Ca = bm fc (cos α)^0.7 tan α Z^(2/3) Dw^1.8}; at 90° without the angle;
   * over 25.4 mm with 3.647 and Dw^1.4.
   *
   * @param bm rating factor
   * @param fc factor for the geometry
   * @param alpha contact angle, over 45° up to 90°
   * @param z balls that carry load in one direction (a count), 1 or more
   * @param dw ball diameter in mm, over 0
   * @return Ca in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "6.1.1")
  public static double thrustBall(double bm, double fc, double alpha, double z, double dw) {
    check(bm, fc, z, dw);
    ContactAngle.thrust(alpha);
    double angle = ContactAngle.is90(alpha) ? 1 : Math.pow(Math.cos(alpha), 0.7) * Math.tan(alpha);
    return bm * fc * angle * powTwoThirds(z) * size(dw);
  }

  /**
   * Radial roller bearings, {@code Cr = bm fc (i Lwe cos α)^(7/9) Z^(3/4) Dwe^(29/27)}.
   *
   * @param bm rating factor
   * @param fc factor for the geometry
   * @param rows rows i, 1 or more
   * @param alpha contact angle, 0 to 45°
   * @param z rollers per row (a count), 1 or more
   * @param dwe roller diameter in mm, over 0
   * @param lwe effective roller length in mm, over 0
   * @return Cr in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "7.1, equation (13)")
  public static double radialRoller(double bm, double fc, int rows, double alpha, double z, double dwe, double lwe) {
    check(bm, fc, z, dwe);
    checkLength(lwe);
    return bm * fc * Math.pow(checkRows(rows) * lwe * Math.cos(ContactAngle.radial(alpha)), 7.0 / 9) * rollers(z, dwe);
  }

  /**
   * Thrust roller bearings with one row, {@code Ca = bm fc (Lwe cos α)^(7/9) tan α Z^(3/4) Dwe^(29/27)}; at 90° without
   * the angle. Rollers on one axis count as one roller with the summed length.
   *
   * @param bm rating factor
   * @param fc factor for the geometry
   * @param alpha contact angle, over 45° up to 90°
   * @param z rollers that carry load in one direction (a count), 1 or more
   * @param dwe roller diameter in mm, over 0
   * @param lwe effective roller length in mm, over 0
   * @return Ca in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "8.1")
  public static double thrustRoller(double bm, double fc, double alpha, double z, double dwe, double lwe) {
    check(bm, fc, z, dwe);
    checkLength(lwe);
    ContactAngle.thrust(alpha);
    double angle = ContactAngle.is90(alpha) ? Math.pow(lwe, 7.0 / 9) : Math.pow(lwe * Math.cos(alpha), 7.0 / 9) * Math.tan(alpha);
    return bm * fc * angle * rollers(z, dwe);
  }

  /**
   * Thrust ball bearings with several rows that carry load in the same direction,
   * {@code Ca = (Z1 + … + Zn) [Σ (Zj/Caj)^(10/3)]^(-3/10)}.
   *
   * @param z balls of each row (a count)
   * @param ca rating of each row in N
   * @return Ca in N
   * @throws holdfast.quantity.InputException if the arrays are empty, differ in length or hold a value not above zero
   */
  @Source(document = "ISO 281:2007", locator = "6.1.2, exponents recalled", provenance = holdfast.tables.Provenance.MEMORY)
  public static double thrustBallRows(double[] z, double[] ca) {
    Objects.requireNonNull(z, "z");
    Objects.requireNonNull(ca, "ca");
    Refusal.sameLength(checkNotEmpty(z), ca.length, "ratings of the rows");
    double total = 0;
    double sum = 0;
    for (int j = 0; j < z.length; j++) {
      total += checkElements(z[j]);
      sum += Math.pow(z[j] / BasicLifeKernel.checkRating(ca[j]), 10.0 / 3);
    }
    return total * Math.pow(sum, -0.3);
  }

  /**
   * Thrust roller bearings with several rows that carry load in the same direction,
   * {@code Ca = (Σ Zj Lwej) [Σ (Zj Lwej/Caj)^(9/2)]^(-2/9)}.
   *
   * @param z rollers of each row (a count)
   * @param lwe effective length of the rollers of each row in mm
   * @param ca rating of each row in N
   * @return Ca in N
   * @throws holdfast.quantity.InputException if the arrays are empty, differ in length or hold a value not above zero
   */
  @Source(document = "ISO 281:2007", locator = "8.1.2, exponents recalled", provenance = holdfast.tables.Provenance.MEMORY)
  public static double thrustRollerRows(double[] z, double[] lwe, double[] ca) {
    Objects.requireNonNull(z, "z");
    Objects.requireNonNull(lwe, "lwe");
    Objects.requireNonNull(ca, "ca");
    Refusal.sameLength(checkNotEmpty(z), ca.length, "ratings of the rows");
    Refusal.sameLength(z.length, lwe.length, "lengths of the rows");
    double total = 0;
    double sum = 0;
    for (int j = 0; j < z.length; j++) {
      double zl = checkElements(z[j]) * checkLength(lwe[j]);
      total += zl;
      sum += Math.pow(zl / BasicLifeKernel.checkRating(ca[j]), 4.5);
    }
    return total * Math.pow(sum, -2.0 / 9);
  }

  /**
   * Radial rating of n equal single-row bearings in tandem, made and mounted to share the load: ball n^0.7, roller
   * n^(7/9) times the rating of one.
   *
   * @param family a radial family
   * @param cr rating of one bearing in N
   * @param n number of bearings, 1 or more
   * @return rating of the set in N
   * @throws holdfast.quantity.InputException if an argument is outside its range or the family is a thrust family
   */
  @Source(document = "ISO 281:2007", locator = "5.1 and 7.1, bearings in tandem")
  public static double tandem(BearingFamily family, double cr, int n) {
    Objects.requireNonNull(family, "family");
    if (family.thrust()) {
      throw Refusal.of("family", family, "a radial family", "thrust bearings in tandem are rated as rows");
    }
    return BasicLifeKernel.checkRating(cr) * Math.pow(checkRows(n), family.ball() ? 0.7 : 7.0 / 9);
  }

  private static double powTwoThirds(double z) {
    double root = Math.cbrt(z);
    return root * root;
  }

  private static double size(double dw) {
    return dw <= SIZE_BREAK ? Math.pow(dw, 1.8) : LARGE_BALL_FACTOR * Math.pow(dw, 1.4);
  }

  private static double rollers(double z, double dwe) {
    return Math.pow(z, 0.75) * Math.pow(dwe, 29.0 / 27);
  }

  private static void check(double bm, double fc, double z, double dw) {
    Check.positive(bm, "rating factor bm", "", "a factor above zero");
    Check.positive(fc, "factor fc", "", "a factor above zero");
    checkElements(z);
    Check.positive(dw, "diameter of the rolling elements", "mm", "a rolling element has a diameter");
  }

  static double checkElements(double z) {
    if (!(z >= 1 && z < 1e6)) {
      throw Refusal.of("number of rolling elements Z", z, "", "1 or more", "a row has at least one rolling element");
    }
    return z;
  }

  static int checkRows(int rows) {
    if (rows < 1) {
      throw Refusal.of("number of rows i", rows, "", "1 or more", "a bearing has at least one row");
    }
    return rows;
  }

  static double checkLength(double lwe) {
    return Check.positive(lwe, "effective roller length Lwe", "mm", "a roller has a length");
  }

  private static int checkNotEmpty(double[] z) {
    if (z.length == 0) {
      throw Refusal.of("rows", "none", "at least one row", "a bearing has at least one row");
    }
    return z.length;
  }
}
