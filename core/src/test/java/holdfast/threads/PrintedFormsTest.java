// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import holdfast.trace.Step;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How studs, nuts and joints print, and what their parts add up to. */
class PrintedFormsTest {
  private static final Tightening NUT =
      Tightening.of(ScrewThread.of("M18x1.5")).bearingFace(mm(24), mm(18)).friction(0.10, 0.16);
  private static final PropertyClass STEEL = PropertyClass.of("8.8");

  @Test
  void nutsPrintWhatIsStated() {
    assertEquals(
        "M18x1.5, bore 3 mm, face 24 mm / 18 mm, μ 0.1 … 0.16, prevailing torque 4 N·m",
        NUT.bore(mm(3)).prevailing(Nm(4)).toString());
    assertEquals("M18x1.5, face 24 mm / 18 mm, μ 0.1 … 0.16", NUT.toString());
    assertEquals("1-3/4-5 UNC", Tightening.of(ScrewThread.of("1-3/4-5")).toString());
    assertEquals("groove (⌀ 12 mm)", new StudSection("groove", mm(12), mm(0), mm(0)).toString());
    assertEquals(
        "cross hole (⌀ 16 mm, bore 3 mm, cross hole 4 mm)", new StudSection("cross hole", mm(16), mm(3), mm(4)).toString());
    assertEquals("fully plastic torsion", TorsionModel.PLASTIC.toString());
    assertFalse(ThreadSystem.METRIC.toString().isEmpty());
    assertEquals("60 N·m: why", new WindowLimit("x", Message.of("why"), Nm(60), SourceRef.derived("an example")).toString());
    assertTrue(TighteningMethod.all().stream().anyMatch(m -> m.toString().equals(
        "torque wrench (torque from estimated friction): αA 1.6 … 1.78")));
  }

  @Test
  void frictionPrintsOneBandOrTwo() {
    assertEquals("μ 0.1 … 0.16", Friction.of(0.1, 0.16).toString());
    assertEquals("μ 0.12", Friction.of(0.12, 0.12).toString());
    assertEquals("μG 0.1 … 0.16, μK 0.12", new Friction(0.1, 0.16, 0.12, 0.12).toString());
    assertTrue(Friction.of(0.12, 0.12).isExact());
    assertFalse(new Friction(0.12, 0.12, 0.1, 0.12).isExact());
    assertFalse(new Friction(0.1, 0.12, 0.12, 0.12).isExact());
  }

  @Test
  void frictionOfEitherPartIsChecked() {
    InputException e = assertThrows(InputException.class, () -> new Friction(0.1, 0.1, 0.2, 0.1));
    assertEquals("greatest face friction μK (0.1) must be at least the least, 0.2; a band from low to high", e.getMessage());
    assertThrows(InputException.class, () -> Friction.of(0.1, Double.POSITIVE_INFINITY));
    assertTrue(new Friction(0.02, 0.1, 0.1, 0.1).warnings().get(0).message().startsWith("thread friction μG from 0.02 to 0.1"));
    assertTrue(new Friction(0.1, 0.1, 0.1, 0.6).warnings().get(0).message().startsWith("face friction μK from 0.1 to 0.6"));
  }

  @Test
  void aStateTellsTorquesAndStresses() {
    TighteningState s = NUT.prevailing(Nm(4)).preload(Nm(60)).least();
    double f = s.preload().newton();
    double loosening = f * TighteningKernel.looseningLever(17.026, 1.5, 0.16) + f * 0.16 * 21 / 2 + 4000;
    assertEquals(loosening, s.looseningTorque().newtonMillimetre(), 1e-6);
    assertEquals((60000 - 4000) / (f * 18), s.nutFactor(), 1e-12);
    double axial = s.axialStress().megapascal();
    double torsion = s.torsionStress().megapascal() / 2;
    assertEquals(Math.sqrt(axial * axial + 3 * torsion * torsion), s.stressAfterRelaxation().megapascal(), 1e-9);
    assertEquals("60 N·m → " + s.preload() + ", σred " + s.combinedStress(), s.toString());
    PreloadBand band = NUT.preload(Nm(60));
    assertEquals(
        List.of("MG/FM", "MK/FM", "FM,max", "MG/FM", "MK/FM", "FM,min"),
        band.explain().steps().stream().map(Step::symbol).toList());
  }

  @Test
  void theTorsionModelCounts() {
    TighteningState plastic = NUT.preload(Nm(60)).least();
    TighteningState elastic = NUT.torsion(TorsionModel.ELASTIC).preload(Nm(60)).least();
    // The plastic modulus π/12·D³ of a solid section is 4/3 of the elastic one, π/16·D³.
    assertEquals(4.0 / 3, elastic.torsionStress().ratio(plastic.torsionStress()), 1e-12);
    StudSection drilled = new StudSection("cross hole", mm(16), mm(0), mm(4));
    assertEquals(SectionKernel.elasticModulus(16, 0, 4), drilled.torsionModulus(TorsionModel.ELASTIC));
    assertEquals(SectionKernel.plasticModulus(16, 0, 4), drilled.torsionModulus(TorsionModel.PLASTIC));
    assertTrue(drilled.torsionModulus(TorsionModel.ELASTIC) < drilled.torsionModulus(TorsionModel.PLASTIC));
  }

