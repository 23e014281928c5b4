// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Torque;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Least prevailing and breakaway torques of self-locking nuts: look-ups. */
public final class PrevailingTorques {
  private PrevailingTorques() {}

  /**
   * One published value.
   *
   * @param kind what it is: prevailing or breakaway, of which nut
   * @param least least torque; a nut below it is worn out
   * @param source where it stands
   */
  public record Entry(String kind, Torque least, SourceRef source) implements Serializable {
    public Entry {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(least, "least");
      Objects.requireNonNull(source, "source");
    }
  }

  /**
   * The published values for an inch thread.
   *
   * @param thread an inch thread
   * @return the values; empty if the tables have none, and for metric threads
   */
  @Source(document = "FAA AC 43.13-1B", locator = "Table 7-2")
  @Source(document = "Army TM 1-1500-204-23-6", locator = "Table 2-8")
  @Source(document = "Army TM 9-6115-604-34", locator = "Table 1-3")
  public static List<Entry> of(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    Table table = TableSet.bundled().table("threads/prevailing-torque/government/prevailing-torques");
    String name = thread.designation().replace("#", "").replaceAll(" .*", "");
    String size = name.replaceAll("-[0-9.]+$", "");
    List<Entry> entries = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      String own = table.text(row, "thread");
      if (thread.system() == ThreadSystem.UNIFIED && (own.equals(name) || own.equals(size))) {
        entries.add(
            new Entry(
                table.text(row, "kind"),
                KnownUnits.LBF_IN.of(table.number(row, "torque")),
                SourceRef.published(table.text(row, "document"), table.text(row, "locator"))));
      }
    }
    return entries;
  }
}
