// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Names that could forge or hide lines of a sheet are refused; what prints them all the same shows that something was there. */
class PlainTextTest {
  /** Line feed, escape sequence, NUL, BEL, delete, next line, separators, direction marks, zero width, fillers, half a pair. */
  private static final List<String> FORGING =
      List.of("a\nb", "a\r\nb", "\u001B[2Jb", "a\u0000", "a\u0007", "a\u007F", "a\u0085b", "a\u2028b", "a\u2029b", "a\u202Eb",
          "a\u200Fb", "a\u2066b", "a\u200Bb", "\uFEFFa", "a\u00ADb", "a\tb", "a\uD800", "a\u3164b", "a\u2800b", "a\uFE0Fb",
          "a\uE000b", "a" + Character.toString(0xE0041));

  @Test
  void namesThatCouldForgeALineAreRefusedByCharacter() {
    for (String name : FORGING) {
      InputException e = assertThrows(InputException.class, () -> PlainText.name(name, "job"), () -> "U+ of " + name.codePointAt(0));
      assertTrue(e.value().contains("U+"), e.getMessage());
      assertEquals(e.getMessage(), PlainText.printable(e.getMessage()), "the refusal itself is safe to print");
    }
  }

  @Test
  void blankAndEndlessNamesAreRefused() {
    for (String name : List.of("", " ", "\u00A0", "\u3000 ")) {
      assertThrows(InputException.class, () -> PlainText.name(name, "job"));
    }
    assertEquals(200, PlainText.name("a".repeat(200), "job").length());
    InputException e = assertThrows(InputException.class, () -> PlainText.name("a".repeat(100_000), "job"));
    assertTrue(e.getMessage().length() < 400, "a refusal does not echo the whole: " + e.getMessage().length());
  }

  @Test
  void namesOfAllWritingsPass() {
    for (String name : List.of("lever 6 mm plate", "Hebel №7 – Größe „L“", "İşçi & Söhne <2>", "レバー", "рычаг", "מנוף", "𝛼-lever")) {
      assertSame(name, PlainText.name(name, "job"));
      assertSame(name, PlainText.printable(name));
    }
  }

  @Test
  void whatIsPrintedAllTheSameShowsThatSomethingWasThere() {
    for (String text : FORGING) {
      String printed = PlainText.printable(text);
      assertTrue(printed.contains("\uFFFD"), printed);
      assertFalse(printed.codePoints().anyMatch(c -> c < 32 || (c >= 0x7F && c < 0xA0) || (c >= 0x2028 && c <= 0x202E)), printed);
    }
    assertEquals("a\uFFFDSAFE TO INSTALL", PlainText.printable("a\nSAFE TO INSTALL"));
  }
}
