// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

class TorqueWindowTest {
  private static final ScrewThread M18 = ScrewThread.of("M18x1.5");
  private static final Tightening STUD =
      Tightening.of(M18).bore(mm(3)).bearingFace(mm(24), mm(18)).friction(0.10, 0.16);
  private static final PropertyClass STEEL = PropertyClass.of("8.8");
  private static final Scatter WRENCH = Scatter.torqueWrench(Nm(200));

  @Test
  void endsReallyHitTheirLimits() {
    TorqueWindow w = STUD.window(kN(30), STEEL, WRENCH);
    assertTrue(w.isOpen());
    assertEquals("joint-closed", w.lowLimit().code());
    assertEquals("stud-stress", w.highLimit().code());
    assertEquals(30000, w.preload(w.lowest()).worstCaseLeast().newton(), 1e-7);
    Torque applied = w.highest().times(1.04);
    assertEquals(0.9 * 660, STUD.preload(applied).greatestStress().megapascal(), 1e-9);
    assertEquals(w.highest().newtonMillimetre(), w.explain().result().value());
    assertTrue(w.changes().isEmpty());
    assertFalse(w.cautions().isEmpty());
    assertTrue(w.target().orElseThrow().compareTo(w.lowest()) > 0 && w.target().orElseThrow().compareTo(w.highest()) < 0);
    double setting = w.wrenchSetting().orElseThrow().newtonMillimetre() / 1000;
    assertEquals(Math.rint(setting), setting, 1e-9);
    assertTrue(w.wrenchSetting().orElseThrow().compareTo(w.lowest()) >= 0 && w.wrenchSetting().orElseThrow().compareTo(w.highest()) <= 0);
  }

  @Test
  void everyUpperLimitCanGovernAndIsHit() {
    JointDemand none = JointDemand.ofClamp(kN(1));
    WindowRules usual = WindowRules.usual();
    TorqueWindow pressure = STUD.window(none, STEEL, WRENCH, usual.facePressure(MPa(200)));
    assertEquals("face-pressure", pressure.highLimit().code());
    TighteningState s = STUD.preload(pressure.highest().times(1.04)).greatest();
    assertEquals(200, s.facePressure().megapascal(), 1e-9);
    ThreadEngagement thin = ThreadEngagement.ofNut(M18, mm(4), MPa(480), MPa(300));
    TorqueWindow strip = STUD.window(none, STEEL, WRENCH, usual.engagement(thin, 2));
    assertEquals("stripping", strip.highLimit().code());
    assertEquals(
        thin.strippingLoad().newton() / 2, STUD.preload(strip.highest().times(1.04)).greatestPreload().newton(), 1e-6);
    assertTrue(strip.warnings().stream().anyMatch(x -> x.code().equals("thin-nut")));
    TorqueWindow parts = STUD.window(none, STEEL, WRENCH, usual.greatestPreload(kN(20)));
    assertEquals(20000, parts.preload(parts.highest()).worstCaseGreatest().newton(), 1e-7);
    TorqueWindow maker = STUD.window(none, STEEL, WRENCH, usual.makersMaximum(Nm(80)));
    assertEquals(80000, maker.highest().times(1.04).newtonMillimetre(), 1e-9);
    assertEquals("makers-maximum", maker.highLimit().code());
  }

  @Test
  void workingStressGovernsUnderAGreatAxialLoad() {
    JointDemand pull = JointDemand.ofClamp(kN(1)).axialLoad(kN(100), 0.6);
    TorqueWindow w = STUD.window(pull, STEEL, Scatter.of(0), WindowRules.usual());
    assertEquals("working-stress", w.highLimit().code());
    TighteningState s = STUD.preload(w.highest()).greatest();
    double area = STUD.sections().get(0).area().mm2();
    double sigma = (s.preload().newton() + 60000) / area;
    double stress = StressKernel.afterRelaxation(sigma, s.torsionStress().megapascal(), 0.5);
    TighteningState twisted = new TighteningState(STUD, 0.16, 0.10, STUD.preloadAt(w.highest(), 0.16, 0.10));
    double sigma2 = (twisted.preload().newton() + 60000) / area;
    double stress2 = StressKernel.afterRelaxation(sigma2, twisted.torsionStress().megapascal(), 0.5);
    assertEquals(660, Math.max(stress, stress2), 1e-8);
  }

