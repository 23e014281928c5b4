// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Cautions for fitting work, from the table of cautions. */
public final class Cautions {
  private Cautions() {}

  /**
   * The topics of the table.
   *
   * @return for example isolate, press, heat, tighten, grease
   */
  public static Set<String> topics() {
    Table table = table();
    Set<String> topics = new LinkedHashSet<>();
    for (int row = 0; row < table.size(); row++) {
      topics.add(table.text(row, "topic"));
    }
    return topics;
  }

  /**
   * The cautions on a topic.
   *
   * @param topic one of {@link #topics()}
   * @param numbers which of them, counted from 1; all if none is given
   * @return the cautions in the order of the table
   * @throws InputException if the table has no such topic or number
   */
  public static List<Caution> about(String topic, int... numbers) {
    Objects.requireNonNull(numbers, "numbers");
    Table table = table();
    List<Caution> all = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      if (table.text(row, "topic").equals(topic)) {
        all.add(caution(table, row));
      }
    }
    if (all.isEmpty()) {
      throw new InputException("topic", "'" + topic + "'", "one of " + topics(), "these are the topics of the table of cautions");
    }
    if (numbers.length == 0) {
      return List.copyOf(all);
    }
    List<Caution> chosen = new ArrayList<>();
    for (int number : numbers) {
      if (number < 1 || number > all.size()) {
        throw new InputException("number", "" + number, "from 1 to " + all.size(), "cautions on '" + topic + "'");
      }
      chosen.add(all.get(number - 1));
    }
    return List.copyOf(chosen);
  }

  private static Caution caution(Table table, int row) {
    String cited = table.text(row, "confirmed_by");
    String document = cited.isEmpty() ? "common practice" : cited;
    String place = table.text(row, "place");
    // The place names the document again where other documents follow; once is enough.
    String locator = place.startsWith(document) ? place.substring(document.length()).strip() : place;
    return new Caution(
        table.text(row, "text"),
        new SourceRef(document, locator.isEmpty() ? "whole document" : locator, table.provenance(row)));
  }

  private static Table table() {
    return TableSet.bundled().table("general/cautions/cautions");
  }
}
