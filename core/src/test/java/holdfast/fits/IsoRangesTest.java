// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.tables.Table;
import java.util.List;
import org.junit.jupiter.api.Test;

class IsoRangesTest {
  private static final Table TABLE_1 = IsoTables.get().tolerances;

  /** The 21 ranges of Table 1, the first of them cut at 1 mm. */
  @Test
  void rangesOfTable1() {
    IsoRanges ranges = new IsoRanges(List.of(TABLE_1));
    assertArrayEquals(
        new int[] {
          1, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150
        },
        ranges.upTo);
    assertEquals(22, ranges.count());
    for (int range = 0; range < 22; range++) {
      int end = ranges.upTo[range];
      assertEquals(range, ranges.endingAt(end));
      assertEquals(range, ranges.ofWholeMillimetre[end]);
      assertEquals(range, ranges.startingOver(ranges.over(range)));
      assertEquals(range, ranges.ofWholeMillimetre[ranges.over(range) + 1]);
    }
    assertEquals(0, ranges.over(0));
    assertEquals(18, ranges.over(5));
    assertEquals(0, ranges.ofWholeMillimetre[0]);
  }

  @Test
  void rangeEndsAreWholeAndWithinTheTables() {
    int last = TABLE_1.find("up_to_mm", "3150", "grade", "IT18");
    assertEquals(3150, IsoRanges.whole(TABLE_1, last, "up_to_mm"));
    refused(last, 33000);
    refused(TABLE_1.find("up_to_mm", "3", "grade", "IT01"), 0.3);
  }

  private static void refused(int row, double value) {
    assertEquals(value, TABLE_1.number(row, "value"));
    IllegalStateException e = assertThrows(IllegalStateException.class, () -> IsoRanges.whole(TABLE_1, row, "value"));
    assertTrue(e.getMessage().endsWith("range ends must be whole millimetres up to 3150 mm"), e.getMessage());
  }
}