  @Test
  void anEmptyWindowNamesWhatWouldOpenIt() {
    TorqueWindow empty = STUD.window(kN(60), PropertyClass.of("5.6"), WRENCH);
    assertFalse(empty.isOpen());
    assertEquals("window-empty", empty.warnings().get(0).code());
    List<WindowChange> changes = empty.changes();
    WindowChange stronger = changes.stream().filter(c -> c.code().equals("stronger-stud")).findFirst().orElseThrow();
    assertTrue(stronger.opens(), stronger.toString());
    // The stated yield stress, taken again, opens the window; one per cent less does not.
    double yield = Double.parseDouble(stronger.change().replaceAll(".*at least (\\d+) MPa.*", "$1"));
    assertTrue(STUD.window(kN(60), material(yield), WRENCH).isOpen());
    assertFalse(STUD.window(kN(60), material(yield * 0.99), WRENCH).isOpen());
    WindowChange less = changes.stream().filter(c -> c.code().equals("less-demand")).findFirst().orElseThrow();
    assertTrue(less.opens());
    Force bearable = empty.bearable();
    assertTrue(STUD.window(bearable.times(0.999), PropertyClass.of("5.6"), WRENCH).isOpen());
    assertFalse(STUD.window(bearable.times(1.001), PropertyClass.of("5.6"), WRENCH).isOpen());
    assertTrue(changes.stream().anyMatch(c -> c.code().equals("better-tool")));
    assertTrue(changes.stream().anyMatch(c -> c.code().equals("solid-stud")));
    assertTrue(changes.stream().anyMatch(c -> c.code().equals("narrower-friction")));
    assertTrue(empty.toString().startsWith("no torque"), empty.toString());
  }

  @Test
  void governingLimitsBringTheirOwnChange() {
    WindowRules usual = WindowRules.usual();
    JointDemand need = JointDemand.ofClamp(kN(40));
    assertChange(STUD.window(need, STEEL, WRENCH, usual.facePressure(MPa(150))), "larger-face");
    ThreadEngagement thin = ThreadEngagement.ofNut(M18, mm(4), MPa(480), MPa(300));
    assertChange(STUD.window(need, STEEL, WRENCH, usual.engagement(thin, 2)), "longer-engagement");
    assertChange(STUD.window(need, STEEL, WRENCH, usual.greatestPreload(kN(30))), "stronger-parts");
    assertChange(STUD.window(need, STEEL, WRENCH, usual.makersMaximum(Nm(80))), "ask-the-maker");
  }

  @Test
  void demandAddsUp() {
    JointDemand d =
        JointDemand.ofClamp(kN(2)).axialLoad(kN(10), 0.2).moment(Nm(100), mm(30), mm(18)).slip(kN(1), 0.1).reserve(1.5)
            .changes(kN(3), kN(-2));
    // The moment opens the ring at 8·M·D/(D² + di²).
    double moment = 8 * 100000.0 * 30 / (900 + 324);
    assertEquals(1.5 * (2000 + moment + 8000) + 5000, d.requiredPreload().newton(), 1e-9);
    assertEquals("opening of the joint", d.governing());
    assertEquals("slip of the joint", d.slip(kN(10), 0.1).governing());
    assertEquals(2000, d.addedStudLoad().newton());
    assertEquals(3000, d.changes(kN(0), kN(1)).addedStudLoad().newton());
    assertEquals(d.requiredPreload().newton(), d.explain().result().value());
    assertThrows(InputException.class, () -> d.reserve(0.9));
    assertThrows(InputException.class, () -> d.axialLoad(kN(-1), 0.5));
  }

