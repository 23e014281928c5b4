// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.trace.SignalWord;

/**
 * The sentences of the bench card. Each holds one idea and at most twenty words. {@code {}} takes a number or a word of the
 * job, {@code _} is room to write.
 */
enum BenchLine {
  STOP_MACHINE(BenchStep.ISOLATE, SignalWord.DANGER,
      "A machine that starts or falls on you kills. Stop it normally. Lock every energy off with your own lock."),
  LET_DOWN(BenchStep.ISOLATE, "Block raised loads. Slacken ropes and belts. Let down springs and pressure."),
  PROVE_DEAD(BenchStep.ISOLATE, "Try the start control with all people clear. Nothing moves. Put the control back to off."),

  DEBURR(BenchStep.CLEAN,
      "Wear eye protection from here on. Break the edge of the bore. Take off burrs and paint at bore and face."),
  WIPE(BenchStep.CLEAN, "Wipe everything clean."),

  ONE_TEMPERATURE(BenchStep.CHECK, "Parts and gauges at one temperature, near {}. Measure at three places in two directions."),
  GAUGED(BenchStep.CHECK, "The limits below are already drawn in by the uncertainty of the gauges, {}."),
  NOT_GAUGED(BenchStep.CHECK, "Stay inside each limit by the uncertainty of your gauge: _."),
  BORE(BenchStep.CHECK, "Bore {}: least _ greatest _"),
  STUD(BenchStep.CHECK, "Stud {}: least _ greatest _"),
  EARS(BenchStep.CHECK, "Both ears {}: least _ greatest _"),
  PIN(BenchStep.CHECK, "Pin {}: least _ greatest _"),
  ROLLER_BORE(BenchStep.CHECK, "Roller bore {}: least _ greatest _"),
  GAUGE_TOO_COARSE(BenchStep.CHECK, "{}: this gauge is too coarse for the tolerance. Take a finer one."),
  RUN_OUT(BenchStep.CHECK, "Run-out of the face at most {}: _."),
  GAP(BenchStep.CHECK, "Gap between the ears at least {}: _."),
  IN_LINE(BenchStep.CHECK, "A test pin slides through both ears."),
  ACCEPTED(BenchStep.CHECK, true, "Go on only when every part is accepted. By _"),

  PORT(BenchStep.PORTS, "{}: {}."),
  PORT_SIZE(BenchStep.PORTS, "{}: {} ({})."),
  BELOW_SLOT(BenchStep.PORTS, "What sits in the slot stays below its bottom."),
  MANDREL(BenchStep.PORTS, "Drive them with a mandrel now: later nobody can reach them."),
  LOOK_AT_OPENINGS(BenchStep.PORTS, "Its openings are assumed: look at the part."),
  FIRST_FILL(BenchStep.PORTS, "First fill at least {}, until clean grease shows, unless the maker filled it."),
  PLUG_BORE(BenchStep.PORTS, "Plug both ends of the grease bore."),

  OIL_SEAT(BenchStep.OIL, "Oil bore and {} lightly."),
  THREAD_STATE(BenchStep.OIL, "Thread and nut: {}. The torque holds for this state alone."),

  MARK(BenchStep.PRESS, "Turn the mark on the head away from the load."),
  RAM(BenchStep.PRESS, SignalWord.WARNING, "Hardened steel can burst. Guard the ram. Keep hands and face out of line."),
  SUPPORT(BenchStep.PRESS, "Support the member close round its bore. Push straight, only on the middle of the head."),
  SLEEVE(BenchStep.PRESS, "Push with a sleeve that clears the fitting."),
  ROLLER_IN_FORK(BenchStep.PRESS, "Put the roller between the ears. Set the cross hole of the pin beside the load."),
  SUPPORT_EAR(BenchStep.PRESS,
      "Support the ear that is pressed. Put a spacer into the gap. Push straight, only on the end of the pin."),
  EXPECT(BenchStep.PRESS, "Expect {} to {} at the end. Less: stop, the pair is too loose. Reached _."),
  EXPECT_UP_TO(BenchStep.PRESS, "Expect no more than {} at the end. Reached _."),
  STOP_AT(BenchStep.PRESS, "STOP at {}, above the rating of your press, or if it cocks."),
  NO_FIGURE(BenchStep.PRESS, true, "No force can be computed for this pair. Ask the engineer before you press."),
  SPARE_RING(BenchStep.PRESS, SignalWord.NOTICE, "Force through ring, flange or needles ruins the roller."),
  HEAT(BenchStep.PRESS, "Or heat the {} to {}, never above {}. Then slip the {} in at once."),
  HOT(BenchStep.PRESS, SignalWord.CAUTION, "Hot parts burn: wear dry heat-proof gloves."),

  SLIP_MARK(BenchStep.SLIP, "Turn the mark on the head away from the load."),
  SLIP_ROLLER_IN_FORK(BenchStep.SLIP, "Put the roller between the ears. Set the cross hole of the pin beside the load."),
  BY_HAND(BenchStep.SLIP, SignalWord.WARNING,
      "Struck hardened steel throws chips that can blind. Push the {} in by hand. Never hammer."),

  FEELER(BenchStep.SEATED, "The thinnest feeler enters nowhere round the shoulder. The ring turns freely."),
  FREE_IN_FORK(BenchStep.SEATED, "The roller turns freely between the ears."),
  RING_CLAMPED(BenchStep.SEATED, "The inner ring is clamped between ears or spacers."),
  RING_GUIDED(BenchStep.SEATED, "End plates or side rails guide the ring."),

