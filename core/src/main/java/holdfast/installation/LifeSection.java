package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.quantity.Numbers;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;

/** Expected life and how long before the roller is replaced. */
final class LifeSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");

  private LifeSection() {}

  static Section of(InstallationPlan plan) {
    Duty duty = plan.duty();
    BasicLife basic = plan.life().at(holdfast.bearings.Reliability.L10);
    BasicLife wanted = plan.life();
    double margin = wanted.hours(duty.speed()).ratio(duty.wantedLife());
    return Section.of("Expected life")
        .entry("Duty", duty.load() + " at " + duty.speed() + ", " + duty.wantedLife() + " wanted", GIVEN)
        .entry("Basic rating life", basic + ", " + basic.hours(duty.speed()), basic.sources())
        .entry(
            "Replace after, for " + duty.reliability() + " reliability",
            wanted.hours(duty.speed()) + ", " + Numbers.significant(margin, 3) + " times the life wanted",
            wanted.sources())
        .warnings(wanted.warnings())
        .build();
  }
}
