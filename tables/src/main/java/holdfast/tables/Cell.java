// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.util.List;

/**
 * One value of a table, able to say where it stands and who confirms it.
 *
 * @param address the place, for example {@code "ISO 286-1:2010, Table 1, over 18 up to 30 mm, IT7"}
 * @param value the number in the unit of the column
 * @param unit unit of the column, empty for a pure number
 * @param source document, locator and provenance of this value
 * @param confirmedBy ids of the documents in which the value was found; empty if none
 * @param note remark of the row; empty if none
 */
public record Cell(String address, double value, String unit, SourceRef source, List<String> confirmedBy, String note) {
  public Cell {
    confirmedBy = List.copyOf(confirmedBy);
  }
}
