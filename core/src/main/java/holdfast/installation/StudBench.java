// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.lubrication.GreaseSchedule;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortState;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Mass;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Torque;
import holdfast.quantity.Unit;
import holdfast.seats.Band;
import holdfast.seats.InterferenceFit;
import holdfast.seats.TemperatureCeiling;
import holdfast.seats.ThermalAssembly;
import holdfast.sheet.SafeRounding;
import holdfast.threads.TorqueWindow;
import java.util.Optional;
import java.util.stream.Stream;

/** What the bench card says of a stud. */
final class StudBench {
  private StudBench() {}

  static BenchLines lines(InstallationPlan plan, BenchCard card) {
    BenchLines lines = new BenchLines();
    start(lines, card);
    Fit fit = plan.fit();
    gauge(lines, card, BenchLine.BORE, "Bore", card.accepted(fit.hole().limits()));
    gauge(lines, card, BenchLine.STUD, "Stud", card.accepted(fit.shaft().limits()));
    plan.member().statedRunOut().ifPresent(runOut -> lines.add(BenchLine.RUN_OUT, BenchNumber.stop(runOut)));
    lines.add(BenchLine.ACCEPTED);
    ports(lines, plan);
    lines.add(BenchLine.OIL_SEAT, "stud").add(BenchLine.THREAD_STATE, plan.nut().condition());
    if (fit.kind() == FitKind.CLEARANCE) {
      lines.addIf(plan.greasing().isPresent(), BenchLine.SLIP_MARK).add(BenchLine.BY_HAND, "stud");
    } else {
      press(lines, plan, plan.seat().orElseThrow());
    }
    lines.add(BenchLine.FEELER);
    tighten(lines, plan);
    lock(lines, plan.nut());
    plan.greasing().ifPresentOrElse(
        grease -> grease(lines, named(plan.duty().statedFeed().orElseThrow()), grease.quantity().mass()),
        () -> lines.add(BenchLine.FOR_LIFE));
    lines.add(BenchLine.TRACK);
    end(lines);
    again(lines, plan);
    next(lines, plan, plan.greasing().map(GreasePlan::schedule));
    return lines;
  }

  static void start(BenchLines lines, BenchCard card) {
    lines.add(BenchLine.STOP_MACHINE).add(BenchLine.LET_DOWN).add(BenchLine.PROVE_DEAD).add(BenchLine.DEBURR)
        .add(BenchLine.WIPE).add(BenchLine.ONE_TEMPERATURE, new BenchNumber(InstallationPlan.SHOP, SafeRounding.DOWN, 2));
    if (card.gauge() == null) {
      lines.add(BenchLine.NOT_GAUGED);
    } else {
      lines.add(BenchLine.GAUGED, new BenchNumber(card.gauge(), SafeRounding.UP, 2));
    }
  }

  static void gauge(BenchLines lines, BenchCard card, BenchLine line, String part, Optional<BenchLines.Limits> limits) {
    limits.ifPresentOrElse(zone -> lines.add(line, zone), () -> lines.add(BenchLine.GAUGE_TOO_COARSE, part));
  }

  static void end(BenchLines lines) {
    lines.add(BenchLine.TOOLS_OUT).add(BenchLine.OWN_LOCK).add(BenchLine.STROKE).add(BenchLine.RELEASED);
  }

  static void grease(BenchLines lines, String where, Mass mass) {
    lines.add(BenchLine.INJECTION).add(BenchLine.GREASE_IN, where, BenchNumber.least(mass)).add(BenchLine.BACK_PRESSURE);
  }

  static void next(BenchLines lines, MountingPlan plan, Optional<GreaseSchedule> schedule) {
    schedule.ifPresent(grease -> {
      String months = SafeRounding.DOWN.text(grease.months(), 3) + (grease.months() == 1 ? " month" : " months");
      grease.knownInterval().ifPresentOrElse(
          interval -> lines.add(BenchLine.GREASE_AGAIN, BenchNumber.stop(interval.interval()), months),
          () -> lines.add(BenchLine.GREASE_MONTHS, months));
    });
    if (plan.atWork().knownModifiedLife().isPresent()) {
      lines.add(BenchLine.REPLACE, BenchNumber.stop(replaceAfter(plan)));
    } else {
      lines.add(BenchLine.REPLACE_BY_CONDITION);
    }
  }

