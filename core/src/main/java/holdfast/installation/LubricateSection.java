// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.Lubrication;
import holdfast.bearings.RatedLife;
import holdfast.lubrication.FirstFill;
import holdfast.lubrication.GreaseQuantity;
import holdfast.lubrication.GreaseSchedule;
import holdfast.lubrication.LubricationGuide;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortPlan;
import holdfast.quantity.Numbers;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;
import java.util.List;
import java.util.stream.Collectors;

/** Which hole gets a fitting and which a plug; which grease, how much and how often. */
final class LubricateSection {
  private static final SourceRef FOR_LIFE = SourceRef.commonPractice("as stated for this job: lubricated for life");
  private static final SourceRef RACEWAY = SourceRef.derived("the formula falls with the diameter of the raceway");

  private LubricateSection() {}

  static Section of(InstallationPlan plan) {
    Section.Builder section = film(plan);
    if (plan.greasing().isEmpty()) {
      return forLife(section);
    }
    GreasePlan grease = plan.greasing().get();
    return grease(section, plan, grease.quantity(), grease.firstFill(), grease.schedule());
  }

  static Section of(YokePlan plan) {
    Section.Builder section = film(plan);
    if (plan.greasing().isEmpty()) {
      return forLife(section);
    }
    PinGreasing grease = plan.greasing().get();
    return grease(section, plan, grease.quantity(), grease.firstFill(), grease.schedule());
  }

  private static Section forLife(Section.Builder section) {
    return section
        .entry("Grease", "none later: the roller is lubricated for life. Do not grease a sealed roller by guess.", FOR_LIFE)
        .cautions(Cautions.of("lubricate-track"))
        .build();
  }

  private static Section grease(Section.Builder section, MountingPlan plan, GreaseQuantity quantity, FirstFill fill,
      GreaseSchedule schedule) {
    section
        .entry("First fill", fill + " (" + fill.from() + "), unless the maker has filled the roller", fill.sources())
        .entry("At each greasing", plan.units().text(quantity.mass())
            + ", slowly, with the roller turning, until fresh grease shows", quantity.sources())
        .entry("Grease again", schedule.toString(), schedule.sources())
        .entry("Because", schedule.reasons(), schedule.sources());
    if (schedule.knownInterval().isEmpty()) {
      section.notice(Block.Weight.NOTE, "No interval by the formula: " + schedule.noInterval(), RACEWAY);
    } else if (plan.roller().knownInterior().isEmpty()) {
      section.notice(Block.Weight.NOTE, "The seat stands for the raceway, whose diameter makers seldom state; a larger raceway"
          + " means a somewhat shorter interval. The maker's interval goes first.", RACEWAY);
    }
    return section
        .warnings(schedule.warnings())
        .cautions(Cautions.of("gun-pressure", "no-finger", "injection", "not-while-turning", "back-pressure", "lubricate-track"))
        .blank("Grease used, grams, next date due", "")
        .build();
  }

  private static Section.Builder film(MountingPlan plan) {
    Lubrication film = plan.lubrication();
    String diameter = plan.roller().knownInterior().isPresent() ? "" : " (mean of seat and outside diameter)";
    return Section.of("Lubricate", plan.units())
        .entry("Viscosity at work", plan.duty().viscosity() + ", κ = " + Numbers.significant(film.kappa(), 3) + diameter,
            plan.atWork().knownModifiedLife().map(RatedLife::sources).orElseGet(() -> plan.life().sources()))
        .entry("Kind of grease", guide("grease type"), source("grease type"));
  }

  /** Why the wanted port cannot feed, and what could. */
  static String obstacles(PortPlan ports) {
    String why =
        ports.obstacles().stream()
            .map(obstacle -> obstacle.rule().statement() + ": " + obstacle.remedy())
            .collect(Collectors.joining("; "));
    String others = ports.alternatives().stream().map(Port::toString).collect(Collectors.joining(", "));
    return "the " + ports.request().feed() + " cannot feed it (" + why + "); "
        + (others.isEmpty() ? "no port of this roller can" : "possible instead: " + others);
  }

  private static String guide(String topic) {
    return LubricationGuide.about(topic).get(0).rule();
  }

  private static List<SourceRef> source(String topic) {
    return List.of(LubricationGuide.about(topic).get(0).source());
  }
}
