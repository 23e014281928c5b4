// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fleet.FleetPosition;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * The places of the works that run this roller under this duty, and what is wanted of them.
 *
 * @param positions the places, at least one
 * @param reliability wanted probability that none fails between two replacements of all, over 0 and below 1
 * @param leadYears time that spares take to arrive, in years, over 0
 * @param serviceLevel wanted probability that the stock suffices for that time, over 0 and below 1
 */
public record FleetDuty(List<FleetPosition> positions, double reliability, double leadYears, double serviceLevel)
    implements Serializable {

  // Keeps an unmodifiable copy of the list.
  public FleetDuty {
    Objects.requireNonNull(positions, "positions");
    positions = List.copyOf(positions);
    if (positions.isEmpty()) {
      throw new InputException("positions", "none", "at least one", "a fleet without places needs nothing");
    }
    probability(reliability, "wanted reliability of the group");
    Check.positive(leadYears, "lead time", "years", "spares take a time to arrive");
    probability(serviceLevel, "service level");
  }

  private static void probability(double value, String name) {
    if (!(value > 0 && value < 1)) {
      throw new InputException(name, Double.toString(value), "over 0 and below 1", "certainty has no interval and no stock");
    }
  }
}
