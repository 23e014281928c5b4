// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Seats at work and in assembly, and the stud in its seat: hand-computed results and ends of ranges. */
class SeatAtWorkTest {
  private static final Material STEEL =
      Material.named("test steel", SourceRef.derived("invented for a test"))
          .kind(MaterialGroup.STEEL, Ductility.DUCTILE)
          .elastic(MPa(210_000), 0.3)
          .expansion(umPerMK(10))
          .density(7800)
          .yieldStrength(MPa(400))
          .build();
  private static final Material LIGHT =
      Material.named("light", SourceRef.derived("invented for a test"))
          .elastic(MPa(210_000), 0.3)
          .expansion(umPerMK(20))
          .yieldStrength(MPa(40))
          .build();

  private static final Material FIRM =
      Material.named("firm", SourceRef.derived("invented for a test"))
          .elastic(MPa(210_000), 0.3)
          .expansion(umPerMK(20))
          .yieldStrength(MPa(400))
          .build();

  /** 30 mm, ring of 60 mm, moduli as of one material: p = 2625 MPa/mm · U. */
  private static InterferenceFit fit(Material housing) {
    return InterferenceFit.of(
            InnerPart.solid(STEEL), OuterPart.ring(housing, mm(60)), InterferenceBand.of(mm(30), um(12), um(20)), mm(30))
        .withSmoothing(RoughnessRule.NONE);
  }

  @Test
  void warmthTakesInterferenceByHand() {
    // 30 mm · (10 · 30 - 20 · 20)e-6 = -3 µm.
    ServiceState warm = fit(FIRM).atWork(degC(50), degC(40));
    assertEquals(0.009, warm.interference().least().mm(), 1e-15);
    assertEquals(0.017, warm.interference().greatest().mm(), 1e-15);
    assertEquals(0.009 * 2625, warm.pressure().least().base(), 1e-10);
    assertEquals(9, warm.explain().steps().get(0).value(), 1e-12);
    assertEquals(2, warm.explain().steps().size());
    assertFalse(warm.explain().toString().contains("loss at speed"));
    assertEquals(20 + 0.012 / (30 * 10e-6), warm.lossTemperature().orElseThrow().celsius(), 1e-9);
    assertEquals(-0.017 * 2625, warm.stresses().get(2).radial().base(), 1e-10);
    assertEquals(0.1 * 0.009 * 2625 * 900 * Math.PI, warm.holding(FrictionBand.of(0.1, 0.2)).axialForce().least().base(), 1e-6);
    assertEquals(
        "stud at 50 °C, housing at 40 °C: interference " + warm.interference() + ", pressure " + warm.pressure(),
        warm.toString());
  }

  @Test
  void warningsAtWork() {
    assertEquals(List.of(), codes(fit(STEEL).atWork(degC(150), degC(150))));
    assertEquals(List.of("warm"), codes(fit(STEEL).atWork(degC(150.1), degC(150))));
    assertEquals(List.of("warm"), codes(fit(STEEL).atWork(degC(150), degC(150.1))));
    // Yield 40 MPa: the housing is past its limit even cold, 40 · 0.75/√(3 + 1/16) = 17 MPa.
    assertEquals(List.of("housing-limit-at-work"), codes(fit(LIGHT).atWork(degC(20), degC(20))));
    // -15 µm: the tightest pair keeps 5 µm, 13 MPa; -21 µm: none.
    assertEquals(List.of("loosest-pair-loose-at-work"), codes(fit(FIRM).atWork(degC(70), degC(70))));
    // A bore that yielded while the stud went in springs back less: no pair keeps its grip.
    assertEquals(List.of("loose-at-work"), codes(fit(LIGHT).atWork(degC(70), degC(70))));
    assertEquals(List.of("loose-at-work"), codes(fit(LIGHT).atWork(degC(90), degC(90))));
    // The stud grows more: at no temperature that exists is the grip lost.
    InterferenceFit reversed =
        InterferenceFit.of(
                InnerPart.solid(LIGHT), OuterPart.ring(STEEL, mm(60)), InterferenceBand.of(mm(30), um(90), um(95)), mm(30))
            .withSmoothing(RoughnessRule.NONE);
    assertTrue(reversed.atWork(degC(20), degC(20)).lossTemperature().isEmpty());
    InterferenceFit little =
        new InterferenceFit(
            reversed.stud(), reversed.housing(), InterferenceBand.of(mm(30), um(9), um(95)), mm(30), RoughnessRule.NONE);
    assertEquals(-10, little.atWork(degC(20), degC(20)).lossTemperature().orElseThrow().celsius(), 1e-9);
    InterferenceFit loose =
        new InterferenceFit(
            reversed.stud(), reversed.housing(), InterferenceBand.of(mm(30), um(-9), um(95)), mm(30), RoughnessRule.NONE);
    assertTrue(loose.atWork(degC(20), degC(20)).lossTemperature().isEmpty());
  }

