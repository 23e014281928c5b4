// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a table is and where it comes from; read from the {@code .properties} file beside the CSV file.
 *
 * @param id path of the table without the ending, for example {@code "fits/iso-286-1/2010/standard-tolerances"}
 * @param title what the table holds
 * @param source document, locator and provenance of the rows that do not say otherwise
 * @param columns the columns by name
 * @param key columns that together identify a row; duplicates are refused
 * @param rangeFrom column with the open lower end of a size range, or empty
 * @param rangeTo column with the closed upper end of a size range, or empty
 * @param address pattern for the place of a row, with column names in braces
 * @param note remarks: deviations from print, what is uncertain
 */
public record TableDescriptor(
    String id,
    String title,
    SourceRef source,
    Map<String, Column> columns,
    List<String> key,
    String rangeFrom,
    String rangeTo,
    String address,
    String note) {

  private static final Set<String> KNOWN =
      Set.of("title", "document", "locator", "provenance", "key", "ranges", "address", "note");

  /** Columns whose name says what they hold. */
  private static final Map<String, Column.Type> RESERVED =
      Map.of(
          Table.PROVENANCE, Column.Type.PROVENANCE,
          Table.CONFIRMED_BY, Column.Type.SOURCES,
          Table.MIRRORED_BY, Column.Type.SOURCES,
          Table.NOTE, Column.Type.TEXT);

  /** A column name in an address pattern. */
  static final Pattern NAME_IN_BRACES = Pattern.compile("\\{([^{}]*)}");

  // Keeps unmodifiable copies; the columns in their order, so that messages do not change from run to run.
  public TableDescriptor {
    columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
    key = List.copyOf(key);
  }

  /**
   * Whether the rows are size ranges that must join without gap or overlap.
   *
   * @return true if the descriptor names range columns
   */
  public boolean hasRanges() {
    return !rangeFrom.isEmpty();
  }

  static TableDescriptor read(String id, Entries entries) {
    Map<String, Column> columns = columns(entries);
    List<String> key = new ArrayList<>();
    for (String part : entries.required("key").split(",", -1)) {
      String name = part.strip();
      if (!columns.containsKey(name)) {
        throw entries.fault("key", "key column '" + name + "' is not described");
      }
      key.add(name);
    }
    String address = entries.required("address");
    Matcher names = NAME_IN_BRACES.matcher(address);
    while (names.find()) {
      if (!columns.containsKey(names.group(1))) {
        throw entries.fault("address", "address: column '" + names.group(1) + "' is not described");
      }
    }
    String[] range = range(entries, columns);
    return new TableDescriptor(
        id, entries.required("title"), source(entries), columns, key, range[0], range[1], address, entries.value("note"));
  }

  private static Map<String, Column> columns(Entries entries) {
    Map<String, Column> columns = new LinkedHashMap<>();
    for (String name : new TreeSet<>(entries.names())) {
      if (name.startsWith("column.")) {
        String column = name.substring("column.".length());
        try {
          columns.put(column, Column.of(column, entries.value(name)));
        } catch (IllegalArgumentException e) {
          throw entries.fault(name, name + ": " + e.getMessage());
        }
        Column.Type reserved = RESERVED.get(column);
        if (reserved != null && columns.get(column).type() != reserved) {
          throw entries.fault(
              name, name + ": a column of this name has the type " + reserved.name().toLowerCase(Locale.ROOT));
        }
      } else if (!KNOWN.contains(name)) {
        throw entries.fault(name, "unknown entry '" + name + "'; known: " + new TreeSet<>(KNOWN) + ", column.<name>");
      }
    }
    return columns;
  }

  /** The two range columns, or two empty texts. */
  private static String[] range(Entries entries, Map<String, Column> columns) {
    String entry = entries.value("ranges");
    if (entry.isEmpty()) {
      return new String[] {"", ""};
    }
    String[] range = entry.split("\\.\\.", -1);
    if (range.length != 2) {
      throw entries.fault("ranges", "ranges must be 'from_column..to_column', not '" + entry + "'");
    }
    for (int i = 0; i < 2; i++) {
      range[i] = range[i].strip();
      Column column = columns.get(range[i]);
      if (column == null || column.type() != Column.Type.NUMBER || column.optional()) {
        throw entries.fault(
            "ranges", "ranges: '" + range[i] + "' must be a described number column whose cells are never empty");
      }
    }
    return range;
  }

  private static SourceRef source(Entries entries) {
    String document = entries.required("document");
    String locator = entries.required("locator");
    String provenance = entries.required("provenance");
    try {
      return new SourceRef(document, locator, Provenance.of(provenance));
    } catch (IllegalArgumentException e) {
      throw entries.fault("provenance", e.getMessage());
    }
  }
}
