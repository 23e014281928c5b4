// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import static holdfast.quantity.Units.hours;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A roller that is older already than the interval of its group is due now, and spares count the fleet after it is replaced. */
class DueNowTest {
  private static final FleetPosition OLD = new FleetPosition("old", 1000, hours(9000));
  private static final FleetPosition SLOW = new FleetPosition("slow", 100, hours(600));
  private static final FleetPosition YOUNG = new FleetPosition("young", 1000, hours(100));

  private static FleetPlan fleet(FleetPosition... places) {
    return FleetPlan.of(h -> Math.exp(-Math.pow(h / 10_000, 1.5)), List.of(places));
  }

  private static GroupReplacement every(double years) {
    return new GroupReplacement(years, years * 1000, 0.9, 0.9, 3);
  }

  @Test
  void placesOlderThanTheIntervalAreDueTheMostOverdueFirst() {
    FleetPlan fleet = fleet(YOUNG, SLOW, OLD);
    // Old has run nine years, slow six, young a tenth of one.
    assertEquals(List.of(OLD, SLOW), fleet.due(every(6)));
    assertEquals(List.of(OLD), fleet.due(every(6.01)));
    assertEquals(List.of(), fleet.due(every(10)));
    assertEquals(List.of(), fleet(FleetPosition.ofNew("new", 1000)).due(every(0)), "a new roller is never due");
  }

  @Test
  void sparesFollowFromTheFleetAfterTheDueOnesAreNew() {
    FleetPlan fleet = fleet(OLD, YOUNG);
    FleetPlan after = fleet.renewed(List.of(OLD));
    assertEquals(0, after.positions().get(0).age().hours());
    assertEquals(YOUNG, after.positions().get(1));
    assertTrue(after.spares(0, 1, 0.9).meanDemand() < fleet.spares(0, 1, 0.9).meanDemand(), "wear-out: new ones fail less");
    assertThrows(InputException.class, () -> fleet.renewed(List.of(SLOW)));
    assertThrows(InputException.class, () -> fleet.renewed(List.of(OLD, OLD)));
  }
}