  @Test
  void rotationTakesInterferenceByHand() {
    // Like materials, solid stud: the loss is D ρω² (3 + ν) c²/(4E), c = 30 mm, at 30000 rpm.
    double rim = 7800 * Math.pow(1000 * Math.PI, 2) * 1e-12;
    double loss = 30 * rim * 3.3 * 900 / (4 * 210_000);
    ServiceState state = fit(STEEL).atWork(degC(20), degC(20), rpm(30_000));
    assertEquals(0.012 - loss, state.interference().least().mm(), 1e-14);
    assertEquals(0.020 - loss, state.interference().greatest().mm(), 1e-14);
    assertEquals(rim * (3.3 * 900 + 0.7 * 225) / 4, state.rotationHoop().base(), 1e-9);
    assertEquals(3, state.explain().steps().size());
    assertEquals(loss * 1000, state.explain().steps().get(1).value(), 1e-11);
    assertTrue(state.explain().steps().get(0).toString().contains("loss at speed"));
    refused("density of light", "stated", () -> fit(LIGHT).atWork(degC(20), degC(20), rpm(100)));
  }

  @Test
  void assemblyByHand() {
    InterferenceFit fit = fit(STEEL);
    // (20 + 30) µm over 10e-6 · 30 mm: 166.67 K above the room; the clearance is a thousandth of the joint.
    ThermalAssembly heat = fit.thermalAssembly().build();
    assertEquals(20 + 500 / 3.0, heat.housingTemperature().celsius(), 1e-9);
    assertEquals(um(30).mm(), heat.clearance().mm(), 1e-15);
    assertEquals(heat.advice(), heat.toString());
    assertEquals(
        "Heat the housing to " + heat.housingTemperature() + " with the stud at 20 °C.", heat.advice());
    TemperatureCeiling exact = new TemperatureCeiling("trial", heat.housingTemperature(), SourceRef.derived("invented"));
    assertTrue(fit.thermalAssembly().ceiling(exact).build().withinCeilings());
    assertTrue(fit.thermalAssembly().ceiling(exact).build().warnings().isEmpty());
    TemperatureCeiling low = new TemperatureCeiling("low", degC(186), SourceRef.derived("invented"));
    ThermalAssembly over = fit.thermalAssembly().ceiling(exact).ceiling(low).build();
    assertFalse(over.withinCeilings());
    assertEquals(low, over.governingCeiling().orElseThrow());
    assertEquals(List.of("above-ceiling"), codes(over));
    assertTrue(
        over.advice().startsWith(
            "Heating alone is no way out: it takes " + heat.housingTemperature() + ", above low: 186 °C. "));
    assertEquals("low: 186 °C", low.toString());
    assertTrue(fit(LIGHT).thermalAssembly().build().withinCeilings());
    assertEquals(List.of("ceiling-unknown"), codes(fit(LIGHT).thermalAssembly().build()));
    // At its floor a cold stud is still permitted.
    assertEquals(List.of(), codes(fit.thermalAssembly().studAt(degC(-40)).studFloor(degC(-40)).build()));
    assertEquals(List.of("below-floor"), codes(fit.thermalAssembly().studAt(degC(-40.1)).studFloor(degC(-40)).build()));
    assertEquals(120, TemperatureCeiling.completeBearing().limit().celsius());
    assertEquals(80, TemperatureCeiling.sealedOrGreasedBearing().limit().celsius());
    String text = fit.thermalAssembly().studAt(degC(-40)).build().explain().toString();
    assertTrue(text.contains("mean contraction of its group on cooling"), text);
    assertTrue(heat.explain().toString().contains("as given for the material"));
    assertEquals(20, heat.explain().steps().get(0).value(), 1e-12);
    assertEquals(10, heat.explain().steps().get(1).value(), 1e-12);
    refused("assembly clearance", "0 mm or more", () -> fit.thermalAssembly().clearance(um(-1)));
    assertEquals(20 + 200 / 3.0, fit.thermalAssembly().clearance(um(0)).build().housingTemperature().celsius(), 1e-9);
  }

