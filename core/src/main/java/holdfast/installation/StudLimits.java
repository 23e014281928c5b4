// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.failures.Margin;
import holdfast.fits.FitKind;
import holdfast.installation.LimitCheck.Bound;
import holdfast.installation.LimitCheck.Consequence;
import holdfast.quantity.Stress;
import holdfast.seats.StudDuty;
import holdfast.seats.SeatSlope;
import holdfast.seats.StudStrength;
import holdfast.tables.Provenance;
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
  private static final SourceRef MOUTH = SourceRef.derived("equilibrium of a rigid pin, linear pressure");
  private static final SourceRef SOLIDS =
      new SourceRef("stud seat models", "what the bore carries while the flange is clamped", Provenance.REFERENCE_COMPUTATION);
  private static final SourceRef KIRSCH = SourceRef.memory("Kirsch 1898", "factor 3 at a small hole");
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");

  private StudLimits() {}

  static PlanLimits of(InstallationPlan plan) {
    LimitList limits = new LimitList(plan.atWork()).loads(plan.countedLean());
    strength(limits, plan);
    plan.seat().ifPresent(seat -> SeatLimits.add(limits, seat, plan.duty().workingTemperature(), "stud", "member"));
    mouth(limits, plan);
    crossHole(limits, plan);
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

  /** A loosest pair without grip is named elsewhere; one with grip may lose it on one side of the mouth. */
  private static void mouth(LimitList limits, InstallationPlan plan) {
    if (plan.fit().kind() != FitKind.INTERFERENCE) {
      return;
    }
    Stress inShop = plan.seat().orElseThrow().attainedPressure().least();
    Stress atWork = plan.seatAtWork().orElseThrow().pressure().least();
    Stress least = inShop.compareTo(atWork) <= 0 ? inShop : atWork;
    if (plan.mouthPressure().compareTo(least) > 0) {
      limits.unknown("seat-mouth-opens",
          Message.of("if the bore alone carries load and moment, the mouth of the seat is pressed with up to ",
              plan.mouthPressure(), " on one side, more than the ", least,
              " of the loosest press fit: the other side lifts there and frets"
                  + (plan.faceStaysClosed() ? ", unless the flange that the nut keeps closed takes the moment" : "")), MOUTH);
    }
    if (plan.faceStaysClosed()) {
      plan.slopeInSeat().map(SeatSlope::mouthPressureFlangeClosed).filter(pressure -> pressure.compareTo(least) > 0)
          .ifPresent(pressure -> limits.unknown("seat-mouth-opens-clamped",
              Message.of("even while the nut keeps the flange closed, the bore's part of load and moment presses its mouth with"
                  + " up to ", pressure, " on one side, more than the ", least,
                  " of the loosest press fit: the other side lifts there and frets"),
              SOLIDS));
    }
  }

  /** The peak is that of a small hole and so known without its diameter. */
  private static void crossHole(LimitList limits, InstallationPlan plan) {
    if (plan.roller().openings().radial() && plan.roller().crossHole().mm() == 0) {
      limits.unknown("cross-hole-not-stated",
          Message.of("the diameter of the radial hole in the shank is not stated: the stress of the stud counts the full section."
              + " In the fibre in tension at the mouth of the seat such a hole would raise the local stress up to ",
              plan.stud().crossHolePeak(), " (elastic, 3σz - σθ), which fatigue feels: turn it out of the load zone"), KIRSCH);
    }
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
