// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.PermissibleLoad;
import holdfast.bearings.TrackRoller;
import holdfast.failures.Margin;
import holdfast.failures.MisalignmentKind;
import holdfast.failures.MisalignmentLimit;
import holdfast.installation.LimitCheck.Bound;
import holdfast.installation.LimitCheck.Consequence;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Quantity;
import holdfast.quantity.Stress;
import holdfast.seats.StudFatigue;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the limits of a plan: here those that hold whatever holds the roller. Not thread-safe. */
final class LimitList {
  private final RollerAtWork work;
  private final List<LimitCheck> checks = new ArrayList<>();
  private final List<Warning> notKnown = new ArrayList<>();

  LimitList(RollerAtWork work) {
    this.work = work;
  }

  /**
   * The rating life counts the mean load of the duty and what the lean leaves of the life; everything else the greatest load.
   */
  LimitList loads(CountedLean lean) {
    double kept = Math.pow(lean.factor(), 1 / work.roller().ratings().family().lifeExponent());
    PermissibleLoad permissible = work.limits();
    for (PermissibleLoad.Limit limit : permissible.limits()) {
      boolean fatigue = limit.name().equals("fatigue");
      Margin reading =
          switch (limit.name()) {
            case "static" -> Margin.STATIC_LOAD;
            case "outer ring, turning", "outer ring, standing" -> Margin.RING_LOAD;
            case "stud" -> Margin.STUD_BENDING;
            case "track" -> Margin.TRACK_LOAD;
            default -> Margin.LIFE;
          };
      // The modified life judges fatigue; the basic one and the advice of half of C inform.
      boolean informs = fatigue || limit.name().equals("half of C");
      add(limit.name(), fatigue ? work.meanLoad() : work.duty().load(), Bound.AT_MOST,
          fatigue ? limit.load().times(kept) : limit.load(),
          informs ? Consequence.WARNING : Consequence.STOP, reading, List.of(limit.source()));
    }
    notKnown.addAll(permissible.warnings());
    rigidRing();
    return lean.counted() ? this : unknown("lean-not-counted", lean.toString(), RollerAtWork.MAKER);
  }

  /** The ring of a track roller bends between two points; a rating for a rigid ring knows nothing of that. */
  private void rigidRing() {
    LoadRatings ratings = work.roller().ratings();
    if (ratings.outerRing() == OuterRing.RIGID) {
      Force limit = ratings.staticRating().dividedBy(work.duty().staticSafety());
      unknown("static-limit-of-rigid-ring",
          Message.of("the static limit is that of a rating for a rigid ring: on a flat track, where the ring bends, printed"
              + " ratings of like rollers come to ", limit.times(RollerAtWork.LEAST_STATIC_RATIO), " … ",
              limit.times(RollerAtWork.GREATEST_STATIC_RATIO), " of it"), RollerAtWork.RING_PAIRS);
    }
  }

  LimitList speedAndTemperature() {
    Duty duty = work.duty();
    add("speed", duty.greatestSpeed(), Bound.AT_MOST, work.greatestSpeed(), Consequence.STOP, Margin.SPEED,
        work.speedSources());
    add("least load for rolling", duty.leastLoad(), Bound.AT_LEAST, work.trackRoller().minimumLoad(), Consequence.WARNING,
        Margin.MINIMUM_LOAD, List.of(TrackRoller.minimumLoadSource()));
    add("temperature, hot", duty.workingTemperature(), Bound.AT_MOST, work.roller().hottest(), Consequence.STOP,
        Margin.TEMPERATURE, List.of(RollerAtWork.MAKER));
    add("temperature, cold", duty.workingTemperature(), Bound.AT_LEAST, work.roller().coldest(), Consequence.STOP,
        Margin.TEMPERATURE, List.of(RollerAtWork.MAKER));
    return this;
  }

  /** A flat ring fails above its limit; for a crowned one the trade states none. */
  LimitList tilt(Angle ofSeat, boolean known, String whatIsNotKnown) {
    Angle tilt = ofSeat.plus(work.duty().statedTrackMisalignment().orElse(new Angle(0)));
    Optional<MisalignmentLimit> limit = MisalignmentLimit.narrowest(MisalignmentKind.TRACK_ROLLER_FLAT, 0);
    if (limit.isEmpty()) {
      return this;
    }
    SourceRef source = limit.get().source();
    if (work.roller().crowned()) {
      unknown("crowned-ring-tilt", "the published limit of misalignment, " + limit.get().limit()
          + ", is for flat rings; a crowned ring takes more, and no number is published", source);
      return this;
    }
    add("tilt of the roller", tilt, Bound.AT_MOST, limit.get().limit(), known ? Consequence.STOP : Consequence.WARNING,
        Margin.TILT, List.of(source));
    if (!known) {
      unknown("face-not-stated", whatIsNotKnown, source);
    }
    if (work.duty().statedTrackMisalignment().isEmpty()) {
      unknown("track-misalignment-not-stated",
          "the misalignment of the track is not stated: it adds to the tilt of the roller", source);
    }
    return this;
  }

  LimitList add(String name, Quantity<?> demand, Bound bound, Quantity<?> permitted, Consequence consequence, Margin reading,
      List<SourceRef> sources) {
    checks.add(new LimitCheck(name, demand, bound, permitted, consequence, reading, sources));
    return this;
  }

  /** Amplitude against what it may grow to; a resting load has none and is judged by the yield strength. */
  LimitList fatigue(String name, StudFatigue fatigue) {
    Stress amplitude = fatigue.amplitude();
    return amplitude.megapascal() > 0
        ? add(name, amplitude, Bound.AT_MOST, amplitude.times(fatigue.margin()), Consequence.STOP, Margin.STUD_BENDING,
            fatigue.sources())
        : this;
  }

  LimitList unknown(String id, String message, SourceRef source) {
    return unknown(id, Message.of(message), source);
  }

  LimitList unknown(String id, Message message, SourceRef source) {
    notKnown.add(new Warning(id, message, source));
    return this;
  }

  PlanLimits list() {
    return new PlanLimits(checks, notKnown);
  }
}
