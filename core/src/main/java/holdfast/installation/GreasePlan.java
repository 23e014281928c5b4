// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.GreaseQuantity;
import holdfast.lubrication.Openings;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortPlan;
import holdfast.lubrication.PortRequest;
import holdfast.lubrication.RelubricationInterval;
import holdfast.quantity.InputException;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * How a roller is greased.
 *
 * @param ports which port feeds and what closes the others
 * @param openingsSeen whether the openings are those of the part in hand; false if those usual for the size were taken
 * @param quantity grease for one relubrication
 * @param interval interval of relubrication; null if the formula does not cover the duty
 * @param noInterval why there is no interval; empty if there is one
 */
public record GreasePlan(
    PortPlan ports, boolean openingsSeen, GreaseQuantity quantity, RelubricationInterval interval, String noInterval)
    implements Serializable {
  public GreasePlan {
    Objects.requireNonNull(ports, "ports");
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(noInterval, "noInterval");
  }

  static GreasePlan of(InstallationPlan plan, Port feed) {
    StudRoller roller = plan.roller();
    PortPlan ports = PortPlan.of(request(plan, feed));
    GreaseQuantity quantity = GreaseQuantity.throughStud(roller.outsideDiameter(), roller.ringWidth());
    try {
      return new GreasePlan(ports, roller.build().seenOpenings().isPresent(), quantity,
          GreaseInterval.of(roller, plan.duty()), "");
    } catch (InputException outside) {
      return new GreasePlan(ports, roller.build().seenOpenings().isPresent(), quantity, null, outside.getMessage());
    }
  }

  private static PortRequest request(InstallationPlan plan, Port feed) {
    StudRoller roller = plan.roller();
    RollerBuild build = roller.build();
    Openings openings =
        build
            .seenOpenings()
            .orElseGet(() -> Openings.usual(build.system(), roller.studDiameter(), roller.outsideDiameter()));
    return new PortRequest(
        build.system(),
        roller.outsideDiameter(),
        roller.studDiameter(),
        openings,
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
    return Optional.ofNullable(interval);
  }
}
