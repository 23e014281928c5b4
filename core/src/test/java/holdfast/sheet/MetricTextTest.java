// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class MetricTextTest {
  private static final String ARM = "the arm of 25.4 mm is shorter than 50.8 mm: rough";

  @Test
  void aSentenceFollowsTheSheet() {
    assertEquals(ARM, SheetUnits.METRIC.prose(ARM));
    assertEquals("the arm of 1.0000 in is shorter than 2.0000 in: rough", SheetUnits.INCH.prose(ARM));
    assertEquals("the arm of 25.4 mm (1.0000 in) is shorter than 50.8 mm (2.0000 in): rough",
        SheetUnits.METRIC_AND_INCH.prose(ARM));
    assertEquals("the arm of 1.0000 in (25.4 mm) is shorter than 2.0000 in (50.8 mm): rough",
        SheetUnits.INCH_AND_METRIC.prose(ARM));
  }

  @Test
  void everyKindOfQuantityIsRead() {
    assertEquals("1000 lbf, 1000 lbf", SheetUnits.INCH.prose("4.4482216 kN, 4448.2216 N"));
    assertEquals("100 lbf·in, 100 lbf·in", SheetUnits.INCH.prose("11.298483 N·m, 11298.483 N·mm"));
    assertEquals("10 ksi, 29010 ksi", SheetUnits.INCH.prose("68.94757 MPa, 200 GPa"));
    assertEquals("212 °F, -40 °F", SheetUnits.INCH.prose("100 °C, -40 °C"));
    assertEquals("0.0010 in", SheetUnits.INCH.prose("25.4 µm"));
  }

  @Test
  void otherUnitsNamesAndRangesStay() {
    for (String other : new String[] {"150 mm²/s", "20 kN/mm", "11.5 µm/(m·K)", "3 mrad", "M18x1.5 mm2", "180 rpm", "5–10 mm",
        "0.5 in for 12 mm, drive-in"}) {
      assertEquals(other, SheetUnits.INCH_AND_METRIC.prose(other));
    }
  }

  @Test
  void whatIsInBothAlreadyIsLeftAlone() {
    String both = "18 mm (0.70866 in) and 5 kN (1124 lbf)";
    assertEquals(both, SheetUnits.METRIC_AND_INCH.prose(both));
  }
}
