// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Renders a sheet as HTML through the template {@code sheet.html}. */
final class HtmlSheet {
  private HtmlSheet() {}

  static String render(Sheet sheet) {
    SourceList numbers = new SourceList(sheet);
    List<Map<String, Object>> sections = new ArrayList<>();
    for (Section section : sheet.sections()) {
      sections.add(
          Map.of(
              "number", sections.size() + 1,
              "title", section.title(),
              "groups", groups(section, numbers)));
    }
    List<Map<String, String>> sources = new ArrayList<>();
    numbers.lines().forEach(line -> sources.add(Map.of("document", line.getKey(), "places", line.getValue())));
    return Templates.render(
        "sheet.html",
        Map.of(
            "title", sheet.title(),
            "subtitle", sheet.subtitle(),
            "sections", sections,
            "sources", sources,
            "legend", SourceList.LEGEND,
            "marks", sheet.marks()));
  }

  /** Entries that follow each other share one table. */
  private static List<Map<String, Object>> groups(Section section, SourceList numbers) {
    List<Map<String, Object>> groups = new ArrayList<>();
    List<Object> rows = new ArrayList<>();
    for (Block block : section.blocks()) {
      boolean row = block instanceof Block.Entry || block instanceof Block.Blank;
      if (!row && !rows.isEmpty()) {
        groups.add(Map.of("rows", List.copyOf(rows)));
        rows.clear();
      }
      String marks = numbers.marks(block);
      if (block instanceof Block.Entry entry) {
        rows.add(Map.of("label", entry.label(), "value", entry.value(), "marks", marks));
      } else if (block instanceof Block.Blank blank) {
        rows.add(Map.of("label", blank.label(), "blank", true, "hint", blank.hint(), "marks", marks));
      } else if (block instanceof Block.Notice notice) {
        groups.add(
            Map.of(
                "notice", true, "weight", notice.weight().label(),
                "kind", notice.weight().name().toLowerCase(Locale.ROOT),
                "text", notice.text(), "marks", marks));
      } else if (block instanceof Block.Picture picture) {
        groups.add(Map.of("picture", picture.svg(), "caption", picture.title()));
      }
    }
    if (!rows.isEmpty()) {
      groups.add(Map.of("rows", rows));
    }
    return groups;
  }
}
