// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.contact.ContactPair;
import holdfast.contact.ContactSurface;
import holdfast.contact.EllipticalContact;
import holdfast.contact.LineContact;
import holdfast.contact.StressPeak;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.trace.Traced;
import java.util.OptionalDouble;

/** What limits the duty, which limit governs, and the margins. */
final class LimitsSection {
  private LimitsSection() {}

  static Section of(InstallationPlan plan) {
    Section.Builder section = Section.of("Limits and margins");
    PlanLimits limits = plan.allLimits();
    for (LimitCheck check : limits.checks()) {
      section.entry(label(check), text(check, plan.units()), check.sources());
    }
    LimitCheck governing = limits.governing();
    section.entry("Governing limit",
        governing.name() + ", " + Numbers.significant(governing.margin().getAsDouble(), 3) + " times", limits.sources());
    section.entry("Tilt of the stud under load", plan.tilt().toString(), plan.tilt().sources());
    track(section, plan);
    return section.warnings(limits.warnings()).warnings(plan.stud().warnings()).warnings(plan.tilt().warnings()).build();
  }

  private static String label(LimitCheck check) {
    return "Limit: " + check.name();
  }

  private static String text(LimitCheck check, SheetUnits u) {
    OptionalDouble margin = check.margin();
    String bound = check.bound() == LimitCheck.Bound.AT_MOST ? ", at most " : ", at least ";
    return u.text(check.demand()) + bound + u.text(check.permitted())
        + (margin.isPresent() ? "; margin " + Numbers.significant(margin.getAsDouble(), 3) : "")
        + (check.holds() ? "" : " — EXCEEDED");
  }

  private static void track(Section.Builder section, InstallationPlan plan) {
    StudRoller roller = plan.roller();
    ContactSurface ring =
        roller.crowned()
            ? ContactSurface.crowned(roller.outsideDiameter(), roller.crownRadius())
            : ContactSurface.cylinder(roller.outsideDiameter());
    ContactPair pair = ContactPair.ofSteel(ring, plan.duty().track());
    if (!roller.crowned() && plan.duty().track().across() == 0) {
      LineContact contact = pair.line(plan.duty().load(), roller.ringWidth());
      track(section, contact.peakPressure(), contact.largestShear(), contact, plan.units());
    } else {
      EllipticalContact contact = pair.ellipse(plan.duty().load(), roller.ringWidth());
      track(section, contact.peakPressure(), contact.largestShear(), contact, plan.units());
    }
  }

  private static void track(Section.Builder section, Stress peak, StressPeak shear, Traced contact, SheetUnits u) {
    section
        .entry("Pressure on the track, peak", u.text(peak), contact.sources())
        .entry(
            "Largest shear in the track",
            u.text(shear.stress()) + ", " + shear.depth().text(KnownUnits.MM, 2) + " deep",
            contact.sources())
        .warnings(contact.warnings());
  }
}
