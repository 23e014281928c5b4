// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class HtmlSheetTest {
  private static final SourceRef A = SourceRef.published("Doc A", "Table 1");

  private static String html(Section... sections) {
    return new Sheet("t", "u", List.of(sections), List.of()).html();
  }

  private static List<String> found(String regex, String html) {
    return Pattern.compile(regex).matcher(html).results().map(MatchResult::group).toList();
  }

  @Test
  void entriesAndBlanksThatFollowEachOtherShareATable() {
    Section section =
        Section.of("s")
            .entry("a", "1 mm", A)
            .blank("b", "0 to 2 mm")
            .notice(Block.Weight.NOTE, "n1", A)
            .notice(Block.Weight.ADVICE, "n2")
            .entry("c", "3 mm")
            .build();
    assertEquals(
        List.of(
            "<table>", "<tr><th scope=\"row\">a", "<tr><th scope=\"row\">b", "</table>",
            "<p class=\"notice note\"><b>NOTE WELL:</b> n1 <sup><a href=\"#source-1\">[1.1]</a></sup>", "<p class=\"notice advice\"><b>ADVICE:</b> n2",
            "<table>", "<tr><th scope=\"row\">c", "</table>"),
        found("</?table>|<tr><th scope=\"row\">[a-z]|<p class=\"notice.*(?=</p>)", html(section)));
  }

  @Test
  void aSectionWithoutEntriesHasNoTable() {
    assertFalse(html(Section.of("s").notice(Block.Weight.ADVICE, "n").build()).contains("<table>"));
    String picture = html(Section.of("s").picture(new Block.Picture("p", "d", "plain.svg", Map.of("value", "1"))).build());
    assertEquals(List.of("<svg><title>p</title><desc>d</desc><text>1</text></svg>", "<figcaption>p</figcaption>"), found("<svg>.*|<figcaption>.*", picture));
  }

  @Test
  void aBlankLeavesALineAndSaysWhatMayStandThere() {
    String html = html(Section.of("s").blank("b", "0 to 2 mm").build());
    assertTrue(html.contains("aria-label=\"to be filled in\"") && html.contains(">0 to 2 mm<"), html);
  }

  @Test
  void sectionsAreCountedFromOne() {
    String html = html(Section.of("First").build(), Section.of("Second").build());
    assertEquals(List.of(">1&ensp;First<", ">2&ensp;Second<"), found(">\\d&ensp;\\w+<", html));
  }

  @Test
  void missingTemplateIsNamed() {
    InputException e = assertThrows(InputException.class, () -> Templates.render("no.html", Map.of()));
    assertEquals("no.html", e.value());
  }
}
