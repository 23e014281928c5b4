// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.N;
import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Fit;
import holdfast.fits.LimitDeviations;
import holdfast.fits.MeasuredFit;
import holdfast.fits.Readings;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Temperature, rotation, holding, and the way back from a load to an interference. */
class ServiceLawsTest {
  private static final Material STEEL = Material.of("C45+QT");
  private static final Material ALUMINIUM = Material.of("2014-T6");

  private static InterferenceFit fit(Material housing) {
    return InterferenceFit.of(
            InnerPart.hollow(STEEL, mm(6)), OuterPart.ring(housing, mm(60)), InterferenceBand.of(mm(30), um(15), um(30)), mm(30))
        .withSmoothing(RoughnessRule.NONE);
  }

  @Property
  void warmthAndInterferenceSuperpose(
      @ForAll @DoubleRange(min = -40, max = 120) double stud, @ForAll @DoubleRange(min = -40, max = 120) double housing) {
    double cold = ThermalSeatKernel.interferenceAt(0.03, 30, 11.5e-6, stud, 23e-6, housing);
    double only = ThermalSeatKernel.interferenceAt(0, 30, 11.5e-6, stud, 23e-6, housing);
    assertEquals(0.03 + only, cold, 1e-15);
    double p = ThickRingKernel.pressure(0.03, 30, 6, 60, 210_000, 0.3, 73_100, 0.35);
    double extra = only >= 0 ? ThickRingKernel.pressure(only, 30, 6, 60, 210_000, 0.3, 73_100, 0.35) : 0;
    if (only >= 0) {
      assertEquals(p + extra, ThickRingKernel.pressure(cold, 30, 6, 60, 210_000, 0.3, 73_100, 0.35), 1e-9);
    }
  }

  @Property
  void atTheLossTemperatureNothingIsLeft(@ForAll @DoubleRange(min = 1, max = 50) double micrometres) {
    double u = micrometres / 1000;
    double loss = ThermalSeatKernel.lossTemperature(u, 30, 11.5e-6, 23e-6);
    assertTrue(loss > 20);
    assertEquals(0, ThermalSeatKernel.interferenceAt(u, 30, 11.5e-6, loss, 23e-6, loss), 1e-12);
  }

  @Property
  void heatedToItsTemperatureTheHousingClearsTheStud(
      @ForAll @DoubleRange(min = 1, max = 50) double micrometres,
      @ForAll @DoubleRange(min = 0, max = 50) double gap,
      @ForAll @DoubleRange(min = -100, max = 20) double stud) {
    double u = micrometres / 1000;
    double clearance = gap / 1000;
    double housing = ThermalSeatKernel.housingTemperature(u, clearance, 30, 23e-6, 11.5e-6, 20, stud);
    assertEquals(-clearance, ThermalSeatKernel.interferenceAt(u, 30, 11.5e-6, stud, 23e-6, housing), 1e-12);
  }

  @Test
  void aSteelStudLosesItsGripInWarmAluminium() {
    InterferenceFit fit = fit(ALUMINIUM);
    ServiceState warm = fit.atWork(degC(80), degC(80));
    assertTrue(warm.pressure().least().base() < fit.pressure().least().base());
    assertEquals(0.015 - 30 * 11.5e-6 * 60, warm.interference().least().mm(), 1e-12);
    assertEquals(20 + 0.015 / (30 * 11.5e-6), warm.lossTemperature().orElseThrow().celsius(), 1e-9);
    assertEquals(warm.pressure().least().base(), warm.explain().result().value(), 0);
    assertEquals("loosest-pair-loose-at-work", warm.warnings().get(0).code());
    assertEquals("loose-at-work", fit.atWork(degC(140), degC(140)).warnings().get(0).code());
    assertTrue(fit.atWork(degC(-40), degC(-40)).pressure().least().base() > fit.pressure().least().base());
    assertTrue(fit(STEEL).atWork(degC(80), degC(80)).lossTemperature().isEmpty());
    assertThrows(InputException.class, () -> ThermalSeatKernel.lossTemperature(0.01, 30, 11e-6, Double.NaN));
    assertThrows(InputException.class, () -> ThermalSeatKernel.interferenceAt(0, 30, 1e-5, -274, 1e-5, 20));
  }