  /** ISO 6789 goes by the size of the tool: 6 % for a wrench up to 10 N·m, 4 % for any greater, whatever it is set to. */
  @Test
  void theDeviationIsThatOfTheToolNotOfTheSetting() {
    assertEquals(0.06, Scatter.torqueWrench(Nm(10)).deviation());
    assertEquals(0.04, Scatter.torqueWrench(Nm(10.1)).deviation());
    assertThrows(InputException.class, () -> Scatter.ofTool("III", "A", Nm(10)));
    assertThrows(InputException.class, () -> Scatter.of(1));
    Tightening small = Tightening.of(ScrewThread.of("M6")).friction(0.1, 0.14);
    Scatter own = Scatter.torqueWrench(Nm(10));
    TorqueWindow w = small.window(kN(2), STEEL, own);
    assertEquals(2000, w.preload(w.lowest()).worstCaseLeast().newton(), 1e-8);
    assertEquals(0.9 * 640, small.preload(w.highest().times(1.06)).greatestStress().megapascal(), 1e-9);
    TorqueWindow big = small.window(kN(2), STEEL, WRENCH);
    assertEquals(0.9 * 640, small.preload(big.highest().times(1.04)).greatestStress().megapascal(), 1e-9);
    assertTrue(big.warnings().stream().anyMatch(x -> x.code().equals("setting-outside-tool")), "a 200 N·m wrench at 8 N·m");
    assertEquals(List.of(), w.warnings());
  }

  /** The greatest torque that a tool can apply at the upper end never passes the limit, however small the setting. */
  @Test
  void theAppliedTorqueNeverPassesTheLimitAroundTenNewtonMetres() {
    for (double maker = 9; maker < 12; maker += 0.01) {
      for (Torque size : new Torque[] {Nm(10), Nm(60)}) {
        Scatter tool = Scatter.torqueWrench(size);
        TorqueWindow w =
            Tightening.of(ScrewThread.of("M8")).friction(0.1, 0.14)
                .window(JointDemand.ofClamp(kN(1)), STEEL, tool, WindowRules.usual().makersMaximum(Nm(maker)));
        double applied = w.highest().newtonMillimetre() / 1000 * (1 + (size.equals(Nm(10)) ? 0.06 : 0.04));
        assertTrue(applied <= maker * (1 + 1e-12), maker + " N·m: " + applied);
      }
    }
  }

  @Test
  void torqueAboveBreakingIsRefused() {
    InputException e = assertThrows(InputException.class, () -> STUD.preload(Nm(600), STEEL));
    assertTrue(e.getMessage().contains("breaks"), e.getMessage());
    double limit = Double.parseDouble(e.permitted().replaceAll("below ([0-9.]+) N·m", "$1"));
    PreloadBand nearly = STUD.preload(Nm(limit * 0.999), STEEL);
    assertEquals(1, nearly.greatestStress().megapascal() / 830, 0.002);
    assertTrue(nearly.utilisation(STEEL) > 1);
  }

  private static PropertyClass material(double yield) {
    return PropertyClass.ofMaterial("stud", MPa(yield), MPa(yield));
  }

  private static void assertChange(TorqueWindow window, String code) {
    assertFalse(window.isOpen());
    WindowChange change = window.changes().stream().filter(c -> c.code().equals(code)).findFirst().orElseThrow();
    assertTrue(change.opens(), change.toString());
  }

  /** Settling, load along the stud, temperature, moment and slip: each has its step, and so its source. */
  @Test
  void everyInputOfTheDemandHasAStep() {
    JointDemand demand = JointDemand.ofClamp(kN(1)).axialLoad(kN(2), 0.25).moment(Nm(6), mm(30), mm(10)).slip(kN(0.5), 0.1)
        .reserve(1.5).changes(kN(3), kN(-0.7));
    TorqueWindow window = STUD.window(demand, STEEL, WRENCH, WindowRules.usual());
    List<Step> steps = window.explain().steps();
    double[] values = {1000, 2000, 0.25, 1.5, 8 * 6000.0 * 30 / (900 + 100), 5000, 3000, -700};
    for (int input = 0; input < values.length; input++) {
      assertEquals(values[input], steps.get(input).value(), 1e-9, steps.get(input).symbol());
      assertTrue(window.sources().contains(steps.get(input).source()));
    }
    assertEquals(1.5 * (5000 + 0.75 * 2000) + 3000 + 700, demand.explain().result().value(), 1e-9);
    Derivation how = Derivation.of("settling").step("FZ", "lost", "measured", 3000, "N", SourceRef.derived("an example")).build();
    JointDemand grounded = demand.changes(kN(3), kN(-0.7), how);
    assertTrue(grounded.explain().steps().contains(how.result()));
    assertEquals(demand.requiredPreload(), grounded.requiredPreload());
    assertEquals(demand, grounded.changes(kN(3), kN(-0.7)), "the last statement counts");
  }
}
