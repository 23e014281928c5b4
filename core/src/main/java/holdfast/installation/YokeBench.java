// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.lubrication.Port;
import holdfast.seats.TemperatureCeiling;
import holdfast.sheet.SafeRounding;

/** What the bench card says of a pin in a fork. */
final class YokeBench {
  private YokeBench() {}

  static BenchLines lines(YokePlan plan, BenchCard card) {
    BenchLines lines = new BenchLines();
    StudBench.start(lines, card);
    StudBench.gauge(lines, card, BenchLine.EARS, "Ears", card.accepted(plan.earFit().hole().limits()));
    StudBench.gauge(lines, card, BenchLine.PIN, "Pin", card.accepted(plan.earFit().shaft().limits()));
    StudBench.gauge(lines, card, BenchLine.ROLLER_BORE, "Roller bore", card.accepted(plan.rollerFit().hole().limits()));
    lines.add(BenchLine.GAP, new BenchNumber(plan.roller().seatWidth(), SafeRounding.UP, 4))
        .add(BenchLine.IN_LINE).add(BenchLine.ACCEPTED);
    plan.greasing().ifPresentOrElse(grease -> ports(lines, plan, grease),
        () -> lines.addIf(plan.pin().greaseBore().mm() > 0, BenchLine.PLUG_BORE));
    lines.add(BenchLine.OIL_SEAT, "pin");
    join(lines, plan);
    lines.add(BenchLine.FREE_IN_FORK)
        .add(plan.fork().ringClamped() ? BenchLine.RING_CLAMPED : BenchLine.RING_GUIDED)
        .add(BenchLine.SECURE_PIN, plan.pin().securing());
    boolean loose = plan.earFit().kind() != FitKind.INTERFERENCE;
    lines.addIf(loose && !plan.pin().securing().againstTurning(), BenchLine.MAY_TURN).add(BenchLine.SECURED);
    plan.greasing().ifPresentOrElse(
        grease -> StudBench.grease(lines, capital(PinGreasing.name(grease.feed())), grease.quantity().mass()),
        () -> lines.add(BenchLine.FOR_LIFE));
    lines.add(BenchLine.TRACK);
    StudBench.end(lines);
    lines.add(BenchLine.LOOK_AT_MARK, BenchStep.ISOLATE).add(BenchLine.PIN_MOVED, BenchStep.SECURE);
    StudBench.next(lines, plan, plan.greasing().map(PinGreasing::schedule));
    return lines;
  }

  private static void join(BenchLines lines, YokePlan plan) {
    if (plan.pressed().isEmpty()) {
      lines.add(BenchLine.SLIP_ROLLER_IN_FORK).add(BenchLine.BY_HAND, "pin");
      return;
    }
    lines.add(BenchLine.RAM).add(BenchLine.ROLLER_IN_FORK).add(BenchLine.SUPPORT_EAR);
    StudBench.force(lines, plan.pressValidity(), plan.pressForce().orElseThrow());
    lines.add(BenchLine.SPARE_RING);
    // A warm fork does not help where the inner ring, too, is tight on the pin.
    if (plan.ringSeat().isEmpty()) {
      plan.ear().ifPresent(ear -> StudBench.heat(lines, ear.thermalAssembly()
          .ceiling(new TemperatureCeiling("the roller", plan.roller().hottest(), RollerAtWork.MAKER)).build(), "fork", "pin"));
    }
  }

  private static void ports(BenchLines lines, YokePlan plan, PinGreasing grease) {
    for (Port port : PinGreasing.open(plan)) {
      lines.add(BenchLine.PORT, capital(PinGreasing.name(port)), port == grease.feed() ? "grease fitting" : "plug");
    }
    lines.add(BenchLine.MANDREL).add(BenchLine.FIRST_FILL, BenchNumber.least(grease.firstFill().least()));
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