  @Test
  void tiltOfTheStudByHand() {
    SeatTilt tilt = SeatTilt.of(um(30), mm(20), mm(30)).clampedFace(um(20), mm(20)).build();
    assertEquals(Math.atan(0.001), tilt.byFaces().radian(), 1e-15);
    assertTrue(tilt.byClearance().radian() > tilt.byFaces().radian());
    assertEquals(List.of(), codes(tilt));
    assertEquals("tilt " + tilt.total() + " with the nut tight, " + tilt.totalIfLoose() + " if it comes loose", tilt.toString());
    SeatTilt free = SeatTilt.of(um(30), mm(20), mm(30)).bending(mrad(2)).build();
    assertEquals("tilt " + free.total(), free.toString());
    assertEquals(free.byClearance().radian() + 0.002, free.totalIfLoose().radian(), 1e-15);
    assertEquals(List.of("not-clamped"), codes(free));
    assertEquals(List.of(), codes(SeatTilt.of(um(0), mm(20), mm(30)).build()));
    List<Double> steps = free.explain().steps().stream().map(step -> step.value()).toList();
    assertEquals(List.of(free.byClearance().radian() * 1000, 0.0, 2.0), steps.subList(0, 3));
    assertTrue(tilt.explain().toString().contains("φ_f + φ_b") && free.explain().toString().contains("φ_s + φ_b"));
    assertEquals(1e-3 * 1000, tilt.explain().steps().get(1).value(), 1e-6);
    // Faces that lean as far as the fit leaves free bend nothing.
    SeatTilt even = new SeatTilt(um(30), mm(20), mm(30), true, mrad(1), mrad(1), mrad(0));
    assertEquals(List.of(), codes(even));
    refused("slope by bending", "0 rad or more", () -> SeatTilt.of(um(1), mm(20), mm(30)).bending(mrad(-1)));
  }

