// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.ReliabilityKernel;
import holdfast.fleet.FleetPlan;
import holdfast.fleet.FleetPosition;
import holdfast.fleet.GroupReplacement;
import holdfast.fleet.Spares;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * When the rollers of a fleet are replaced, which of them now, and how many spares that takes.
 *
 * @param together interval of replacing all together
 * @param each interval of replacing each by itself
 * @param due places whose roller is older already than the interval of all, the most overdue first
 * @param spares spares for failures in the time of delivery, once the places that are due have new rollers
 */
public record FleetCare(GroupReplacement together, GroupReplacement each, List<FleetPosition> due, Spares spares)
    implements Serializable {
  // Keeps an unmodifiable copy of the list.
  public FleetCare {
    Objects.requireNonNull(together, "together");
    Objects.requireNonNull(each, "each");
    Objects.requireNonNull(due, "due");
    Objects.requireNonNull(spares, "spares");
    due = List.copyOf(due);
  }

  /** The modified life at 90 % is the characteristic life of the survival; the duty's hours are those of the places. */
  static FleetCare of(MountingPlan plan) {
    FleetDuty fleet = plan.fleet();
    double l10Hours = plan.replaceAfter().hours() / plan.duty().reliability().a1();
    FleetPlan places = FleetPlan.of(h -> ReliabilityKernel.survival(h / l10Hours), fleet.positions());
    GroupReplacement together = places.groupReplacement(fleet.reliability());
    GroupReplacement each = places.replacementOfEach(plan.duty().reliability().percent() / 100);
    List<FleetPosition> due = places.due(together);
    return new FleetCare(together, each, due, places.renewed(due).spares(0, fleet.leadYears(), fleet.serviceLevel()));
  }

  /**
   * Rollers to be at hand: one for each place that is due, and the spares.
   *
   * @return their number
   */
  public int rollersAtHand() {
    return due.size() + spares.stock();
  }
}
