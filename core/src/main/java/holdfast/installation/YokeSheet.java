// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;

/** Puts the sheet of a yoke plan together, in the order of the work. */
final class YokeSheet {
  private YokeSheet() {}

  static Sheet of(YokePlan plan) {
    List<Section> sections = new ArrayList<>();
    List<String> stops = plan.stops();
    if (!stops.isEmpty()) {
      Section.Builder stop = Section.of("Do not install");
      stops.forEach(reason -> stop.notice(Block.Weight.STOP, reason));
      sections.add(stop.build());
    }
    sections.add(InstallationSheet.isolate());
    sections.add(YokePartsSection.of(plan));
    sections.add(YokePartsSection.measure(plan));
    sections.add(PinSection.of(plan));
    sections.add(LubricateSection.of(plan));
    // What must not be installed is neither run in nor signed for.
    if (stops.isEmpty()) {
      sections.add(RunInSection.of(plan));
    }
    sections.add(LifeSection.of(plan));
    sections.add(LimitsSection.of(plan));
    sections.add(PriceSection.of(plan));
    WatchSection.of(plan).ifPresent(sections::add);
    sections.add(stops.isEmpty() ? InstallationSheet.signOff() : InstallationSheet.change());
    return InstallationSheet.sheet(plan, sections);
  }
}
