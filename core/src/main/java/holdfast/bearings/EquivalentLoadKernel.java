// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Dynamic equivalent loads {@code P = X Fr + Y Fa}. Symbols: Fr radial load, Fa axial load (N), α contact angle (rad),
 * e limit of Fa/Fr between the two branches, i rows. A pair of single-row bearings face to face or back to back counts
 * as one double-row bearing.
 */
public final class EquivalentLoadKernel {
  private EquivalentLoadKernel() {}

  /**
   * Combination with given factors.
   *
   * @param x X (dimensionless), 0 or more
   * @param y Y (dimensionless), 0 or more
   * @param fr radial load in N, 0 or more
   * @param fa axial load in N, 0 or more
   * @return P in N
   * @throws holdfast.quantity.InputException if an argument is negative or both loads are 0
   */
  @Source(document = "ISO 281:2007", locator = "5.2, 6.2, 7.2, 8.2")
  public static double combined(double x, double y, double fr, double fa) {
    Check.notNegative(x, "factor X", "", "a factor of the standard");
    Check.notNegative(y, "factor Y", "", "a factor of the standard");
    checkLoads(fr, fa);
    return x * fr + y * fa;
  }

  /**
   * Relative axial load by which the factors of ball bearings up to 15° are found: {@code f0 Fa/C0r} for radial contact
   * groove ball bearings, which stands for Fa/(i Z Dw²), and {@code i f0 Fa/C0r} for angular contact ball bearings, which
   * stands for Fa/(Z Dw²): one row carries the whole axial load. Bearings in tandem take i = 1 with the rating of all.
   *
   * @param type a type whose factors depend on the relative axial load
   * @param rows rows i that C0r is for; a pair face to face or back to back has 2, a tandem 1
   * @param f0 factor f0 of the bearing, over 0
   * @param fa axial load in N, 0 or more
   * @param c0r basic static load rating of all rows in N, over 0
   * @return the relative axial load
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "Table 3, relative axial load")
  public static double relativeAxialLoad(BearingType type, int rows, double f0, double fa, double c0r) {
    Objects.requireNonNull(type, "type");
    if (!loadDependent(type)) {
      throw Refusal.of("type of bearing", type, "a groove ball bearing", "the factors of others do not depend on the axial load");
    }
    DynamicRatingKernel.checkRows(rows);
    Check.positive(f0, "factor f0", "", "a factor above zero");
    Check.notNegative(fa, "axial load Fa", "N", "its size, without direction");
    Check.positive(c0r, "basic static load rating C0r", "N", "a rating is a force above zero");
    return rowsThatCount(type, rows) * f0 * fa / c0r;
  }

  /** The i that multiplies the relative axial load. */
  static int rowsThatCount(BearingType type, int rows) {
    return type == BearingType.ANGULAR_CONTACT_BALL ? rows : 1;
  }

