// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;
import holdfast.threads.PreloadBand;
import holdfast.threads.TighteningState;
import holdfast.threads.TorqueWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tightening of the nut on the drilled stud. */
final class TightenSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");
  private static final SourceRef WRENCH = SourceRef.commonPractice("error of the wrench as a share of its setting");

  private static final SourceRef CHANGE = SourceRef.derived("the window computed again with this change alone");
  private static final SourceRef HOLD =
      SourceRef.derived("torque of pitch and thread friction, less what the friction of the loosest seat holds");

  private TightenSection() {}

  static Section of(InstallationPlan plan) {
    SheetUnits u = plan.units();
    Nut nut = plan.nut();
    PreloadBand low = plan.loosest();
    PreloadBand high = plan.tightest();
    TighteningState hardest = high.greatest();
    TorqueWindow window = plan.torqueWindow();
    Section.Builder section =
        Section.of("Tighten")
            .entry("Torque window", window(window, u), window.sources())
            .entry("Lower end", window.lowLimit().meaning(), window.lowLimit().source())
            .entry("Upper end", window.highLimit().meaning(), window.highLimit().source());
    window.changes().forEach(change -> section.notice(Block.Weight.ADVICE, "To open the window: " + change, CHANGE));
    section
        .picture(WindowPicture.of(window, nut.torque(), u))
        .entry("Wrench setting",
            u.text(nut.torque()) + "; it may give " + u.span(nut.leastTorque(), nut.greatestTorque()), WRENCH)
        .entry("Friction in thread and face", nut.leastFriction() + " … " + nut.greatestFriction(), GIVEN)
        .entry("Preload, loosest … tightest", u.span(low.leastPreload(), high.greatestPreload()), high.sources())
        .entry("Stress in the drilled stud, at most", stress(plan, hardest), sources(plan, hardest))
        .entry("Hold at the head of the stud", held(plan), HOLD)
        .warnings(window.warnings())
        .cautions(window.cautions())
        .cautions(Cautions.about("tighten", 2, 4, 9))
        .blank("H3  Torque reached, wrench number", u.torqueUnit());
    return section.build();
  }

  private static String window(TorqueWindow window, SheetUnits u) {
    return window.isOpen() ? u.span(window.lowest(), window.highest()) : "empty";
  }

  private static String held(InstallationPlan plan) {
    SheetUnits u = plan.units();
    Torque held = plan.torqueToBeHeld();
    String through = "up to " + u.text(plan.torqueThroughStud()) + " passes through the stud";
    String head = " (" + plan.roller().build().head() + ")";
    return held.newtonMillimetre() == 0
        ? "nothing: " + through + ", and the seat holds it"
        : u.text(held) + head + ": " + through + ", and the loosest seat does not hold it";
  }

  private static List<SourceRef> sources(InstallationPlan plan, TighteningState state) {
    List<SourceRef> sources = new ArrayList<>(state.sources());
    sources.add(plan.roller().material().source());
    return sources;
  }

  private static String stress(InstallationPlan plan, TighteningState state) {
    SheetUnits u = plan.units();
    Stress combined = state.combinedStress();
    Optional<Stress> yield = plan.roller().material().yieldStrength();
    String share =
        yield
            .map(y -> ", " + Numbers.significant(100 * combined.ratio(y), 3) + " % of the yield strength " + u.text(y))
            .orElse("");
    return u.text(combined) + " combined, in the " + state.governingSection().name() + share;
  }
}
