// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static holdfast.quantity.Units.umPerMK;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Fit;
import holdfast.fits.LimitDeviations;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.tables.SourceRef;
import java.util.List;
import org.junit.jupiter.api.Test;

class InterferenceFitTest {
  private static final Material STEEL =
      Material.named("test steel", SourceRef.derived("invented for a test"))
          .kind(MaterialGroup.STEEL, Ductility.DUCTILE)
          .elastic(MPa(210_000), 0.3)
          .expansion(umPerMK(11.5))
          .yieldStrength(MPa(400))
          .build();

  private static InterferenceFit fit(double least, double greatest) {
    return InterferenceFit.of(
        InnerPart.hollow(STEEL, mm(6)), OuterPart.ring(STEEL, mm(60)), InterferenceBand.of(
            mm(30), um(least), um(greatest)), mm(30));
  }

  @Test
  void pressureComesFromTheInterferenceOfTheFit() {
    Fit h7p6 =
        new Fit(mm(25), "H7/p6", new LimitDeviations(um(0), um(21)), new LimitDeviations(um(22), um(35)));
    InterferenceFit seat = InterferenceFit.of(InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(50)), h7p6, mm(30));
    // Like materials, solid stud: p = E·U/D·(1-Q²)/2.
    assertEquals(210_000 * 0.035 / 25 * (1 - 0.25) / 2, seat.pressure().greatest().base(), 1e-9);
    assertEquals(210_000 * 0.001 / 25 * (1 - 0.25) / 2, seat.pressure().least().base(), 1e-9);
  }

  @Test
  void smoothingTakesInterferenceByTheChosenRule() {
    InnerPart stud = InnerPart.solid(STEEL).withRoughness(um(6.3));
    OuterPart housing = OuterPart.ring(STEEL, mm(60)).withRoughness(um(10));
    InterferenceFit seat = InterferenceFit.of(stud, housing, InterferenceBand.of(mm(30), um(20), um(40)), mm(30));
    assertEquals(0.4 * 16.3, seat.smoothingLoss().mm() * 1000, 1e-9);
    assertEquals(
        20 - 0.8 * 16.3, seat.withSmoothing(RoughnessRule.DIN_7190_2001).effectiveInterference().least().mm() * 1000, 1e-9);
    assertEquals(40, seat.withSmoothing(RoughnessRule.NONE).effectiveInterference().greatest().mm() * 1000, 1e-9);
  }

  @Test
  void stressesAtTheCriticalRadiiFollowTheBoundaryValues() {
    InterferenceFit seat = fit(10, 20);
    double p = seat.pressure().greatest().base();
    List<CriticalStress> stresses = seat.stresses();
    assertEquals(4, stresses.size());
    assertEquals(0, stresses.get(0).radial().base(), 1e-9);
    assertEquals(-2 * p / (1 - 0.04), stresses.get(0).hoop().base(), 1e-9);
    assertEquals(-p, stresses.get(1).radial().base(), 1e-9);
    assertEquals(-p * 1.04 / 0.96, stresses.get(1).hoop().base(), 1e-9);
    assertEquals(p * 1.25 / 0.75, stresses.get(2).hoop().base(), 1e-9);
    assertEquals(p * Math.sqrt(3 + 0.0625) / 0.75, stresses.get(2).vonMises().base(), 1e-9);
    assertEquals(2 * p / 0.75, stresses.get(2).tresca().base(), 1e-9);
    assertEquals(2 * p * 0.25 / 0.75, stresses.get(3).hoop().base(), 1e-9);
  }

  @Test
  void displacementsAddUpToTheInterference() {
    FitDisplacements change = fit(10, 20).displacements();
    assertEquals(0.020, change.bore().mm() - change.stud().mm(), 1e-12);
    assertTrue(change.hole().mm() < 0);
    assertTrue(change.outside().mm() > 0);
  }

  @Test
  void pressingForceRunsFromTheLoosestToTheTightestPair() {
    InterferenceFit seat = fit(10, 20);
    Band<holdfast.quantity.Force> force = seat.pressInForce(FrictionBand.of(0.1, 0.2));
    assertEquals(
        force.least().text(KnownUnits.LBF, 1) + " … " + force.greatest().text(KnownUnits.LBF, 1), force.text(KnownUnits.LBF, 1));
    assertEquals(0.1 * seat.pressure().least().base() * Math.PI * 900, force.least().base(), 1e-6);
    assertEquals(0.2 * seat.pressure().greatest().base() * Math.PI * 900, force.greatest().base(), 1e-6);
  }

  @Test
  void heatingOpensTheTightestPairWithTheAssemblyClearance() {
    assertEquals(20 + (0.020 + 0.030) / (11.5e-6 * 30), fit(10, 20).heatingTemperature().celsius(), 1e-9);
  }

  @Test
  void theLastStepIsTheResult() {
    InterferenceFit seat = fit(10, 20);
    assertEquals(seat.pressure().greatest().base(), seat.explain().result().value(), 0);
    Pressing pressing = seat.pressing(FrictionBand.general());
    assertEquals(pressing.pressIn().greatest().base(), pressing.explain().result().value(), 0);
    ThermalAssembly heat = seat.thermalAssembly().build();
    assertEquals(heat.housingTemperature().celsius(), heat.explain().result().value(), 0);
  }

  @Test
  void warnsOfYieldAndOfALoosestPairWithoutGrip() {
    assertTrue(fit(-5, 20).warnings().stream().anyMatch(w -> w.code().equals("loosest-pair-without-grip")));
    assertTrue(fit(10, 90).warnings().stream().anyMatch(w -> w.code().equals("housing-yields")));
  }

  @Test
  void refusesWhatIsNoInterferenceFit() {
    InputException clearance = assertThrows(InputException.class, () -> fit(-20, -5));
    assertEquals("greatest interference", clearance.parameter());
    InputException hole =
        assertThrows(
            InputException.class,
            () ->
                InterferenceFit.of(
                    InnerPart.hollow(STEEL, mm(30)), OuterPart.wide(STEEL), InterferenceBand.of(mm(30), um(1), um(2)), mm(30)));
    assertEquals("hole of the stud", hole.parameter());
    InputException housing =
        assertThrows(
            InputException.class,
            () ->
                InterferenceFit.of(
                    InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(30)), InterferenceBand.of(mm(30), um(1), um(2)), mm(30)));
    assertTrue(housing.permitted().contains("30 mm"), housing.getMessage());
    assertThrows(InputException.class, () -> InnerPart.solid(STEEL).withRoughness(um(-1)));
  }
}
