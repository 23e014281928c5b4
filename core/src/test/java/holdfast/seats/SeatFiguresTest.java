// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Step;
import org.junit.jupiter.api.Test;

/** Typed figures of seats and studs against closed forms and integrals of the bending moment. */
class SeatFiguresTest {
  private static final Material STEEL = Material.of("C45+N");
  private static final double EI = STEEL.elasticModulus().megapascal() * Math.PI / 64 * (16 * 16 * 16 * 16 - 4 * 4 * 4 * 4);

  private static double step(Derivation derivation, String symbol) {
    return derivation.steps().stream().filter(step -> step.symbol().equals(symbol)).mapToDouble(Step::value).findFirst().orElseThrow();
  }

  @Test
  void theFreePartBendsAsItsMomentSays() {
    StudDeflection stud =
        StudDeflection.of(
            ShankSection.drilled(mm(16), mm(4)), StudLoad.radial(N(4000), mm(18), mm(0.8)), STEEL, mm(20));
    // w = ∫ M (x - s) ds/(EI) up to x = g + B/2, with M = F (B/2 + g - s) before the load and F (B + g - s)²/(2B) under it.
    double x = 9.8;
    int n = 20000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double s = x * (i + 0.5) / n;
      double moment = s < 0.8 ? 4000 * (9.8 - s) : 4000 * (18.8 - s) * (18.8 - s) / 36;
      sum += moment * (x - s) * x / n;
    }
    assertEquals(sum / EI, stud.byBending().mm(), 1e-7 * sum / EI);
    assertEquals(0, stud.bySeat().mm());
    assertEquals(0, stud.seatSlope().radian());
    assertEquals(stud.byBending().mm() + stud.byShear().mm(), stud.deflection().mm(), 1e-15);
    assertEquals(EI, step(stud.explain(), "EI"), 1e-9 * EI);
  }

  @Test
  void aLongElasticSeatYieldsAsABeamWithoutEnd() {
    // Beam on elastic foundation from 0 to infinity: y0 = (2λ/c)(F + λ F a), θ0 = (2λ²/c)(F + 2λ F a), λ = (c/4EI)^(1/4).
    double c = 100_000;
    double lambda = Math.pow(c / (4 * EI), 0.25);
    double a = 9.8;
    StudDeflection stud =
        StudDeflection.of(
                ShankSection.drilled(mm(16), mm(4)), StudLoad.radial(N(4000), mm(18), mm(0.8)), STEEL, mm(250))
            .onFoundation(MPa(c));
    double y0 = 2 * lambda / c * 4000 * (1 + lambda * a);
    double slope = 2 * lambda * lambda / c * 4000 * (1 + 2 * lambda * a);
    assertEquals(slope, stud.seatSlope().radian(), 1e-10 * slope);
    assertEquals(y0 + slope * a, stud.bySeat().mm(), 1e-10 * y0);
    assertEquals(stud.bendingSlope().radian() + slope, stud.tilt().radian(), 1e-10 * slope);
  }

  @Test
  void notchFactorsAreThoseOfTheFormulas() {
    // Stepped shaft in bending, x = t/r = 1 and u = 2t/D = 0.5: the recalled constants added up by hand.
    double kt = (0.947 + 1.206 - 0.131) + 0.5 * (0.022 - 3.405 + 0.915) + 0.25 * (0.869 + 1.777 - 0.555)
        + 0.125 * (-0.810 + 0.422 - 0.260);
    assertEquals(kt, StudNotchKernel.concentration(StudNotch.FILLET, StudNotch.Loading.BENDING, 20, 10, 5), 1e-12);
    // The same for sharper fillets, from x = 2 on: x = 4.
    double sharp = (1.232 + 2 * 0.832 - 4 * 0.008) + 0.5 * (-3.813 + 2 * 0.968 - 4 * 0.260) + 0.25 * (7.423 - 2 * 4.868 + 4 * 0.869)
        + 0.125 * (-3.839 + 2 * 3.070 - 4 * 0.600);
    assertEquals(sharp, StudNotchKernel.concentration(StudNotch.FILLET, StudNotch.Loading.BENDING, 20, 10, 1.25), 1e-12);
    // The ends of the range belong to it: x = 0.1 and x = 20.
    assertTrue(StudNotchKernel.isValid(StudNotch.FILLET, StudNotch.Loading.BENDING, 20, 10, 50));
    assertTrue(StudNotchKernel.isValid(StudNotch.FILLET, StudNotch.Loading.BENDING, 20, 10, 0.25));
    // 1 + (3 - 1)/(1 + 0.5/2).
    assertEquals(2.6, StudNotchKernel.fatigueFactor(3, 2, 0.5), 1e-15);
  }

  @Test
  void equalExpansionNeverLosesAFit() {
    assertEquals(Double.POSITIVE_INFINITY, ThermalSeatKernel.lossTemperature(0, 20, 11e-6, 11e-6));
    assertEquals(Double.POSITIVE_INFINITY, ThermalSeatKernel.lossTemperature(0.02, 20, 11e-6, 11e-6));
  }

  @Test
  void assemblyTemperaturesShowTheirSteps() {
    InterferenceFit fit = InterferenceFit.of(InnerPart.solid(STEEL), OuterPart.ring(Material.of("2014-T6"), mm(120)),
        InterferenceBand.of(mm(60), um(1), um(50)), mm(60));
    Derivation warm = fit.thermalAssembly().room(degC(30)).clearance(um(10)).build().explain();
    // 50 µm + 60 mm (11.5 - 23) µm/(m·K) 10 K.
    assertEquals(50 - 6.9, step(warm, "U_R"), 1e-9);
    assertEquals(11.5, step(warm, "α_I"), 1e-12);
    assertTrue(warm.toString().contains("as given for the material") && !warm.toString().contains("contraction"));
    assertTrue(warm.toString().contains("S = 10 µm") && warm.toString().contains("U = 50 µm"), warm::toString);
    assertTrue(warm.toString().contains("α_A = 23 µm/(m·K)"), warm::toString);
    Derivation cold = fit.thermalAssembly().studAt(degC(-78)).build().explain();
    assertEquals(8.5, step(cold, "α_I"), 1e-12);
    assertTrue(cold.toString().contains("mean contraction of its group on cooling"));
    assertTrue(fit.thermalAssembly().studAt(degC(20)).build().explain().toString().contains("as given for the material"));
  }

  @Test
  void dryIceIsNamedWhereItReaches() {
    InterferenceFit fit = InterferenceFit.of(InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(120)),
        InterferenceBand.of(mm(60), um(1), um(38)), mm(60));
    ThermalAssembly heat =
        fit.thermalAssembly().ceiling(TemperatureCeiling.sealedOrGreasedBearing()).clearance(um(10)).build();
    // 48 µm over 60 mm at 8.5 µm/(m·K): 94.1 K down from 20 °C.
    assertEquals(20 - 0.048 / (8.5e-6 * 60), heat.coolingTemperature(), 1e-9);
    assertTrue(heat.advice().contains(", which dry ice reaches."), heat.advice());
  }

  @Test
  void refusalsNameTheNumbers() {
    InputException chamfers = assertThrows(InputException.class, () -> SeatGeometryKernel.engagedLength(30, 20, 12));
    assertEquals("32 mm", chamfers.value());
    // (2 · 3 + 2) 2 = 4².
    InputException seat = assertThrows(InputException.class, () -> SeatGeometryKernel.clearanceTilt(2, 3, 3.9));
    assertEquals("at least 4 mm", seat.permitted());
  }

  @Test
  void theDerivationOfAFitShowsItsNumbers() {
    InnerPart stud = InnerPart.hollow(STEEL, mm(10)).withRoughness(um(2));
    InterferenceBand band = InterferenceBand.of(mm(20), um(10), um(50));
    InterferenceFit fit = InterferenceFit.of(stud, OuterPart.ring(STEEL, mm(40)).withRoughness(um(4)), band, mm(20));
    double e = STEEL.elasticModulus().megapascal();
    double nu = STEEL.poissonRatio();
    Derivation steps = fit.explain();
    double loss = fit.smoothingLoss().mm() * 1000;
    assertTrue(loss > 0 && loss < 10);
    assertEquals(loss, step(steps, "G"), 1e-12);
    assertEquals(50 - loss, step(steps, "U_w"), 1e-9);
    // (1 + Q²)/(1 - Q²) = 5/3 for both parts.
    assertEquals((5.0 / 3 - nu) / e * 1e6, step(steps, "K_I"), 1e-12);
    assertEquals((5.0 / 3 + nu) / e * 1e6, step(steps, "K_A"), 1e-12);
    assertEquals((50 - loss) / 1000 / (20 * (10.0 / 3) / e), step(steps, "p"), 1e-9);
    String text = steps.toString();
    for (String part : new String[] {"Rz_A = 4 µm", "Rz_I = 2 µm", "U = 50 µm", "d_I = 10 mm", "D = 20 mm", "D_A = 40 mm"}) {
      assertTrue(text.contains(part), part + " in " + text);
    }
    String wide = InterferenceFit.of(stud, OuterPart.wide(STEEL), band, mm(20)).explain().toString();
    assertTrue(wide.contains("D_A = infinite (wide plate)"), wide);
    // Lamé: 2u = -4 p a b²/(E(b² - a²)) at the hole of a ring under outer pressure, a = 5, b = 10.
    double p = fit.pressure().greatest().megapascal();
    assertEquals(-4 * p * 5 * 100 / (e * 75), fit.displacements().hole().mm(), 1e-12);
  }

  @Test
  void atStandstillNoDensityIsAskedFor() {
    Material bare = Material.named("casting", SourceRef.commonPractice("invented")).elastic(GPa(100), 0.25)
        .expansion(umPerMK(10)).build();
    InterferenceFit fit =
        InterferenceFit.of(InnerPart.solid(STEEL), OuterPart.ring(bare, mm(40)), InterferenceBand.of(mm(20), um(10), um(20)), mm(20));
    assertEquals(0, fit.atWork(degC(20), degC(20)).rotationHoop().megapascal());
  }
}
