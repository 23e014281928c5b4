// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Optional;

/** Expansion on heating and cooling, and heat limits, by group of materials. */
final class HeatTable {

  private HeatTable() {}

  /** Source of all of its values. */
  static SourceRef source() {
    return table().descriptor().source();
  }

  /** Greatest assembly temperature in °C. */
  static Optional<Double> limit(MaterialGroup group) {
    return value(group, "heat_limit");
  }

  /** Mean contraction on deep cooling in 1/K; smaller than the expansion on heating. */
  static Optional<Double> cooling(MaterialGroup group) {
    return value(group, "cooling").map(v -> v * 1e-6);
  }

  private static Optional<Double> value(MaterialGroup group, String column) {
    int row = table().find("group", group.toString());
    return row >= 0 && table().has(row, column) ? Optional.of(table().number(row, column)) : Optional.empty();
  }

  private static Table table() {
    return TableSet.bundled().table("seats/din-7190-1/2017/expansion-and-heat-limits");
  }
}