  @Test
  void assemblyPreloadAndBands() {
    AssemblyPreload a = NUT.assemblyPreload(STEEL, 0.9);
    assertEquals(0.9 * 660, a.explain().steps().get(0).value(), 1e-9);
    assertEquals(a.lowFriction().torque(), a.torque());
    assertEquals("M18x1.5, 8.8, ν = 0.9: " + a.preload() + " at " + a.torque(), a.toString());
    assertEquals("friction-unusual", NUT.friction(0.02, 0.1).assemblyPreload(STEEL, 0.9).warnings().get(0).code());
    TorqueBand t = NUT.torque(kN(20));
    assertEquals(
        "20 kN on " + NUT + ": torque " + t.leastTorque() + " … " + t.greatestTorque(), t.toString());
    assertEquals("friction-unusual", NUT.friction(0.02, 0.1).torque(kN(20)).warnings().get(0).code());
    ChartTorque chart = new ChartTorque(NUT, Nm(60));
    assertEquals(
        "60 N·m on M18x1.5: oiled " + chart.oiled().leastPreload() + " … " + chart.oiled().greatestPreload() + ", as delivered "
            + chart.asDelivered().leastPreload() + " … " + chart.asDelivered().greatestPreload(),
        chart.toString());
    assertEquals("tool ± 5 %", Scatter.of(0.05).toString());
  }

  @Test
  void facesAreRings() {
    BearingFace uniform = BearingFace.ofUniformPressure(mm(20), mm(10));
    // (2/3)·(8000 − 1000)/(400 − 100)
    assertEquals(140.0 / 9, uniform.frictionDiameter().mm(), 1e-12);
    assertEquals("face 20 mm / 10 mm", uniform.toString());
    InputException e = assertThrows(InputException.class, () -> new BearingFace(mm(18), mm(18), mm(18)));
    assertEquals("outer face diameter dW", e.parameter());
  }

  @Test
  void limitsOfTheUserAreOverNothing() {
    WindowRules usual = WindowRules.usual();
    assertEquals("greatest face pressure", assertThrows(InputException.class, () -> usual.facePressure(MPa(0))).parameter());
    assertEquals("greatest preload", assertThrows(InputException.class, () -> usual.greatestPreload(kN(0))).parameter());
    assertEquals("maker's maximum torque", assertThrows(InputException.class, () -> usual.makersMaximum(Nm(0))).parameter());
  }

  @Test
  void demandNamesWhatGoverns() {
    JointDemand d = JointDemand.ofClamp(kN(2)).moment(Nm(100), mm(30), mm(0)).slip(kN(1), 0.1);
    // 8·M/D = 26 667 N against the moment, with the clamp force 28 667 N; slip needs 10 000 N.
    List<Step> steps = d.explain().steps();
    assertEquals(2000 + 8 * 100_000.0 / 30, steps.get(steps.size() - 2).value(), 1e-9);
    assertEquals("required preload " + d.requiredPreload() + " against opening of the joint", d.toString());
  }

  @Test
  void jointsPrintTheirResiliences() {
    Joint joint = Joint.of(NUT, mm(40), mm(60), mm(18));
    assertEquals(
        "joint of M18x1.5: δS " + rounded(joint.studResilience()) + " nm/N, δP " + rounded(joint.partResilience()) + " nm/N",
        joint.toString());
    // A stud without head lacks l/(E·A) of half its diameter.
    double head = 9 / (205_000 * Math.PI / 4 * 18 * 18);
    assertEquals(joint.studResilience() - head, joint.head(mm(0)).studResilience(), 1e-15);
    Joint tapped = joint.moduli(MPa(205_000), MPa(70_000)).tappedHole();
    Joint steel = joint.tappedHole();
    double difference = 0.33 * 18 / (Math.PI / 4 * 18 * 18) * (1 / 70_000.0 - 1 / 205_000.0);
    assertEquals(difference, tapped.studResilience() - steel.studResilience(), 1e-15);
    assertEquals(List.of("resilience-recalled"), joint.warnings().stream().map(w -> w.code()).toList());
    Joint.Piece whole = new Joint.Piece(StudSection.thread(NUT.thread(), mm(0)), mm(40));
    assertEquals(1, joint.pieces(whole).warnings().size());
    assertEquals(2, joint.pieces(whole, whole).warnings().size());
  }

  private static String rounded(double millimetresPerNewton) {
    return new BigDecimal(millimetresPerNewton * 1e6).round(new MathContext(4)).stripTrailingZeros()
        .toPlainString();
  }
}
