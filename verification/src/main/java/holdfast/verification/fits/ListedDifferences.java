// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.tables.Table;
import holdfast.verification.Cases;
import java.util.HashSet;
import java.util.Set;

/** Rows of inch fits that are known to differ from a rule, each with its reason; every listed one must be asked for. */
final class ListedDifferences {
  private final Table listed;
  private final Set<Integer> unused = new HashSet<>();

  ListedDifferences(String id) {
    listed = Cases.table(id);
    for (int row = 0; row < listed.size(); row++) {
      unused.add(row);
    }
  }

  /** Why a row differs; empty if it is not listed. */
  String reason(String... columnsAndValues) {
    int row = listed.find(columnsAndValues);
    unused.remove(row);
    return row < 0 ? "" : listed.text(row, "disclosed");
  }

  void requireAllUsed() {
    if (!unused.isEmpty()) {
      throw new IllegalStateException("a listed difference is of no row: " + listed.address(unused.iterator().next()));
    }
  }
}
