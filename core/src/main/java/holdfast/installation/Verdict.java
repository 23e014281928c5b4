// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.OperatingTime;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.sheet.SheetUnits;
import holdfast.threads.TighteningState;
import holdfast.threads.TorqueWindow;
import holdfast.trace.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reasons not to install: what the plan's own numbers forbid, in the units of its sheet. */
final class Verdict {
  private Verdict() {}

  static List<Stop> stops(InstallationPlan plan) {
    List<Stop> stops = new ArrayList<>();
    Grip.of(plan).ifPresent(grip -> stops.addAll(grip.stops(plan.units())));
    closedWindow(plan).ifPresent(stops::add);
    overTorque(plan).ifPresent(text -> stops.add(new Stop(StopCause.OVER_MAKERS_TORQUE, text)));
    overstressedStud(plan).ifPresent(text -> stops.add(new Stop(StopCause.STUD_OVERSTRESSED, text)));
    shortLifeOrDirt(plan, stops);
    exceededLimits(plan, stops);
    noFeed(plan).ifPresent(text -> stops.add(new Stop(StopCause.NO_FEED, text)));
    return List.copyOf(stops);
  }

  static void shortLifeOrDirt(MountingPlan plan, List<Stop> stops) {
    shortLife(plan).ifPresent(stops::add);
    new DirtReading(plan.roller(), plan.duty()).contradiction().ifPresent(text -> stops.add(new Stop(StopCause.DIRT, text)));
  }

  static void exceededLimits(MountingPlan plan, List<Stop> stops) {
    for (LimitCheck check : plan.allLimits().exceeded()) {
      if (check.consequence() == LimitCheck.Consequence.STOP) {
        stops.add(new Stop(StopCause.of(check.reading()),
            "the limit '" + check.name() + "' is exceeded: the duty asks " + plan.units().text(check.demand())
            + (check.bound() == LimitCheck.Bound.AT_MOST ? " and at most " : " and at least ")
            + plan.units().text(check.permitted()) + " is permitted"));
      }
    }
  }

  private static Optional<String> noFeed(InstallationPlan plan) {
    return plan.greasing()
        .map(GreasePlan::ports)
        .filter(ports -> !ports.possible())
        .map(ports -> "the roller would run dry: " + LubricateSection.obstacles(ports));
  }

  /** Where no modified life is defined the basic one must do, and the sheet says that wear may end the roller first. */
  private static Optional<Stop> shortLife(MountingPlan plan) {
    boolean modified = plan.atWork().knownModifiedLife().isPresent();
    Duty duty = plan.duty();
    OperatingTime aligned = modified ? plan.atWork().fatigueHours() : plan.life().hours(duty.speed());
    CountedLean lean = plan.countedLean();
    OperatingTime life = lean.of(aligned);
    if (LeanRemedy.enough(plan, life)) {
      return Optional.empty();
    }
    String what = "the " + (modified ? "modified" : "basic") + " life with " + duty.reliability() + " reliability is " + life
        + ", less than the " + duty.wantedLife() + " wanted: ";
    return Optional.of(LeanRemedy.enough(plan, aligned)
        ? new Stop(StopCause.LEAN_COSTS_LIFE, what + "the lean leaves " + lean + ", " + aligned + "; "
            + LeanRemedy.of(plan, aligned))
        : new Stop(StopCause.SHORT_LIFE, what + "take a larger roller"
            + (modified ? ", a lower load, a thicker or cleaner lubricant, or a shorter interval" : " or a lower load")));
  }

  private static Optional<Stop> closedWindow(InstallationPlan plan) {
    SheetUnits u = plan.units();
    TorqueWindow window = plan.torqueWindow();
    Torque set = plan.nut().torque();
    if (!window.isOpen()) {
      return Optional.of(new Stop(StopCause.NO_TORQUE, u.text(Message.of(
          "no torque keeps the joint closed without overloading something: it needs at least ",
          window.lowest(), " (", window.lowLimit().content(), ") and bears at most ", window.highest(), " (",
          window.highLimit().content(), ")"))));
    }
    return set.compareTo(window.lowest()) < 0 || set.compareTo(window.highest()) > 0
        ? Optional.of(new Stop(StopCause.SETTING_OUTSIDE,
            "the wrench is set to " + u.text(set) + ", outside the window of " + u.span(window.lowest(), window.highest())))
        : Optional.empty();
  }

  private static Optional<String> overTorque(InstallationPlan plan) {
    Torque greatest = plan.nut().greatestTorque();
    return plan.roller()
        .statedTorque()
        .filter(limit -> greatest.compareTo(limit) > 0)
        .map(limit -> "the wrench may give " + plan.units().text(greatest) + ", more than the "
            + plan.units().text(limit) + " that the roller's maker permits");
  }

  private static Optional<String> overstressedStud(InstallationPlan plan) {
    TighteningState state = plan.tightest().greatest();
    Stress stress = state.combinedStress();
    return plan.roller()
        .material()
        .yieldStrength()
        .filter(yield -> stress.compareTo(yield) > 0)
        .map(
            yield ->
                "the drilled stud is stressed to " + plan.units().text(stress) + " while it is tightened, above its"
                    + " yield strength of "
                    + plan.units().text(yield));
  }
}
