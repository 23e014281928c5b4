// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the names of inch fits: "FN2", "RC 5", and with a size "5/8 in FN2". */
final class InchText {
  private static final String FAMILIES = "RC|LC|LT|LN|FN";
  private static final Pattern CLASS = Pattern.compile("\\s*(" + FAMILIES + ")\\s*(\\d{1,2})\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern SIZED =
      Pattern.compile("(.*?)(?<![A-Za-z])((?:" + FAMILIES + ")\\s*\\w*)\\s*", Pattern.CASE_INSENSITIVE);
  private static final String FORM = "RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3 or FN1 to FN5";

  private InchText() {}

  /** Whether a text without a size means an inch fit: no letter code of ISO 286 starts like one of the families. */
  static boolean isInchFit(String text) {
    int at = 0;
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return isFamily(text, at);
  }

  /** Whether a text that begins with a size ends with an inch fit. Cheap, because every text of a fit passes here. */
  static boolean endsWithInchFit(String text) {
    int at = text.length() - 1;
    while (at >= 0 && (Character.isWhitespace(text.charAt(at)) || isDigit(text.charAt(at)))) {
      at--;
    }
    return at >= 1 && isFamily(text, at - 1) && (at == 1 || !Character.isLetter(text.charAt(at - 2)));
  }

  static InchFitClass fitClass(String text) {
    Matcher matcher = CLASS.matcher(text);
    if (matcher.matches()) {
      String name = matcher.group(1).toUpperCase(Locale.ROOT) + matcher.group(2);
      for (int code = 0; code < InchTables.CLASSES; code++) {
        if (InchFitClass.at(code).name().equals(name)) {
          return InchFitClass.at(code);
        }
      }
    }
    String reason = text.isBlank() ? "the text is empty" : "ANSI B4.1-1967 has no other classes";
    throw new InputException("class of the inch fit", "'" + text + "'", FORM, reason);
  }

  /** Reads a size with its unit and a class. */
  static Fit sizedFit(String text) {
    Matcher matcher = SIZED.matcher(text);
    if (!matcher.matches()) {
      throw new InputException(
          "inch fit", "'" + text + "'", "a size with its unit and a class, for example 5/8 in FN2", "it cannot be read");
    }
    InchFitClass fit = fitClass(matcher.group(2));
    return fit.at(Length.parse(matcher.group(1)));
  }

  private static boolean isFamily(String text, int at) {
    if (at + 1 >= text.length()) {
      return false;
    }
    char first = upper(text.charAt(at));
    char second = upper(text.charAt(at + 1));
    return switch (second) {
      case 'C' -> first == 'R' || first == 'L';
      case 'N' -> first == 'L' || first == 'F';
      case 'T' -> first == 'L';
      default -> false;
    };
  }

  private static char upper(char c) {
    return c >= 'a' && c <= 'z' ? (char) (c - 'a' + 'A') : c;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
