// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

/**
 * Refuses characters that cannot be seen: control characters, which end a line or steer a terminal, and marks that turn or
 * hide what stands beside them. Names and texts of tables reach sheets, and two that look alike must be alike.
 */
final class Printable {
  private Printable() {}

  /** The fault of a text, or null. */
  static String fault(String text) {
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      switch (Character.getType(c)) {
        case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR,
            Character.SURROGATE, Character.UNASSIGNED, Character.PRIVATE_USE -> {
          return "character %d, U+%04X, cannot be printed".formatted(i + 1, c);
        }
        default -> i += Character.charCount(c);
      }
    }
    return null;
  }

  static void require(String file, int line, String text) {
    String fault = fault(text);
    if (fault != null) {
      throw new TableFormatException(file, line, fault);
    }
  }

  /** Every line of a file; a tab may stand between words. */
  static void requireLines(String file, String text) {
    int number = 0;
    for (String line : text.lines().toList()) {
      require(file, ++number, line.replace('\t', ' '));
    }
  }
}
