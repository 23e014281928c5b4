// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.FirstFill;
import holdfast.lubrication.GreaseQuantity;
import holdfast.lubrication.GreaseRoute;
import holdfast.lubrication.GreaseSchedule;
import holdfast.lubrication.Port;
import holdfast.lubrication.RelubricationInterval;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.Objects;

/**
 * How a yoke roller is greased through its pin: exactly one way in, every other opening closed.
 *
 * @param feed the opening that feeds
 * @param obstacles why it cannot feed, each with what would help; empty if it can
 * @param instructions what to do at each opening; empty if it cannot feed
 * @param quantity grease for one relubrication
 * @param firstFill grease for the first fill
 * @param schedule when it is greased again
 */
public record PinGreasing(
    Port feed, List<String> obstacles, List<String> instructions, GreaseQuantity quantity, FirstFill firstFill,
    GreaseSchedule schedule)
    implements Serializable {
  static final SourceRef LOGIC = SourceRef.derived("grease goes from opening to bore to cross hole to rollers, nowhere else");

  // Keeps unmodifiable copies.
  public PinGreasing {
    Objects.requireNonNull(feed, "feed");
    Objects.requireNonNull(obstacles, "obstacles");
    Objects.requireNonNull(instructions, "instructions");
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(firstFill, "firstFill");
    Objects.requireNonNull(schedule, "schedule");
    obstacles = List.copyOf(obstacles);
    instructions = List.copyOf(instructions);
  }

  static PinGreasing of(YokePlan plan, Port feed) {
    List<String> obstacles = obstacles(plan, feed);
    List<String> instructions = obstacles.isEmpty() ? instructions(plan, feed) : List.of();
    GreaseQuantity quantity =
        new GreaseQuantity(plan.roller().outsideDiameter(), plan.roller().ringWidth(), GreaseRoute.THROUGH_RING);
    return new PinGreasing(feed, obstacles, instructions, quantity, GreaseInterval.firstFill(plan.roller(), quantity),
        GreaseInterval.of(plan.roller(), plan.duty()));
  }

  /** What the opening is called at a pin. */
  static String name(Port port) {
    return switch (port) {
      case HEAD -> "accessible end of the pin";
      case THREAD_END -> "other end of the pin";
      case RADIAL -> "feed hole in the ear";
    };
  }

  private static List<String> obstacles(YokePlan plan, Port feed) {
    Pin pin = plan.pin();
    List<String> obstacles = new ArrayList<>();
    if (pin.greaseBore().mm() == 0) {
      obstacles.add("the pin is solid: drill it along its axis and across, or take a roller lubricated for life");
    } else if (pin.crossHole().mm() == 0) {
      obstacles.add("no hole leads from the bore of the pin to the roller: drill the pin across under the roller");
    }
    if (plan.roller().innerRing() && !plan.roller().ringHole()) {
      obstacles.add("the inner ring has no grease hole: take a roller with one, or a roller lubricated for life");
    }
    if (feed == Port.THREAD_END && !pin.through()) {
      obstacles.add("the bore does not open at the other end of the pin: turn the pin round, or drill it through");
    }
    if (feed == Port.RADIAL && !plan.fork().feedHole()) {
      obstacles.add("no ear has a feed hole that meets the pin: drill ear and pin there, or feed through an end of the pin");
    }
    return obstacles;
  }

  private static List<String> instructions(YokePlan plan, Port feed) {
    List<String> instructions = new ArrayList<>();
    open(plan).forEach(port ->
        instructions.add(name(port) + ": " + (port == feed ? "FEED by grease fitting" : "closed by plug")));
    instructions.add("cross hole of the pin: set beside the load, under the grease hole of the inner ring if there is one");
    return instructions;
  }

  /** The ends and holes that are there: one feeds, the others are closed. */
  static List<Port> open(YokePlan plan) {
    return Stream.of(Port.values()).filter(port -> open(plan, port)).toList();
  }

  /** The bore is drilled from the accessible end. */
  private static boolean open(YokePlan plan, Port port) {
    return switch (port) {
      case HEAD -> true;
      case THREAD_END -> plan.pin().through();
      case RADIAL -> plan.fork().feedHole();
    };
  }

  /**
   * Whether the wanted opening can feed.
   *
   * @return true if nothing stands in the way
   */
  public boolean possible() {
    return obstacles.isEmpty();
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
