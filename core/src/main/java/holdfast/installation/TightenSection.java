// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;
import holdfast.threads.PreloadBand;
import holdfast.threads.PrevailingTorques;
import holdfast.threads.ScrewThread;
import holdfast.threads.TighteningState;
import holdfast.threads.TorqueWindow;
import holdfast.threads.WindowChange;
import holdfast.trace.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tightening of the nut on the drilled stud. */
final class TightenSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");
  private static final SourceRef LOCKING =
      SourceRef.published("Rolling bearings catalogue 17000 EN", "cam followers, mounting: locking of the nut under vibration");
  private static final SourceRef PRACTICE = SourceRef.commonPractice("adhesive as a lubricant while it is wet");
  private static final SourceRef WRENCH = SourceRef.commonPractice("error of the wrench as a share of its setting");

  private static final SourceRef CHANGE = SourceRef.derived("the window computed again with this change alone");
  private static final SourceRef FLANGE =
      SourceRef.derived("a ring that is pressed together and bent opens where bending equals pressure; the bore not counted");
  private static final SourceRef HOLD =
      SourceRef.derived("torque of pitch and thread friction, less what the friction of the loosest seat holds");

  private TightenSection() {}

  /** Without release there is nothing to set a wrench to. */
  static Section of(InstallationPlan plan, boolean released) {
    SheetUnits u = plan.units();
    Nut nut = plan.nut();
    PreloadBand low = plan.loosest();
    PreloadBand high = plan.tightest();
    TighteningState hardest = high.greatest();
    TorqueWindow window = plan.torqueWindow();
    Section.Builder section =
        Section.of("Tighten", plan.units())
            .entry("Torque window", window(window, u), window.sources())
            .entry("Lower end", window.lowLimit().content(), List.of(window.lowLimit().source()))
            .entry("Upper end", window.highLimit().content(), List.of(window.highLimit().source()))
            .entry("Flange closed all round from", u.text(plan.faceClosedFrom()), FLANGE);
    openFlange(section, plan);
    // A window whose upper end does not even overcome the prevailing torque is opened by no single change.
    boolean pulls = window.highest().times(1 - nut.wrenchError()).compareTo(nut.prevailing()) > 0;
    (pulls ? window.changes() : List.<WindowChange>of()).forEach(change ->
        section.notice(Block.Weight.ADVICE, Message.of("To open the window: ", change.words()), CHANGE));
    if (released) {
      section
          .picture(WindowPicture.of(window, nut.torque(), u))
          .entry("Wrench setting",
              u.text(nut.torque()) + "; it may give " + u.span(nut.leastTorque(), nut.greatestTorque()), WRENCH);
    }
    section
        .entry("Thread and face while tightening", nut.condition() + "; friction " + nut.leastFriction() + " … "
            + nut.greatestFriction(), GIVEN)
        .entry("Nut locked by", locked(plan), GIVEN)
        .entry("Preload, loosest … tightest", u.span(low.leastPreload(), high.greatestPreload()), high.sources())
        .entry("Stress in the drilled stud, at most", stress(plan, hardest), sources(plan, hardest))
        .entry("Hold at the head of the stud", held(plan), HOLD)
        .warnings(window.warnings())
        .cautions(window.cautions())
        .cautions(Cautions.of("calibration", "pull-smoothly", "stand-balanced", "torque-bends-stud"));
    locking(section, plan);
    grip(section, plan);
    return section.blank("H3  Torque reached, wrench number", u.torqueUnit()).build();
  }

  /** Catalogues permit loads under which the flange opens: the bore then carries the moment. */
  private static void openFlange(Section.Builder section, InstallationPlan plan) {
    if (!plan.faceStaysClosed()) {
      section.notice(Block.Weight.NOTE, "At this torque the flange opens on one side under the greatest load and the bore"
          + " carries the moment" + (plan.fit().kind() == FitKind.INTERFERENCE
              ? "; the press fit holds the stud"
              : ": the stud moves in its clearance, which the tilt counts in full. A tighter bore or more torque keeps it still"),
          FLANGE);
    }
  }

  private static void grip(Section.Builder section, InstallationPlan plan) {
    Grip.of(plan).ifPresentOrElse(
        grip -> {
          section.entry("Grip", grip.text(plan.units()), Grip.sources());
          grip.warnings(plan.units()).forEach(text -> section.notice(Block.Weight.NOTE, text, Grip.STACK));
        },
        () -> section.notice(Block.Weight.NOTE, "The grip is not looked at: lengths of stud and thread, thickness of the"
            + " member, or height of nut and washer are not stated. Try before tightening: the nut must not reach the plain"
            + " shank, and two pitches of thread must show.", Grip.STACK));
  }

  private static String locked(InstallationPlan plan) {
    Nut nut = plan.nut();
    return nut.locking() + (nut.locking().prevailing()
        ? ", prevailing torque " + plan.units().text(nut.prevailing()) + ": the window and the setting include it" : "");
  }

  private static void locking(Section.Builder section, InstallationPlan plan) {
    Nut nut = plan.nut();
    if (nut.locking() == NutLocking.NONE) {
      section.notice(Block.Weight.NOTE, (plan.duty().surroundings().shaken()
          ? "the place vibrates and" : "a track roller shakes:")
          + " nothing but the preload locks the nut: take double thin nuts, a spring washer, a lock washer or a self-locking nut",
          LOCKING);
    }
    if (nut.locking() == NutLocking.THREAD_LOCKER) {
      section.notice(Block.Weight.ADVICE, "Take the friction of the thread locker from its own data; without them treat the"
          + " thread as oiled.", PRACTICE);
    }
    if (!nut.locking().prevailing()) {
      return;
    }
    section.cautions(Cautions.of("add-running-torque", "worn-locking-nut"));
    for (PrevailingTorques.Entry least : PrevailingTorques.of(ScrewThread.of(plan.roller().thread()))) {
      boolean worn = least.kind().startsWith("prevailing") && nut.prevailing().compareTo(least.least()) < 0;
      section.entry("Locking nut, least torque", least.kind() + " " + plan.units().text(least.least())
          + (worn ? "; the nut of this job has less: it is worn, take a new one" : ""), least.source());
    }
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
