// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.LimitCheck;
import holdfast.installation.MountingPlan;
import holdfast.quantity.InputException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A roller of a list in the place of a job's own.
 *
 * @param name what the list calls it
 * @param plan the job with it; null if it does not go with the other parts
 * @param refusal why it does not go with them; empty if it does
 */
public record RankedRoller(String name, MountingPlan plan, String refusal) implements Serializable {
  // Refuses a roller with both or neither.
  public RankedRoller {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(refusal, "refusal");
    if ((plan == null) == refusal.isEmpty()) {
      throw new InputException("refusal", "'" + refusal + "'", "stated if there is no plan, and only then",
          "a roller goes with the job or does not");
    }
  }

  /**
   * Whether nothing forbids to install it.
   *
   * @return true if it goes with the job and the job has no stop
   */
  public boolean install() {
    return plan != null && plan.stops().isEmpty();
  }

  /**
   * The limit with the least margin.
   *
   * @return the limit; empty if the roller does not go with the job
   */
  public Optional<LimitCheck> governing() {
    return plan == null ? Optional.empty() : Optional.of(plan.allLimits().governing());
  }

  /** Margin of the governing limit, for sorting: least for what does not go with the job. */
  double rank() {
    return governing().map(check -> check.margin().getAsDouble()).orElse(-1.0);
  }

  /**
   * Why it must not be installed.
   *
   * @return the refusal, or the stops of the job with it; empty if it may be installed
   */
  public List<String> reasons() {
    return plan == null ? List.of(refusal) : plan.stops();
  }

  /**
   * The smallest roller that may be installed: least outside diameter, then least dynamic rating.
   *
   * @param ranked rollers in the place of one job's own
   * @return the roller; empty if none may be installed
   */
  public static Optional<RankedRoller> smallest(List<RankedRoller> ranked) {
    return bySize(ranked).stream().filter(RankedRoller::install).findFirst();
  }

  /**
   * The next smaller roller beside the smallest that may be installed.
   *
   * @param ranked rollers in the place of one job's own
   * @return the greatest of those that are smaller; of all if none may be installed; empty if there is none
   */
  public static Optional<RankedRoller> nextSmaller(List<RankedRoller> ranked) {
    List<RankedRoller> sorted = new ArrayList<>(bySize(ranked));
    int end = smallest(ranked).map(sorted::indexOf).orElse(sorted.size());
    return end == 0 ? Optional.empty() : Optional.of(sorted.get(end - 1));
  }

  private static List<RankedRoller> bySize(List<RankedRoller> ranked) {
    Objects.requireNonNull(ranked, "ranked");
    return ranked.stream().filter(roller -> roller.plan() != null)
        .sorted(Comparator.comparingDouble((RankedRoller roller) -> roller.plan().roller().outsideDiameter().mm())
            .thenComparingDouble(roller -> roller.plan().roller().ratings().dynamic().newton()))
        .toList();
  }
}
