// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.FirstFill;
import holdfast.lubrication.GreaseQuantity;
import holdfast.lubrication.GreaseSchedule;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortPlan;
import holdfast.lubrication.PortRequest;
import holdfast.lubrication.RelubricationInterval;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * How a roller is greased.
 *
 * @param ports which port feeds and what closes the others
 * @param openingsSeen whether the openings are those of the part in hand; false if those usual for the size were taken
 * @param quantity grease for one relubrication
 * @param firstFill grease for the first fill
 * @param schedule when it is greased again
 */
public record GreasePlan(
    PortPlan ports, boolean openingsSeen, GreaseQuantity quantity, FirstFill firstFill, GreaseSchedule schedule)
    implements Serializable {
  public GreasePlan {
    Objects.requireNonNull(ports, "ports");
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(firstFill, "firstFill");
    Objects.requireNonNull(schedule, "schedule");
  }

  static GreasePlan of(InstallationPlan plan, Port feed) {
    StudRoller roller = plan.roller();
    PortPlan ports = PortPlan.of(request(plan, feed));
    GreaseQuantity quantity = GreaseQuantity.throughStud(roller.outsideDiameter(), roller.ringWidth());
    return new GreasePlan(ports, roller.build().seenOpenings().isPresent(), quantity, GreaseInterval.firstFill(roller, quantity),
        GreaseInterval.of(roller, plan.duty()));
  }

  private static PortRequest request(InstallationPlan plan, Port feed) {
    StudRoller roller = plan.roller();
    RollerBuild build = roller.build();
    return new PortRequest(
        build.system(),
        roller.outsideDiameter(),
        roller.studDiameter(),
        roller.openings(),
        build.head(),
        build.fittingInSocket(),
        build.eccentricCollar(),
        plan.member().feedHole(),
        feed);
  }

  /**
   * Interval of relubrication.
   *
   * @return the interval; empty if the formula does not cover the duty
   */
  public Optional<RelubricationInterval> knownInterval() {
    return schedule.knownInterval();
  }
}
