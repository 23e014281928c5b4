// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.trace.Cautions;
import holdfast.trace.Warning;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ThermalAssemblyTest {
  private static final Material STEEL = Material.of("C45+QT");

  private static InterferenceFit fit(double d, double greatest, Material housing) {
    return InterferenceFit.of(
        InnerPart.solid(STEEL), OuterPart.ring(housing, mm(2 * d)), InterferenceBand.of(mm(d), um(1), um(greatest)), mm(d));
  }

  @Test
  void heatsALargeFit() {
    ThermalAssembly heat = fit(60, 50, STEEL).thermalAssembly().build();
    assertEquals(20 + 0.110 / (11.5e-6 * 60), heat.housingTemperature().celsius(), 1e-9);
    assertTrue(heat.withinCeilings());
    assertTrue(heat.advice().startsWith("Heat the housing to 179"), heat.advice());
    assertTrue(heat.warnings().isEmpty());
    assertTrue(heat.cautions().size() > 5);
  }

  @Test
  void aSealedBearingLowersTheCeilingAndTheStudIsCooled() {
    ThermalAssembly heat =
        fit(60, 20, STEEL).thermalAssembly().ceiling(TemperatureCeiling.sealedOrGreasedBearing()).clearance(um(10)).build();
    assertTrue(heat.withinCeilings());
    ThermalAssembly hot =
        fit(60, 40, STEEL).thermalAssembly().ceiling(TemperatureCeiling.sealedOrGreasedBearing()).clearance(um(10)).build();
    assertFalse(hot.withinCeilings());
    assertEquals("above-ceiling", hot.warnings().get(0).code());
    assertTrue(hot.advice().contains("Cool the stud to -78"), hot.advice());
    assertEquals(20 - 0.050 / (8.5e-6 * 60), hot.coolingTemperature(), 1e-9);
    assertTrue(
        fit(60, 50, STEEL)
            .thermalAssembly()
            .ceiling(TemperatureCeiling.sealedOrGreasedBearing())
            .build()
            .advice()
            .contains("liquid nitrogen"));
  }

  @Test
  void theBenchIsWarnedOfTheWayThatIsOpen() {
    ThermalAssembly warm = fit(60, 50, STEEL).thermalAssembly().build();
    assertTrue(warm.heats() && !warm.cools());
    assertEquals(Optional.of(warm), warm.workable());
    assertEquals(Cautions.of("no-flame", "seal-limit", "hot-parts"), warm.benchCautions());

    TemperatureCeiling low = TemperatureCeiling.sealedOrGreasedBearing();
    ThermalAssembly cold = fit(60, 50, STEEL).thermalAssembly().ceiling(low).build().workable().orElseThrow();
    assertTrue(cold.cools() && !cold.heats(), cold.toString());
    assertTrue(cold.benchCautions().containsAll(Cautions.of("chilled-fastener", "cold-burns", "frost")));
    assertEquals(4, cold.benchCautions().size());
    assertEquals(List.of("deep-cold"), cold.warnings().stream().map(Warning::code).toList());

    ThermalAssembly open = fit(20, 38, STEEL).thermalAssembly().ceiling(TemperatureCeiling.completeBearing()).build();
    ThermalAssembly both = open.workable().orElseThrow();
    assertTrue(both.cools() && both.heats() && both.withinCeilings(), both.toString());
    assertEquals(7, open.benchCautions().size());
    assertTrue(open.advice("pin", "fork").toString().matches(".*Cool the pin to -\\d+ °C and heat the fork to .*"),
        open.advice("pin", "fork").toString());

    ThermalAssembly none = fit(8, 35, STEEL).thermalAssembly().ceiling(low).studFloor(degC(-30)).build();
    assertEquals(Optional.empty(), none.workable());
    assertEquals(List.of(), none.benchCautions());
  }

  @Test
  void bothPartsTogetherReachWhereNeitherDoesAlone() {
    ThermalAssembly both = fit(20, 38, STEEL).thermalAssembly().ceiling(TemperatureCeiling.completeBearing()).build();
    assertTrue(both.advice().contains("and heat the housing to"), both.advice());
  }

  @Test
  void forSmallStudsHeatIsNoWayOut() {
    ThermalAssembly heat =
        fit(8, 35, Material.of("C45+N"))
            .thermalAssembly()
            .ceiling(TemperatureCeiling.sealedOrGreasedBearing())
            .studFloor(degC(-30))
            .build();
    assertTrue(heat.advice().contains("Press the stud in"), heat.advice());
  }

  @Test
  void aColdStudMayClearACoolHousing() {
    ThermalAssembly cold = fit(60, 5, STEEL).thermalAssembly().studAt(degC(-196)).build();
    assertEquals(degC(20), cold.housingTemperature());
    ThermalAssembly below = fit(60, 5, STEEL).thermalAssembly().studAt(degC(-196)).studFloor(degC(-40)).build();
    assertEquals("below-floor", below.warnings().get(0).code());
  }

  @Test
  void roomTemperatureShiftsTheInterferenceOfUnlikeMaterials() {
    InterferenceFit fit = fit(60, 50, Material.of("2014-T6"));
    ThermalAssembly warm = fit.thermalAssembly().room(degC(30)).build();
    double atRoom = 0.050 + 60 * (11.5e-6 - 23e-6) * 10;
    assertEquals(30 + (atRoom + 0.060) / (23e-6 * 60), warm.housingTemperature().celsius(), 1e-9);
    assertEquals(warm.housingTemperature().celsius(), warm.explain().result().value(), 0);
    assertEquals("ceiling-unknown", warm.warnings().get(0).code());
    assertThrows(InputException.class, () -> fit.thermalAssembly().clearance(um(-1)));
  }

  @Test
  void pressingGrowsWithTheStroke() {
    Pressing pressing = fit(30, 30, STEEL).pressing(FrictionBand.pressingOiled());
    assertEquals(pressing.pressIn().greatest().base() / 2, pressing.at(mm(15)).greatest().base(), 1e-9);
    assertEquals(pressing.pressIn().greatest().base() * 30 / 2, pressing.greatestWork().base(), 1e-6);
    assertEquals(Math.cbrt(30), pressing.chamfer().mm(), 1e-12);
    assertEquals(
        pressing.pressIn().greatest().base() * 0.11 / 0.2,
        pressing.pressOut(FrictionBand.of(0.08, 0.11)).greatest().base(),
        1e-6);
    assertThrows(InputException.class, () -> pressing.at(mm(31)));
    assertTrue(pressing.cautions().stream().anyMatch(c -> c.text().contains("Press straight")));
  }
}