  /**
   * The earliest of the times that the record names: of this roller, of its ring if that bends under a rating for a rigid one,
   * and of all places together.
   */
  private static OperatingTime replaceAfter(MountingPlan plan) {
    OperatingTime after = plan.replaceAfter();
    Optional<OperatingTime> bent = plan.hoursOfBendingRing().map(band -> band.get(0));
    return Stream.of(bent, together(plan)).flatMap(Optional::stream).reduce(after,
        (one, other) -> one.compareTo(other) <= 0 ? one : other);
  }

  private static Optional<OperatingTime> together(MountingPlan plan) {
    try {
      return Optional.ofNullable(plan.fleet()).map(fleet -> new OperatingTime(FleetCare.of(plan).together().hours()));
    } catch (InputException outside) {
      // Places whose age the survival function does not reach have no common interval; the record says so.
      return Optional.empty();
    }
  }

  private static String named(Port port) {
    return switch (port) {
      case HEAD -> "Head end";
      case THREAD_END -> "Thread end";
      case RADIAL -> "Feed hole of the member";
    };
  }

  private static void ports(BenchLines lines, InstallationPlan plan) {
    if (plan.greasing().isEmpty()) {
      lines.addIf(plan.roller().greaseBore().mm() > 0, BenchLine.PLUG_BORE);
      return;
    }
    GreasePlan grease = plan.greasing().get();
    boolean driven = false;
    for (PortState state : grease.ports().ports()) {
      if (!done(state)) {
        continue;
      }
      boolean fitted = state.part() == PortState.Part.FITTING || state.part() == PortState.Part.PLUG;
      driven |= fitted;
      if (fitted && !state.size().isEmpty()) {
        lines.add(BenchLine.PORT_SIZE, named(state.port()), state.part(), state.size().get(0));
      } else {
        lines.add(BenchLine.PORT, named(state.port()), state.part());
      }
      lines.addIf(state.belowSlotBottom(), BenchLine.BELOW_SLOT);
    }
    lines.addIf(driven, BenchLine.MANDREL).addIf(!grease.openingsSeen(), BenchLine.LOOK_AT_OPENINGS)
        .add(BenchLine.FIRST_FILL, BenchNumber.least(grease.firstFill().least()));
  }

  /** Whether somebody has something to do: the seat closes a port by itself. */
  private static boolean done(PortState state) {
    return switch (state.part()) {
      case NONE, SEAT_WALL, COLLAR -> false;
      case FITTING, BUILT_IN_FITTING, MEMBER_FEED_HOLE, PLUG, MEMBER_PLUG -> true;
    };
  }

  private static void press(BenchLines lines, InstallationPlan plan, InterferenceFit seat) {
    boolean headFitting = plan.greasing().map(GreasePlan::ports).map(ports -> ports.state(Port.HEAD))
        .filter(state -> state.part() == PortState.Part.FITTING).isPresent();
    lines.add(BenchLine.RAM).addIf(plan.greasing().isPresent(), BenchLine.MARK).add(BenchLine.SUPPORT)
        .addIf(headFitting, BenchLine.SLEEVE);
    force(lines, seat.validity(), seat.pressing(plan.member().pressingFriction()).pressIn());
    lines.add(BenchLine.SPARE_RING);
    heat(lines, seat.thermalAssembly()
        .ceiling(new TemperatureCeiling("the roller", plan.roller().hottest(), RollerAtWork.MAKER))
        .studFloor(plan.roller().coldest()).build(), "member", "stud");
  }

  static void force(BenchLines lines, InterferenceFit.Validity validity, Band<Force> force) {
    if (validity == InterferenceFit.Validity.BEYOND) {
      lines.add(BenchLine.NO_FIGURE);
      return;
    }
    BenchNumber most = BenchNumber.stop(force.greatest());
    BenchNumber least = BenchNumber.least(force.least());
    // A transition fit starts from nothing.
    if (force.least().newton() > 0 && force.least().ratio(force.greatest()) < 0.9) {
      lines.add(BenchLine.EXPECT, least, most);
    } else {
      lines.add(BenchLine.EXPECT_UP_TO, most);
    }
    lines.add(BenchLine.STOP_AT, new BenchLines.Large(most));
  }

