// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import holdfast.tables.EditionChange.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Walks two table sets side by side and collects their differences. */
final class EditionComparison {
  private final List<EditionChange> changes = new ArrayList<>();

  EditionComparison(TableSet from, TableSet to) {
    documents(from.sources(), to.sources());
    for (String id : union(from.ids(), to.ids())) {
      if (!to.ids().contains(id)) {
        add(Kind.TABLE_REMOVED, id, "", from.table(id).descriptor().title(), "");
      } else if (!from.ids().contains(id)) {
        add(Kind.TABLE_ADDED, id, "", "", to.table(id).descriptor().title());
      } else {
        descriptions(from.table(id).descriptor(), to.table(id).descriptor());
        rows(id, from.table(id), to.table(id));
      }
    }
  }

  List<EditionChange> changes() {
    return changes;
  }

  private void documents(SourceRegister from, SourceRegister to) {
    for (Document old : from.documents()) {
      if (!to.contains(old.id())) {
        add(Kind.DOCUMENT_REMOVED, old.id(), "", old.title(), "");
        continue;
      }
      Document now = to.document(old.id());
      old.fields().forEach((field, value) -> entry(Kind.DOCUMENT_CHANGED, old.id(), field, value, now.fields().get(field)));
    }
    for (Document now : to.documents()) {
      if (!from.contains(now.id())) {
        add(Kind.DOCUMENT_ADDED, now.id(), "", "", now.title());
      }
    }
  }

  private void descriptions(TableDescriptor from, TableDescriptor to) {
    Map<String, String> before = entries(from);
    Map<String, String> after = entries(to);
    for (String name : union(before.keySet(), after.keySet())) {
      entry(Kind.DESCRIPTION_CHANGED, to.id(), name, before.getOrDefault(name, ""), after.getOrDefault(name, ""));
    }
  }

  /** The description by entry, without the table's provenance: that is compared row by row. */
  private static Map<String, String> entries(TableDescriptor descriptor) {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("title", descriptor.title());
    entries.put("document", descriptor.source().document());
    entries.put("locator", descriptor.source().locator());
    entries.put("key", String.join(", ", descriptor.key()));
    entries.put("ranges", descriptor.hasRanges() ? descriptor.rangeFrom() + ".." + descriptor.rangeTo() : "");
    entries.put("address", descriptor.address());
    entries.put("note", descriptor.note());
    for (Column column : descriptor.columns().values()) {
      String type = column.type().name().toLowerCase(Locale.ROOT);
      String unit = column.unit().isEmpty() ? "" : " " + column.unit();
      entries.put("column." + column.name(), type + unit + (column.optional() ? " optional" : ""));
    }
    return entries;
  }

  private void rows(String id, Table from, Table to) {
    boolean sameKey = from.descriptor().key().equals(to.descriptor().key());
    Map<List<String>, Integer> old = rowsByKey(from);
    Map<List<String>, Integer> now = rowsByKey(to);
    old.forEach((key, row) -> {
      if (!sameKey || !now.containsKey(key)) {
        add(Kind.ROW_REMOVED, id, from.address(row), values(from, row), "");
      }
    });
    now.forEach((key, row) -> {
      if (sameKey && old.containsKey(key)) {
        cells(id, from, old.get(key), to, row);
      } else {
        add(Kind.ROW_ADDED, id, to.address(row), "", values(to, row));
      }
    });
  }

  private static Map<List<String>, Integer> rowsByKey(Table table) {
    Map<List<String>, Integer> rows = new LinkedHashMap<>();
    for (int row = 0; row < table.size(); row++) {
      List<String> key = new ArrayList<>();
      for (String column : table.descriptor().key()) {
        key.add(comparable(table, row, column));
      }
      rows.put(key, row);
    }
    return rows;
  }

  private void cells(String id, Table from, int old, Table to, int now) {
    String place = to.address(now);
    for (Column column : to.descriptor().columns().values()) {
      String name = column.name();
      boolean compared = from.descriptor().columns().containsKey(name) && column.type() != Column.Type.PROVENANCE;
      if (compared && !comparable(from, old, name).equals(comparable(to, now, name))) {
        Kind kind = column.type() == Column.Type.SOURCES ? Kind.EVIDENCE_CHANGED
            : name.equals(Table.NOTE) ? Kind.NOTE_CHANGED : Kind.VALUE_CHANGED;
        changes.add(
            new EditionChange(kind, id, place, name, column.unit(), from.text(old, name), to.text(now, name)));
      }
    }
    if (from.provenance(old) != to.provenance(now)) {
      changes.add(
          new EditionChange(
              Kind.PROVENANCE_CHANGED, id, place, Table.PROVENANCE, "", from.provenance(old).label(),
              to.provenance(now).label()));
    }
  }

  /** A cell without what does not matter: the spelling of a number, blanks between documents. */
  private static String comparable(Table table, int row, String column) {
    String text = table.text(row, column);
    return switch (table.descriptor().columns().get(column).type()) {
      case NUMBER -> text.isEmpty() ? "" : Double.toString(table.number(row, column) + 0.0);
      case SOURCES -> String.join(";", Table.split(text));
      case TEXT, PROVENANCE -> text;
    };
  }

  private static String values(Table table, int row) {
    List<String> values = new ArrayList<>();
    for (Column column : table.descriptor().columns().values()) {
      String text = table.text(row, column.name());
      if (!text.isEmpty() && !table.descriptor().key().contains(column.name())) {
        values.add(column.name() + " " + text + (column.unit().isEmpty() ? "" : " " + column.unit()));
      }
    }
    return String.join(", ", values);
  }

  private void entry(Kind kind, String id, String item, String before, String after) {
    if (!before.equals(after)) {
      changes.add(new EditionChange(kind, id, "", item, "", before, after));
    }
  }

  private void add(Kind kind, String id, String place, String before, String after) {
    changes.add(new EditionChange(kind, id, place, "", "", before, after));
  }

  private static Set<String> union(Iterable<String> first, Iterable<String> second) {
    Set<String> all = new LinkedHashSet<>();
    first.forEach(all::add);
    second.forEach(all::add);
    return all;
  }
}
