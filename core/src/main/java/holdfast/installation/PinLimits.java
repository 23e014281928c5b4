// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.failures.Margin;
import holdfast.installation.LimitCheck.Bound;
import holdfast.installation.LimitCheck.Consequence;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import holdfast.seats.InternalClearanceKernel;
import holdfast.seats.Material;
import holdfast.seats.PinStrength;
import holdfast.seats.StudDuty;
import holdfast.seats.StudFatigue;
import holdfast.tables.SourceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All limits of a yoke roller: those of its rolling, then pin, ears, internal clearance and tilt. */
final class PinLimits {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");
  private static final SourceRef EXPANSION =
      SourceRef.derived("expansion of the raceway of a ring pressed on a shaft of its own material");

  private PinLimits() {}

  static PlanLimits of(YokePlan plan) {
    LimitList limits = new LimitList(plan.atWork()).loads(plan.countedLean());
    PinStrength strength = plan.strength();
    yields(limits, "pin, bending and shear", strength.equivalent(), plan.pin().material(), strength.sources());
    yields(limits, "pressure of the pin in the ears", strength.earPressure(), plan.fork().ear().material(), strength.sources());
    plan.ear().ifPresent(ear -> SeatLimits.add(limits, ear, plan.duty().workingTemperature(), "pin", "ear"));
    fatigue(limits, plan);
    limits.speedAndTemperature();
    clearance(limits, plan);
    return limits.tilt(plan.tilt(), true, "").list();
  }

  private static void fatigue(LimitList limits, YokePlan plan) {
    Optional<StudDuty> change = plan.duty().statedLoadChange();
    if (change.isPresent() && change.get() == StudDuty.STATIC) {
      return;
    }
    Optional<StudFatigue> fatigue = plan.pinFatigue();
    if (fatigue.isPresent()) {
      limits.fatigue("pin, fatigue (Goodman)", fatigue.get());
    } else {
      limits.unknown("pin-fatigue", "fatigue of the pin is not looked at: "
          + (plan.pin().knownEndurance().isPresent() ? "how the load changes" : "the strength of the finished pin")
          + " is not stated", GIVEN);
    }
  }

  private static void yields(LimitList limits, String name, Stress stress, Material material, List<SourceRef> sources) {
    Optional<Stress> yield = material.yieldStrength();
    if (yield.isEmpty()) {
      limits.unknown("no-yield", "the yield strength of " + material.name() + " is not known: '" + name + "', " + stress
          + ", is not judged", GIVEN);
      return;
    }
    List<SourceRef> all = new ArrayList<>(List.of(material.source()));
    all.addAll(sources);
    limits.add(name, stress, Bound.AT_MOST, yield.get(), Consequence.STOP, Margin.STUD_BENDING, all);
  }

  /** A ring pressed on the pin grows at its raceway and takes play from the rollers. */
  private static void clearance(LimitList limits, YokePlan plan) {
    double interference = -plan.rollerFit().minimumClearance().mm();
    YokeRoller roller = plan.roller();
    if (!roller.innerRing() || interference <= 0) {
      return;
    }
    if (roller.knownInterior().isEmpty()) {
      limits.unknown("clearance-taken", "the tightest pair presses the inner ring on by " + new Length(interference)
          + ", which takes part of the internal clearance; the inside of the roller is not known", EXPANSION);
      return;
    }
    RollerInterior interior = roller.knownInterior().get();
    double taken =
        InternalClearanceKernel.innerRing(
            interference, roller.bore().mm(), interior.innerRaceway().mm(), plan.pin().greaseBore().mm());
    limits.add("internal clearance taken by the press fit", new Length(taken), Bound.AT_MOST, interior.clearance(),
        Consequence.STOP, Margin.SEAT_CLEARANCE, List.of(EXPANSION));
  }
}
