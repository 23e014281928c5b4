// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
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

  static TableDescriptor read(String id, String file, Reader reader) throws IOException {
    Properties p = new Properties();
    try {
      p.load(reader);
    } catch (IllegalArgumentException e) {
      throw new TableFormatException(file, 0, e.getMessage());
    }
    Map<String, Column> columns = columns(p, file);
    List<String> key = new ArrayList<>();
    for (String part : required(p, "key", file).split(",", -1)) {
      key.add(part.strip());
    }
    for (String name : key) {
      if (!columns.containsKey(name)) {
        throw new TableFormatException(file, 0, "key column '" + name + "' is not described");
      }
    }
    String address = required(p, "address", file);
    Matcher names = NAME_IN_BRACES.matcher(address);
    while (names.find()) {
      if (!columns.containsKey(names.group(1))) {
        throw new TableFormatException(file, 0, "address: column '" + names.group(1) + "' is not described");
      }
    }
    String[] range = range(p, columns, file);
    return new TableDescriptor(
        id,
        required(p, "title", file),
        source(p, file),
        columns,
        key,
        range[0],
        range[1],
        address,
        p.getProperty("note", "").strip());
  }

  private static Map<String, Column> columns(Properties p, String file) {
    Map<String, Column> columns = new LinkedHashMap<>();
    for (String name : new TreeSet<>(p.stringPropertyNames())) {
      if (name.startsWith("column.")) {
        String column = name.substring("column.".length());
        try {
          columns.put(column, Column.of(column, p.getProperty(name)));
        } catch (IllegalArgumentException e) {
          throw new TableFormatException(file, 0, name + ": " + e.getMessage());
        }
        Column.Type reserved = RESERVED.get(column);
        if (reserved != null && columns.get(column).type() != reserved) {
          throw new TableFormatException(
              file, 0, name + ": a column of this name has the type " + reserved.name().toLowerCase(Locale.ROOT));
        }
      } else if (!KNOWN.contains(name)) {
        throw new TableFormatException(
            file, 0, "unknown entry '" + name + "'; known: " + new TreeSet<>(KNOWN) + ", column.<name>");
      }
    }
    return columns;
  }

  /** The two range columns, or two empty texts. */
  private static String[] range(Properties p, Map<String, Column> columns, String file) {
    String entry = p.getProperty("ranges", "").strip();
    if (entry.isEmpty()) {
      return new String[] {"", ""};
    }
    String[] range = entry.split("\\.\\.", -1);
    if (range.length != 2) {
      throw new TableFormatException(file, 0, "ranges must be 'from_column..to_column', not '" + entry + "'");
    }
    for (int i = 0; i < 2; i++) {
      range[i] = range[i].strip();
      Column column = columns.get(range[i]);
      if (column == null || column.type() != Column.Type.NUMBER || column.optional()) {
        throw new TableFormatException(
            file, 0, "ranges: '" + range[i] + "' must be a described number column whose cells are never empty");
      }
    }
    return range;
  }

  private static SourceRef source(Properties p, String file) {
    String document = required(p, "document", file);
    String locator = required(p, "locator", file);
    String provenance = required(p, "provenance", file);
    try {
      return new SourceRef(document, locator, Provenance.of(provenance));
    } catch (IllegalArgumentException e) {
      throw new TableFormatException(file, 0, e.getMessage());
    }
  }

  private static String required(Properties p, String name, String file) {
    String value = p.getProperty(name, "").strip();
    if (value.isEmpty()) {
      throw new TableFormatException(file, 0, "entry '" + name + "' is missing or empty");
    }
    return value;
  }
}
