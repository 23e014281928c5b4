// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.tables.Table;
import java.util.TreeSet;

/**
 * Size ranges of ISO 286-1 cut so fine that every table and every footnote is constant within each: the sub-ranges of
 * the standard, and a further end at 1 mm, up to which some classes are not used. All ends are whole millimetres.
 */
final class IsoRanges {
  /** Greatest nominal size, mm. */
  static final int MAX = 3150;
  /** Up to this size, mm, some letters and grades are not used. */
  static final int SMALL = 1;

  /** Upper ends, ascending. */
  final int[] upTo;
  /** Range of every size that, rounded up to a whole millimetre, is the index. */
  final byte[] ofWholeMillimetre = new byte[MAX + 1];

  IsoRanges(Iterable<Table> tables) {
    TreeSet<Integer> ends = new TreeSet<>();
    ends.add(SMALL);
    for (Table table : tables) {
      for (int row = 0; row < table.size(); row++) {
        ends.add(whole(table, row, "up_to_mm"));
        ends.add(Math.max(SMALL, whole(table, row, "over_mm")));
      }
    }
    upTo = ends.stream().mapToInt(Integer::intValue).toArray();
    byte range = 0;
    for (int size = 0; size <= MAX; size++) {
      if (size > upTo[range]) {
        range++;
      }
      ofWholeMillimetre[size] = range;
    }
  }

  int count() {
    return upTo.length;
  }

  /** Index of the range that ends at a size. */
  int endingAt(int size) {
    return ofWholeMillimetre[size];
  }

  /** Index of the first range over a size. */
  int startingOver(int size) {
    return ofWholeMillimetre[size + 1];
  }

  int over(int range) {
    return range == 0 ? 0 : upTo[range - 1];
  }

  static int whole(Table table, int row, String column) {
    double value = table.number(row, column);
    if (value != Math.rint(value) || value > MAX) {
      throw new IllegalStateException(table.address(row) + ": range ends must be whole millimetres up to 3150 mm");
    }
    return (int) value;
  }
}
