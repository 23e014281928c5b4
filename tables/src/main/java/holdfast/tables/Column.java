// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.util.Locale;

/**
 * Description of a column.
 *
 * @param name name in the header of the CSV file
 * @param type what its cells hold
 * @param unit unit of the numbers, empty for text and pure numbers
 * @param optional whether a cell may be empty
 */
public record Column(String name, Type type, String unit, boolean optional) {
  /** What the cells of a column hold. */
  public enum Type {
    /** A finite decimal number with a point. */
    NUMBER,
    /** Any text. */
    TEXT,
    /** A provenance label that overrides the table's. */
    PROVENANCE,
    /** Document ids separated by semicolons, all of them in the register. */
    SOURCES
  }

  /**
   * Reads a descriptor entry such as {@code "number mm"}, {@code "number 1 optional"} or {@code "text"}.
   *
   * @param name name of the column
   * @param entry the text after the equals sign
   * @return the column
   * @throws IllegalArgumentException if the entry cannot be read
   */
  static Column of(String name, String entry) {
    String[] words = entry.strip().split("\\s+", -1);
    Type type;
    try {
      type = Type.valueOf(words[0].toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("column type '" + words[0] + "' is not number, text, provenance or sources", e);
    }
    boolean optional = words[words.length - 1].equals("optional");
    int unitWords = words.length - 1 - (optional ? 1 : 0);
    boolean number = type == Type.NUMBER;
    if (unitWords != (number ? 1 : 0)) {
      throw new IllegalArgumentException(
          number
              ? "a number column needs a unit ('number mm'; '1' for a pure number)"
              : "column type '" + words[0] + "' takes no unit");
    }
    String unit = number && !words[1].equals("1") ? words[1] : "";
    return new Column(name, type, unit, optional);
  }
}
