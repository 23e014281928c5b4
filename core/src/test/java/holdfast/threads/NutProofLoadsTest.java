// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

class NutProofLoadsTest {
  @Test
  void aWeakNutLimitsTheTorqueOfAStrongStud() {
    ScrewThread thread = ScrewThread.of("M16");
    assertEquals(95800, NutProofLoads.of(thread, "5").newton());
    Tightening nut = Tightening.of(thread).bearingFace(mm(22.5), mm(17.5)).friction(0.1, 0.16);
    PropertyClass stud = PropertyClass.of("12.9");
    TorqueWindow free = nut.window(JointDemand.ofClamp(kN(1)), stud, Scatter.of(0.04), WindowRules.usual());
    WindowRules rules = WindowRules.usual().nut(thread, "5");
    assertEquals(NutProofLoads.of(thread, "5"), rules.greatestPreload());
    assertEquals(kN(50), WindowRules.usual().greatestPreload(kN(50)).nut(thread, "5").greatestPreload());
    assertEquals(rules, rules.nut(thread, "10"));
    TorqueWindow limited = nut.window(JointDemand.ofClamp(kN(1)), stud, Scatter.of(0.04), rules);
    assertTrue(limited.highest().compareTo(free.highest()) < 0, limited.highest() + " and " + free.highest());
  }

  @Test
  void whatIsNotInTheTableIsRefusedWithTheClassesThatAre() {
    InputException none = assertThrows(InputException.class, () -> NutProofLoads.of(ScrewThread.of("M16"), "9"));
    assertTrue(none.getMessage().contains("5, 6, 8, 10, 12"), none.getMessage());
    assertThrows(InputException.class, () -> NutProofLoads.of(ScrewThread.of("M18x1.5"), "8"));
    assertThrows(InputException.class, () -> NutProofLoads.of(ScrewThread.of("5/8-18"), "8"));
    assertThrows(InputException.class, () -> NutProofLoads.ofHighNut(ScrewThread.of("M8"), "8"));
    assertTrue(NutProofLoads.ofHighNut(ScrewThread.of("M20"), "8").compareTo(NutProofLoads.of(ScrewThread.of("M20"), "8")) < 0);
  }
}