  @Test
  void concentrationAndFatigueOfAStud() {
    StudConcentration groove = new StudConcentration(StudNotch.GROOVE, StudNotch.Loading.BENDING, mm(20), mm(16), mm(1));
    List<Double> steps = groove.explain().steps().stream().map(step -> step.value()).toList();
    assertEquals(2, steps.get(0), 1e-15);
    assertEquals(0.2, steps.get(1), 1e-15);
    // Rm 2070: a = 0.0254 mm (memory): Kf = 1 + (Kt - 1)/(1 + 0.0254).
    assertEquals(1 + (groove.factor() - 1) / 1.0254, groove.fatigueFactor(MPa(2070)), 1e-14);
    refused("tensile strength Rm", "from 550 MPa", () -> StudNotchKernel.materialLength(549));
    assertEquals(0.0254 * Math.pow(2070 / 550.0, 1.8), StudNotchKernel.materialLength(550), 1e-14);
    refused("stress concentration Kt", "1 or more", () -> StudNotchKernel.fatigueFactor(0.99, 1, 1));
    refused("notch radius r", "over 0 mm", () -> StudNotchKernel.fatigueFactor(1, 0, 1));
    refused("material length a", "0 mm or more", () -> StudNotchKernel.fatigueFactor(1, 1, -1));
    refused("notch radius r", "over 0 mm", () -> StudNotchKernel.depthOverRadius(20, 16, 0));
    refused("smaller diameter d", "over 0 mm", () -> StudNotchKernel.depthOverRadius(20, 0, 1));
    assertEquals("groove", StudNotch.GROOVE.toString());
    // Straight lines and parabola at σa/σe = 1/4, σm/Rm = 1/2: 4/3, and n/4 + n²/4 = 1.
    assertEquals(4.0 / 3, StudFatigueKernel.goodman(50, 300, 200, 600), 1e-15);
    assertEquals(4.0 / 3, StudFatigueKernel.soderberg(50, 300, 200, 600), 1e-15);
    assertEquals((Math.sqrt(17) - 1) / 2, StudFatigueKernel.gerber(50, 300, 200, 600), 1e-14);
    // Pressure in the mean neither helps nor harms.
    assertEquals(4, StudFatigueKernel.goodman(50, -300, 200, 600));
    assertEquals(600 / 350.0, StudFatigueKernel.firstYield(50, -300, 600), 1e-15);
    refused("stress amplitude σa", "0 MPa or more", () -> StudFatigueKernel.goodman(-1, 1, 1, 1));
    refused("endurance limit σe", "over 0 MPa", () -> StudFatigueKernel.gerber(1, 1, 0, 1));
    refused("tensile strength Rm", "over 0 MPa", () -> StudFatigueKernel.gerber(1, 1, 1, 0));
    refused("yield strength Re", "over 0 MPa", () -> StudFatigueKernel.soderberg(1, 1, 1, 0));
    refused("amplitude plus tensile mean stress", "over 0 MPa", () -> StudFatigueKernel.goodman(0, -1, 1, 1));
    refused("stress amplitude σa", "0 MPa or more", () -> StudFatigueKernel.firstYield(-1, 1, 1));
    refused("yield strength Re", "over 0 MPa", () -> StudFatigueKernel.firstYield(1, 1, 0));
  }

  @Test
  void fatigueOfAPressedStudIsWarnedOf() {
    ShankSection section = ShankSection.solid(mm(10));
    StudLoad load = StudLoad.radial(N(1000), mm(20), mm(5)).tightened(N(5000), Nm(0));
    StudMaterial material = new StudMaterial(MPa(350), MPa(900), MPa(700));
    StudStrength pressed = StudStrength.of(section, load).pressed(MPa(50));
    assertEquals(List.of("fretting-at-mouth"),
        codes(pressed.fatigue(StudDuty.REVERSED, 2.58, material, StudFatigueCriterion.GOODMAN)));
    assertEquals(List.of(), codes(pressed.fatigue(StudDuty.REPEATED, 2.59, material, StudFatigueCriterion.GOODMAN)));
    assertEquals(List.of(), codes(pressed.fatigue(StudDuty.STATIC, 1, material, StudFatigueCriterion.GOODMAN)));
    StudFatigue plain = StudStrength.of(section, load).fatigue(StudDuty.REPEATED, 2, material, StudFatigueCriterion.GERBER);
    assertEquals(List.of(), codes(plain));
    // 15 Nm on π 10³/32: 480/π MPa; half of it swings, times the notch factor 2.
    assertEquals(480 / Math.PI, plain.amplitude().megapascal(), 1e-9);
    assertEquals(240 / Math.PI + 200 / Math.PI, plain.mean().megapascal(), 1e-9);
    assertEquals(700 / (920 / Math.PI), plain.yieldMargin(), 1e-12);
    assertTrue(plain.explain().toString().contains("n σA/σe + (n σm/Rm)² = 1"));
    StudFatigue goodman = StudStrength.of(section, load).fatigue(StudDuty.STATIC, 2, material, StudFatigueCriterion.GOODMAN);
    assertEquals(0, goodman.amplitude().megapascal());
    assertEquals(680 / Math.PI, goodman.mean().megapascal(), 1e-9);
    assertEquals(900 / (680 / Math.PI), goodman.haighMargin(), 1e-12);
    assertTrue(goodman.explain().toString().contains("1/(σA/σe + σm/Rm)"));
    refused("bending plus preload stress", "over 0 MPa",
        () -> StudStrength.of(section, StudLoad.radial(N(0), mm(20), mm(5)))
            .fatigue(StudDuty.STATIC, 1, material, StudFatigueCriterion.GOODMAN));
  }