  /**
   * Limit e of radial contact groove (α = 0) and angular contact ball bearings.
   *
   * @param rows rows i; 1, or 2 and more for double-row bearings
   * @param alpha contact angle, 0 to 45°
   * @param relativeLoad relative axial load (dimensionless), 0 or more; beyond the table its end holds
   * @return e
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "Table 3")
  public static double radialBallE(int rows, double alpha, double relativeLoad) {
    return ballFactor(rows, RadialBallFactors.E_SINGLE, RadialBallFactors.E_DOUBLE, alpha, relativeLoad);
  }

  /**
   * Factor X of these ball bearings above e; it is 1 up to e.
   *
   * @param rows rows i
   * @param alpha contact angle, 0 to 45°
   * @param relativeLoad relative axial load (dimensionless), 0 or more
   * @return X
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "Table 3")
  public static double radialBallX(int rows, double alpha, double relativeLoad) {
    return ballFactor(rows, RadialBallFactors.X_SINGLE, RadialBallFactors.X_DOUBLE, alpha, relativeLoad);
  }

  /**
   * Factor Y of these ball bearings above e.
   *
   * @param rows rows i
   * @param alpha contact angle, 0 to 45°
   * @param relativeLoad relative axial load (dimensionless), 0 or more
   * @return Y
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "Table 3")
  public static double radialBallY(int rows, double alpha, double relativeLoad) {
    return ballFactor(rows, RadialBallFactors.Y_SINGLE, RadialBallFactors.Y_DOUBLE, alpha, relativeLoad);
  }

  /**
   * Factor Y of these ball bearings up to e: 0 for one row.
   *
   * @param rows rows i
   * @param alpha contact angle, 0 to 45°
   * @param relativeLoad relative axial load (dimensionless), 0 or more
   * @return Y
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "Table 3")
  public static double radialBallYLow(int rows, double alpha, double relativeLoad) {
    return rows == 1 ? 0 : ballFactor(rows, 0, RadialBallFactors.Y_DOUBLE_LOW, alpha, relativeLoad);
  }

  /**
   * Limit e of all other bearings with a contact angle.
   *
   * @param type type of the bearing
   * @param alpha contact angle, not 90°
   * @return e: 1.5 tan α (self-aligning ball, roller), 1.25 tan α (thrust ball), 0.2 (magneto)
   * @throws holdfast.quantity.InputException if the angle does not suit the type, or the factors of the type depend on load
   */
  @Source(document = "ISO 281:2007", locator = "Tables 3, 5, 8 and 11")
  public static double angleE(BearingType type, double alpha) {
    Objects.requireNonNull(type, "type");
    if (type == BearingType.MAGNETO_BALL) {
      return 0.2;
    }
    checkAngle(type, alpha);
    return (type.family() == BearingFamily.THRUST_BALL ? 1.25 : 1.5) * Math.tan(alpha);
  }

  /**
   * Factor X of these bearings.
   *
   * @param type type of the bearing
   * @param rows rows i (thrust: 2 for double-direction)
   * @param alpha contact angle, not 90°
   * @param aboveE whether Fa/Fr is greater than e
   * @return X
   * @throws holdfast.quantity.InputException if the angle does not suit the type or the branch does not exist
   */
  @Source(document = "ISO 281:2007", locator = "Tables 3, 5, 8 and 11")
  public static double angleX(BearingType type, int rows, double alpha, boolean aboveE) {
    Objects.requireNonNull(type, "type");
    checkBranch(type, rows, alpha, aboveE);
    double tan = Math.tan(alpha);
    double sin = Math.sin(alpha);
    return switch (type) {
      case MAGNETO_BALL -> aboveE ? 0.5 : 1;
      case SELF_ALIGNING_BALL -> aboveE ? rows == 1 ? 0.4 : 0.65 : 1;
      case THRUST_BALL -> aboveE ? 1.25 * tan * (1 - 2.0 / 3 * sin) : 20.0 / 13 * tan * (1 - sin / 3);
      default -> type.family().thrust() ? aboveE ? tan : 1.5 * tan : aboveE ? rows == 1 ? 0.4 : 0.67 : 1;
    };
  }

  /**
   * Factor Y of these bearings.
   *
   * @param type type of the bearing
   * @param rows rows i (thrust: 2 for double-direction)
   * @param alpha contact angle, not 90°
   * @param aboveE whether Fa/Fr is greater than e
   * @return Y
   * @throws holdfast.quantity.InputException if the angle does not suit the type or the branch does not exist
   */
  @Source(document = "ISO 281:2007", locator = "Tables 3, 5, 8 and 11")
  public static double angleY(BearingType type, int rows, double alpha, boolean aboveE) {
    Objects.requireNonNull(type, "type");
    checkBranch(type, rows, alpha, aboveE);
    double cot = type == BearingType.MAGNETO_BALL ? 0 : 1 / Math.tan(alpha);
    return switch (type) {
      case MAGNETO_BALL -> aboveE ? 2.5 : 0;
      case SELF_ALIGNING_BALL -> aboveE ? (rows == 1 ? 0.4 : 0.65) * cot : rows == 1 ? 0 : 0.42 * cot;
      case THRUST_BALL -> aboveE ? 1 : 10.0 / 13 * (1 - Math.sin(alpha) / 3);
      default -> type.family().thrust()
          ? aboveE ? 1 : 0.67
          : aboveE ? (rows == 1 ? 0.4 : 0.67) * cot : rows == 1 ? 0 : 0.45 * cot;
    };
  }

