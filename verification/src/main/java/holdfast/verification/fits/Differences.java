// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.tables.Table;
import holdfast.verification.Cases;
import java.util.HashSet;
import java.util.Set;

/** The cells that the formulas do not reproduce, each with the reason; every listed cell must be asked for. */
final class Differences {
  private final Table listed = Cases.table("fits/formula-differences");
  private final Set<Integer> unused = new HashSet<>();
  private final boolean tolerances;

  Differences(boolean tolerances) {
    this.tolerances = tolerances;
    for (int row = 0; row < listed.size(); row++) {
      if (listed.text(row, "symbol").startsWith("IT") == tolerances) {
        unused.add(row);
      }
    }
  }

  /** Why a cell differs, empty if it is not listed. */
  String reason(String symbol, Table table, int cell) {
    int row =
        listed.find("symbol", symbol, "over_mm", table.text(cell, "over_mm"), "up_to_mm", table.text(cell, "up_to_mm"));
    unused.remove(row);
    return row < 0 ? "" : listed.text(row, "disclosed");
  }

  void requireAllUsed() {
    if (!unused.isEmpty()) {
      int row = unused.iterator().next();
      throw new IllegalStateException(
          "listed difference is of no " + (tolerances ? "tolerance" : "deviation") + ": " + listed.address(row));
    }
  }
}
