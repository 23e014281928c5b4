// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.FullComplementRule;
import holdfast.lubrication.Relubrication;
import holdfast.lubrication.RelubricationInterval;
import holdfast.lubrication.TemperatureRule;
import holdfast.lubrication.TradeFactor;
import holdfast.quantity.Length;

/** How long the grease of a roller lasts under its duty. */
final class GreaseInterval {
  private GreaseInterval() {}

  /** By the empirical formula with the corrections that duty and roller ask for; it refuses what it does not cover. */
  static RelubricationInterval of(MountedRoller roller, Duty duty) {
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
