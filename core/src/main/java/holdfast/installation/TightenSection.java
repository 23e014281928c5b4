package holdfast.installation;

import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;
import holdfast.threads.PreloadBand;
import holdfast.threads.TighteningState;
import java.util.Optional;

/** Tightening of the nut on the drilled stud. */
final class TightenSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");
  private static final SourceRef WRENCH = SourceRef.commonPractice("error of the wrench as a share of its setting");

  private TightenSection() {}

  static Section of(InstallationPlan plan) {
    Nut nut = plan.nut();
    PreloadBand low = plan.loosest();
    PreloadBand high = plan.tightest();
    TighteningState hardest = high.greatest();
    Section.Builder section =
        Section.of("Tighten")
            .entry("Wrench setting", nut.torque().toString(), GIVEN)
            .entry("It may give", nut.leastTorque() + " … " + nut.greatestTorque(), WRENCH)
            .entry("Friction in thread and face", nut.leastFriction() + " … " + nut.greatestFriction(), GIVEN);
    plan.roller()
        .statedTorque()
        .ifPresent(limit -> section.entry("The maker permits at most", limit.toString(), GIVEN));
    section
        .entry("Preload, loosest … tightest", low.leastPreload() + " … " + high.greatestPreload(), high.sources())
        .entry("Stress in the drilled stud, at most", stress(plan, hardest), hardest.sources())
        .warnings(high.warnings())
        .cautions(Cautions.about("tighten", 2, 4, 8))
        .blank("Torque reached, wrench number", "N·m");
    return section.build();
  }

  private static String stress(InstallationPlan plan, TighteningState state) {
    Stress combined = state.combinedStress();
    Optional<Stress> yield = plan.roller().material().yieldStrength();
    String share =
        yield.map(y -> ", " + Numbers.significant(100 * combined.ratio(y), 3) + " % of the yield strength " + y).orElse("");
    return combined + " combined, in the " + state.governingSection().name() + share;
  }
}
