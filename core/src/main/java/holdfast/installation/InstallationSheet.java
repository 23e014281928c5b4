// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.Sheet;
import holdfast.tables.SourceRef;
import holdfast.tables.TableSet;
import holdfast.trace.Cautions;
import java.util.ArrayList;
import java.util.List;

/** Puts the sheet of a plan together, in the order of the work. */
final class InstallationSheet {
  private static final SourceRef DEFERENCE = SourceRef.commonPractice("order of authority on site");

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
      sections.addAll(work);
      sections.add(signOff());
    } else {
      Section.Builder stop = Section.of("Do not install");
      stops.forEach(reason -> stop.notice(Block.Weight.STOP, reason));
      sections.add(stop.build());
      work.stream().map(InstallationSheet::withoutBlanks).filter(section -> !section.blocks().isEmpty()).forEach(sections::add);
      sections.add(change());
    }
    TableSet tables = TableSet.bundled();
    return new Sheet(
        "Installation sheet",
        plan.job(),
        sections,
        List.of("Table set " + tables.version() + ", SHA-256 " + tables.digest()));
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
