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
   * @return the cautions in the order of the table
   * @throws InputException if the table has no such topic
   */
  public static List<Caution> about(String topic) {
    Objects.requireNonNull(topic, "topic");
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
    return List.copyOf(all);
  }

  /**
   * The cautions with these ids. An id stays with its caution wherever the table puts its row.
   *
   * @param ids for example {@code "personal-lock"}
   * @return the cautions in the order of the ids
   * @throws InputException if the table has no such id
   */
  public static List<Caution> of(String... ids) {
    Objects.requireNonNull(ids, "ids");
    Table table = table();
    List<Caution> chosen = new ArrayList<>();
    for (String id : ids) {
      int row = row(table, Objects.requireNonNull(id, "ids"));
      chosen.add(caution(table, row));
    }
    return List.copyOf(chosen);
  }

  private static int row(Table table, String id) {
    List<String> known = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      known.add(table.text(row, "id"));
    }
    int row = known.indexOf(id);
    if (row < 0) {
      throw new InputException("id of a caution", "'" + id + "'", "one of " + known, "cautions are addressed by id");
    }
    return row;
  }

  private static Caution caution(Table table, int row) {
    String cited = table.text(row, "confirmed_by");
    String document = cited.isEmpty() ? "common practice" : cited;
    String place = table.text(row, "place");
    // The place names the document again where other documents follow; once is enough.
    String locator = place.startsWith(document) ? place.substring(document.length()).strip() : place;
    return new Caution(
        SignalWord.of(table.text(row, "harm")),
        table.text(row, "text"),
        new SourceRef(document, locator.isEmpty() ? "whole document" : locator, table.provenance(row)));
  }

  private static Table table() {
    return TableSet.bundled().table("general/cautions/cautions");
  }
}
