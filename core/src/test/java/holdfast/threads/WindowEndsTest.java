// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Torque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Windows that hold no torque say so, and windows that hold one name one that tightens. */
class WindowEndsTest {
  private static final Tightening STUD =
      Tightening.of(ScrewThread.of("M18x1.5")).bearingFace(mm(24.8), mm(19)).friction(0.10, 0.16);
  private static final PropertyClass STEEL = PropertyClass.of("8.8");
  private static final WindowRules USUAL = WindowRules.usual();

  private static TorqueWindow window(Tightening nut, JointDemand demand, WindowRules rules) {
    return nut.window(demand, STEEL, Scatter.of(0.04), rules);
  }

  private static void empty(TorqueWindow window, String change) {
    assertFalse(window.isOpen(), window.toString());
    assertEquals(Optional.empty(), window.target());
    assertEquals(Optional.empty(), window.wrenchSetting());
    assertTrue(window.warnings().stream().anyMatch(w -> w.code().equals("window-empty")));
    List<WindowChange> changes = window.changes();
    assertTrue(changes.stream().anyMatch(c -> c.code().equals(change) && c.opens()), changes.toString());
    assertFalse(changes.stream().anyMatch(c -> c.code().equals("less-demand") && c.opens()), changes.toString());
  }

  /** 300 kN on 216 mm² are 1390 MPa without any preload. */
  @Test
  void aLoadThatAlonePassesYieldLeavesNoTorque() {
    empty(window(STUD, JointDemand.ofClamp(kN(0)).axialLoad(kN(300), 1), USUAL), "less-added-load");
  }

  @Test
  void heatThatAlonePassesYieldLeavesNoTorque() {
    empty(window(STUD, JointDemand.ofClamp(kN(0)).changes(kN(0), kN(300)), USUAL), "less-added-load");
  }

  @Test
  void heatThatTheFaceDoesNotBearLeavesNoTorque() {
    empty(window(STUD, JointDemand.ofClamp(kN(0)).changes(kN(0), kN(30)), USUAL.facePressure(MPa(100))), "less-added-load");
  }

  /** Parts that bear 20 kN are passed by 30 kN from heat; and heat counts where they are not. */
  @Test
  void heatCountsAgainstWhatThePartsBear() {
    empty(window(STUD, JointDemand.ofClamp(kN(0)).changes(kN(0), kN(30)), USUAL.greatestPreload(kN(20))), "less-added-load");
    TorqueWindow warm = window(STUD, JointDemand.ofClamp(kN(0)).changes(kN(0), kN(5)), USUAL.greatestPreload(kN(20)));
    assertEquals(15_000, warm.preload(warm.highest()).worstCaseGreatest().newton(), 1e-6);
  }

  /** 2 kN·m twist a thread of 18 mm beyond yield before it pulls. */
  @Test
  void aPrevailingTorqueBeyondTheThreadLeavesNoTorque() {
    empty(window(STUD.prevailing(Nm(2000)), JointDemand.ofClamp(kN(0)), USUAL), "free-running-nut");
  }

  @Test
  void aMakersMaximumBelowThePrevailingTorqueIsAnEmptyWindowWithChanges() {
    TorqueWindow w = window(STUD.prevailing(Nm(30)), JointDemand.ofClamp(kN(5)), USUAL.makersMaximum(Nm(20)));
    empty(w, "ask-the-maker");
    empty(window(STUD.prevailing(Nm(30)), JointDemand.ofClamp(kN(0)), USUAL.makersMaximum(Nm(30.5))), "ask-the-maker");
  }

  @Test
  void aJointThatAsksForNothingIsStillTightened() {
    TorqueWindow w = window(STUD, JointDemand.ofClamp(kN(0)), USUAL);
    assertTrue(w.isOpen());
    assertEquals(0.5, w.target().orElseThrow().ratio(w.highest()), 1e-12);
    assertTrue(w.wrenchSetting().orElseThrow().newtonMillimetre() > 0.45 * w.highest().newtonMillimetre());
    TorqueWindow locked = window(STUD.prevailing(Nm(30)), JointDemand.ofClamp(kN(0)), USUAL);
    assertTrue(locked.target().orElseThrow().compareTo(Nm(30)) > 0);
  }

  @Test
  void inchWrenchesStepInInchUnits() {
    Tightening inch = Tightening.of(ScrewThread.of("5/8-18 UNF")).bearingFace(inch("0.876"), inch("0.656")).friction(0.12, 0.16);
    TorqueWindow w = inch.window(JointDemand.ofClamp(lbf(1500)), PropertyClass.of("8.8"), Scatter.of(0.04), USUAL.makersMaximum(inLbf(440)));
    double setting = w.wrenchSetting().orElseThrow().in(KnownUnits.LBF_IN);
    assertEquals(Math.rint(setting), setting, 1e-9);
    assertEquals(0, Math.IEEEremainder(setting, 5), 1e-9, "a step of the scale, not " + setting);
    TorqueWindow big = inch.window(JointDemand.ofClamp(lbf(6000)), PropertyClass.of("8.8"), Scatter.of(0.04), USUAL);
    double feet = big.wrenchSetting().orElseThrow().in(KnownUnits.LBF_FT);
    assertTrue(feet > 40, "" + feet);
    assertEquals(Math.rint(feet), feet, 1e-9);
  }

  @Test
  void theListOfWarningsIsFixed() {
    TorqueWindow w = window(STUD, JointDemand.ofClamp(kN(0)), USUAL);
    assertThrows(UnsupportedOperationException.class, () -> w.warnings().clear());
    assertThrows(UnsupportedOperationException.class, () -> w.warnings().add(null));
  }

  @Test
  void torquesOfChartsAreReadAsTheyAreWritten() {
    for (String text : "325 in-lb;325 in-lbs;325 lb·in;325 lbf-in;325 in lb;325 lb-in;325 in·lbf;325 lbf·in".split(";", -1)) {
      assertEquals(inLbf(325), Torque.parse(text), text);
    }
    for (String text : "24 ft-lb;24 ft-lbs;24 lb-ft;24 lb·ft;24 ft lb;24 lbf-ft;24 ft·lbf".split(";", -1)) {
      assertEquals(ftLbf(24), Torque.parse(text), text);
    }
    for (String text : "58 N-m;58 N.m;58 N·m;58 Nm".split(";", -1)) {
      assertEquals(Nm(58), Torque.parse(text), text);
    }
    for (String text : "58 lb;58 nm;58 mN;58 NM;325 in;325 pounds".split(";", -1)) {
      assertThrows(holdfast.quantity.InputException.class, () -> Torque.parse(text), text);
    }
  }
}
