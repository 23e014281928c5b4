// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What stands between nut and stud: a face with a hole that the stud passes, and a bore that runs through every section. */
class FaceAndBoreTest {
  private static final ScrewThread INCH = ScrewThread.of("5/8-18 UNF");
  private static final ScrewThread M18 = ScrewThread.of("M18x1.5");

  private static void refused(String part, Executable call) {
    String message = assertThrows(InputException.class, call).getMessage();
    assertTrue(message.contains(part), message);
  }

  /** The face that the inch job once stated: its hole is smaller than the stud. */
  @Test
  void aFaceWhoseHoleTheStudDoesNotPassIsRefused() {
    String message = "inner diameter of the bearing face DKi";
    Tightening nut = Tightening.of(INCH);
    refused(message, () -> nut.bearingFace(inch("0.68"), inch("0.46")));
    refused(message, () -> Tightening.of(M18).bearingFace(mm(24), mm(17.99)));
    refused(message, () -> new ChartTorque(nut.bearingFace(inch("0.9"), inch("0.6")), inLbf(300)));
    assertEquals(18, Tightening.of(M18).bearingFace(mm(24), mm(18)).face().inner().mm());
    // 5/8 in and 15.875 mm are one size.
    assertEquals(inch("5/8"), nut.bearingFace(mm(22), inch("5/8")).face().inner());
    assertEquals(15.875, nut.bearingFace(mm(22), mm(15.875)).face().inner().mm());
  }

  @Test
  void aFaceThatIsAnEdgeIsRefused() {
    refused("a nut needs something to stand on", () -> BearingFace.of(mm(18.01), mm(18)));
    refused("a nut needs something to stand on", () -> BearingFace.ofUniformPressure(mm(18.8), mm(18)));
    assertEquals(18.475, BearingFace.of(mm(18.95), mm(18)).frictionDiameter().mm(), 1e-12);
  }

  /** A groove in a drilled stud is drilled as well, in whatever order the two are stated. */
  @Test
  void theBoreRunsThroughEverySection() {
    Tightening before = Tightening.of(M18).bore(mm(6)).groove(mm(15)).crossHole(mm(17), mm(3));
    Tightening after = Tightening.of(M18).crossHole(mm(17), mm(3)).bore(mm(6)).groove(mm(15));
    assertEquals(before.sections().get(1), after.sections().get(2));
    assertEquals(before.sections().get(2), after.sections().get(1));
    assertEquals(Math.PI / 4 * (15 * 15 - 36), before.sections().get(1).area().mm2(), 1e-9);
    Length wide = mm(8);
    Tightening own = Tightening.of(M18).narrow(new StudSection("widened", mm(16), wide, mm(0))).bore(mm(6));
    assertEquals(wide, own.sections().get(1).bore());
    assertThrows(InputException.class, () -> Tightening.of(M18).groove(mm(5)).bore(mm(6)));
    assertThrows(InputException.class, () -> Tightening.of(M18).bore(mm(6)).groove(mm(5)));
  }

  @Test
  void aThinWallUnderTheThreadWarns() {
    Tightening stud = Tightening.of(M18).friction(0.1, 0.16);
    assertTrue(codes(stud.bore(mm(15.9))).contains("thin-walled-thread"));
    assertFalse(codes(stud.bore(mm(6))).contains("thin-walled-thread"));
  }

  private static List<String> codes(Tightening nut) {
    return nut.preload(Nm(20)).warnings().stream().map(Warning::code).toList();
  }

  @Test
  void elasticNumbersBeyondYieldWarn() {
    Tightening stud = Tightening.of(M18).friction(0.10, 0.16);
    PropertyClass steel = PropertyClass.of("8.8");
    PreloadBand held = stud.preload(Nm(250), steel);
    PreloadBand yielding = stud.preload(Nm(360), steel);
    assertTrue(held.utilisation(steel) < 1 && yielding.utilisation(steel) > 1);
    assertEquals(List.of(), held.warnings());
    assertEquals("stud-yields", yielding.warnings().get(0).code());
  }
}
