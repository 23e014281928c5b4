// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.tables.Table;

/**
 * One row of a case table.
 *
 * @param table the table
 * @param index its row
 */
record Row(Table table, int index) {
  double get(String column) {
    return table.number(index, column);
  }

  double or(String column, double absent) {
    return table.has(index, column) ? table.number(index, column) : absent;
  }

  String text(String column) {
    return table.text(index, column);
  }
}
