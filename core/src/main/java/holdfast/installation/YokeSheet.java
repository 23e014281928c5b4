// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

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
    sections.add(InstallationSheet.isolate());
    sections.add(YokePartsSection.of(plan));
    sections.add(YokePartsSection.measure(plan));
    sections.add(PrepareSection.of(plan));
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
    return InstallationSheet.sheet(plan, stops, sections);
  }
}
