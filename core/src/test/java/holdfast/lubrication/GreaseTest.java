// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.rollers.RollerSeries;
import holdfast.tables.Provenance;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class GreaseTest {
  private static List<String> codes(RelubricationInterval interval) {
    return interval.warnings().stream().map(w -> w.code()).toList();
  }

  @Test
  void quantityOfATabulatedRoller() {
    GreaseQuantity quantity = GreaseQuantity.throughStud(RollerSeries.METRIC.size(mm(35)));
    assertEquals(0.002 * 35 * 18, quantity.mass().gram(), 1e-15);
    assertEquals("1.26 g", quantity.toString());
    assertEquals(quantity.mass().gram(), quantity.explain().result().value());
    assertEquals(2, quantity.warnings().size());
    assertEquals(1, GreaseQuantity.fromSide(mm(35), mm(18)).warnings().size());
    InputException error = assertThrows(InputException.class, () -> GreaseQuantity.throughStud(mm(0), mm(18)));
    assertEquals("outside diameter D", error.parameter());
  }

  @Property
  void fromTheSideTakesTwoAndAHalfTimesAsMuch(
      @ForAll @DoubleRange(min = 1, max = 500) double d, @ForAll @DoubleRange(min = 1, max = 500) double b) {
    assertEquals(2.5 * GreaseQuantityKernel.throughRing(d, b), GreaseQuantityKernel.fromSide(d, b), 1e-12 * d * b);
    // The shop form is rounded to three digits: 0.114 stands for 0.11378.
    double shop = GreaseQuantityKernel.shopOunces(d / 25.4, b / 25.4) * 28.349523125;
    assertEquals(1, shop / GreaseQuantityKernel.fromSide(d, b), 0.0005 / 0.114 + 1e-9);
  }

  @Test
  void freeVolumeOfARingOfNothingIsItsVolumeAndThatOfAFullRingIsZero() {
    double ring = Math.PI / 4 * 20 * (52 * 52 - 25 * 25) / 1000;
    assertEquals(ring, GreaseQuantityKernel.freeVolume(52, 25, 20, 0), 1e-12);
    assertEquals(0, GreaseQuantityKernel.freeVolume(52, 25, 20, 7.8e-3 * ring * (1 - 1e-15)), 1e-12);
    InputException heavy = assertThrows(InputException.class, () -> GreaseQuantityKernel.freeVolume(52, 25, 20, 1));
    assertEquals("mass M", heavy.parameter());
    assertThrows(InputException.class, () -> GreaseQuantityKernel.freeVolume(25, 25, 20, 0));
    assertEquals(9, GreaseQuantityKernel.massOfVolume(10), 1e-12);
    assertEquals(30, GreaseQuantityKernel.viscosity(2, 15));
    assertThrows(InputException.class, () -> GreaseQuantityKernel.viscosity(0, 15));
  }

  @Property
  void temperatureRulesFallAndMeetAtTheirBases(@ForAll @DoubleRange(min = -50, max = 190) double t) {
    for (TemperatureRule rule : TemperatureRule.values()) {
      assertTrue(rule.factor(t + 1) <= rule.factor(t));
      assertTrue(rule.factor(t) > 0);
    }
    assertEquals(1, TemperatureRule.HALVE_PER_15_K_ABOVE_70.factor(70));
    assertEquals(1, TemperatureRule.DIVIDE_BY_1_5_PER_10_K_ABOVE_80.factor(80));
    if (t >= 55) {
      assertEquals(0.5, RelubricationKernel.halvingPer15K(t + 15) / RelubricationKernel.halvingPer15K(t), 1e-12);
    } else {
      assertEquals(2, RelubricationKernel.halvingPer15K(t));
    }
    if (t >= 80) {
      assertEquals(1.5, RelubricationKernel.divisionPer10K(t) / RelubricationKernel.divisionPer10K(t + 10), 1e-12);
    }
  }

  @Property
  void empiricalIntervalFallsWithSpeedAndVanishesAtItsGreatest(
      @ForAll @DoubleRange(min = 3, max = 100) double d, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    double greatest = RelubricationKernel.greatestSpeed(d);
    double t = RelubricationKernel.empirical(5, share * greatest, d);
    assertTrue(t > 0);
    assertTrue(RelubricationKernel.empirical(5, 0.999 * share * greatest, d) > t);
    assertEquals(5 * 4 * d * (1 / share - 1), t, 1e-9 * (1 + t));
    InputException error = assertThrows(InputException.class, () -> RelubricationKernel.empirical(5, 1.001 * greatest, d));
    assertEquals("speed n", error.parameter());
  }

  @Property
  void aTurningOuterRingCountsByItsOutsideDiameter(
      @ForAll @DoubleRange(min = 1, max = 1e4) double n,
      @ForAll @DoubleRange(min = 3, max = 100) double d,
      @ForAll @DoubleRange(min = 1.05, max = 4) double ratio) {
    double stand = RelubricationKernel.outerRingSpeed(n, ratio * d, d);
    assertEquals(n * ratio * d, stand * 0.5 * (ratio * d + d), 1e-9 * n * d);
    assertTrue(stand > n);
  }

  @Test
  void anIntervalMultipliesItsCorrections() {
    RelubricationInterval interval =
        Relubrication.fromChart(hours(8000))
            .at(degC(85), TemperatureRule.HALVE_PER_15_K_ABOVE_70)
            .fullComplement(FullComplementRule.TENTH)
            .verticalAxis()
            .interval();
    assertEquals(200, interval.interval().hours(), 1e-9);
    assertEquals("every 200 h", interval.toString());
    assertEquals(interval.interval().hours(), interval.explain().result().value());
    assertEquals(5, interval.explain().steps().size());
    assertEquals(List.of("temperature-limit", "no-misalignment"), codes(interval));
  }

  @Test
  void theTwoTemperatureRulesAreTheChoiceOfTheCaller() {
    Relubrication begin = Relubrication.fromChart(hours(1000));
    double first = begin.at(degC(100), TemperatureRule.HALVE_PER_15_K_ABOVE_70).interval().interval().hours();
    double second = begin.at(degC(100), TemperatureRule.DIVIDE_BY_1_5_PER_10_K_ABOVE_80).interval().interval().hours();
    assertEquals(250, first, 1e-9);
    assertEquals(1000 / 2.25, second, 1e-9);
  }

  @Test
  void correctionsAreNotCountedTwice() {
    Relubrication at = Relubrication.fromChart(hours(1000)).at(degC(90), TemperatureRule.HALVE_PER_15_K_ABOVE_70);
    InputException temperature = assertThrows(InputException.class, () -> at.trade(TradeFactor.of("Ft", 90)));
    assertEquals("correction Ft", temperature.parameter());
    Relubrication upright = at.verticalAxis();
    TradeFactor position = TradeFactor.of("Fp", "vertical");
    assertThrows(InputException.class, () -> upright.trade(position));
    TradeFactor type = TradeFactor.of("bearing type", "deep");
    assertThrows(InputException.class, () -> at.trade(type));
  }

  @Test
  void empiricalBeginWithTradeFactorsIsWarnedAndCapped() {
    RelubricationInterval slow = Relubrication.empirical(rpm(10), mm(18), mm(35)).interval();
    assertTrue(slow.capped());
    assertEquals(30_000, slow.interval().hours());
    assertTrue(codes(slow).containsAll(List.of("interval-capped", "empirical-interval", "no-temperature")));
    assertEquals(slow.interval().hours(), slow.explain().result().value());
    RelubricationInterval dirty =
        Relubrication.empirical(rpm(300), mm(18), mm(35)).trade(TradeFactor.of("Fc", "severe, abrasive")).interval();
    assertTrue(codes(dirty).contains("recalled-factors"));
    double n = 300 * 35 / 26.5;
    assertEquals(0.2 * 5 * (14e6 / (n * Math.sqrt(18)) - 72), dirty.interval().hours(), 1e-9);
  }

  @Test
  void tradeFactorsByConditionAndByNumber() {
    assertEquals(21, TradeFactor.all().size());
    assertEquals(0.5, TradeFactor.of("Ft", 80).value());
    assertEquals(0.2, TradeFactor.of("Ft", 80.1).value());
    assertEquals(0.1, TradeFactor.of("Ft", 200).value());
    assertEquals(1.0, TradeFactor.of("Fv", 0).value());
    assertEquals(Provenance.MEMORY, TradeFactor.of("Fm", "occasional water").source().provenance());
    assertThrows(InputException.class, () -> TradeFactor.of("Ft", Double.NaN));
    assertThrows(InputException.class, () -> TradeFactor.of("Fc", 3));
    InputException several = assertThrows(InputException.class, () -> TradeFactor.of("Fm", "occasional"));
    assertTrue(several.permitted().contains("occasional condensation; occasional water on housing"), several.permitted());
  }

  @Test
  void theGuideHoldsRulesByTopic() {
    assertTrue(LubricationGuide.topics().containsAll(List.of("grease type", "grease mixing", "initial grease fill", "ports")));
    assertEquals("NLGI 2 lithium soap, mineral oil, EP", LubricationGuide.about("grease type").get(0).rule());
    assertEquals(6, LubricationGuide.about("temperature limits").size());
    assertEquals(80.0, LubricationGuide.narrowestHottest().high());
    assertEquals(120.0, LubricationGuide.widestHottest().high());
    assertFalse(LubricationGuide.about("speed").get(0).confirmedBy().isEmpty());
    InputException error = assertThrows(InputException.class, () -> LubricationGuide.about("colour"));
    assertEquals("topic", error.parameter());
  }

  @Test
  void refusesWhatHasNoMeaning() {
    assertThrows(InputException.class, () -> RelubricationKernel.halvingPer15K(-300));
    assertThrows(InputException.class, () -> RelubricationKernel.divisionPer10K(Double.NaN));
    assertThrows(InputException.class, () -> RelubricationKernel.outerRingSpeed(100, 18, 18));
    assertThrows(InputException.class, () -> RelubricationKernel.chartInput(0, 35, 3));
    assertThrows(InputException.class, () -> RelubricationKernel.fromGreaseLife(-1));
    assertThrows(InputException.class, () -> Relubrication.fromChart(hours(0)));
    assertEquals(500, RelubricationKernel.fromGreaseLife(1000));
    assertEquals(31_500, RelubricationKernel.chartInput(300, 35, 3));
  }
}
