// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.tables.FromTables;
import holdfast.tables.Table;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/** The coefficients of the stress concentration polynomials, read once: for each notch and loading its t/r ranges. */
final class StudNotchPolynomials {
  private static final int PER_SET = 12;
  /** For each range x from, x to, then C1 … C4 as constant, root, linear. */
  private static final FromTables<Map<StudNotch, Map<StudNotch.Loading, double[]>>> SETS =
      FromTables.of(tables -> read(tables.table("contact/peterson/2/shaft-notch-polynomials")));

  private StudNotchPolynomials() {}

  /** Start of the range of t/r that applies: the range that holds x, or the nearest one. */
  static int range(double[] set, double x) {
    int start = 0;
    while (x > set[start + 1] && start + 2 + PER_SET < set.length) {
      start += 2 + PER_SET;
    }
    return start;
  }

  static boolean covers(double[] set, double x) {
    return x >= set[0] && x <= set[set.length - PER_SET - 1];
  }

  static double[] set(StudNotch notch, StudNotch.Loading loading) {
    return SETS.get().get(notch).get(loading);
  }

  private static Map<StudNotch, Map<StudNotch.Loading, double[]>> read(Table table) {
    Map<StudNotch, Map<StudNotch.Loading, double[]>> sets = new EnumMap<>(StudNotch.class);
    // Rows come set by set, ranges rising, C1 to C4: the order the file keeps.
    for (int row = 0; row < table.size(); row += 4) {
      StudNotch notch = StudNotch.valueOf(table.text(row, "notch").toUpperCase(Locale.ROOT));
      StudNotch.Loading loading = StudNotch.Loading.valueOf(table.text(row, "load").toUpperCase(Locale.ROOT));
      Map<StudNotch.Loading, double[]> ofNotch =
          sets.computeIfAbsent(notch, unused -> new EnumMap<>(StudNotch.Loading.class));
      double[] old = ofNotch.getOrDefault(loading, new double[0]);
      double[] grown = Arrays.copyOf(old, old.length + 2 + PER_SET);
      grown[old.length] = table.number(row, "x_from");
      grown[old.length + 1] = table.number(row, "x_to");
      for (int i = 0; i < 4; i++) {
        if (!table.text(row + i, "coefficient").equals("C" + (i + 1))) {
          throw new IllegalStateException(table.address(row + i) + ": C1 to C4 must follow each other");
        }
        grown[old.length + 2 + 3 * i] = table.number(row + i, "constant");
        grown[old.length + 3 + 3 * i] = table.number(row + i, "root");
        grown[old.length + 4 + 3 * i] = table.number(row + i, "linear");
      }
      ofNotch.put(loading, grown);
    }
    return sets;
  }
}
