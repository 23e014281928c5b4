// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortState;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;
import java.util.Optional;

/** What is done to the parts before they are joined: edges, fittings, plugs and first grease, which cannot be reached later. */
final class PrepareSection {
  private static final SourceRef USUAL = SourceRef.commonPractice("openings usual for the size, not seen on the part");

  private PrepareSection() {}

  static Section of(InstallationPlan plan) {
    Section.Builder section = Section.of("Prepare the parts", plan.units()).cautions(Cautions.of("deburr-and-chamfer"));
    Optional<GreasePlan> greasing = plan.greasing();
    if (greasing.isEmpty()) {
      return section.cautions(Cautions.of("plug-both-ends")).build();
    }
    GreasePlan grease = greasing.get();
    ports(section, grease);
    if (grease.ports().possible()) {
      section.cautions(Cautions.of("fittings-first"));
      boolean inTheHead = grease.ports().ports().stream().anyMatch(PrepareSection::standsInTheHead);
      if (inTheHead && plan.fit().kind() != FitKind.CLEARANCE) {
        section.cautions(Cautions.of("head-fitting-in-the-way"));
      }
      section.cautions(Cautions.of("fill-before-mounting"));
    }
    return section.build();
  }

  static Section of(YokePlan plan) {
    Section.Builder section = Section.of("Prepare the parts", plan.units()).cautions(Cautions.of("deburr-and-chamfer"));
    plan.greasing()
        .ifPresent(grease -> {
          grease.obstacles().forEach(obstacle -> section.entry("Ways in", obstacle, PinGreasing.LOGIC));
          grease.instructions().forEach(line -> section.entry("At the pin", line, PinGreasing.LOGIC));
          if (grease.possible()) {
            section.cautions(Cautions.of("fill-before-mounting"));
          }
        });
    return section.build();
  }

  private static boolean standsInTheHead(PortState state) {
    return state.port() == Port.HEAD && state.part() == PortState.Part.FITTING;
  }

  private static void ports(Section.Builder section, GreasePlan grease) {
    if (!grease.ports().possible()) {
      section.entry("Ports", LubricateSection.obstacles(grease.ports()), grease.ports().sources());
      return;
    }
    grease.ports().instructions().forEach(line -> {
      int colon = line.indexOf(": ");
      boolean port = colon > 0 && colon < 30;
      section.entry(port ? "Port, " + line.substring(0, colon) : "At the ports", port ? line.substring(colon + 2) : line,
          grease.ports().sources());
    });
    if (!grease.openingsSeen()) {
      section.notice(Block.Weight.NOTE,
          "The openings are those usual for the size: look at the part in hand before fittings are driven.", USUAL);
    }
    section.picture(PortPicture.of(grease.ports())).warnings(grease.ports().warnings());
  }
}