  /** Heating is offered where it needs no cold, which is no work for a bench. */
  static void heat(BenchLines lines, ThermalAssembly heat, String outer, String inner) {
    if (!heat.heats() || heat.cools() || !heat.withinCeilings() || heat.governingCeiling().isEmpty()) {
      return;
    }
    BenchNumber needed = BenchNumber.least(heat.housingTemperature());
    BenchNumber ceiling = BenchNumber.stop(heat.governingCeiling().get().limit());
    // Whole degrees must leave room between the two.
    if (Math.ceil(heat.housingTemperature().celsius()) < Math.floor(heat.governingCeiling().get().limit().celsius())) {
      lines.add(BenchLine.HEAT, outer, needed, ceiling, inner).add(BenchLine.HOT);
    }
  }

  private static void tighten(BenchLines lines, InstallationPlan plan) {
    lines.addIf(plan.nut().locking() == NutLocking.SELF_LOCKING, BenchLine.NEW_LOCKING_NUT,
        new BenchNumber(plan.nut().prevailing(), SafeRounding.UP, 2));
    Torque held = plan.torqueToBeHeld();
    if (held.newtonMillimetre() > 0) {
      lines.add(BenchLine.HOLD_HEAD, plan.roller().build().head(), BenchNumber.least(held));
    } else {
      lines.add(BenchLine.SEAT_HOLDS);
    }
    lines.add(BenchLine.SET_WRENCH, new BenchLines.Large(setting(plan))).add(BenchLine.STAND_FIRM);
    Length twoPitches = plan.tightening().thread().pitch().times(2);
    Optional<Length> shows = Grip.of(plan).map(Grip::showing);
    lines.addIf(shows.filter(length -> length.compareTo(twoPitches) >= 0).isPresent(), BenchLine.THREAD_SHOWS,
            BenchNumber.least(twoPitches))
        .addIf(shows.isEmpty(), BenchLine.TRY_GRIP)
        .add(BenchLine.TORQUE_REACHED);
  }

  /** Down, because a stud breaks sooner than a joint opens; up where down would leave the window. */
  static BenchNumber setting(InstallationPlan plan) {
    Torque set = plan.nut().torque();
    for (int digits = 3; digits < 12; digits++) {
      for (SafeRounding side : SafeRounding.values()) {
        BenchNumber number = new BenchNumber(set, side, digits);
        if (inside(number, plan.torqueWindow(), KnownUnits.N_M) && inside(number, plan.torqueWindow(), KnownUnits.LBF_IN)) {
          return number;
        }
      }
    }
    return new BenchNumber(set, SafeRounding.DOWN, 12);
  }

  private static boolean inside(BenchNumber number, TorqueWindow window, Unit<Torque> unit) {
    double printed = number.side().significant(((Torque) number.exact()).in(unit), number.digits());
    return printed >= window.lowest().in(unit) && printed <= window.highest().in(unit);
  }

  private static void lock(BenchLines lines, Nut nut) {
    lines.add(switch (nut.locking()) {
      case NONE -> BenchLine.LOCK_NONE;
      case DOUBLE_NUTS -> BenchLine.LOCK_DOUBLE;
      case SPRING_WASHER -> BenchLine.LOCK_SPRING;
      case LOCK_WASHER -> BenchLine.LOCK_WASHER;
      case SELF_LOCKING -> BenchLine.LOCK_SELF;
      case THREAD_LOCKER -> BenchLine.LOCK_CURE;
    });
  }

  /** A nut that sits in cured thread locker is not turned again: that would break what locks it. */
  private static void again(BenchLines lines, InstallationPlan plan) {
    if (plan.nut().locking() == NutLocking.THREAD_LOCKER) {
      lines.add(BenchLine.LOOK_AT_MARK, BenchStep.ISOLATE).add(BenchLine.MARK_MOVED, BenchStep.LOCK);
      return;
    }
    lines.add(BenchLine.AGAIN, BenchStep.ISOLATE, setting(plan))
        .add(plan.nut().locking() == NutLocking.LOCK_WASHER ? BenchLine.AGAIN_TAB : BenchLine.AGAIN_MARK, BenchStep.LOCK);
  }
}