  SET_WRENCH(BenchStep.TIGHTEN, "Set the wrench to {}. Pull smoothly. No last pull: it bends the stud."),
  HOLD_HEAD(BenchStep.TIGHTEN, "Hold the stud at its head ({}) against {}."),
  SEAT_HOLDS(BenchStep.TIGHTEN, "The seat holds the stud: nothing to hold at the head."),
  THREAD_SHOWS(BenchStep.TIGHTEN, "At least {} of thread shows behind the nut."),
  TRY_GRIP(BenchStep.TIGHTEN, "Before you tighten: the nut must not touch the plain shank."),
  NEW_LOCKING_NUT(BenchStep.TIGHTEN, "Take a new self-locking nut. The setting counts its running torque of {}."),
  STAND_FIRM(BenchStep.TIGHTEN, SignalWord.CAUTION, "A slipping wrench throws you. Stand firm. Pull, do not push."),
  TORQUE_REACHED(BenchStep.TIGHTEN, true, "Wrench number _ reached _ by _"),

  LOCK_NONE(BenchStep.LOCK, "Only the preload locks this nut. Paint a mark across nut and stud."),
  LOCK_DOUBLE(BenchStep.LOCK, "Hold the first nut. Tighten the second one against it."),
  LOCK_SPRING(BenchStep.LOCK, "The spring washer lies flat. Paint a mark across nut and stud."),
  LOCK_WASHER(BenchStep.LOCK, "Bend a tab of the lock washer against a flat of the nut."),
  LOCK_SELF(BenchStep.LOCK, "The nut locks itself. Paint a mark across nut and stud."),
  LOCK_CURE(BenchStep.LOCK, "No load before the thread locker has cured, as its maker states. Paint a mark across nut and stud."),

  SECURE_PIN(BenchStep.SECURE, "The pin is secured by {}."),
  MAY_TURN(BenchStep.SECURE, "A loose pin may still turn in the ears: lock it against turning."),
  SECURED(BenchStep.SECURE, true, "Pin secured by _"),

  INJECTION(BenchStep.GREASE, SignalWord.WARNING,
      "Grease goes through skin. Never hold coupler or leak. A prick in the skin: hospital at once."),
  GREASE_IN(BenchStep.GREASE, "{}: at least {} = _ shots (weigh ten). Slowly, turning the ring, until fresh grease shows."),
  BACK_PRESSURE(BenchStep.GREASE, SignalWord.NOTICE, "Stop if the pressure rises: seals pop out."),
  FOR_LIFE(BenchStep.GREASE, "Greased for life: add none."),
  TRACK(BenchStep.GREASE, "Lubricate the track too."),

  TOOLS_OUT(BenchStep.RESTORE, "The roller turns a full circle by hand, free and smooth."),
  OWN_LOCK(BenchStep.RESTORE, "Tools out. Guards back. People clear and told. Each takes off the own lock."),

  STROKE(BenchStep.RUN_IN, "Go slowly through the whole stroke. Nothing touches. The roller never stops turning."),
  RELEASED(BenchStep.RUN_IN, true, "The temperature settles at _. Released by _"),

  AGAIN(BenchStep.TIGHTEN_AGAIN, "After the first heat cycle, and after 24 h to 100 h: isolate as in step {}. Set {} again."),
  AGAIN_TAB(BenchStep.TIGHTEN_AGAIN, "Open the tab first. Bend a fresh one after, as in step {}."),
  AGAIN_MARK(BenchStep.TIGHTEN_AGAIN, "Lock it as in step {}."),
  LOOK_AT_MARK(BenchStep.LOOK_AGAIN, "After the first heat cycle, and after 24 h to 100 h: isolate as in step {}."),
  MARK_MOVED(BenchStep.LOOK_AGAIN, "The mark of step {} must not have moved. If it has, take apart and do all anew."),
  PIN_MOVED(BenchStep.LOOK_AGAIN, "What you fitted in step {} must not have walked or turned."),

  GREASE_AGAIN(BenchStep.NEXT, "Grease after {} of running or {}, whichever is earlier: due _."),
  GREASE_MONTHS(BenchStep.NEXT, "Grease every {}: due _."),
  REPLACE(BenchStep.NEXT, "Replace after {} of running: due _."),
  REPLACE_BY_CONDITION(BenchStep.NEXT, "Replace by condition: look at it at every greasing.");

  private final BenchStep step;
  private final SignalWord signal;
  private final boolean hold;
  private final String text;

  BenchLine(BenchStep step, String text) {
    this(step, null, false, text);
  }

  BenchLine(BenchStep step, SignalWord signal, String text) {
    this(step, signal, false, text);
  }

  BenchLine(BenchStep step, boolean hold, String text) {
    this(step, null, hold, text);
  }

  BenchLine(BenchStep step, SignalWord signal, boolean hold, String text) {
    this.step = step;
    this.signal = signal;
    this.hold = hold;
    this.text = text;
  }

  BenchStep step() {
    return step;
  }

  /** Null for plain advice. */
  SignalWord signal() {
    return signal;
  }

  boolean hold() {
    return hold;
  }

  String text() {
    return text;
  }
}
