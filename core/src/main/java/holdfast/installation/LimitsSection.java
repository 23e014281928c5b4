// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.contact.ContactPair;
import holdfast.contact.ContactSurface;
import holdfast.contact.EllipticalContact;
import holdfast.contact.LineContact;
import holdfast.contact.StressPeak;
import holdfast.quantity.Length;
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
    Section.Builder section = limits(plan);
    section.entry("Tilt of the stud under load", plan.tilt().toString(), plan.tilt().sources());
    plan.slopeInSeat().ifPresent(slope -> section.entry("Slope of the stud in its elastic seat", slope
        + "; the tilt above counts " + plan.deflection().tilt() + " of a rigid seat", slope.sources()));
    return track(section, plan)
        .warnings(plan.allLimits().warnings())
        .warnings(plan.stud().warnings())
        .warnings(plan.tilt().warnings())
        .build();
  }

  static Section of(YokePlan plan) {
    Section.Builder section = limits(plan);
    String ring =
        plan.ringTilt().map(tilt -> tilt.total() + " of the ring on the pin").orElse("none of the ring on the pin");
    section
        .entry("Tilt by the loosest pairs", plan.pinTilt().total() + " of the pin in the ears, " + ring,
            plan.pinTilt().sources())
        .entry("Stress of the pin", "bending " + plan.units().text(plan.strength().bending()) + ", shear "
            + plan.units().text(plan.strength().shear()), plan.strength().sources());
    return track(section, plan).warnings(plan.allLimits().warnings()).warnings(plan.strength().warnings()).build();
  }

  private static Section.Builder limits(MountingPlan plan) {
    Section.Builder section = Section.of("Limits and margins", plan.units());
    PlanLimits limits = plan.allLimits();
    for (LimitCheck check : limits.checks()) {
      section.entry(label(check), text(check, plan.units()), check.sources());
    }
    return section;
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

  private static Section.Builder track(Section.Builder section, MountingPlan plan) {
    MountedRoller roller = plan.roller();
    ContactSurface ring =
        roller.crowned()
            ? ContactSurface.crowned(roller.outsideDiameter(), roller.crownRadius())
            : ContactSurface.cylinder(roller.outsideDiameter());
    ContactPair pair = ContactPair.ofSteel(ring, plan.duty().track());
    if (!roller.crowned() && plan.duty().track().across() == 0) {
      LineContact contact = pair.line(plan.duty().load(), roller.ringWidth());
      return track(section, contact.peakPressure(), contact.largestShear(), contact, plan.units());
    }
    EllipticalContact contact = pair.ellipse(plan.duty().load(), roller.ringWidth());
    return track(section, contact.peakPressure(), contact.largestShear(), contact, plan.units());
  }

  private static Section.Builder track(Section.Builder section, Stress peak, StressPeak shear, Traced contact, SheetUnits u) {
    return section
        .entry("Pressure on the track, peak", u.text(peak), contact.sources())
        .entry(
            "Largest shear in the track",
            u.text(shear.stress()) + ", " + u.text(new Length(Math.rint(100 * shear.depth().mm()) / 100)) + " deep",
            contact.sources())
        .warnings(contact.warnings());
  }
}
