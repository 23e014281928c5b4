// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Locale;
import java.util.Objects;

/**
 * Text that shows what it is. Control characters, line breaks other than a blank, marks of writing direction and other
 * invisible characters can forge lines of a sheet or hide part of a name, so names are refused that hold them, and what
 * prints a text that came in another way shows a replacement character in their place.
 */
public final class PlainText {
  /** Greatest length of a name in characters: longer ones do not fit a line of a sheet twice over. */
  public static final int LONGEST = 200;

  private static final char REPLACEMENT = '\uFFFD';

  private PlainText() {}

  /**
   * Requires a name that can be printed and read.
   *
   * @param name the name
   * @param parameter what is named
   * @return the name
   * @throws InputException if it is blank, longer than {@link #LONGEST} characters, or holds an invisible character
   */
  public static String name(String name, String parameter) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(parameter, "parameter");
    if (name.length() > LONGEST) {
      throw new InputException(parameter, printable(name.substring(0, 40)) + "… of " + name.length() + " characters",
          "of at most " + LONGEST + " characters", "it is a name on a sheet");
    }
    int blank = 0;
    for (int i = 0; i < name.length(); ) {
      int c = name.codePointAt(i);
      if (!visible(c)) {
        throw new InputException(parameter, "'" + printable(name) + "' with U+" + hex(c), "without invisible characters",
            "line breaks, control characters and marks of direction can forge or hide what a sheet says");
      }
      blank += Character.isSpaceChar(c) ? 1 : 0;
      i += Character.charCount(c);
    }
    if (blank == name.codePointCount(0, name.length())) {
      throw new InputException(parameter, "'" + name + "'", "not blank", "what is named must be found again");
    }
    return name;
  }

  /**
   * The text as it is safe to print: every invisible character is replaced, so that none breaks a line, moves a cursor or
   * turns the direction of writing.
   *
   * @param text any text
   * @return the same text if nothing in it is invisible
   */
  public static String printable(String text) {
    Objects.requireNonNull(text, "text");
    if (text.codePoints().allMatch(PlainText::visible)) {
      return text;
    }
    StringBuilder plain = new StringBuilder(text.length());
    text.codePoints().forEach(c -> plain.appendCodePoint(visible(c) ? c : REPLACEMENT));
    return plain.toString();
  }

  private static boolean visible(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED,
          Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
      default -> !seemsBlank(c);
    };
  }

  /** Letters and marks by their class, which fonts draw as nothing. */
  private static boolean seemsBlank(int c) {
    return c == 0x034F || c == 0x115F || c == 0x1160 || c == 0x17B4 || c == 0x17B5 || c == 0x3164 || c == 0xFFA0
        || c == 0x2800 || (c >= 0xFE00 && c <= 0xFE0F) || (c >= 0xE0100 && c <= 0xE01EF);
  }

  private static String hex(int c) {
    String digits = Integer.toHexString(c).toUpperCase(Locale.ROOT);
    return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
  }
}
