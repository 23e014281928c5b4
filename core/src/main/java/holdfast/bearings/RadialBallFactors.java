// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.tables.Table;
import holdfast.tables.TableSet;

/**
 * X, Y and e of radial contact groove and angular contact ball bearings: linear in the relative axial load within one
 * contact angle, and linear in the contact angle between two. Beyond the ends of the relative axial load the end
 * holds; callers warn.
 */
final class RadialBallFactors {
  static final int X_SINGLE = 0;
  static final int Y_SINGLE = 1;
  static final int Y_DOUBLE_LOW = 2;
  static final int X_DOUBLE = 3;
  static final int Y_DOUBLE = 4;
  static final int E_SINGLE = 5;
  static final int E_DOUBLE = 6;
  private static final String[] COLUMNS = {"x_single", "y_single", "y_double_low", "x_double", "y_double", "e"};
  private static final double[] ANGLES;
  private static final Curve[][] CURVES;

  static {
    Table table = TableSet.bundled().table("bearings/iso-281/2007/xy-radial-ball");
    ANGLES = java.util.Arrays.stream(table.numbers("alpha")).distinct().toArray();
    CURVES = new Curve[ANGLES.length][];
    for (int a = 0; a < ANGLES.length; a++) {
      CURVES[a] = new Curve[7];
      for (int q = 0; q < 6; q++) {
        CURVES[a][q] = curve(table, ANGLES[a], COLUMNS[q]);
      }
      CURVES[a][E_DOUBLE] = CURVES[a][E_SINGLE];
    }
    // Single-row bearings with 5° take X, Y and e of the deep groove rows (footnote of the table); the printed e of
    // the 5° rows is for the double row.
    CURVES[1][X_SINGLE] = CURVES[0][X_SINGLE];
    CURVES[1][Y_SINGLE] = CURVES[0][Y_SINGLE];
    CURVES[1][E_SINGLE] = CURVES[0][E_SINGLE];
  }

  private RadialBallFactors() {}

  /** Whether the factors at this angle depend on the relative axial load. */
  static boolean dependsOnLoad(double alphaDegrees) {
    return alphaDegrees < 20 - 1e-9;
  }

  /** First and last relative axial load of the table at the greatest tabulated angle not above the given one. */
  static double leastRelativeLoad(double alphaDegrees) {
    return CURVES[Math.min(lower(alphaDegrees), 3)][Y_DOUBLE].first();
  }

  static double greatestRelativeLoad(double alphaDegrees) {
    return CURVES[Math.min(lower(alphaDegrees), 3)][Y_DOUBLE].last();
  }

  static double value(int quantity, double alphaDegrees, double relativeLoad) {
    int low = lower(alphaDegrees);
    double atLow = CURVES[low][quantity].inside(relativeLoad);
    double excess = alphaDegrees - ANGLES[low];
    if (excess < 1e-9 || low == ANGLES.length - 1) {
      return atLow;
    }
    double t = excess / (ANGLES[low + 1] - ANGLES[low]);
    return atLow + t * (CURVES[low + 1][quantity].inside(relativeLoad) - atLow);
  }

  private static int lower(double alphaDegrees) {
    int low = ANGLES.length - 1;
    while (low > 0 && ANGLES[low] > alphaDegrees + 1e-9) {
      low--;
    }
    return low;
  }

  private static Curve curve(Table table, double angle, String column) {
    int count = 0;
    double[] x = new double[table.size()];
    double[] y = new double[table.size()];
    for (int row = 0; row < table.size(); row++) {
      if (table.number(row, "alpha") == angle) {
        x[count] = table.has(row, "f0_fa_over_c0r") ? table.number(row, "f0_fa_over_c0r") : 0;
        y[count++] = table.number(row, column);
      }
    }
    return new Curve(java.util.Arrays.copyOf(x, count), java.util.Arrays.copyOf(y, count));
  }
}
