// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.ModifiedLife;
import holdfast.bearings.RatedLife;
import holdfast.bearings.Reliability;
import holdfast.bearings.ReliabilityKernel;
import holdfast.fleet.FleetPlan;
import holdfast.fleet.GroupReplacement;
import holdfast.fleet.Spares;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.util.stream.Collectors;

/** Expected life and how long before the roller, or all of them, are replaced. */
final class LifeSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");

  private LifeSection() {}

  static Section of(MountingPlan plan) {
    Duty duty = plan.duty();
    BasicLife basic = plan.life().at(Reliability.L10);
    RatedLife modified = plan.modifiedLife();
    OperatingTime hours = plan.replaceAfter();
    Section.Builder section =
        Section.of("Expected life and replacement")
            .entry("Duty", duty(plan) + ", " + duty.wantedLife() + " wanted", GIVEN)
            .entry("Lubricant at work", duty.viscosity() + ", " + duty.contamination(), GIVEN)
            .entry("Basic rating life",
                Numbers.significant(basic.millionRevolutions(), 4) + " million revolutions, " + basic.hours(duty.speed())
                    + " (90 %, P = " + plan.units().text(plan.meanLoad()) + ")", basic.sources())
            .entry("Modified life, " + duty.reliability() + " reliability",
                Numbers.significant(modified.millionRevolutions(), 4) + " million revolutions" + factor(modified) + ", " + hours,
                modified.sources())
            .entry("Replace after",
                hours + ", " + Numbers.significant(hours.ratio(duty.wantedLife()), 3) + " times the life wanted",
                modified.sources());
    if (plan.fleet() != null) {
      fleet(section, plan);
    }
    return section.warnings(modified.warnings()).build();
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

  /** The modified life at 90 % is the characteristic life of the survival; the duty's hours are those of the places. */
  private static void fleet(Section.Builder section, MountingPlan plan) {
    FleetDuty fleet = plan.fleet();
    double l10Hours = plan.replaceAfter().hours() / plan.duty().reliability().a1();
    FleetPlan places = FleetPlan.of(h -> ReliabilityKernel.survival(h / l10Hours), fleet.positions());
    GroupReplacement together = places.groupReplacement(fleet.reliability());
    GroupReplacement each = places.replacementOfEach(plan.duty().reliability().percent() / 100);
    Spares spares = places.spares(0, fleet.leadYears(), fleet.serviceLevel());
    section
        .entry("Places that run it", fleet.positions().size() + ", up to "
            + Numbers.significant(
                fleet.positions().stream().mapToDouble(position -> position.hoursPerYear()).max().orElseThrow(), 4)
            + " h in a year", GIVEN)
        .entry("Replace all together", "every " + together + ", so that none fails in between with "
            + Numbers.significant(100 * fleet.reliability(), 3) + " %", together.sources())
        .entry("Replace each", "after " + each, each.sources())
        .entry("Spares for " + Numbers.significant(fleet.leadYears(), 3) + " years of delivery", spares.toString(),
            spares.sources())
        .warnings(spares.warnings());
  }
}
