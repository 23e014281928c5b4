// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Length;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Member, washer and nut on the stud: whether the nut clamps before it runs out of thread, and ends before the stud does. */
final class Grip {
  static final SourceRef STACK =
      SourceRef.derived("the nut turns on full thread only: plain shank, member, washer, nut and stud compared along the axis");

  /** Longest normal run-out of a thread, in pitches. */
  private static final double RUN_OUT = 2.5;

  private static final SourceRef RUN_OUT_SOURCE = SourceRef.memory("ISO 3508:1976", "normal run-out x, at most 2.5 pitches");
  private static final SourceRef SHOWS = SourceRef.commonPractice("two pitches of thread show behind the nut");

  private final StudLengths lengths;
  private final Length member;
  private final NutStack nut;
  private final Length pitch;

  private Grip(StudLengths lengths, Length member, NutStack nut, Length pitch) {
    this.lengths = lengths;
    this.member = member;
    this.nut = nut;
    this.pitch = pitch;
  }

  /** Empty unless lengths of the stud, thickness of the member and height of the nut are all stated. */
  static Optional<Grip> of(InstallationPlan plan) {
    if (plan.roller().lengths() == null || plan.member().thickness() == null || plan.nut().stack() == null) {
      return Optional.empty();
    }
    return Optional.of(new Grip(plan.roller().lengths(), plan.member().thickness(), plan.nut().stack(),
        plan.tightening().thread().pitch()));
  }

  /** What is clamped between flange and nut. */
  Length clamped() {
    return member.plus(nut.washer());
  }

  /** Plain shank and free thread within what is clamped. */
  Length shankClamped() {
    return lengths.shank().compareTo(clamped()) < 0 ? lengths.shank() : clamped();
  }

  private Length fullThreadFrom() {
    return lengths.shank().plus(pitch.times(RUN_OUT));
  }

  /** Thread behind the nut; below 0 if the stud ends inside it. */
  Length showing() {
    return lengths.stud().minus(clamped()).minus(nut.height());
  }

  List<Stop> stops(SheetUnits u) {
    List<Stop> stops = new ArrayList<>();
    if (clamped().compareTo(lengths.shank()) <= 0) {
      stops.add(new Stop(StopCause.SHANK_TOO_LONG,
          "the nut runs onto the plain shank before it clamps: member and washer are " + u.text(clamped())
          + " thick, the shank is " + u.text(lengths.shank()) + " long; take a thicker washer or a shorter stud"));
    }
    if (showing().mm() < 0) {
      stops.add(new Stop(StopCause.STUD_TOO_SHORT,
          "the stud ends inside the nut: member, washer and nut take " + u.text(clamped().plus(nut.height()))
          + " of the stud's " + u.text(lengths.stud()) + "; take a thinner nut or washer, or a longer stud"));
    }
    return stops;
  }

  List<String> warnings(SheetUnits u) {
    List<String> warnings = new ArrayList<>();
    if (clamped().compareTo(lengths.shank()) > 0 && clamped().compareTo(fullThreadFrom()) < 0) {
      warnings.add("The nut may reach the run-out of the thread, which ends up to " + u.text(fullThreadFrom())
          + " from the flange: add a washer.");
    }
    if (showing().mm() >= 0 && showing().compareTo(pitch.times(2)) < 0) {
      warnings.add("Only " + u.text(showing()) + " of thread shows behind the nut, less than two pitches.");
    }
    return warnings;
  }

  String text(SheetUnits u) {
    return "member " + u.text(member) + (nut.washer().mm() == 0 ? ", no washer" : ", washer " + u.text(nut.washer())) + ", nut "
        + u.text(nut.height()) + "; stud " + u.text(lengths.stud()) + " of which plain " + u.text(lengths.shank())
        + (showing().mm() >= 0 ? "; " + u.text(showing()) + " of thread shows" : "");
  }

  static List<SourceRef> sources() {
    return List.of(STACK, RUN_OUT_SOURCE, SHOWS);
  }
}
