// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.rollers.MeasureSystem;
import holdfast.trace.Derivation;
import holdfast.trace.Step;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The ends of the permitted ranges of greasing, and what its derivations say. */
class GreaseLimitsTest {
  private static final TemperatureRule HALVE = TemperatureRule.HALVE_PER_15_K_ABOVE_70;

  private static boolean warned(RelubricationInterval interval, String code) {
    return interval.warnings().stream().map(Warning::code).anyMatch(code::equals);
  }

  @Test
  void theEmpiricalFormulaEndsAtItsGreatestSpeed() {
    // d = 4 mm: 14·10⁶/(4·4·2) = 437500 rpm, where 14·10⁶/(437500·2) − 16 is zero without rounding.
    assertEquals(437_500, RelubricationKernel.greatestSpeed(4));
    InputException error = assertThrows(InputException.class, () -> RelubricationKernel.empirical(5, 437_500, 4));
    assertEquals("speed n", error.parameter());
    // Half that speed: 5·(32 − 16) h.
    assertEquals(80, RelubricationKernel.empirical(5, 218_750, 4), 1e-12);
  }

  @Test
  void aBearingThatStandsStillHasNoInterval() {
    assertEquals("speed n", assertThrows(InputException.class, () -> RelubricationKernel.empirical(5, 0, 4)).parameter());
    assertEquals("speed n", assertThrows(InputException.class, () -> RelubricationKernel.outerRingSpeed(0, 35, 18)).parameter());
  }

  @Test
  void outsideDiametersEndWhereEveryNumberEnds() {
    // Beside 10³⁰ mm a bore of 1 mm is nothing: dm = D/2 and n' = 2 n.
    assertEquals(6, RelubricationKernel.outerRingSpeed(3, Check.GREATEST, 1), 1e-12);
    InputException error =
        assertThrows(InputException.class, () -> RelubricationKernel.outerRingSpeed(3, 1.001 * Check.GREATEST, 1));
    assertEquals("outside diameter D", error.parameter());
  }

  @Test
  void aDiscWithoutABoreHasAFreeVolume() {
    assertEquals(Math.PI / 4 * 52 * 52 * 20 / 1000, GreaseQuantityKernel.freeVolume(52, 0, 20, 0), 1e-12);
    InputException error = assertThrows(InputException.class, () -> GreaseQuantityKernel.freeVolume(52, -0.1, 20, 0));
    assertEquals("bore d", error.parameter());
  }

  @Test
  void belowTheBaseOfTheSecondRuleTheIntervalStays() {
    // Needle roller bearings catalogue 2300/E divides above 80 °C; it does not lengthen below.
    assertEquals(1, RelubricationKernel.divisionPer10K(20));
    assertEquals(1, RelubricationKernel.divisionPer10K(79.9));
  }

  @Test
  void anIntervalOfThirtyThousandHoursIsNotCappedAndTheNextIs() {
    RelubricationInterval just = Relubrication.fromChart(hours(30_000)).interval();
    assertFalse(just.capped());
    assertFalse(warned(just, "interval-capped"));
    assertEquals("t0", just.explain().result().expression());
    assertEquals("factors on the interval multiply", just.explain().result().source().locator());
    RelubricationInterval over = Relubrication.fromChart(hours(60_002)).verticalAxis().interval();
    assertTrue(over.capped());
    assertEquals(30_000, over.interval().hours());
    assertEquals("min(t0·kp, 30000 h)", over.explain().result().expression());
    assertEquals("Rolling bearings catalogue 17000 EN", over.explain().result().source().document());
    assertTrue(over.toString().endsWith(" h at most"), over.toString());
    assertFalse(just.toString().contains("most"), just.toString());
  }

  @Test
  void theFactorsOfAnIntervalShowTheirRulesAndInputs() {
    Derivation steps = Relubrication.fromChart(hours(1000)).at(degC(85), HALVE).fullComplement(FullComplementRule.TENTH)
        .interval().explain();
    Step temperature = steps.steps().get(1);
    assertEquals("temperature: half per 15 K above 70 °C", temperature.meaning());
    assertEquals("0.5^((T − 70)/15), at most 2", temperature.expression());
    assertEquals(List.of("T = 85 °C"), temperature.inputs());
    Step full = steps.steps().get(2);
    assertEquals("full complement: one tenth", full.meaning());
    assertEquals(List.of(), full.inputs());
    Step second = Relubrication.fromChart(hours(1000)).at(degC(90), TemperatureRule.DIVIDE_BY_1_5_PER_10_K_ABOVE_80)
        .interval().explain().steps().get(1);
    assertEquals("1.5^(−(T − 80)/10), at most 1", second.expression());
  }

