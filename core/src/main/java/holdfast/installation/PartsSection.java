package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.fits.TolerancedSize;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;
import java.util.List;

/** Parts and drawing limits: what to machine and to gauge. */
final class PartsSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");

  private PartsSection() {}

  static Section of(InstallationPlan plan) {
    StudRoller roller = plan.roller();
    Fit fit = plan.fit();
    List<SourceRef> cells = fit.sources();
    return Section.of("Parts and drawing limits")
        .entry("Roller", roller.name() + ", D " + roller.outsideDiameter() + ", ring width " + roller.ringWidth(), GIVEN)
        .entry("Stud", stud(roller), GIVEN)
        .entry("Load ratings as stated", roller.ratings().toString(), GIVEN)
        .entry("Machine member", member(plan.member()), GIVEN)
        .entry("Bore " + plan.member().boreTolerance() + ", go … no-go", limits(fit.hole()), cells)
        .entry("Stud " + roller.studTolerance(), limits(fit.shaft()), cells)
        .entry("Fit", fit.toString(), cells)
        .picture(FitPicture.of(fit))
        .warnings(fit.warnings())
        .build();
  }

  private static String limits(TolerancedSize part) {
    return part.limits() + "  (" + part.deviations() + ")";
  }

  private static String member(MachineMember member) {
    return member.name() + ", " + member.body() + ", seat " + member.seatLength();
  }

  private static String stud(StudRoller roller) {
    String bore = roller.greaseBore().mm() == 0 ? "solid" : "grease bore " + roller.greaseBore();
    return roller.studDiameter() + ", thread " + roller.thread() + ", " + bore + ", " + roller.material();
  }
}
