// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Two tolerances that say the same in other words compare the same bores, and each bore once. */
class SameBoresTest {
  @Test
  void aDrawnToleranceWithTheLimitsOfAClassComparesTheBoresOfTheClass() {
    // ISO 286-2: h7 at 18 mm is 0/-18 µm, h6 is 0/-11 µm.
    assertEquals(SeatOptions.usual("h7"), SeatOptions.usualFor(mm(18), "0/-0.018 mm"));
    assertEquals(SeatOptions.usual("h6"), SeatOptions.usualFor(mm(18), "0/-0.011 mm"));
    assertEquals(List.of(), SeatOptions.usualFor(mm(18), "0/-0.012 mm"));
  }

  @Test
  void aBoreIsComparedOnceHoweverItIsWritten() {
    // ISO 286-2: H7 at 18 mm is +18/0 µm.
    assertEquals(List.of("+0.018/0 mm", "K7"), SeatOptions.distinct(mm(18), List.of("+0.018/0 mm", "H7", "K7", "H7")));
    assertEquals(List.of("+0.0010/0 in"), SeatOptions.distinct(inch("0.625"), List.of("+0.0010/0 in", "+0.001/0 in")));
    assertEquals(List.of("QQ7", "H7"), SeatOptions.distinct(mm(18), List.of("QQ7", "QQ7", "H7")), "what cannot be read stays as it is");
  }

  @Test
  void theSheetComparesThemOnce() {
    InstallationPlan written = InstallationPlan.example().withBore("+0.018/0 mm");
    String text = written.sheet().text();
    assertEquals(1, text.split("With bore \\+0\\.018/0 mm", -1).length - 1, text);
    assertEquals(0, text.split("With bore H7", -1).length - 1, text);
  }
}
