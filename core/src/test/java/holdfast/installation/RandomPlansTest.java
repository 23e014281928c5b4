// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.seats.FitLimits;
import holdfast.seats.InterferenceFit;
import holdfast.seats.YieldRule;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** What {@code build()} takes is printed to the end, and nothing weak is released. */
class RandomPlansTest {
  /** A few thousand; a hundred thousand with {@code -Dplans=100000}. */
  private static final int PLANS = Integer.getInteger("plans", 3000);

  private static void run(Supplier<? extends MountingPlan> draw, Map<String, Integer> thrown, int[] counts) {
    MountingPlan plan;
    try {
      plan = draw.get();
    } catch (InputException refused) {
      counts[0]++;
      return;
    }
    counts[1]++;
    try {
      assertTrue(plan.sheet().text().length() > 1000);
      assertFalse(plan.summary().json().isEmpty());
      if (plan.stops().isEmpty()) {
        counts[2]++;
        safe(plan);
      }
    } catch (RuntimeException e) {
      StackTraceElement at = java.util.Arrays.stream(e.getStackTrace())
          .filter(frame -> frame.getClassName().startsWith("holdfast.installation")).findFirst().orElse(e.getStackTrace()[0]);
      thrown.merge(at + ": " + e.getClass().getSimpleName() + " " + String.valueOf(e.getMessage()).replaceAll("[0-9.]+", "#"), 1,
          Integer::sum);
    }
  }

  private static void safe(MountingPlan plan) {
    for (LimitCheck check : plan.allLimits().checks()) {
      assertTrue(check.consequence() == LimitCheck.Consequence.WARNING || check.holds(), check::toString);
    }
    Optional<InterferenceFit> seat = plan instanceof InstallationPlan stud ? stud.seat() : ((YokePlan) plan).ear();
    if (seat.isPresent()) {
      FitLimits limits = seat.get().limits(YieldRule.VON_MISES);
      limits.stud().safety().ifPresent(safety -> assertTrue(safety >= 1, limits::toString));
      limits.housing().safety().ifPresent(safety -> assertTrue(
          safety >= (limits.housing().brittle() ? 2 : 1) || SeatLimits.plastic(seat.get()).isPresent(), limits::toString));
    }
    if (plan instanceof InstallationPlan stud) {
      stud.roller().material().yieldStrength().ifPresent(yield -> {
        assertTrue(stud.stud().equivalent().compareTo(yield) <= 0);
        assertTrue(stud.tightest().greatest().combinedStress().compareTo(yield) <= 0);
      });
    }
  }

  @Test
  void everyStudPlanThatIsTakenPrintsAndNothingWeakIsReleased() {
    Map<String, Integer> thrown = new TreeMap<>();
    int[] counts = new int[3];
    RandomPlans plans = new RandomPlans(14);
    for (int plan = 0; plan < PLANS; plan++) {
      run(plans::stud, thrown, counts);
    }
    assertEquals(Map.of(), thrown, () -> counts[1] + " taken, " + counts[0] + " refused, " + counts[2] + " released");
    assertTrue(counts[1] > PLANS / 10 && counts[2] > PLANS / 1000, () -> counts[1] + " taken, " + counts[2] + " released");
  }

  @Test
  void everyYokePlanThatIsTakenPrintsAndNothingWeakIsReleased() {
    Map<String, Integer> thrown = new TreeMap<>();
    int[] counts = new int[3];
    RandomPlans plans = new RandomPlans(15);
    for (int plan = 0; plan < PLANS / 3; plan++) {
      run(plans::yoke, thrown, counts);
    }
    assertEquals(Map.of(), thrown, () -> counts[1] + " taken, " + counts[0] + " refused, " + counts[2] + " released");
    assertTrue(counts[1] > PLANS / 30, () -> counts[1] + " taken");
  }
}
