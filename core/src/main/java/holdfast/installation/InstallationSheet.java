// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Numbers;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.Sheet;
import holdfast.tables.SourceRef;
import holdfast.tables.TableSet;
import holdfast.trace.Cautions;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Puts the sheet of a plan together, in the order of the work. */
final class InstallationSheet {
  private static final SourceRef DEFERENCE = SourceRef.commonPractice("order of authority on site");

  private static final SourceRef RELEASE = SourceRef.derived("no reason not to install is found");

  private InstallationSheet() {}

  static Sheet of(InstallationPlan plan) {
    List<Section> sections = new ArrayList<>();
    List<String> stops = plan.stops();
    sections.add(isolate());
    sections.add(PartsSection.of(plan));
    sections.add(MeasureSection.of(plan));
    sections.add(PrepareSection.of(plan));
    sections.add(SeatSection.of(plan));
    sections.add(TightenSection.of(plan, stops.isEmpty()));
    sections.add(LubricateSection.of(plan));
    // What must not be installed is neither run in nor signed for.
    if (stops.isEmpty()) {
      sections.add(RunInSection.of(plan));
    }
    sections.add(LifeSection.of(plan));
    sections.add(LimitsSection.of(plan));
    sections.add(PriceSection.of(plan));
    WatchSection.of(plan).ifPresent(sections::add);
    return sheet(plan, stops, sections);
  }

  /**
   * A sheet with stops has nothing to sign for: the reasons come first and every room to write falls away.
   */
  static Sheet sheet(MountingPlan plan, List<String> stops, List<Section> work) {
    List<Section> sections = new ArrayList<>();
    if (stops.isEmpty()) {
      Section.Builder verdict = Section.of("Verdict", plan.units())
          .entry("Verdict", "released: nothing in this record forbids the work", RELEASE);
      sections.add(governing(verdict, plan));
      sections.addAll(work);
      sections.add(signOff());
    } else {
      Section.Builder stop = Section.of("Do not install");
      stops.forEach(reason -> stop.notice(Block.Weight.STOP, reason));
      sections.add(governing(stop, plan));
      work.stream().map(InstallationSheet::withoutBlanks).filter(section -> !section.blocks().isEmpty()).forEach(sections::add);
      sections.add(change());
    }
    TableSet tables = TableSet.bundled();
    return new Sheet(
        "Installation sheet",
        plan.job(),
        once(sections),
        List.of("Table set " + tables.version() + ", SHA-256 " + tables.digest()));
  }

  private static Section governing(Section.Builder section, MountingPlan plan) {
    PlanLimits limits = plan.allLimits();
    LimitCheck governing = limits.governing();
    return section
        .entry("Governing limit",
            governing.name() + ", " + Numbers.significant(governing.margin().getAsDouble(), 3) + " times", limits.sources())
        .picture(MarginPicture.of(limits))
        .build();
  }

  /** A notice that stood before is not said again. */
  private static List<Section> once(List<Section> sections) {
    Set<Block> said = new HashSet<>();
    return sections.stream()
        .map(section -> new Section(section.title(),
            section.blocks().stream().filter(block -> !(block instanceof Block.Notice) || said.add(block)).toList()))
        .filter(section -> !section.blocks().isEmpty())
        .toList();
  }

  static Section isolate() {
    return Section.of("Isolate and protect")
        .cautions(Cautions.of("stop-normally", "personal-lock", "let-down", "prove-dead"))
        .cautions(Cautions.of("block-raised-loads", "slacken-ropes"))
        .cautions(Cautions.of("eyes-and-face"))
        .notice(
            Block.Weight.ADVICE,
            "The instructions of the roller's maker, the rules of the site and the judgement of a licensed engineer go before"
                + " this sheet.",
            DEFERENCE)
        .build();
  }

  private static Section withoutBlanks(Section section) {
    return new Section(
        section.title(), section.blocks().stream().filter(block -> !(block instanceof Block.Blank)).toList());
  }

  private static Section change() {
    return Section.of("Not released").blank("What was changed, by, date; then print a new sheet", "").build();
  }

  private static Section signOff() {
    return Section.of("Sign-off")
        .blank("Fitted by, date", "")
        .blank("Checked by, date", "")
        .blank("Deviations, concessions", "")
        .build();
  }
}
