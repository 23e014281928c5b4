// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Table;

/** A tabulated function of one variable, read once from a table; linear between its points. */
final class Curve {
  private final double[] x;
  private final double[] y;

  Curve(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  static Curve of(Table table, String x, String y) {
    double[] values = table.numbers(y);
    int size = values.length;
    // An optional column may end before the table does.
    while (Double.isNaN(values[size - 1])) {
      size--;
    }
    return new Curve(java.util.Arrays.copyOf(table.numbers(x), size), java.util.Arrays.copyOf(values, size));
  }

  double first() {
    return x[0];
  }

  double last() {
    return x[x.length - 1];
  }

  double lastValue() {
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