  /**
   * Dynamic equivalent load of any type.
   *
   * @param type type of the bearing
   * @param rows rows i (thrust: 1 single-direction, 2 double-direction)
   * @param alpha contact angle in rad
   * @param relativeLoad {@link #relativeAxialLoad}, for radial contact groove and angular contact ball bearings below 20°; else
   *     ignored
   * @param fr radial load in N, 0 or more
   * @param fa axial load in N, 0 or more
   * @return P in N
   * @throws holdfast.quantity.InputException if an argument is outside its range or the bearing cannot carry the load
   */
  @Source(document = "ISO 281:2007", locator = "5.2, 6.2, 7.2, 8.2")
  public static double load(BearingType type, int rows, double alpha, double relativeLoad, double fr, double fa) {
    Objects.requireNonNull(type, "type");
    checkLoads(fr, fa);
    DynamicRatingKernel.checkRows(rows);
    if (loadDependent(type)) {
      return fa > radialBallE(rows, alpha, relativeLoad) * fr
          ? radialBallX(rows, alpha, relativeLoad) * fr + radialBallY(rows, alpha, relativeLoad) * fa
          : fr + radialBallYLow(rows, alpha, relativeLoad) * fa;
    }
    if (type.family().thrust() && ContactAngle.is90(alpha)) {
      return axialOnly(fr, fa);
    }
    if (type.family() == BearingFamily.RADIAL_ROLLER && alpha == 0) {
      return radialOnly(fr, fa);
    }
    boolean above = fa > angleE(type, alpha) * fr;
    return angleX(type, rows, alpha, above) * fr + angleY(type, rows, alpha, above) * fa;
  }

  /** Whether X, Y and e are found by the relative axial load and the table. */
  static boolean loadDependent(BearingType type) {
    return switch (type) {
      case DEEP_GROOVE_BALL, FILLING_SLOT_BALL, INSERT_BALL, ANGULAR_CONTACT_BALL -> true;
      default -> false;
    };
  }

  static double axialOnly(double fr, double fa) {
    if (fr > 0) {
      throw Refusal.of("radial load Fr", fr, "N", "0 N", "thrust bearings with a contact angle of 90° carry axial load only");
    }
    return fa;
  }

  static double radialOnly(double fr, double fa) {
    if (fa > 0) {
      throw Refusal.of("axial load Fa", fa, "N", "0 N",
          "for radial roller bearings with a contact angle of 0° the standard gives no equivalent load with axial load");
    }
    return fr;
  }

  static void checkLoads(double fr, double fa) {
    Check.notNegative(fr, "radial load Fr", "N", "its size, without direction");
    Check.notNegative(fa, "axial load Fa", "N", "its size, without direction");
    Check.positive(fr + fa, "load", "N", "without load no rating life exists");
  }

  private static double ballFactor(int rows, int single, int twin, double alpha, double relativeLoad) {
    DynamicRatingKernel.checkRows(rows);
    Check.notNegative(relativeLoad, "relative axial load", "", "no factor of it is negative");
    return RadialBallFactors.get().value(rows == 1 ? single : twin, Math.toDegrees(ContactAngle.radial(alpha)), relativeLoad);
  }

  private static void checkAngle(BearingType type, double alpha) {
    if (loadDependent(type)) {
      throw Refusal.of("type of bearing", type, "a type whose factors follow from the contact angle alone",
          "ISO 281:2007, Table 3 gives them by the relative axial load");
    }
    if (!type.family().thrust()) {
      ContactAngle.radialWithAngle(alpha);
    } else if (ContactAngle.is90(ContactAngle.thrust(alpha))) {
      throw Refusal.of("contact angle α", 90, "°", "over 45 ° and below 90 °", "at 90° the load is Fa itself");
    }
  }

  private static void checkBranch(BearingType type, int rows, double alpha, boolean aboveE) {
    DynamicRatingKernel.checkRows(rows);
    if (type != BearingType.MAGNETO_BALL) {
      checkAngle(type, alpha);
    } else if (rows != 1) {
      throw Refusal.of("number of rows i", rows, "", "1", "magneto bearings have one row");
    }
    if (type.family().thrust() && rows == 1 && !aboveE) {
      throw Refusal.of("ratio Fa/Fr", "up to e", "greater than e",
          "single-direction thrust bearings are unsuitable up to e (ISO 281:2007, Tables 5 and 11)");
    }
  }
}
