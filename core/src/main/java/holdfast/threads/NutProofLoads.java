// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.tables.Cell;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Proof loads of nuts with metric coarse thread. A preload beyond it strips or jams the nut: state it as the greatest preload of
 * the rules of a torque window, {@link WindowRules#greatestPreload}.
 */
public final class NutProofLoads {
  private NutProofLoads() {}

  /**
   * Proof load of a nut of the usual height (style 1).
   *
   * @param thread a metric coarse thread, M3 to M39
   * @param propertyClass property class of the nut: 4, 5, 6, 8, 10 or 12
   * @return the load
   * @throws InputException if the table has no such nut; the message names the classes of the thread
   */
  @Source(document = "ISO 898-2:1992", locator = "table of proof loads, coarse thread")
  public static Force of(ScrewThread thread, String propertyClass) {
    return new Force(cell(thread, propertyClass, "1").value());
  }

  /**
   * Proof load of a high nut (style 2).
   *
   * @param thread a metric coarse thread
   * @param propertyClass 8 or 12
   * @return the load
   * @throws InputException if the table has no such nut; the message names the classes of the thread
   */
  @Source(document = "ISO 898-2:1992", locator = "table of proof loads, coarse thread, style 2")
  public static Force ofHighNut(ScrewThread thread, String propertyClass) {
    return new Force(cell(thread, propertyClass, "2").value());
  }

  /**
   * Where the load of a nut of the usual height stands.
   *
   * @param thread a metric coarse thread, M3 to M39
   * @param propertyClass property class of the nut
   * @return document, place and provenance of the cell
   * @throws InputException as {@link #of}
   */
  public static SourceRef source(ScrewThread thread, String propertyClass) {
    return cell(thread, propertyClass, "1").source();
  }

  private static Cell cell(ScrewThread thread, String propertyClass, String style) {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(propertyClass, "propertyClass");
    Table table = TableSet.bundled().table("threads/iso-898-2/1992/nut-proof-loads");
    List<String> known = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      String size = table.text(row, "thread");
      boolean sameThread = thread.system() == ThreadSystem.METRIC
          && size.equals("M" + holdfast.quantity.Numbers.shortest(thread.majorDiameter().mm()))
          && ThreadSeries.same(table.number(row, "pitch"), thread.pitch().mm());
      if (sameThread && table.text(row, "style").equals(style)) {
        if (table.text(row, "class").equals(propertyClass.strip())) {
          return table.cell(row, "load");
        }
        known.add(table.text(row, "class"));
      }
    }
    throw new InputException(
        "property class of the nut",
        propertyClass + " for " + thread,
        known.isEmpty() ? "of a metric coarse thread M3 to M39" : String.join(", ", known),
        "ISO 898-2:1992 as it reached us prints proof loads for these, style " + style);
  }
}
