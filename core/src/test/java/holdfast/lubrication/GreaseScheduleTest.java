// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

/** One line says when a roller is greased again: hours and months, whichever comes first; and the first fill is a mass. */
class GreaseScheduleTest {
  private static Relubrication clean() {
    return Relubrication.empirical(rpm(180), mm(19.5), mm(40)).at(degC(70), TemperatureRule.HALVE_PER_15_K_ABOVE_70);
  }

  @Test
  void theKindOfRollerChoosesTheCalendar() {
    // General catalogue: 6 to 24 months with cage, 1 to 6 without.
    assertEquals(24, GreaseSchedule.of(clean().interval(), false).months());
    assertEquals(6, GreaseSchedule.of(clean().fullComplement(FullComplementRule.TENTH).interval(), true).months());
  }

  @Test
  void aHardPlaceTakesTheShortEndAndSaysWhy() {
    GreaseSchedule dusty = GreaseSchedule.of(clean().trade(TradeFactor.of("Fc", "severe, non")).interval(), false);
    assertEquals(6, dusty.months());
    assertTrue(dusty.reasons().toString().contains("the short end because the place shortens it (dirt: severe, non-abrasive dust)"),
        dusty.reasons().toString());
    assertTrue(dusty.toString().endsWith("h at most of running or 6 months, whichever comes first"), dusty.toString());
    assertEquals(dusty.interval().warnings(), dusty.warnings());
    assertFalse(GreaseSchedule.of(clean().trade(TradeFactor.of("Fc", "light, non")).interval(), false).hard(), "a factor of 1");
    assertTrue(GreaseSchedule.of(clean().verticalAxis().interval(), false).hard());
    Relubrication hot = Relubrication.empirical(rpm(180), mm(19.5), mm(40)).at(degC(85), TemperatureRule.HALVE_PER_15_K_ABOVE_70);
    assertTrue(GreaseSchedule.of(hot.interval(), false).hard());
  }

  @Test
  void withoutHoursTheShortEndOfTheCalendarHolds() {
    GreaseSchedule fast = GreaseSchedule.byCalendar("too fast", true);
    assertEquals("every 1 month", fast.toString());
    assertTrue(fast.knownInterval().isEmpty() && fast.warnings().isEmpty());
    assertEquals(1, fast.sources().size());
  }

  @Test
  void theFirstFillIsAThirdToAHalfOfTheSpaceThatTheRollersLeave() {
    FirstFill fill = FirstFill.ofSpace(mm(23), mm(3.5), mm(12), 16, mm(20));
    // Ring between the raceways by its two circles, less the rollers, at 0.9 g/cm³.
    double free = Math.PI / 4 * (26.5 * 26.5 - 19.5 * 19.5) * 20 - 16 * Math.PI / 4 * 3.5 * 3.5 * 12;
    assertEquals(0.9e-3 * free / 2, fill.greatest().gram(), 1e-12);
    assertEquals(0.9e-3 * free * 0.333, fill.least().gram(), 1e-12, "the table prints a third with three digits");
    assertEquals(fill.greatest().gram(), fill.explain().steps().get(1).value(), 0);
    assertThrows(InputException.class, () -> FirstFill.ofSpace(mm(23), mm(3.5), mm(40), 30, mm(20)));
    assertThrows(InputException.class, () -> FirstFill.ofSpace(mm(3), mm(3.5), mm(4), 3, mm(20)));
  }

  @Test
  void withoutTheInsideTheFirstFillFollowsFromARegreasing() {
    GreaseQuantity quantity = GreaseQuantity.throughStud(mm(40), mm(20));
    FirstFill fill = FirstFill.ofRegreasing(quantity);
    // Rolling bearings catalogue HR 1: a regreasing is 50 % to 80 % of the first fill.
    assertEquals(0.8 * fill.least().gram(), quantity.mass().gram(), 1e-12);
    assertEquals(0.5 * fill.greatest().gram(), quantity.mass().gram(), 1e-12);
    assertEquals("inside-not-known", fill.warnings().get(0).code());
  }
}
