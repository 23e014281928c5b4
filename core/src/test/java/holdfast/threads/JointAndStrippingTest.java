// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import java.util.List;
import org.junit.jupiter.api.Test;

class JointAndStrippingTest {
  private static final ScrewThread M16 = ScrewThread.of("M16");
  private static final Tightening NUT = Tightening.of(M16).friction(0.10, 0.14);

  @Test
  void conePassesIntoSleeveWithoutAStep() {
    // Where the parts are as wide as the cone, both branches of the resilience must agree.
    double lk = 40;
    double dw = 22.49;
    double wide = JointKernel.partResilience(lk, dw, 17.5, 60, 205000, false);
    double limit = dw + lk * JointKernel.coneTangent(lk, dw, 60, false);
    assertTrue(limit < 60);
    double narrow = JointKernel.partResilience(lk, dw, 17.5, 30, 205000, false);
    double sleeve = JointKernel.partResilience(lk, dw, 17.5, 22, 205000, false);
    assertTrue(wide < narrow && narrow < sleeve);
    assertEquals(4 * lk / (205000 * Math.PI * (22 * 22 - 17.5 * 17.5)), sleeve, 1e-18);
    // A cone of no growth is a sleeve: just wider than the face.
    double just = JointKernel.partResilience(lk, dw, 17.5, dw + 1e-9, 205000, false);
    assertEquals(JointKernel.resilience(lk, 205000, ThreadGeometryKernel.ringArea(dw, 17.5)), just, 1e-6 * just);
  }

  @Test
  void jointTakesItsShare() {
    Joint joint = Joint.of(NUT, mm(40), mm(60), mm(17.5));
    assertTrue(joint.loadFactor(1) > 0.05 && joint.loadFactor(1) < 0.4, joint.toString());
    assertEquals(joint.loadFactor(1), joint.explain().result().value());
    assertEquals(joint.loadFactor(1) / 2, joint.loadFactor(0.5), 1e-15);
    Joint hollow = Joint.of(NUT.bore(mm(6)), mm(40), mm(60), mm(17.5));
    assertTrue(hollow.studResilience() > joint.studResilience());
    assertTrue(joint.tappedHole().studResilience() != joint.studResilience());
    assertTrue(joint.moduli(MPa(205000), MPa(70000)).partResilience() > joint.partResilience());
    Force lost = joint.embeddingLoss(Embedding.amount(um(8), false, 2, 1));
    assertEquals(0.0095 / (joint.studResilience() + joint.partResilience()), lost.newton(), 1e-6);
    Force warm = joint.thermalChange(umPerMK(11), kelvin(50), umPerMK(23), kelvin(50));
    assertTrue(warm.newton() > 0);
    assertEquals(-warm.newton(), joint.thermalChange(umPerMK(23), kelvin(50), umPerMK(11), kelvin(50)).newton(), 1e-9);
    ServicePreload service = new ServicePreload(new ScatteredPreload(NUT, Nm(150), Scatter.torqueWrench(Nm(200))), lost, warm);
    assertTrue(service.least().compareTo(service.greatest()) < 0);
    assertEquals(service.least().newton(), service.explain().result().value());
    assertTrue(joint.pieces(new Joint.Piece(StudSection.thread(M16, mm(0)), mm(10))).warnings().stream()
        .anyMatch(w -> w.code().equals("stud-pieces-and-clamp-length")));
    ServicePreload gone = new ServicePreload(service.assembly(), kN(500), kN(0));
    assertEquals(0, gone.least().newton());
    assertTrue(gone.warnings().stream().anyMatch(w -> w.code().equals("preload-lost")));
  }

  @Test
  void embeddingTable() {
    assertEquals(0.003 + 2 * 0.003 + 0.002, Embedding.amount(um(10), false, 2, 1).mm(), 1e-15);
    assertEquals(0.003 + 2 * 0.0045 + 0.0025, Embedding.amount(um(10), true, 2, 1).mm(), 1e-15);
    assertThrows(InputException.class, () -> Embedding.amount(um(160), false, 2, 1));
    assertThrows(InputException.class, () -> Embedding.amount(um(5), true, -1, 0));
    assertEquals(3.29e-3, JointKernel.embeddingByLength(16, 16), 1e-15);
  }

  @Test
  void strippingOfNutAndStud() {
    ThreadEngagement e = ThreadEngagement.ofNut(M16, mm(12), MPa(480), MPa(420));
    assertEquals(e.strippingLoad().newton(), e.explain().result().value());
    assertEquals(e.nutLoad().compareTo(e.studLoad()) < 0 ? e.nutLoad() : e.studLoad(), e.strippingLoad());
    Force load = kN(100);
    ThreadEngagement just =
        new ThreadEngagement(M16, "6g", "6H", e.lengthFor(load), e.studShear(), e.nutShear(), e.widthOverDiameter());
    assertEquals(100000, just.strippingLoad().newton(), 1e-6);
    assertTrue(e.lengthForFullStrength(PropertyClass.of("8.8")).mm() > 5);
    ThreadEngagement block = ThreadEngagement.ofBlock(M16, mm(12), MPa(480), MPa(60));
    assertTrue(block.warnings().stream().anyMatch(w -> w.code().equals("strength-ratio-outside")));
    assertTrue(new ThreadEngagement(M16, "", "", mm(16), MPa(480), MPa(420), 1.5).warnings().stream()
        .anyMatch(w -> w.code().equals("basic-sizes")));
    InputException wrong =
        assertThrows(
            InputException.class, () -> new ThreadEngagement(M16, "6H", "6H", mm(16), MPa(480), MPa(420), 1.5));
    assertTrue(wrong.getMessage().contains("tolerance class of the stud"), wrong.getMessage());
    assertThrows(
        InputException.class, () -> new ThreadEngagement(M16, "6g", "6H", mm(16), MPa(480), MPa(420), 1.3));
  }

