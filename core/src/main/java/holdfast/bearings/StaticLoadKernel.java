// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;
import java.util.Objects;

/** Static equivalent loads and the static safety factor. Symbols as in {@link EquivalentLoadKernel}. */
public final class StaticLoadKernel {
  private static final String BALL = "bearings/iso-76/2006/x0-y0";
  private static final Curve X0_SINGLE = Curve.of(BALL, "alpha", "x0_single");
  private static final Curve Y0_SINGLE = Curve.of(BALL, "alpha", "y0_single");
  private static final Curve X0_DOUBLE = Curve.of(BALL, "alpha", "x0_double");
  private static final Curve Y0_DOUBLE = Curve.of(BALL, "alpha", "y0_double");
  private static final double FIRST_ANGULAR = 5;

  private StaticLoadKernel() {}

  /**
   * Factor X0 of radial bearings.
   *
   * @param type a radial type
   * @param rows rows i
   * @param alpha contact angle, 0 to 45°
   * @return X0
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 76:2006", locator = "Tables 2 and 3")
  public static double x0(BearingType type, int rows, double alpha) {
    Objects.requireNonNull(type, "type");
    checkRadial(type);
    DynamicRatingKernel.checkRows(rows);
    double degrees = Math.toDegrees(ContactAngle.radial(alpha));
    if (type.family() == BearingFamily.RADIAL_ROLLER) {
      return alpha > 0 && rows == 1 ? 0.5 : 1;
    }
    if (type == BearingType.SELF_ALIGNING_BALL) {
      return rows == 1 ? 0.5 : 1;
    }
    return groove(rows == 1 ? X0_SINGLE : X0_DOUBLE, degrees);
  }

  /**
   * Factor Y0 of radial bearings; linear between the tabulated contact angles of ball bearings.
   *
   * @param type a radial type
   * @param rows rows i
   * @param alpha contact angle, 0 to 45°
   * @return Y0; 0 for roller bearings at 0°
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 76:2006", locator = "Tables 2 and 3")
  public static double y0(BearingType type, int rows, double alpha) {
    Objects.requireNonNull(type, "type");
    checkRadial(type);
    DynamicRatingKernel.checkRows(rows);
    double degrees = Math.toDegrees(ContactAngle.radial(alpha));
    if (type.family() == BearingFamily.RADIAL_ROLLER && alpha == 0) {
      return 0;
    }
    if (type.family() == BearingFamily.RADIAL_ROLLER || type == BearingType.SELF_ALIGNING_BALL) {
      return (rows == 1 ? 0.22 : 0.44) / Math.tan(ContactAngle.radialWithAngle(alpha));
    }
    return groove(rows == 1 ? Y0_SINGLE : Y0_DOUBLE, degrees);
  }

  /**
   * Static equivalent load: radial {@code P0r = max(X0 Fr + Y0 Fa, Fr)}; thrust {@code P0a = 2.3 Fr tan α + Fa}, at 90°
   * {@code P0a = Fa}. For single-direction thrust bearings it holds up to Fr/Fa = 0.44 cot α, is less conservative up to
   * 0.67 cot α, and beyond that the standard gives none: the number is then outside it and {@link StaticLoad} warns.
   *
   * @param type type of the bearing
   * @param rows rows i (thrust: 1 single-direction, 2 double-direction)
   * @param alpha contact angle in rad
   * @param fr radial load in N, 0 or more
   * @param fa axial load in N, 0 or more
   * @return P0 in N
   * @throws holdfast.quantity.InputException if an argument is outside its range or the bearing cannot carry the load
   */
  @Source(document = "ISO 76:2006", locator = "5.1.2, 5.2.2, 6.1.2, 6.2.2")
  public static double load(BearingType type, int rows, double alpha, double fr, double fa) {
    Objects.requireNonNull(type, "type");
    EquivalentLoadKernel.checkLoads(fr, fa);
    if (type.family().thrust()) {
      return ContactAngle.is90(ContactAngle.thrust(alpha))
          ? EquivalentLoadKernel.axialOnly(fr, fa)
          : 2.3 * fr * Math.tan(alpha) + fa;
    }
    if (type.family() == BearingFamily.RADIAL_ROLLER && alpha == 0) {
      return EquivalentLoadKernel.radialOnly(fr, fa);
    }
    return Math.max(x0(type, rows, alpha) * fr + y0(type, rows, alpha) * fa, fr);
  }

  /**
   * Static safety factor {@code S0 = C0/P0}.
   *
   * @param c0 basic static load rating in N, over 0
   * @param p0 static equivalent load in N, over 0
   * @return S0
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 76:2006", locator = "7, static safety factor")
  public static double safety(double c0, double p0) {
    Check.positive(c0, "basic static load rating C0", "N", "a rating is a force above zero");
    Check.positive(p0, "static equivalent load P0", "N", "a load above zero is needed");
    return c0 / p0;
  }

  /**
   * Least static safety factor.
   *
   * @param type type of the bearing
   * @param running how the bearing has to run
   * @return S0 at least
   */
  @Source(document = "ISO 76:2006", locator = "Tables 4 and 5, guiding values")
  public static double leastSafety(BearingType type, Running running) {
    Objects.requireNonNull(type, "type");
    Objects.requireNonNull(running, "running");
    if (type == BearingType.SPHERICAL_THRUST_ROLLER) {
      return 4;
    }
    if (type == BearingType.DRAWN_CUP_NEEDLE_ROLLER) {
      return 3;
    }
    return running.leastSafety(type.family().ball());
  }

  /**
   * Greatest load on one rolling element of a radial bearing, {@code Qmax = 5 Fr/(Z cos α)}, on which the static ratings
   * rest.
   *
   * @param fr radial load in N, 0 or more
   * @param z rolling elements of the row (a count)
   * @param alpha contact angle, 0 to 45°
   * @return Qmax in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 76:2006", locator = "Table 1, note on the load distribution behind the values")
  public static double greatestElementLoad(double fr, double z, double alpha) {
    Check.notNegative(fr, "radial load Fr", "N", "its size, without direction");
    return 5 * fr / (DynamicRatingKernel.checkElements(z) * Math.cos(ContactAngle.radial(alpha)));
  }

  /** Deep groove bearings have their own row at 0°, which the angular contact rows do not continue: below 5° the row at 5°. */
  private static double groove(Curve curve, double degrees) {
    return curve.inside(degrees == 0 ? 0 : Math.max(degrees, FIRST_ANGULAR));
  }

  private static void checkRadial(BearingType type) {
    if (type.family().thrust()) {
      throw Refusal.of("type of bearing", type, "a radial bearing", "thrust bearings have P0a = 2.3 Fr tan α + Fa");
    }
  }
}
