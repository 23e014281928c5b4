// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdfast.tables.SourceRef;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The sheet on a terminal: 100 columns, values from column 37, what follows a break is indented. */
class TextSheetTest {
  private static final SourceRef A = SourceRef.published("Doc A", "Table 1");
  private static final SourceRef B = SourceRef.memory("Doc B", "eq. 2");

  private static List<String> section(Section.Builder section) {
    List<String> lines = new Sheet("t", "u", List.of(section.build()), List.of()).text().lines().toList();
    return lines.subList(6, lines.size() - 2);
  }

  @Test
  void aWholeSheet() {
    Section before = Section.of("Before").notice(Block.Weight.STOP, "Bore too large.", A).build();
    Section parts =
        Section.of("Parts")
            .entry("Bore", "18.000 mm", B)
            .entry("Stud", "M16")
            .blank("Measured bore", "mm")
            .picture(new Block.Picture("Zones", "bore above stud", "plain.svg", Map.of("value", "1")))
            .build();
    assertEquals(
        """
        %s
        INSTALLATION SHEET
        Job 7 (invented)
        %1$s

        1  BEFORE
           DO NOT INSTALL: Bore too large. [1.1]

        2  PARTS
           Bore                             18.000 mm [2.1]
           Stud                             M16
           Measured bore                    ____________________ mm
           Zones: bore above stud

        %s
        Sources, by the numbers in brackets: document, then place. p published, l data listing, d derived, r
          reference computation, c common practice, m memory (recalled, not found in print)
          1  Doc A: .1 Table 1 p
          2  Doc B: .1 eq. 2 m
        digest 00
        """
            .formatted("=".repeat(100), "-".repeat(100)),
        new Sheet("Installation sheet", "Job 7 (invented)", List.of(before, parts), List.of("digest 00")).text());
  }

  @Test
  void aLineHoldsExactlyAHundredColumns() {
    String head = "   Bore" + " ".repeat(29);
    String word = "a".repeat(31);
    String just = word + " " + "b".repeat(32);
    assertEquals(List.of(head + just), section(Section.of("s").entry("Bore", just)));
    assertEquals(
        List.of(head + word, " ".repeat(36) + "b".repeat(33) + " c"),
        section(Section.of("s").entry("Bore", word + " " + "b".repeat(33) + " c")));
  }

  @Test
  void aWordLongerThanTheLineIsCut() {
    String head = "   Bore" + " ".repeat(29);
    assertEquals(List.of(head + "a".repeat(64)), section(Section.of("s").entry("Bore", "a".repeat(64))));
    assertEquals(
        List.of(head + "a".repeat(64), " ".repeat(36) + "aaa b"),
        section(Section.of("s").entry("Bore", "a".repeat(67) + " b")));
  }

  @Test
  void aLongLabelStandsOnALineOfItsOwn() {
    String label = "l".repeat(32);
    assertEquals(List.of("   " + label + " 5 mm"), section(Section.of("s").entry(label, "5 mm")));
    assertEquals(List.of("   " + label + "l", " ".repeat(36) + "5 mm"), section(Section.of("s").entry(label + "l", "5 mm")));
    assertEquals(
        List.of("   " + "l".repeat(90), "     " + "m".repeat(9), " ".repeat(36) + "5 mm"),
        section(Section.of("s").entry("l".repeat(90) + " " + "m".repeat(9), "5 mm")));
  }

  @Test
  void noticesAndPicturesGoOnUnderTheirText() {
    String word = "a".repeat(60);
    assertEquals(
        List.of("   ADVICE: " + word, "     " + word), section(Section.of("s").notice(Block.Weight.ADVICE, word + " " + word)));
    assertEquals(
        List.of("   p: " + word, "     " + word),
        section(Section.of("s").picture(new Block.Picture("p", word + " " + word, "plain.svg", Map.of("value", "1")))));
  }
}
