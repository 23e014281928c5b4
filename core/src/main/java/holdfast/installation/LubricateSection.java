// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.Lubrication;
import holdfast.lubrication.LubricationGuide;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortPlan;
import holdfast.lubrication.RelubricationInterval;
import holdfast.quantity.Numbers;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;
import java.util.List;
import java.util.stream.Collectors;

/** Which hole gets a fitting and which a plug; which grease, how much and how often. */
final class LubricateSection {
  private static final SourceRef FOR_LIFE = SourceRef.commonPractice("as stated for this job: lubricated for life");
  private static final SourceRef USUAL = SourceRef.commonPractice("openings usual for the size, not seen on the part");
  private static final SourceRef RACEWAY = SourceRef.derived("the formula falls with the diameter of the raceway");

  private LubricateSection() {}

  static Section of(InstallationPlan plan) {
    Section.Builder section = Section.of("Lubricate");
    film(section, plan);
    if (plan.greasing().isEmpty()) {
      return section
          .entry("Grease", "none later: the roller is lubricated for life. Do not grease a sealed roller by guess.", FOR_LIFE)
          .build();
    }
    GreasePlan grease = plan.greasing().get();
    ports(section, grease);
    quantity(section, grease, plan.units());
    interval(section, grease);
    return section
        .cautions(Cautions.about("grease", 1, 2, 3, 5))
        .blank("Grease used, grams, next date due", "")
        .build();
  }

  private static void film(Section.Builder section, InstallationPlan plan) {
    Lubrication film = plan.lubrication();
    section
        .entry("Viscosity at work", plan.duty().viscosity() + ", κ = " + Numbers.significant(film.kappa(), 3),
            plan.modifiedLife().sources())
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

  private static void ports(Section.Builder section, GreasePlan grease) {
    if (!grease.ports().possible()) {
      section.entry("Ports", obstacles(grease.ports()), grease.ports().sources());
      return;
    }
    grease.ports().instructions().forEach(line -> {
      int colon = line.indexOf(": ");
      boolean port = colon > 0 && colon < 30;
      section.entry(port ? "Port, " + line.substring(0, colon) : "At the ports", port ? line.substring(colon + 2) : line,
          grease.ports().sources());
    });
    if (!grease.openingsSeen()) {
      section.notice(Block.Weight.WARNING,
          "The openings are those usual for the size: look at the part in hand before fittings are driven.", USUAL);
    }
    section.picture(PortPicture.of(grease.ports())).warnings(grease.ports().warnings());
  }

  private static void quantity(Section.Builder section, GreasePlan grease, SheetUnits u) {
    section
        .entry("First fill", guide("initial grease fill"), source("initial grease fill"))
        .entry("At each greasing", u.text(grease.quantity().mass())
            + ", slowly, with the roller turning, until fresh grease shows", grease.quantity().sources());
  }

  private static void interval(Section.Builder section, GreasePlan grease) {
    if (grease.knownInterval().isEmpty()) {
      section.notice(Block.Weight.WARNING, "No interval by the formula: " + grease.noInterval(), RACEWAY);
    } else {
      RelubricationInterval interval = grease.interval();
      String factors =
          interval.factors().stream()
              .map(factor -> factor.meaning() + " × " + Numbers.significant(factor.value(), 3))
              .collect(Collectors.joining(", "));
      section
          .entry("Grease again", interval + " (" + Numbers.significant(interval.begin().interval().hours(), 3) + " h; "
              + factors + ")", interval.sources())
          .notice(Block.Weight.WARNING, "The stud stands for the raceway, whose diameter makers seldom state; a larger raceway"
              + " means a somewhat shorter interval. The maker's interval goes first.", RACEWAY);
    }
    section.entry("By the calendar", calendar(), source("relubrication interval"));
  }

  private static String calendar() {
    return LubricationGuide.about("relubrication interval").stream()
        .filter(rule -> rule.unit().equals("months"))
        .map(rule -> rule.appliesTo() + " " + Numbers.shortest(rule.low()) + " to " + Numbers.shortest(rule.high()) + " months")
        .collect(Collectors.joining("; "));
  }

  private static String guide(String topic) {
    LubricationGuide rule = LubricationGuide.about(topic).get(0);
    boolean range = rule.low() != null && rule.high() != null && rule.low() < rule.high();
    return rule.rule() + (range ? " " + Numbers.significant(rule.low(), 2) + " to " + Numbers.significant(rule.high(), 2) : "");
  }

  private static List<SourceRef> source(String topic) {
    return List.of(LubricationGuide.about(topic).get(0).source());
  }
}
