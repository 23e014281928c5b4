// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

class ClearanceGroupTest {
  @Test
  void groupsGrowFromTightToLoose() {
    assertEquals(um(20), ClearanceGroup.CN.least(mm(24)));
    assertEquals(um(45), ClearanceGroup.CN.greatest(mm(24)));
    ClearanceGroup[] groups = ClearanceGroup.values();
    for (double bore : new double[] {10, 24, 24.1, 50, 100, 250}) {
      for (int i = 0; i < groups.length; i++) {
        assertTrue(groups[i].least(mm(bore)).compareTo(groups[i].greatest(mm(bore))) < 0);
        if (i > 0) {
          assertTrue(groups[i - 1].greatest(mm(bore)).compareTo(groups[i].greatest(mm(bore))) < 0, groups[i] + " at " + bore);
        }
      }
    }
    assertEquals(um(-3), ClearanceGroup.C2.leastAfterFitting(mm(20), um(3)));
    assertThrows(InputException.class, () -> ClearanceGroup.C2.leastAfterFitting(mm(20), um(-3)));
    assertThrows(InputException.class, () -> ClearanceGroup.CN.least(mm(0)));
    assertThrows(InputException.class, () -> ClearanceGroup.CN.least(mm(5000)));
  }
}
