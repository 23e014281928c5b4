// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.Column;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRegister;
import holdfast.tables.Table;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The cells of a table that hold a value. Keys, limits of ranges, places in documents and remarks address or explain a
 * value and are not counted; a table of keys alone states its rows, and each row counts as one cell.
 */
final class TableCells {
  private static final Set<String> REMARKS = Set.of("note", "locator", "source", "document", "place");

  private final Table table;
  private final List<String> columns;

  TableCells(Table table) {
    this.table = table;
    this.columns = table.descriptor().columns().values().stream().filter(this::holdsValues).map(Column::name).toList();
  }

  private boolean holdsValues(Column column) {
    boolean address = table.descriptor().key().contains(column.name())
        || column.name().equals(table.descriptor().rangeFrom())
        || column.name().equals(table.descriptor().rangeTo());
    boolean value = column.type() == Column.Type.NUMBER || column.type() == Column.Type.TEXT;
    return value && !address && !REMARKS.contains(column.name());
  }

  int inRow(int row) {
    return columns.isEmpty() ? 1 : (int) columns.stream().filter(column -> table.has(row, column)).count();
  }

  int total() {
    int total = 0;
    for (int row = 0; row < table.size(); row++) {
      total += inRow(row);
    }
    return total;
  }

  /** Counts each cell where its own provenance column, or else its row, says it belongs. */
  Map<Provenance, Integer> byProvenance() {
    Map<Provenance, Integer> counts = new EnumMap<>(Provenance.class);
    for (int row = 0; row < table.size(); row++) {
      if (columns.isEmpty()) {
        counts.merge(table.provenance(row), 1, Integer::sum);
      }
      for (String column : columns) {
        if (table.has(row, column)) {
          counts.merge(provenance(row, column), 1, Integer::sum);
        }
      }
    }
    return counts;
  }

  private Provenance provenance(int row, String column) {
    String own = column + "_provenance";
    return table.descriptor().columns().containsKey(own) && table.has(row, own)
        ? Provenance.of(table.text(row, own))
        : table.provenance(row);
  }

  SortedMap<String, Integer> byDocument(SourceRegister register) {
    SortedMap<String, Integer> counts = new TreeMap<>();
    for (int row = 0; row < table.size(); row++) {
      for (String id : Set.copyOf(table.confirmedBy(row))) {
        counts.merge(id + " (" + register.document(id).kind() + ")", inRow(row), Integer::sum);
      }
    }
    return counts;
  }
}
