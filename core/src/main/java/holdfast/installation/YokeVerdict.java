// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reasons not to install a yoke roller. */
final class YokeVerdict {
  /** Least hardness of a raceway of needles, by Needle roller bearings catalogue 2300/E and Cam followers catalogue 2008. */
  private static final double RACEWAY_HRC = 58;

  private YokeVerdict() {}

  static List<Stop> stops(YokePlan plan) {
    List<Stop> stops = new ArrayList<>();
    nothingHolds(plan).ifPresent(text -> stops.add(new Stop(StopCause.NOTHING_HOLDS, text)));
    softRaceway(plan).ifPresent(text -> stops.add(new Stop(StopCause.SOFT_RACEWAY, text)));
    boundNeedles(plan).ifPresent(text -> stops.add(new Stop(StopCause.BOUND_NEEDLES, text)));
    Verdict.shortLifeOrDirt(plan, stops);
    Verdict.exceededLimits(plan, stops);
    plan.greasing()
        .filter(greasing -> !greasing.possible())
        .ifPresent(greasing -> stops.add(new Stop(StopCause.NO_FEED,
            "the roller would run dry: the " + PinGreasing.name(greasing.feed())
            + " cannot feed it (" + String.join("; ", greasing.obstacles()) + ")")));
    return List.copyOf(stops);
  }

  private static Optional<String> nothingHolds(YokePlan plan) {
    return plan.pin().securing() == PinSecuring.PRESS_FIT && plan.earFit().kind() != FitKind.INTERFERENCE
        ? Optional.of("nothing holds the pin: the loosest pair of pin and ear slips, and the press fit alone was to secure it;"
            + " take a tighter bore, or secure the pin otherwise")
        : Optional.empty();
  }

  private static Optional<String> softRaceway(YokePlan plan) {
    if (plan.roller().innerRing()) {
      return Optional.empty();
    }
    OptionalDouble hardness = plan.pin().statedHardness();
    return hardness.isPresent() && hardness.getAsDouble() >= RACEWAY_HRC
        ? Optional.empty()
        : Optional.of("the needles run on the pin, whose surface must have at least " + Numbers.shortest(RACEWAY_HRC) + " HRC: "
            + (hardness.isPresent() ? "it has " + hardness.getAsDouble() : "its hardness is not stated"));
  }

  private static Optional<String> boundNeedles(YokePlan plan) {
    return !plan.roller().innerRing() && plan.rollerFit().kind() != FitKind.CLEARANCE
        ? Optional.of("the needles bind on the pin: the tightest pair leaves them no clearance; take a smaller pin")
        : Optional.empty();
  }
}
