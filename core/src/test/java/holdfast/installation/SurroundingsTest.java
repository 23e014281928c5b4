// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.mmPerS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.lubrication.TradeFactor;
import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

class SurroundingsTest {
  private static double hours(Surroundings place) {
    InstallationPlan plan = ExampleJobs.inchSlipFit();
    Duty d = plan.duty();
    Duty duty =
        new Duty(d.spectrum(), d.wantedLife(), d.reliability(), d.staticSafety(), d.workingTemperature(), d.viscosity(),
            d.contamination(), d.track(), d.trackHardness(), d.trackMisalignment(), d.feed(), d.uprightAxis(), place,
            d.loadChange());
    return GreaseInterval.of(plan.roller(), duty).knownInterval().orElseThrow().interval().hours();
  }

  @Test
  void everyConditionShortensTheInterval() {
    Surroundings clean = Surroundings.clean();
    double dry = hours(clean);
    assertEquals(0.4 * dry, hours(clean.dirt("light, abrasive")), 1e-9 * dry);
    assertEquals(0.1 * dry, hours(clean.moisture("occasional water")), 1e-9 * dry);
    assertEquals(0.6 * dry, hours(clean.vibration(mmPerS(6))), 1e-9 * dry);
    assertEquals(0.4 * 0.1 * 0.3 * dry,
        hours(clean.vibration(mmPerS(11)).dirt("light, abrasive").moisture("occasional water")), 1e-9 * dry);
  }

  @Test
  void onlyVibrationShakes() {
    assertFalse(Surroundings.clean().dirt("severe, abrasive").shaken());
    assertFalse(Surroundings.clean().vibration(mmPerS(5)).shaken());
    assertTrue(Surroundings.clean().vibration(mmPerS(5.1)).shaken());
  }

  @Test
  void factorsKeepTheirPlaces() {
    assertEquals(2, Surroundings.clean().dirt("light, abr").vibration(mmPerS(2)).factors().size());
    TradeFactor moisture = TradeFactor.of("Fm", "humidity 80");
    InputException wrong = assertThrows(InputException.class, () -> new Surroundings(moisture, null, null));
    assertTrue(wrong.getMessage().contains("a factor Fc"), wrong.getMessage());
    assertThrows(InputException.class, () -> new Surroundings(null, null, moisture));
    assertThrows(InputException.class, () -> Surroundings.clean().vibration(mmPerS(-1)));
    assertThrows(InputException.class, () -> Surroundings.clean().dirt("sticky"));
  }
}
