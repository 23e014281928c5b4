// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.Serializable;
import java.util.Locale;

/**
 * One difference between two editions of a table set.
 *
 * @param kind what differs
 * @param id id of the table or of the document
 * @param place address of the row; empty if the difference is not in a row
 * @param item column, or entry of the description; empty for a whole row, table or document
 * @param unit unit of the two values; empty for text and pure numbers
 * @param before as the earlier edition has it; empty if it has none
 * @param after as the later edition has it; empty if it has none
 */
public record EditionChange(Kind kind, String id, String place, String item, String unit, String before, String after)
    implements Serializable {

  /** What differs between two editions. */
  public enum Kind {
    /** A document was registered. */
    DOCUMENT_ADDED,
    /** A document is no longer registered. */
    DOCUMENT_REMOVED,
    /** Title, kind or note of a document. */
    DOCUMENT_CHANGED,
    /** A whole table is new. */
    TABLE_ADDED,
    /** A whole table is gone. */
    TABLE_REMOVED,
    /** Title, document, locator, key, ranges, columns, units or note of a table. */
    DESCRIPTION_CHANGED,
    /** A row whose key the earlier edition does not have. */
    ROW_ADDED,
    /** A row whose key the later edition does not have. */
    ROW_REMOVED,
    /** A number or a text of a row. Numbers are compared by value: 6 and 6.0 are the same. */
    VALUE_CHANGED,
    /** How the row reached the project. */
    PROVENANCE_CHANGED,
    /** The documents in which the row or its mirror was found. */
    EVIDENCE_CHANGED,
    /** The remark of a row. */
    NOTE_CHANGED;

    /**
     * The words used in reports.
     *
     * @return for example {@code "value changed"}
     */
    public String label() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * The difference in one line, without the id.
   *
   * @return for example {@code "value changed: ISO 286-1:2010, Table 1, over 18 up to 30 mm, IT7: value 21 µm → 22 µm"}
   */
  public String text() {
    StringBuilder line = new StringBuilder(kind.label());
    if (!place.isEmpty()) {
      line.append(": ").append(place);
    }
    if (!item.isEmpty()) {
      line.append(": ").append(item).append(' ').append(value(before)).append(" → ").append(value(after));
    } else if (!before.isEmpty() || !after.isEmpty()) {
      line.append(": ").append(before).append(after);
    }
    return line.toString();
  }

  private String value(String text) {
    if (text.isEmpty()) {
      return "(empty)";
    }
    return unit.isEmpty() ? text : text + " " + unit;
  }
}
