// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.ModifiedLife;
import holdfast.bearings.RatedLife;
import holdfast.bearings.Reliability;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.util.Optional;
import java.util.stream.Collectors;

/** Expected life and how long before the roller, or all of them, are replaced. */
final class LifeSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");

  private LifeSection() {}

  static Section of(MountingPlan plan) {
    Duty duty = plan.duty();
    BasicLife basic = plan.life().at(Reliability.L10);
    DirtReading dirt = new DirtReading(plan.roller(), duty);
    Section.Builder section =
        Section.of("Expected life and replacement", plan.units())
            .entry("Duty", duty(plan) + ", " + duty.wantedLife() + " wanted", GIVEN)
            .entry("Lubricant at work", duty.viscosity() + ", " + dirt.counted()
                + (duty.statedContamination().isPresent() ? "" : ", as dust and seals allow"), dirt.source(), DirtReading.TABLE)
            .entry("Basic rating life",
                Numbers.significant(basic.millionRevolutions(), 4) + " million revolutions, " + basic.hours(duty.speed())
                    + " (90 %, P = " + plan.units().text(plan.meanLoad()) + ")", basic.sources());
    Optional<RatedLife> known = plan.atWork().knownModifiedLife();
    if (known.isEmpty()) {
      lean(section, plan, plan.countedLean().of(plan.life().hours(duty.speed())));
      return section
          .notice(Block.Weight.NOTE, "No modified life: " + plan.atWork().noModifiedLife() + ". Wear ends such a roller"
              + " before fatigue does: take a thicker lubricant, or replace it by its condition.", GIVEN)
          .build();
    }
    RatedLife modified = known.get();
    OperatingTime fatigue = plan.fatigueHours();
    OperatingTime hours = plan.replaceAfter();
    section.entry("Modified life, " + duty.reliability() + " reliability",
        Numbers.significant(modified.millionRevolutions(), 4) + " million revolutions" + factor(modified) + ", "
            + plan.atWork().fatigueHours() + ", aligned", modified.sources());
    other(section, plan, dirt);
    lean(section, plan, fatigue);
    section.entry("Replace after",
        hours + ", " + Numbers.significant(hours.ratio(duty.wantedLife()), 3) + " times the life wanted",
        modified.sources());
    if (fatigue.compareTo(hours) > 0) {
      section.notice(Block.Weight.NOTE, "Rolling fatigue alone would allow " + fatigue + ": wear, corrosion, grease or seals"
          + " end the roller before. The time is cut to " + hours + "; look at the roller at every greasing.", RollerAtWork.WEAR);
    }
    bendingRing(section, plan);
    if (plan.fleet() != null) {
      try {
        FleetSection.add(section, FleetCare.of(plan), plan);
      } catch (InputException outside) {
        section.notice(Block.Weight.NOTE, "The places are not planned together: " + outside.getMessage(), GIVEN);
      }
    }
    return section.warnings(modified.warnings()).build();
  }

  /** What the standard's other way of reading the dirt gives: Table 13 beside Annex A. */
  private static void other(Section.Builder section, MountingPlan plan, DirtReading dirt) {
    dirt.other().ifPresent(other -> section.entry("The same by the other reading of dirt",
        other + ": " + plan.atWork().modifiedLife(other).hours(plan.duty().speed()), DirtReading.TABLE, DirtReading.ANNEX));
  }

  /** Never silent: the lean is counted, or the reason why not is said. */
  private static void lean(Section.Builder section, MountingPlan plan, OperatingTime fatigue) {
    CountedLean lean = plan.countedLean();
    if (lean.counted()) {
      section.entry("Lean counted, loosest pair",
          Numbers.significant(lean.factor(), 3) + " of the aligned life at " + plan.units().text(lean.lean()) + ": " + fatigue,
          lean.price().sources());
    } else {
      section.notice(Block.Weight.NOTE, "The lean of " + plan.units().text(lean.lean())
          + " is not counted in the life because " + lean.whyNot() + ".", GIVEN);
    }
  }

  private static void bendingRing(Section.Builder section, MountingPlan plan) {
    plan.hoursOfBendingRing().ifPresent(hours -> section.notice(Block.Weight.NOTE,
        "The ratings are for a rigid ring, but the ring of a track roller bends: like rollers carry "
            + Numbers.significant(RollerAtWork.LEAST_RING_RATIO, 2) + " to "
            + Numbers.significant(RollerAtWork.GREATEST_RING_RATIO, 2) + " of such a C on a flat track, and their life is "
            + hours.get(0) + " to " + hours.get(1) + ". Ask the maker for the rating on a track; until it is known, replace by"
            + " the shorter time.", RollerAtWork.RING_PAIRS));
  }

  private static String factor(RatedLife life) {
    return life instanceof ModifiedLife modified
        ? " (aISO = " + Numbers.significant(modified.modification(), 3) + ")"
        : " (aISO step by step)";
  }

  private static String duty(MountingPlan plan) {
    SheetUnits u = plan.units();
    return plan.duty().spectrum().steps().stream()
        .map(step -> u.text(step.load()) + " at " + step.speed() + share(step))
        .collect(Collectors.joining("; "));
  }

  private static String share(LoadSpectrum.Step step) {
    return step.share() == 1 ? "" : " for " + Numbers.significant(100 * step.share(), 3) + " % of the time";
  }
}
