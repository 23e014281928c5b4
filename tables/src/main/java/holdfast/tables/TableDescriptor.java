package holdfast.tables;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

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

  public TableDescriptor {
    columns = Map.copyOf(columns);
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
    p.load(reader);
    Map<String, Column> columns = new LinkedHashMap<>();
    for (String name : new TreeSet<>(p.stringPropertyNames())) {
      if (name.startsWith("column.")) {
        String column = name.substring("column.".length());
        try {
          columns.put(column, Column.of(column, p.getProperty(name)));
        } catch (IllegalArgumentException e) {
          throw new TableFormatException(file, 0, name + ": " + e.getMessage());
        }
      } else if (!KNOWN.contains(name)) {
        throw new TableFormatException(
            file, 0, "unknown entry '" + name + "'; known: " + new TreeSet<>(KNOWN) + ", column.<name>");
      }
    }
    String ranges = p.getProperty("ranges", "..").strip();
    String[] range = ranges.split("\\.\\.", -1);
    if (range.length != 2) {
      throw new TableFormatException(file, 0, "ranges must be 'from_column..to_column'");
    }
    List<String> key = new ArrayList<>();
    for (String part : required(p, "key", file).split(",", -1)) {
      key.add(part.strip());
    }
    for (String name : key) {
      if (!columns.containsKey(name)) {
        throw new TableFormatException(file, 0, "key column '" + name + "' is not described");
      }
    }
    SourceRef source;
    try {
      source =
          new SourceRef(
              required(p, "document", file), required(p, "locator", file), Provenance.of(required(p, "provenance", file)));
    } catch (IllegalArgumentException e) {
      throw e instanceof TableFormatException ? e : new TableFormatException(file, 0, e.getMessage());
    }
    return new TableDescriptor(
        id,
        required(p, "title", file),
        source,
        columns,
        key,
        range[0].strip(),
        range[1].strip(),
        required(p, "address", file),
        p.getProperty("note", "").strip());
  }

  private static String required(Properties p, String name, String file) {
    String value = p.getProperty(name, "").strip();
    if (value.isEmpty()) {
      throw new TableFormatException(file, 0, "entry '" + name + "' is missing or empty");
    }
    return value;
  }
}