  @Test
  void strengthOfAStudByHand() {
    // d = 10: A = 25π, W = 1000π/32; arm 15 mm.
    ShankSection section = ShankSection.solid(mm(10));
    StudStrength strength = StudStrength.of(section, StudLoad.radial(N(1000), mm(20), mm(5)).tightened(N(5000), Nm(5)));
    assertEquals(480 / Math.PI, strength.bending().megapascal(), 1e-9);
    assertEquals(200 / Math.PI, strength.axial().megapascal(), 1e-9);
    assertEquals(80 / Math.PI, strength.torsion().megapascal(), 1e-9);
    assertEquals(4.0 / 3 * 40 / Math.PI, strength.shear().megapascal(), 1e-9);
    double fibre = Math.sqrt(680 * 680 + 3 * 80 * 80) / Math.PI;
    assertEquals(fibre, strength.equivalent().megapascal(), 1e-9);
    assertEquals(2, strength.margin(MPa(1360 / Math.PI)), 1e-12);
    assertEquals(1000, strength.radialLoadAt(MPa(680 / Math.PI)).base(), 1e-9);
    assertEquals(0, strength.radialLoadAt(strength.axial()).base());
    assertEquals(List.of(), codes(strength));
    assertEquals(15_000, strength.explain().steps().get(0).value(), 1e-10);
    assertEquals(1000 * Math.PI / 32, strength.explain().steps().get(1).value(), 1e-12);
    // The arm of one diameter is not short.
    assertEquals(List.of(), codes(StudStrength.of(section, StudLoad.radial(N(1), mm(10), mm(5)))));
    assertEquals(List.of("short-stud"), codes(StudStrength.of(section, StudLoad.radial(N(1), mm(9.9), mm(5)))));
    // Without bending the neutral axis governs: √(σa² + 3 (τ + τt)²), here an arm of 0.1 mm.
    StudStrength sheared = StudStrength.of(section, StudLoad.radial(N(1000), mm(0.2), mm(0)));
    assertEquals(Math.sqrt(3) * 160 / 3 / Math.PI, sheared.equivalent().megapascal(), 1e-9);
    refused("arm B/2 + g", "over 0 mm", () -> StudStrength.of(section, StudLoad.radial(N(1), mm(0), mm(0))).radialLoadAt(MPa(1)));
    refused("bending plus preload stress", "over 0 MPa",
        () -> StudStrength.of(section, StudLoad.radial(N(0), mm(20), mm(5))).margin(MPa(1)));
    refused("allowable stress", "0 MPa or more", () -> strength.margin(MPa(-1)));
    assertEquals("stud 10 mm", section.toString());
    assertEquals("stud 10 mm, bore 2 mm, cross hole 1 mm", ShankSection.drilled(mm(10), mm(2)).crossDrilled(mm(1)).toString());
    assertTrue(strength.explain().toString().contains("π d³ (1 - (di/d)⁴)/32"));
    StudStrength drilled = StudStrength.of(section.crossDrilled(mm(1)), StudLoad.radial(N(1), mm(20), mm(5)));
    assertTrue(drilled.explain().toString().contains("dh (d³"));
  }

  private static List<String> codes(Traced result) {
    return result.warnings().stream().map(Warning::code).toList();
  }

  private static void refused(String parameter, String permitted, org.junit.jupiter.api.function.Executable call) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.parameter().startsWith(parameter), e::getMessage);
    assertTrue(e.permitted().startsWith(permitted), e::getMessage);
  }
}