  @Test
  void bothBendingFitsMeetAtEqualStrength() {
    assertEquals(0.897, StrippingKernel.externalBending(1), 0.001);
    assertEquals(StrippingKernel.externalBending(1), StrippingKernel.externalBending(1 + 1e-9), 0.001);
    assertEquals(StrippingKernel.internalBending(1), StrippingKernel.internalBending(1 - 1e-9), 0.001);
    assertEquals(1, StrippingKernel.dilation(1.9 - 1e-12), 1e-9);
    double full = StrippingKernel.engagementForFullStrength(157, 13.835, 14.5, 2);
    assertEquals(2 * 157, StrippingKernel.externalShearArea(13.835, 14.5, 2, full), 1e-9);
  }

  @Test
  void sampledPreloadsLieInTheWorstCase() {
    ScatteredPreload s = new ScatteredPreload(NUT, Nm(150), Scatter.torqueWrench(Nm(200)));
    List<Force> q = s.sampledQuantiles(100_000, 42, false, 0, 0.5, 1);
    assertTrue(q.get(0).compareTo(s.worstCaseLeast()) >= 0);
    assertTrue(q.get(2).compareTo(s.worstCaseGreatest()) <= 0);
    assertEquals(1, q.get(1).ratio(s.middle()), 0.01);
    assertEquals(q, s.sampledQuantiles(100_000, 42, false, 0, 0.5, 1));
    assertTrue(!q.equals(s.sampledQuantiles(100_000, 43, false, 0, 0.5, 1)));
    List<Force> normal = s.sampledQuantiles(100_000, 42, true, 0.001, 0.999);
    assertTrue(normal.get(0).compareTo(q.get(0)) > 0);
    assertTrue(s.rootSumSquareLeast().compareTo(s.worstCaseLeast()) > 0);
    assertTrue(s.rootSumSquareGreatest().compareTo(s.worstCaseGreatest()) < 0);
    assertEquals(s.worstCaseGreatest().ratio(s.worstCaseLeast()), s.tighteningFactor());
    assertEquals(s.worstCaseLeast().newton(), s.explain().result().value());
    assertEquals(2, ScatterKernel.tighteningFactor(1.0 / 3), 1e-15);
    assertThrows(InputException.class, () -> s.sampledQuantiles(0, 1, true, 0.5));
    assertTrue(TighteningMethod.all().size() > 10);
  }

  @Test
  void bulkPreloadsEqualSingleOnes() {
    double[] torques = {1000, 50000, 1e6};
    double[] mu = {0.1, 0.2, 0.3};
    double[] out = new double[3];
    TighteningKernel.preloads(torques, 14.7, 2, mu, 20, mu, 0, out);
    double[] single = new double[3];
    for (int i = 0; i < 3; i++) {
      single[i] = TighteningKernel.preload(torques[i], 14.7, 2, mu[i], 20, mu[i], 0);
    }
    assertArrayEquals(single, out);
    assertThrows(
        IllegalArgumentException.class,
        () -> TighteningKernel.preloads(torques, 14.7, 2, mu, 20, new double[2], 0, out));
  }

  /** 325 lbf·in on a 5/8 in stud: a third of what a general chart would put on it. */
  @Test
  void aStudTorqueReadBackwards() {
    ChartTorque chart = ChartTorque.of(ScrewThread.of("5/8-18 UNF"), inLbf(325));
    assertEquals(2600, chart.preloadBy(0.20).newton() / 4.4482216152605, 1e-9);
    assertEquals(70, chart.stressBy(0.20).megapascal(), 0.05);
    assertEquals(93.4, chart.stressBy(0.15).megapascal(), 0.05);
    assertTrue(chart.oiled().greatestPreload().compareTo(chart.asDelivered().greatestPreload()) > 0);
    double share = chart.shareOfGeneralChart(PropertyClass.of("grade 5"), 0.20);
    assertTrue(share > 0.15 && share < 0.17, "share " + share);
    assertEquals(chart.oiled().leastPreload().newton(), chart.explain().result().value());
    assertTrue(chart.warnings().stream().anyMatch(w -> w.code().equals("chart-condition")));
    ChartTorque drilled = new ChartTorque(chart.nut().bore(mm(4)), inLbf(325));
    assertTrue(drilled.stressBy(0.2).compareTo(chart.stressBy(0.2)) > 0);
  }

  @Test
  void assemblyPreloadUsesItsPartOfTheYieldStress() {
    AssemblyPreload a = NUT.assemblyPreload(PropertyClass.of("8.8"), 0.9);
    assertEquals(576, a.lowFriction().combinedStress().megapascal(), 1e-9);
    assertEquals(576, a.highFriction().combinedStress().megapascal(), 1e-9);
    assertEquals(a.preload().newton(), a.explain().result().value());
    assertTrue(NUT.groove(mm(12)).assemblyPreload(PropertyClass.of("8.8"), 0.9).preload().compareTo(a.preload()) < 0);
    assertThrows(InputException.class, () -> NUT.assemblyPreload(PropertyClass.of("8.8"), 1.01));
  }
}
