package holdfast.installation;

import holdfast.bearings.PermissibleLoad;
import holdfast.contact.ContactPair;
import holdfast.contact.ContactSurface;
import holdfast.contact.EllipticalContact;
import holdfast.contact.LineContact;
import holdfast.contact.StressPeak;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.seats.StudStrength;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;
import holdfast.trace.Traced;
import java.util.ArrayList;
import java.util.List;

/** What limits the load, which limit governs, and the margins. */
final class LimitsSection {
  private LimitsSection() {}

  static Section of(InstallationPlan plan) {
    Section.Builder section = Section.of("Limits and margins");
    PermissibleLoad limits = plan.limits();
    for (PermissibleLoad.Limit limit : limits.limits()) {
      double margin = limit.load().ratio(plan.duty().load());
      section.entry("Load limit: " + limit.name(), limit.load() + ", " + times(margin) + " the load", limit.source());
    }
    section.entry("Governing of these", limits.governing().name() + ", " + limits.load(), limits.sources());
    stud(section, plan);
    section.entry("Tilt of the stud under load", plan.tilt().toString(), plan.tilt().sources());
    track(section, plan);
    return section.warnings(limits.warnings()).warnings(plan.stud().warnings()).warnings(plan.tilt().warnings()).build();
  }

  private static void stud(Section.Builder section, InstallationPlan plan) {
    StudStrength stud = plan.stud();
    List<SourceRef> sources = new ArrayList<>(stud.sources());
    sources.add(plan.roller().material().source());
    String margin =
        plan.roller()
            .material()
            .yieldStrength()
            .map(yield -> "; the yield strength " + yield + " is " + times(yield.ratio(stud.equivalent())) + " as much")
            .orElse("");
    section.entry("Stud at the mouth of the seat", stud.equivalent() + " combined" + margin, sources);
  }

  private static void track(Section.Builder section, InstallationPlan plan) {
    StudRoller roller = plan.roller();
    boolean crowned = roller.crownRadius().mm() > 0;
    ContactSurface ring =
        crowned
            ? ContactSurface.crowned(roller.outsideDiameter(), roller.crownRadius())
            : ContactSurface.cylinder(roller.outsideDiameter());
    ContactPair pair = ContactPair.ofSteel(ring, plan.duty().track());
    if (!crowned && plan.duty().track().across() == 0) {
      LineContact contact = pair.line(plan.duty().load(), roller.ringWidth());
      track(section, contact.peakPressure(), contact.largestShear(), contact);
    } else {
      EllipticalContact contact = pair.ellipse(plan.duty().load(), roller.ringWidth());
      track(section, contact.peakPressure(), contact.largestShear(), contact);
    }
  }

  private static void track(Section.Builder section, Stress peak, StressPeak shear, Traced contact) {
    section
        .entry("Pressure on the track, peak", peak.toString(), contact.sources())
        .entry(
            "Largest shear in the track",
            shear.stress() + ", " + shear.depth().text(KnownUnits.MM, 2) + " deep",
            contact.sources())
        .warnings(contact.warnings());
  }

  private static String times(double factor) {
    return Numbers.significant(factor, 3) + " times";
  }
}
