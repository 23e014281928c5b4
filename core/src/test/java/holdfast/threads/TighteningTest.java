// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class TighteningTest {
  private static final Tightening STUD =
      Tightening.of(ScrewThread.of("M18x1.5")).bore(mm(3)).bearingFace(mm(24), mm(18)).friction(0.10, 0.16);

  /** Printed assembly values of M18x1.5, 8.8 and 10.9, on the standard hexagon. */
  @Test
  void reproducesPrintedAssemblyValues() {
    Tightening nut = Tightening.of(ScrewThread.of("M18x1.5")).friction(0.12, 0.12);
    assertEquals(465, nut.torque(kN(167.1)).leastTorque().newtonMillimetre() / 1000, 0.5);
    assertEquals(0.9 * 940, nut.torque(kN(167.1)).least().combinedStress().megapascal(), 0.5);
  }

  @Test
  void bandFollowsFriction() {
    PreloadBand band = STUD.preload(Nm(60));
    assertTrue(band.leastPreload().compareTo(band.greatestPreload()) < 0);
    assertEquals(0.16, band.least().threadFriction());
    assertEquals(band.leastPreload().newton(), band.explain().result().value());
    TorqueBand torque = STUD.torque(kN(20));
    assertEquals(torque.greatestTorque().newtonMillimetre(), torque.explain().result().value());
    assertTrue(torque.leastTorque().compareTo(torque.greatestTorque()) < 0);
    assertTrue(band.toString().contains("60 N·m"), band.toString());
  }

  @Test
  void sharesSumToTheWhole() {
    TighteningState s = STUD.prevailing(Nm(4)).preload(Nm(60)).least();
    double sum =
        s.pitchTorque().plus(s.threadFrictionTorque()).plus(s.faceTorque()).plus(Nm(4)).newtonMillimetre();
    assertEquals(60000, sum, 60000e-12);
    assertEquals(60000, s.torque().newtonMillimetre(), 60000e-12);
    assertEquals(s.combinedStress().megapascal(), s.explain().result().value());
    assertTrue(s.looseningTorque().compareTo(s.torque()) < 0);
    assertTrue(s.selfLocking());
  }

  @Test
  void aCrossHoleGovernsWhenItTakesMore() {
    Tightening plain = STUD;
    Tightening drilled = STUD.crossHole(mm(16), mm(4)).groove(mm(17.5));
    TighteningState state = drilled.preload(Nm(60)).greatest();
    assertEquals("cross hole", state.governingSection().name());
    assertTrue(state.combinedStress().compareTo(plain.preload(Nm(60)).greatest().combinedStress()) > 0);
    assertTrue(plain.preload(Nm(60)).greatest().governingSection().name().startsWith("thread"));
  }

  @Test
  void frictionOutsideTheUsualIsAWarning() {
    assertEquals("friction-unusual", STUD.friction(0.02, 0.1).preload(Nm(60)).warnings().get(0).code());
    assertEquals("friction-unusual", STUD.friction(0.1, 0.51).preload(Nm(60)).warnings().get(0).code());
    assertTrue(STUD.friction(0.03, 0.5).preload(Nm(60)).warnings().isEmpty());
  }

  @Test
  void lowFrictionLosesSelfLocking() {
    TighteningState state = STUD.friction(0.02, 0.02).preload(Nm(10)).least();
    assertFalse(state.selfLocking());
    assertTrue(state.warnings().stream().anyMatch(w -> w.code().equals("thread-not-self-locking")));
  }

  @Test
  void refusesWhatCannotBe() {
    message(() -> STUD.friction(0, 0.1), "least thread friction μG (0) must be over 0");
    message(() -> STUD.friction(0.2, 0.1), "greatest thread friction μG (0.1) must be at least the least, 0.2");
    message(() -> STUD.bore(mm(16.2)), "axial bore di (16.2 mm) must be from 0 mm to less than 16.16 mm");
    message(() -> STUD.bore(mm(-1)), "axial bore di (-1 mm)");
    message(() -> STUD.bearingFace(mm(18), mm(18)), "outer face diameter dW (18 mm) must be over the inner diameter");
    message(() -> STUD.prevailing(Nm(5)).preload(Nm(4)), "at least the prevailing torque, 5000 N·mm");
    message(() -> STUD.torque(kN(-1)), "preload FM (-1000 N)");
    message(() -> STUD.friction(0.1, 40).torque(kN(1)), "less than 30.88");
    message(() -> STUD.crossHole(mm(10), mm(10)), "cross hole dq (10 mm) must be less than");
    message(() -> Tightening.of(ScrewThread.of("M18x1.5")).preload(Nm(1)), "friction (not stated)");
    message(
        () -> Tightening.of(ScrewThread.of("1-3/4-5")).friction(0.1, 0.1).preload(Nm(1)), "bearing face (not stated)");
  }

  @Test
  void standardHexagonAndHole() {
    ScrewThread m18 = ScrewThread.of("M18x1.5");
    assertEquals(27, Hexagon.widthAcrossFlats(m18).mm());
    assertEquals(25.34, Hexagon.bearingFaceDiameter(m18).mm());
    assertEquals(20, Hexagon.clearanceHole(m18, Hexagon.HoleSeries.MEDIUM).mm());
    assertEquals(19, Hexagon.clearanceHole(m18, Hexagon.HoleSeries.FINE).mm());
    assertEquals(21, Hexagon.clearanceHole(m18, Hexagon.HoleSeries.COARSE).mm());
    assertEquals(0.9375 * 25.4, Hexagon.widthAcrossFlats(ScrewThread.of("5/8-18")).mm(), 1e-12);
    assertEquals(1.0625 * 25.4, Hexagon.heavyWidthAcrossFlats(ScrewThread.of("5/8-18")).mm(), 1e-12);
    ScrewThread m9 = ScrewThread.of("M9");
    message(() -> Hexagon.widthAcrossFlats(m9), "state the size yourself");
    message(() -> Hexagon.bearingFaceDiameter(m9), "thread for the bearing face diameter (M9)");
    message(() -> Hexagon.clearanceHole(ScrewThread.of("5/8-18"), Hexagon.HoleSeries.FINE), "thread for the clearance hole");
  }

  private static void message(Executable call, String part) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }
}
