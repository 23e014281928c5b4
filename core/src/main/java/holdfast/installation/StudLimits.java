// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.failures.Margin;
import holdfast.installation.LimitCheck.Bound;
import holdfast.installation.LimitCheck.Consequence;
import holdfast.seats.StudDuty;
import holdfast.seats.StudStrength;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All limits of a stud roller: fatigue, static, ring, stud, track, speed, temperature, least load and tilt. */
final class StudLimits {
  private static final SourceRef CATALOGUE =
      SourceRef.published("Needle roller bearings catalogue 2300/E", "section 11.3, strength of the stud");
  private static final SourceRef PRESS_FIT =
      SourceRef.memory("DIN 743-2", "fatigue notch factors of press fits in bending");
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");

  private StudLimits() {}

  static PlanLimits of(InstallationPlan plan) {
    LimitList limits = new LimitList(plan.atWork()).loads(plan.countedLean());
    strength(limits, plan);
    plan.seat().ifPresent(seat -> SeatLimits.add(limits, seat, plan.duty().workingTemperature(), "stud", "member"));
    fatigue(limits, plan);
    limits.speedAndTemperature();
    boolean known = plan.member().statedRunOut().isPresent() || plan.seat().isPresent();
    return limits
        .tilt(plan.tilt().total(), known, "the run-out of the clamped face is not stated: the tilt counts the whole clearance"
            + " of the fit, which a square face would take away")
        .list();
  }

  private static void strength(LimitList limits, InstallationPlan plan) {
    StudStrength stud = plan.stud();
    plan.roller()
        .material()
        .yieldStrength()
        .ifPresent(
            yield -> {
              List<SourceRef> sources = new ArrayList<>(List.of(plan.roller().material().source()));
              sources.addAll(stud.sources());
              limits.add("stud at the mouth of the seat", stud.equivalent(), Bound.AT_MOST, yield, Consequence.STOP,
                  Margin.STUD_BENDING, sources);
            });
  }

  /** The published allowable is for the studs of one catalogue and so is told; what the roller's own stud endures forbids. */
  private static void fatigue(LimitList limits, InstallationPlan plan) {
    Optional<StudDuty> change = plan.duty().statedLoadChange();
    if (change.isEmpty()) {
      limits.unknown("load-change-not-stated",
          "how the load on the stud changes is not stated: its fatigue is not looked at", GIVEN);
      return;
    }
    limits.unknown("catalogue-stud-stress",
        Message.of("one catalogue permits ", StudStrength.catalogueAllowable(change.get()),
            " of nominal bending plus preload under ", change.get(),
            " load for its own case-hardened studs; this stud has ", plan.stud().tension(),
            ". That is a rule for those studs and no check of this one: it lies above the yield of many cores"), CATALOGUE);
    if (change.get() == StudDuty.STATIC) {
      return;
    }
    plan.studFatigue()
        .ifPresentOrElse(
            fatigue -> limits.fatigue("stud, fatigue (Goodman)", fatigue),
            () -> limits.unknown("stud-fatigue-not-rated",
                "the fatigue of the stud is not rated: what the finished stud endures is not stated. "
                    + (plan.seat().isPresent()
                        ? "The mouth of a press fit takes a plain stud's endurance down to about a half to a third"
                        : "Its notches are not known") + "; ask the maker", PRESS_FIT));
  }
}
