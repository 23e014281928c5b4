package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.bearings.ModifiedLife;
import holdfast.bearings.Reliability;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;

/** Expected life and how long before the roller is replaced. */
final class LifeSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");

  private LifeSection() {}

  static Section of(InstallationPlan plan) {
    Duty duty = plan.duty();
    BasicLife basic = plan.life().at(Reliability.L10);
    ModifiedLife modified = plan.modifiedLife();
    OperatingTime hours = modified.hours(duty.speed());
    return Section.of("Expected life")
        .entry("Duty", duty.load() + " at " + duty.speed() + ", " + duty.wantedLife() + " wanted", GIVEN)
        .entry("Lubricant at work", duty.viscosity() + ", " + duty.contamination(), GIVEN)
        .entry("Basic rating life", basic + ", " + basic.hours(duty.speed()), basic.sources())
        .entry("Modified life, " + duty.reliability() + " reliability", modified + ", " + hours, modified.sources())
        .entry("Replace after", hours + ", " + Numbers.significant(hours.ratio(duty.wantedLife()), 3) + " times the life wanted",
            modified.sources())
        .warnings(modified.warnings())
        .build();
  }
}
