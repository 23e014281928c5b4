// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Units;
import holdfast.tables.SourceRef;
import holdfast.trace.Caution;
import holdfast.trace.SignalWord;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class SheetTest {
  private static final SourceRef FIRST = SourceRef.published("Doc A", "Table 1");
  private static final SourceRef SECOND = SourceRef.memory("Doc B", "eq. 2");

  private static Sheet sheet() {
    Section parts =
        Section.of("Parts")
            .entry("Bore", "18.000 mm", FIRST)
            .entry("Press <force> & more", "1 kN", SECOND, FIRST)
            .notice(Block.Weight.MINOR, "Keep hands clear.", SECOND)
            .blank("Measured bore", "mm")
            .picture(new Block.Picture("Zones", "bore above stud", "plain.svg", Map.of("value", "1")))
            .build();
    return new Sheet("Installation sheet", "Job 7 (invented)", List.of(parts), List.of("digest 00"));
  }

  @Test
  void quantitiesOfSentencesFollowTheUnitsAndNamesDoNot() {
    Section section =
        Section.of("Parts", SheetUnits.INCH)
            .entry("Lever", Message.of("lever 6 mm plate, arm ", Units.mm(25.4)), List.of(FIRST))
            .notice(Block.Weight.ADVICE, Message.of("at ", Units.degC(100)), FIRST)
            .warnings(List.of(new Warning("code", Message.of("the arm of ", Units.mm(50.8), " is short"), FIRST)))
            .build();
    String text = new Sheet("t", "u", List.of(section), List.of()).text();
    assertTrue(text.contains("lever 6 mm plate, arm 1.0000 in"), text);
    assertTrue(text.contains("at 212 °F") && text.contains("the arm of 2.0000 in is short"), text);
  }

  @Test
  void textNumbersItsSourcesInOrderOfUse() {
    String text = sheet().text();
    assertTrue(text.contains("Bore                             18.000 mm [1.1]"), text);
    assertTrue(text.contains("1 kN [1.1, 2.1]"), text);
    assertTrue(text.contains("CAUTION: Keep hands clear. [2.1]"), text);
    assertTrue(text.contains("2  Doc B: .1 eq. 2 m"), text);
    assertTrue(text.contains("Zones: bore above stud"), text);
  }

  @Test
  void htmlEscapesTextAndKeepsDrawings() {
    String html = sheet().html();
    assertTrue(html.contains("Press &lt;force&gt; &amp; more"), html);
    assertTrue(html.contains("<svg>"), html);
    assertTrue(html.contains("<p id=\"source-2\"><a href=\"audit/documents/doc-b.html\"><b>2  Doc B</b></a>: .1 eq. 2 m</p>"), html);
    assertFalse(html.contains("<script"), html);
    assertFalse(html.contains("http"), "nothing is loaded from elsewhere: " + html);
  }

  @Test
  void cautionsAndWarningsBecomeNotices() {
    Section section =
        Section.of("s")
            .cautions(List.of(new Caution(SignalWord.CAUTION, "Mind your hands.", FIRST)))
            .warnings(List.of(new Warning("speed", "Too fast.", SECOND)))
            .build();
    assertEquals(
        List.of(
            new Block.Notice(Block.Weight.MINOR, "Mind your hands.", List.of(FIRST)),
            new Block.Notice(Block.Weight.NOTE, "Too fast.", List.of(SECOND))),
        section.blocks());
  }

  @Test
  void sameSheetGivesSameBytes() {
    assertEquals(sheet().html(), sheet().html());
    assertEquals(sheet().text(), sheet().text());
  }

  @Test
  void aSectionNeedsATitle() {
    InputException error = assertThrows(InputException.class, () -> Section.of(" ").build());
    assertEquals("title of a section", error.parameter());
  }

  @Property
  void textIsNeverWiderThanAHundredColumns(
      @ForAll @StringLength(max = 300) String label, @ForAll @StringLength(max = 600) String value) {
    Section section = Section.of("s").entry(label.replace('\n', ' '), value.replace('\n', ' '), FIRST).build();
    String text = new Sheet("t", "u", List.of(section), List.of()).text();
    text.lines().forEach(line -> assertTrue(line.length() <= 100, () -> line.length() + ": " + line));
  }
}
