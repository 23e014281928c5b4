// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.tables.Source;
import holdfast.tables.Table;
import java.util.Arrays;
import java.util.Objects;

/**
 * Factor fc of the basic dynamic load ratings, by linear interpolation in the tables. The argument is
 * {@code Dw cos α / Dpw}, or {@code Dw / Dpw} at α = 90°.
 */
public final class FactorFcKernel {
  private static final String RATIO = "ratio Dw cos α / Dpw";
  private static final Curve SINGLE_ROW = radialBall("single_row");
  private static final Curve DOUBLE_ROW = radialBall("double_row");
  private static final Curve SELF_ALIGNING = radialBall("self_aligning");
  private static final Curve MAGNETO = radialBall("magneto");
  private static final Curve RADIAL_ROLLER =
      Curve.of("bearings/iso-281/2007/fc-radial-roller", "ratio", "fc");
  private static final Curve BALL_45 = thrust("ball", "45");
  private static final Curve BALL_60 = thrust("ball", "60");
  private static final Curve BALL_75 = thrust("ball", "75");
  private static final Curve BALL_90 = thrust("ball", "90");
  private static final Curve ROLLER_50 = thrust("roller", "50");
  private static final Curve ROLLER_65 = thrust("roller", "65");
  private static final Curve ROLLER_80 = thrust("roller", "80");
  private static final Curve ROLLER_90 = thrust("roller", "90");
  private static final double DEG_60 = Math.toRadians(60);
  private static final double DEG_75 = Math.toRadians(75);

  private FactorFcKernel() {}

  /**
   * Factor of radial ball bearings.
   *
   * @param type a radial ball type
   * @param rows rows of balls, 1 or more; magneto bearings have 1
   * @param ratio Dw cos α / Dpw (dimensionless), from 0.01 to 0.40
   * @return fc
   * @throws holdfast.quantity.InputException if the ratio is outside the table or the type is not a radial ball type
   */
  @Source(document = "ISO 281:2007", locator = "Table 2")
  public static double radialBall(BearingType type, int rows, double ratio) {
    Objects.requireNonNull(type, "type");
    String place = "ISO 281:2007, Table 2";
    switch (type) {
      case DEEP_GROOVE_BALL, FILLING_SLOT_BALL, INSERT_BALL -> {
        return (rows == 1 ? SINGLE_ROW : DOUBLE_ROW).at(ratio, RATIO, place);
      }
      case ANGULAR_CONTACT_BALL -> {
        return SINGLE_ROW.at(ratio, RATIO, place);
      }
      case SELF_ALIGNING_BALL -> {
        return SELF_ALIGNING.at(ratio, RATIO, place);
      }
      case MAGNETO_BALL -> {
        return MAGNETO.at(ratio, RATIO, place);
      }
      default -> throw Refusal.of("type of bearing", type, "a radial ball bearing", "Table 2 is for radial ball bearings");
    }
  }

  /**
   * Greatest factor of radial roller bearings.
   *
   * @param ratio Dwe cos α / Dpw (dimensionless), from 0.01 to 0.30
   * @return fc; lower values hold where the stress along the roller is uneven or Lwe &gt; 2.5 Dwe
   * @throws holdfast.quantity.InputException if the ratio is outside the table
   */
  @Source(document = "ISO 281:2007", locator = "Table 7")
  public static double radialRoller(double ratio) {
    return RADIAL_ROLLER.at(ratio, RATIO, "ISO 281:2007, Table 7");
  }

  /**
   * Factor of thrust ball bearings. Between the columns for 45°, 60° and 75° linear in the angle; above 75° the column
   * for 75°. Where a column ends before its neighbour, it goes on in constant proportion to the neighbour, as the closed
   * form does.
   *
   * @param alpha contact angle in rad, over 45° up to 90°
   * @param ratio Dw cos α / Dpw, or Dw / Dpw at 90°
   * @return fc
   * @throws holdfast.quantity.InputException if angle or ratio is outside the table
   */
  @Source(document = "ISO 281:2007", locator = "Table 4")
  @Source(document = "derivation", locator = "columns go on in proportion, because (1 - sin α / 3) is their only difference",
      provenance = holdfast.tables.Provenance.DERIVED)
  public static double thrustBall(double alpha, double ratio) {
    String place = "ISO 281:2007, Table 4";
    ContactAngle.thrust(alpha);
    if (ContactAngle.is90(alpha)) {
      return BALL_90.at(ratio, "ratio Dw / Dpw", place);
    }
    double at45 = BALL_45.at(ratio, RATIO, place);
    double at60 = continued(BALL_60, BALL_45, ratio, at45);
    if (alpha <= DEG_60) {
      double t = (alpha - Math.PI / 4) / (DEG_60 - Math.PI / 4);
      return at45 + t * (at60 - at45);
    }
    double at75 = continued(BALL_75, BALL_60, ratio, at60);
    double t = Math.min(1, (alpha - DEG_60) / (DEG_75 - DEG_60));
    return at60 + t * (at75 - at60);
  }

  /**
   * Factor of thrust roller bearings: one column each for 45° to 60°, 60° to 75° and 75° to 90°.
   *
   * @param alpha contact angle in rad, over 45° up to 90°
   * @param ratio Dwe cos α / Dpw, or Dwe / Dpw at 90°
   * @return fc
   * @throws holdfast.quantity.InputException if angle or ratio is outside the table
   */
  @Source(document = "ISO 281:2007", locator = "Table 10")
  public static double thrustRoller(double alpha, double ratio) {
    ContactAngle.thrust(alpha);
    boolean right = ContactAngle.is90(alpha);
    Curve column = right ? ROLLER_90 : alpha < DEG_60 - 1e-9 ? ROLLER_50 : alpha < DEG_75 - 1e-9 ? ROLLER_65 : ROLLER_80;
    return column.at(ratio, right ? "ratio Dw / Dpw" : RATIO, "ISO 281:2007, Table 10");
  }

  /** Whether a thrust ball factor was taken beyond the end of the printed column for its angle. */
  static boolean beyondPrintedColumn(double alpha, double ratio) {
    if (ContactAngle.is90(alpha)) {
      return false;
    }
    return alpha > DEG_75 + 1e-9 || ratio > (alpha > DEG_60 + 1e-9 ? BALL_75 : BALL_60).last();
  }

  private static double continued(Curve column, Curve neighbour, double ratio, double neighbourValue) {
    return ratio <= column.last()
        ? column.inside(ratio)
        : neighbourValue * column.lastValue() / neighbour.inside(column.last());
  }

  private static Curve radialBall(String column) {
    return Curve.of("bearings/iso-281/2007/fc-radial-ball", "ratio", column);
  }

  private static Curve thrust(String kind, String alpha) {
    return Curve.of(
        tables -> {
          Table table = tables.table("bearings/iso-281/2007/fc-thrust-" + kind);
          int count = 0;
          double[] x = new double[table.size()];
          double[] y = new double[table.size()];
          for (int row = 0; row < table.size(); row++) {
            if (table.text(row, "alpha").equals(alpha)) {
              x[count] = table.number(row, "ratio");
              y[count++] = table.number(row, "fc");
            }
          }
          return new double[][] {Arrays.copyOf(x, count), Arrays.copyOf(y, count)};
        });
  }
}
