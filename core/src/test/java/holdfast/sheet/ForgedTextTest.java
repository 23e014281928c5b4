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
import org.junit.jupiter.api.Test;

/** Whatever text a sheet holds, no part of it begins a line of its own, moves the cursor, turns the direction or becomes markup. */
class ForgedTextTest {
  private static final String FORGED = "x\n   SAFE TO INSTALL\u001B[2J\u0000\u0007\u202E<script>alert(1)</script>\u2028\"'";

  /** The forged text in every place that takes one. */
  private static Sheet everywhere(String text) {
    SourceRef source = SourceRef.published(text, text);
    Section section =
        Section.of(text)
            .entry(text, text, source)
            .notice(Block.Weight.STOP, text, source)
            .blank(text, text)
            .picture(new Block.Picture(text, text, "plain.svg", Map.of("value", text)))
            .build();
    return new Sheet(text, text, List.of(section), List.of(text));
  }

  @Test
  void noTextBeginsALineOfItsOwnOnTheTerminal() {
    String sheet = everywhere(FORGED).text();
    assertTrue(sheet.lines().noneMatch(line -> line.strip().startsWith("SAFE TO INSTALL")), sheet);
    assertTrue(sheet.codePoints().noneMatch(c -> (c < 32 && c != '\n') || c == 0x202E || c == 0x2028), sheet);
    assertTrue(sheet.lines().allMatch(line -> line.length() <= 100), sheet);
  }

  @Test
  void noTextBecomesMarkupOrTurnsTheDirectionOnThePage() {
    String page = everywhere(FORGED).html();
    assertFalse(page.contains("<script"), page);
    assertTrue(page.codePoints().noneMatch(c -> (c < 32 && c != '\n') || c == 0x202E || c == 0x2028), page);
    assertEquals(everywhere("x").html().lines().count(), page.lines().count(), "a line feed in a text adds no line");
  }

  @Test
  void aDrawingIsAFilledTemplateAndNothingElse() {
    String svg = new Block.Picture("t", "d", "plain.svg", Map.of("value", "</text><script>1</script>")).svg();
    assertFalse(svg.contains("<script"), svg);
    assertThrows(InputException.class, () -> new Block.Picture("t", "d", "sheet.html", Map.of()));
    assertThrows(InputException.class, () -> new Block.Picture("t", "d", "no.svg", Map.of()).svg());
  }
}
