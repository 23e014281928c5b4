// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Renders a sheet as HTML through the template {@code sheet.html}. */
final class HtmlSheet {
  private HtmlSheet() {}

  static String render(Sheet sheet, PaperSize paper) {
    SourceList numbers = new SourceList(sheet);
    Glossary glossary = new Glossary();
    List<Map<String, Object>> sections = new ArrayList<>();
    for (Section section : sheet.sections()) {
      sections.add(
          Map.of(
              "number", sections.size() + 1,
              "title", section.title(),
              "groups", groups(section, numbers, glossary)));
    }
    List<Map<String, Object>> sources = new ArrayList<>();
    List<String> marks = numbers.documentMarks();
    numbers.lines().forEach(line ->
        sources.add(Map.of(
            "number", sources.size() + 1, "document", line.getKey(), "places", line.getValue(),
            "mark", marks.get(sources.size()))));
    return Templates.render(
        "sheet.html",
        Map.of(
            "paper", paper.toString(),
            "title", sheet.title(),
            "subtitle", sheet.subtitle(),
            "sections", sections,
            "glossed", !glossary.entries().isEmpty(),
            "glossary", glossary.entries(),
            "sources", sources,
            "legend", SourceList.LEGEND,
            "marks", sheet.marks()));
  }

  /** Entries that follow each other share one table. */
  private static List<Map<String, Object>> groups(Section section, SourceList numbers, Glossary glossary) {
    List<Map<String, Object>> groups = new ArrayList<>();
    List<Object> rows = new ArrayList<>();
    for (Block block : section.blocks()) {
      boolean row = block instanceof Block.Entry || block instanceof Block.Blank;
      if (!row && !rows.isEmpty()) {
        groups.add(Map.of("rows", List.copyOf(rows)));
        rows.clear();
      }
      List<Map<String, String>> marks = numbers.links(block);
      boolean marked = !marks.isEmpty();
      if (block instanceof Block.Entry entry) {
        rows.add(Map.of("label", entry.label(), "words", glossary.words(entry.value()), "blank", false, "hint", "",
            "marked", marked, "marks", marks));
      } else if (block instanceof Block.Blank blank) {
        rows.add(Map.of("label", blank.label(), "words", List.of(), "blank", true, "hint", blank.hint(),
            "marked", marked, "marks", marks));
      } else if (block instanceof Block.Notice notice) {
        groups.add(
            Map.of(
                "notice", true, "weight", notice.weight().label(),
                "kind", notice.weight().name().toLowerCase(Locale.ROOT),
                "text", notice.text(), "marked", marked, "marks", marks));
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
