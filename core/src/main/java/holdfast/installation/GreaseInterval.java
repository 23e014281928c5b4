// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.reference.RollerSet;
import holdfast.lubrication.FirstFill;
import holdfast.lubrication.FullComplementRule;
import holdfast.lubrication.GreaseQuantity;
import holdfast.lubrication.GreaseSchedule;
import holdfast.lubrication.Relubrication;
import holdfast.lubrication.RelubricationInterval;
import holdfast.lubrication.TemperatureRule;
import holdfast.lubrication.TradeFactor;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;

/** How long the grease of a roller lasts under its duty. */
final class GreaseInterval {
  private GreaseInterval() {}

  /** By hours and calendar; by the calendar alone where the formula does not cover the duty. */
  static GreaseSchedule of(MountedRoller roller, Duty duty) {
    try {
      return GreaseSchedule.of(interval(roller, duty), roller.kind().fullComplement());
    } catch (InputException outside) {
      return GreaseSchedule.byCalendar(outside.getMessage(), roller.kind().fullComplement());
    }
  }

  /** From the inside of the roller if it is known, else from the grease of one regreasing. */
  static FirstFill firstFill(MountedRoller roller, GreaseQuantity quantity) {
    FirstFill byShare = FirstFill.ofRegreasing(quantity);
    return roller.knownInterior().map(RollerInterior::rollers).map(set -> ofSpace(set, roller, byShare)).orElse(byShare);
  }

  private static FirstFill ofSpace(RollerSet set, MountedRoller roller, FirstFill otherwise) {
    try {
      return FirstFill.ofSpace(set.pitchDiameter(), set.diameter(), set.length(), set.count() * set.rows(), roller.ringWidth());
    } catch (InputException noSpace) {
      return otherwise;
    }
  }

  /** By the empirical formula with the corrections that duty and roller ask for; it refuses what it does not cover. */
  private static RelubricationInterval interval(MountedRoller roller, Duty duty) {
    Relubrication interval =
        Relubrication.empirical(duty.greatestSpeed(), raceway(roller), roller.outsideDiameter())
            .at(duty.workingTemperature(), TemperatureRule.HALVE_PER_15_K_ABOVE_70);
    if (roller.kind().fullComplement()) {
      interval = interval.fullComplement(FullComplementRule.TENTH);
    }
    if (duty.uprightAxis()) {
      interval = interval.verticalAxis();
    }
    for (TradeFactor factor : duty.surroundings().factors()) {
      interval = interval.trade(factor);
    }
    return interval.interval();
  }

  /** Pitch circle less a roller if the inside is known, else the seat, which is somewhat smaller than the raceway. */
  private static Length raceway(MountedRoller roller) {
    return roller.knownInterior().map(RollerInterior::innerRaceway).orElseGet(roller::seatDiameter);
  }
}
