// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.tables.FromTables;
import holdfast.tables.Table;

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
  private static final FromTables<RadialBallFactors> FACTORS =
      FromTables.of(tables -> new RadialBallFactors(tables.table("bearings/iso-281/2007/xy-radial-ball")));

  private final double[] angles;
  private final Curve[][] curves;

  private RadialBallFactors(Table table) {
    angles = java.util.Arrays.stream(table.numbers("alpha")).distinct().toArray();
    curves = new Curve[angles.length][];
    for (int a = 0; a < angles.length; a++) {
      curves[a] = new Curve[7];
      for (int q = 0; q < 6; q++) {
        curves[a][q] = curve(table, angles[a], COLUMNS[q]);
      }
      curves[a][E_DOUBLE] = curves[a][E_SINGLE];
    }
    // Single-row bearings with 5° take X, Y and e of the deep groove rows (footnote of the table); the printed e of
    // the 5° rows is for the double row.
    curves[1][X_SINGLE] = curves[0][X_SINGLE];
    curves[1][Y_SINGLE] = curves[0][Y_SINGLE];
    curves[1][E_SINGLE] = curves[0][E_SINGLE];
  }

  static RadialBallFactors get() {
    return FACTORS.get();
  }

  /** Whether the factors at this angle depend on the relative axial load. */
  static boolean dependsOnLoad(double alphaDegrees) {
    return alphaDegrees < 20 - 1e-9;
  }

  /** First and last relative axial load of the table at the greatest tabulated angle not above the given one. */
  double leastRelativeLoad(double alphaDegrees) {
    return curves[Math.min(lower(alphaDegrees), 3)][Y_DOUBLE].first();
  }

  double greatestRelativeLoad(double alphaDegrees) {
    return curves[Math.min(lower(alphaDegrees), 3)][Y_DOUBLE].last();
  }

  double value(int quantity, double alphaDegrees, double relativeLoad) {
    int low = lower(alphaDegrees);
    double atLow = curves[low][quantity].inside(relativeLoad);
    double excess = alphaDegrees - angles[low];
    if (excess < 1e-9 || low == angles.length - 1) {
      return atLow;
    }
    double t = excess / (angles[low + 1] - angles[low]);
    return atLow + t * (curves[low + 1][quantity].inside(relativeLoad) - atLow);
  }

  private int lower(double alphaDegrees) {
    int low = angles.length - 1;
    while (low > 0 && angles[low] > alphaDegrees + 1e-9) {
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
    double[][] points = {java.util.Arrays.copyOf(x, count), java.util.Arrays.copyOf(y, count)};
    return Curve.of(tables -> points);
  }
}
