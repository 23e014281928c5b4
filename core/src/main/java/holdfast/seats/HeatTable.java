// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Optional;

/** Expansion on heating and cooling, and heat limits, by group of materials. */
final class HeatTable {
  private static final Table TABLE = TableSet.bundled().table("seats/din-7190-1/2017/expansion-and-heat-limits");

  /** Source of all of its values. */
  static final SourceRef SOURCE = TABLE.descriptor().source();

  private HeatTable() {}

  /** Greatest assembly temperature in °C. */
  static Optional<Double> limit(MaterialGroup group) {
    return value(group, "heat_limit");
  }

  /** Mean contraction on deep cooling in 1/K; smaller than the expansion on heating. */
  static Optional<Double> cooling(MaterialGroup group) {
    return value(group, "cooling").map(v -> v * 1e-6);
  }

  private static Optional<Double> value(MaterialGroup group, String column) {
    int row = TABLE.find("group", group.toString());
    return row >= 0 && TABLE.has(row, column) ? Optional.of(TABLE.number(row, column)) : Optional.empty();
  }
}
