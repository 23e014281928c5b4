// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fleet.FleetPosition;
import holdfast.quantity.Numbers;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;
import java.util.List;
import java.util.stream.Collectors;

/** What the fleet asks for: intervals, places that are due now, rollers to be at hand. */
final class FleetSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");
  private static final SourceRef OLDER = SourceRef.derived("age of the roller against the interval at the hours of its place");
  private static final int MOST_NAMES = 100;

  private FleetSection() {}

  static void add(Section.Builder section, FleetCare care, MountingPlan plan) {
    FleetDuty fleet = plan.fleet();
    String percent = Numbers.significant(100 * fleet.reliability(), 3) + " %";
    double most = fleet.positions().stream().mapToDouble(FleetPosition::hoursPerYear).max().orElseThrow();
    section
        .entry("Places that run it", fleet.positions().size() + ", up to " + Numbers.significant(most, 4) + " h in a year", GIVEN)
        .entry("Replace all together", "every " + care.together() + ": the chance that none of the "
            + fleet.positions().size() + " fails in between is " + percent, care.together().sources())
        .entry("Replace each", "after " + care.each(), care.each().sources())
        .entry("Due now", due(care.due()), OLDER)
        .entry("Rollers at hand", care.rollersAtHand() + ": " + care.due().size() + " for the places due now, and for "
            + Numbers.significant(fleet.leadYears(), 3) + " years of delivery after that " + care.spares(),
            care.spares().sources())
        .warnings(care.spares().warnings());
  }

  private static String due(List<FleetPosition> due) {
    if (due.isEmpty()) {
      return "none: no roller is older than the interval of all";
    }
    String names = due.stream().limit(MOST_NAMES)
        .map(place -> place.name() + " (" + Numbers.significant(place.age().hours(), 4) + " h)")
        .collect(Collectors.joining(", "));
    return due.size() + " older already than the interval of all, oldest first: " + names
        + (due.size() > MOST_NAMES ? " and " + (due.size() - MOST_NAMES) + " more" : "");
  }
}