  @Test
  void onlyACorrectionForTemperatureAnswersTheQuestionOfTemperature() {
    Relubrication begin = Relubrication.fromChart(hours(1000));
    assertTrue(warned(begin.interval(), "no-temperature"));
    assertTrue(warned(begin.verticalAxis().interval(), "no-temperature"));
    assertFalse(warned(begin.verticalAxis().at(degC(70), HALVE).interval(), "no-temperature"));
    assertFalse(warned(begin.trade(TradeFactor.of("Ft", 70)).interval(), "no-temperature"));
  }

  @Test
  void theLimitOfTemperatureOfTheNarrowestCatalogueBelongsToIt() {
    // Needle roller bearing catalogue pages 74-79: sealed rollers as supplied from -30 °C to 80 °C.
    Relubrication begin = Relubrication.fromChart(hours(1000));
    assertFalse(warned(begin.at(degC(80), HALVE).interval(), "temperature-limit"));
    assertTrue(warned(begin.at(degC(80.5), HALVE).interval(), "temperature-limit"));
  }

  @Test
  void theEmpiricalIntervalNamesTheRuleForTheTurningOuterRing() {
    Warning warning = Relubrication.empirical(rpm(300), mm(18), mm(35)).interval().warnings().stream()
        .filter(w -> w.code().equals("empirical-interval")).findFirst().orElseThrow();
    assertTrue(warning.source().locator().contains("D takes the place of dm"), warning.source().toString());
  }

  @Test
  void theRoutesOfGreaseShowTheirRule() {
    Derivation through = GreaseQuantity.throughStud(mm(35), mm(18)).explain();
    assertEquals("Grease for one relubrication, through the stud or a ring", through.title());
    assertEquals("0.002·D·B", through.result().expression());
    assertEquals(GreaseRoute.THROUGH_RING.source(), through.result().source());
    assertTrue(through.result().source().locator().endsWith("through holes in a ring"));
    Derivation side = GreaseQuantity.fromSide(mm(35), mm(18)).explain();
    assertEquals("Grease for one relubrication, from the side", side.title());
    assertEquals("0.005·D·B", side.result().expression());
  }

  @Test
  void aTradeFactorIsSoughtAmongThoseOfItsNameAlone() {
    // "above 93 °C" of the housing and "above 10 mm/s" of the vibration begin alike.
    assertEquals(0.1, TradeFactor.of("Ft", "above").value());
    assertEquals(0.3, TradeFactor.of("Fv", "above").value());
    assertEquals("Fc = 0.4 (light, abrasive dust)", TradeFactor.of("Fc", "light, abrasive").toString());
    // The limit of a range belongs to the lower one.
    assertEquals(1.0, TradeFactor.of("Ft", 65).value());
    assertEquals(0.6, TradeFactor.of("Fv", 10).value());
  }

  @Test
  void aRuleOfTheGuideKeepsItsNumbersAndReadsWithConditionAndSource() {
    LubricationGuide first = LubricationGuide.about("temperature limits").get(0);
    assertEquals(-18.0, first.low());
    assertEquals(120.0, first.high());
    LubricationGuide type = LubricationGuide.about("grease type").get(0);
    assertNull(type.low());
    assertNull(type.high());
    assertTrue(type.toString().startsWith("NLGI 2 lithium soap, mineral oil, EP [Cam followers catalogue 2008"), type.toString());
    LubricationGuide axis = LubricationGuide.about("initial grease fill").get(1);
    assertTrue(axis.toString().startsWith("fraction of available volume (by type and conditions) [Rolling bearings catalogue HR 1"),
        axis.toString());
  }

  @Test
  void fittingsAreFoundDespiteTheRoundingOfInches() {
    // 11/16 in is 17.4625 mm; a catalogue in millimetres prints 17.463. A hundredth beyond is no tabulated roller.
    assertEquals("1/8 in, drive-in", onlyInch(17.463).get(0).toString());
    assertEquals("1/8 in, drive-in", onlyInch(12.699).get(0).toString());
    assertEquals(List.of(), onlyInch(17.4725));
    assertEquals(List.of(), onlyInch(12.69));
  }

  private static List<FittingSize> onlyInch(double outsideDiameter) {
    return FittingSize.of(MeasureSystem.INCH, mm(outsideDiameter), mm(6.35));
  }
}