  @Test
  void rotationTakesInterferenceWithTheSquareOfTheSpeed() {
    InterferenceFit fit = fit(STEEL);
    ServiceState turning = fit.atWork(degC(20), degC(20), rpm(10_000));
    double loss = 0.015 - turning.interference().least().mm();
    ServiceState twice = fit.atWork(degC(20), degC(20), rpm(20_000));
    assertEquals(4 * loss, 0.015 - twice.interference().least().mm(), 1e-12);
    assertTrue(loss > 0 && turning.rotationHoop().base() > 0);
    assertEquals(0, fit.atWork(degC(20), degC(20)).rotationHoop().base(), 0);
    double perRpm = RotationKernel.interferenceLoss(30, 6, 60, 7850, 210_000, 0.3, 7850, 210_000, 0.3, 1);
    double speed = RotationKernel.lossSpeed(0.015, perRpm);
    assertEquals(0.015, RotationKernel.interferenceLoss(30, 6, 60, 7850, 210_000, 0.3, 7850, 210_000, 0.3, speed), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, RotationKernel.lossSpeed(0.015, 0), 0);
    InterferenceFit wide =
        InterferenceFit.of(
            InnerPart.solid(STEEL), OuterPart.wide(STEEL), InterferenceBand.of(mm(30), um(15), um(30)), mm(30));
    assertThrows(InputException.class, () -> wide.atWork(degC(20), degC(20), rpm(100)));
  }

  @Test
  void holdingCountsOnTheLoosestPairAndTheLeastAdhesion() {
    InterferenceFit fit = fit(STEEL);
    Holding holding = fit.holding(Adhesion.pressed(MaterialGroup.TEMPERED_STEEL, true));
    double p = fit.pressure().least().base();
    assertEquals(0.06 * p * Math.PI * 900, holding.axialForce().least().base(), 1e-9);
    assertEquals(holding.axialForce().least().base() * 15, holding.torque().least().base(), 1e-9);
    double force = holding.axialForce().least().base();
    assertEquals(1, holding.safety(N(force), Nm(0)), 1e-12);
    assertEquals(1 / Math.sqrt(2), holding.safety(N(force), holding.torque().least()), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, holding.safety(N(0), Nm(0)), 0);
    assertFalse(holding.turnsWhileTightened(holding.torque().least().times(0.99)));
    assertTrue(holding.turnsWhileTightened(holding.torque().least().times(1.01)));
    assertEquals(
        holding.torque().least().base(), holding.torqueToBeHeld(holding.torque().least().times(2)).base(), 1e-9);
    assertEquals(holding.torque().least().base(), holding.explain().result().value(), 0);
    assertThrows(InputException.class, () -> holding.turnsWhileTightened(Nm(-1)));
  }

  @Property
  void requiredInterferenceHoldsExactlyTheLoad(
      @ForAll @DoubleRange(min = 0.1, max = 10) double kilonewtons, @ForAll @DoubleRange(min = 0, max = 30) double newtonMetres) {
    RequiredInterference needed =
        RequiredInterference.of(
                InnerPart.solid(STEEL).withRoughness(um(4)), OuterPart.ring(STEEL, mm(60)).withRoughness(um(6)), mm(30), mm(30))
            .hold(kN(kilonewtons), Nm(newtonMetres))
            .adhesion(FrictionBand.of(0.08, 0.11), 1.5)
            .build();
    InterferenceFit fit =
        InterferenceFit.of(needed.stud(), needed.housing(), InterferenceBand.of(mm(30), needed.least(), needed.least()), mm(30));
    assertEquals(1.5, fit.holding(FrictionBand.of(0.08, 0.11)).safety(kN(kilonewtons), Nm(newtonMetres)), 1e-9);
    assertEquals(needed.least().mm() * 1000, needed.explain().result().value(), 1e-12);
    InterferenceFit tight =
        InterferenceFit.of(
            needed.stud(), needed.housing(), InterferenceBand.of(mm(30), needed.greatest(), needed.greatest()), mm(30));
    assertEquals(1, tight.limits(YieldRule.VON_MISES).housing().safety().orElseThrow(), 1e-9);
  }

