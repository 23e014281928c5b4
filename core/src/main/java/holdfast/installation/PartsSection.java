// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.failures.MisalignmentKind;
import holdfast.failures.MisalignmentLimit;
import holdfast.fits.Fit;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.Length;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.util.List;

/** Parts and drawing limits: what to machine and to gauge. */
final class PartsSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");

  private PartsSection() {}

  static Section of(InstallationPlan plan) {
    StudRoller roller = plan.roller();
    SheetUnits u = plan.units();
    Fit fit = plan.fit();
    List<SourceRef> cells = fit.sources();
    Section.Builder section =
        Section.of("Parts and drawing limits", plan.units())
            .entry("Roller", roller.name() + ", D " + u.text(roller.outsideDiameter()) + ", ring width "
                + u.text(roller.ringWidth()) + (roller.crowned() ? ", crowned" : ", flat") + "; " + roller.build(), GIVEN)
            .entry("Stud", stud(roller, u), GIVEN, roller.material().source())
            .entry("Load ratings, " + roller.ratingsFrom(), ratings(roller.ratings(), u), GIVEN)
            .entry("Machine member", member(plan.member(), u), GIVEN, plan.member().body().material().source())
            .entry("Bore " + plan.member().boreTolerance() + ", go … no-go", limits(fit.hole(), u), cells)
            .entry("Stud " + roller.studTolerance(), limits(fit.shaft(), u), cells)
            .entry("Fit",
                u.text(fit.nominalSize()) + " " + designation(fit, "stud") + ": " + fit.kind() + ", " + span(fit, u), cells);
    face(section, plan);
    return section
        .picture(FitPicture.of(fit, u, "stud"))
        .warnings(fit.warnings())
        .warnings(roller.ratingsFrom().warnings())
        .build();
  }

  /** The face sets the stud straight, so its squareness belongs on the drawing. */
  private static void face(Section.Builder section, InstallationPlan plan) {
    SheetUnits u = plan.units();
    Length flange = plan.roller().flangeDiameter();
    String over = " over " + u.text(flange) + " of the flange";
    if (plan.member().statedRunOut().isPresent()) {
      section.entry("Face, square to the bore within", u.text(plan.member().statedRunOut().get()) + over, GIVEN);
      return;
    }
    MisalignmentLimit.narrowest(MisalignmentKind.SEAT_FACE, 0)
        .ifPresent(limit -> section.entry("Face, square to the bore within",
            "not stated; the usual budget is " + u.text(flange.times(Math.tan(limit.limit().radian()))) + over,
            limit.source()));
  }

  static String ratings(LoadRatings ratings, SheetUnits u) {
    return "C = " + u.text(ratings.dynamic()) + ", C0 = " + u.text(ratings.staticRating())
        + ratings.knownFatigueLimit().map(limit -> ", Cu = " + u.text(limit)).orElse("") + "; " + ratings.outerRing();
  }

  static String limits(TolerancedSize part, SheetUnits u) {
    return u.limits(part.limits().lower(), part.limits().upper()) + "  (" + u.deviations(part.upper(), part.lower()) + ")";
  }

  /** Two classes are written as a fit; drawn deviations, which hold a slash themselves, one after the other. */
  static String designation(Fit fit, String inner) {
    String hole = fit.hole().designation();
    String shaft = fit.shaft().designation();
    return (hole + shaft).contains("/") ? "bore " + hole + ", " + inner + " " + shaft : fit.designation();
  }

  /** Clearance or interference, the smaller amount first. */
  static String span(Fit fit, SheetUnits u) {
    Length least = fit.minimumClearance();
    Length greatest = fit.maximumClearance();
    return switch (fit.kind()) {
      case CLEARANCE -> u.span(least, greatest) + " clearance";
      case INTERFERENCE -> u.span(greatest.negated(), least.negated()) + " interference";
      case TRANSITION -> u.text(least.negated()) + " interference … " + u.text(greatest) + " clearance";
    };
  }

  private static String member(MachineMember member, SheetUnits u) {
    return member.name() + ", " + u.text(member.body().words()) + ", seat " + u.text(member.seatLength());
  }

  private static String stud(StudRoller roller, SheetUnits u) {
    String bore = roller.greaseBore().mm() == 0 ? "solid" : "grease bore " + u.text(roller.greaseBore());
    String across = roller.crossHole().mm() == 0 ? "" : ", cross hole " + u.text(roller.crossHole());
    return u.text(roller.studDiameter()) + ", thread " + roller.thread() + ", " + bore + across + ", "
        + u.text(roller.material().words());
  }
}
