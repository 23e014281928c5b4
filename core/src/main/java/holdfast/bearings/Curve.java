// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.FromTables;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Arrays;
import java.util.function.Function;

/** A tabulated function of one variable, read once from a table; linear between its points. */
final class Curve {
  /** Arguments, rising, and values. */
  private final FromTables<double[][]> points;

  private Curve(FromTables<double[][]> points) {
    this.points = points;
  }

  /** A curve whose arguments and values are read otherwise. */
  static Curve of(Function<TableSet, double[][]> reading) {
    return new Curve(FromTables.of(reading));
  }

  /** Two columns of a table. */
  static Curve of(String id, String x, String y) {
    return of(
        tables -> {
          Table table = tables.table(id);
          double[] values = table.numbers(y);
          int size = values.length;
          // An optional column may end before the table does.
          while (Double.isNaN(values[size - 1])) {
            size--;
          }
          return new double[][] {Arrays.copyOf(table.numbers(x), size), Arrays.copyOf(values, size)};
        });
  }

  private double[] x() {
    return points.get()[0];
  }

  double first() {
    return x()[0];
  }

  double last() {
    return x()[x().length - 1];
  }

  double lastValue() {
    double[] y = points.get()[1];
    return y[y.length - 1];
  }

  /** Linear interpolation; refuses what lies outside the table. */
  double at(double value, String parameter, String reason) {
    // The slack lets an end of the table that was computed in binary arithmetic pass.
    double slack = 1e-9 * last();
    if (!(value >= first() - slack && value <= last() + slack)) {
      Check.within(value, first(), last(), parameter, "", reason);
    }
    return inside(value);
  }

  /** Linear interpolation for a value already known to lie within the table; the ends hold beyond it. */
  double inside(double value) {
    double[] x = x();
    double[] y = points.get()[1];
    if (value <= x[0] || x.length == 1) {
      return y[0];
    }
    int high = 1;
    while (high < x.length - 1 && x[high] < value) {
      high++;
    }
    if (value >= x[high]) {
      return y[high];
    }
    double t = (value - x[high - 1]) / (x[high] - x[high - 1]);
    return y[high - 1] + t * (y[high] - y[high - 1]);
  }
}