  @Test
  void fitsOfASelectorAreKeptIfEveryPairWillDo() {
    RequiredInterference needed =
        RequiredInterference.of(InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(60)), mm(30), mm(30))
            .hold(kN(2), Nm(10))
            .adhesion(FrictionBand.of(0.08, 0.11), 1.5)
            .smoothing(RoughnessRule.NONE)
            .limit(YieldRule.TRESCA, 1.1)
            .build();
    assertTrue(needed.possible(), needed.toString());
    assertTrue(needed.warnings().isEmpty());
    Fit loose = fit(0, 21, 22, 35);
    Fit good = fit(0, 21, 35, 48);
    Fit tight = fit(0, 21, 160, 173);
    assertEquals(List.of(good), needed.fits((size, band) -> List.of(loose, good, tight)));
  }

  @Test
  void classesOfIso286HoldTheLoad() {
    RequiredInterference needed =
        RequiredInterference.of(InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(60)), mm(30), mm(30))
            .hold(kN(2), Nm(10))
            .adhesion(FrictionBand.of(0.08, 0.11), 1.5)
            .build();
    List<Fit> fits = needed.isoFits();
    assertFalse(fits.isEmpty());
    for (Fit fit : fits) {
      InterferenceFit seat =
          InterferenceFit.of(needed.stud(), needed.housing(), fit, mm(30)).withSmoothing(RoughnessRule.NONE);
      assertTrue(seat.holding(FrictionBand.of(0.08, 0.11)).safety(kN(2), Nm(10)) >= 1.5 - 1e-9, fit.designation());
      assertTrue(seat.limits(YieldRule.VON_MISES).housing().holds(), fit.designation());
    }
  }

  @Test
  void aLoadThatThePartsCannotHoldIsSaidSo() {
    RequiredInterference needed =
        RequiredInterference.of(InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(40)), mm(30), mm(10))
            .hold(kN(60), Nm(0))
            .adhesion(FrictionBand.of(0.08, 0.11), 1.5)
            .build();
    assertFalse(needed.possible());
    assertEquals("load-above-parts", needed.warnings().get(0).code());
    assertThrows(InputException.class, () -> needed.fits((size, band) -> List.of()));
    InputException missing =
        assertThrows(
            InputException.class,
            () -> RequiredInterference.of(InnerPart.solid(STEEL), OuterPart.wide(STEEL), mm(30), mm(10)).build());
    assertEquals("coefficient of adhesion", missing.parameter());
  }

  private static Fit fit(double ei, double es, double lower, double upper) {
    return new Fit(
        mm(30), "trial", new LimitDeviations(um(ei), um(es)), new LimitDeviations(um(lower), um(upper)));
  }

  @Test
  void measuredPartsGiveABandOfTheirUncertainty() {
    InterferenceBand band = InterferenceBand.ofMeasured(mm(30.025), mm(30.005), um(2));
    assertEquals(0.018, band.least().mm(), 1e-12);
    assertEquals(0.022, band.greatest().mm(), 1e-12);
    assertEquals(mm(30.005), band.joint());
    MeasuredFit measured =
        new MeasuredFit(
            Fit.of(mm(30), "H7/p6"), Readings.at20(um(3), mm(30.004), mm(30.006)), Readings.at20(um(4), mm(30.025)));
    InterferenceBand both = InterferenceBand.of(measured);
    assertEquals(0.019 - 0.005, both.least().mm(), 1e-12);
    assertEquals(0.021 + 0.005, both.greatest().mm(), 1e-12);
    assertThrows(InputException.class, () -> InterferenceBand.ofMeasured(mm(30), mm(30.005), um(2)));
    assertThrows(InputException.class, () -> InterferenceBand.ofMeasured(mm(30.1), mm(30), new Length(-1)));
  }
}
