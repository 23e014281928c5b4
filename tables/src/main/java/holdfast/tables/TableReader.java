// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Reads a CSV file against its descriptor and refuses what does not fit, naming file and line. */
final class TableReader {
  /** Digits with a decimal point and perhaps an exponent; no "1d" or "0x1p3", which Java would read too. */
  private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d++(\\.\\d*+)?|\\.\\d++)([eE][+-]?\\d++)?");
  private static final Pattern NOT_FINITE = Pattern.compile("[+-]?(NaN|Inf|Infinity)", Pattern.CASE_INSENSITIVE);

  private final String file;
  private final TableDescriptor descriptor;
  private final SourceRegister register;

  private TableReader(String file, TableDescriptor descriptor, SourceRegister register) {
    this.file = file;
    this.descriptor = descriptor;
    this.register = register;
  }

  static Table read(String file, TableDescriptor descriptor, SourceRegister register, String csv) {
    if (!register.contains(descriptor.source().document())) {
      throw new TableFormatException(
          descriptor.id() + ".properties",
          0,
          "document '" + descriptor.source().document() + "' is not in the register of sources");
    }
    return new TableReader(file, descriptor, register).read(csv);
  }

  private Table read(String csv) {
    List<CsvRecord> records = records(file, csv);
    List<String> header = header(records.get(0));
    int size = records.size() - 1;
    if (size == 0) {
      throw new TableFormatException(file, 0, "the table has no rows below the line with the column names");
    }
    Map<String, String[]> texts = new LinkedHashMap<>();
    Map<String, double[]> numbers = new HashMap<>();
    for (int c = 0; c < header.size(); c++) {
      Column column = descriptor.columns().get(header.get(c));
      String[] text = new String[size];
      double[] number = new double[size];
      for (int row = 0; row < size; row++) {
        CsvRecord line = records.get(row + 1);
        text[row] = line.getField(c).strip();
        number[row] = check(column, text[row], line.getStartingLineNumber());
      }
      texts.put(column.name(), text);
      if (column.type() == Column.Type.NUMBER) {
        numbers.put(column.name(), number);
      }
    }
    refuseDuplicates(records, texts, numbers, size);
    if (descriptor.hasRanges()) {
      refuseGaps(records, texts, numbers, size);
    }
    return new Table(descriptor, texts, numbers, size);
  }

  /**
   * All records, the header first. Above the header lines that start with '#' are comments. Every record has as many fields
   * as the header and stands on one line.
   */
  static List<CsvRecord> records(String file, String csv) {
    refuseWhatWouldVanish(file, csv);
    List<CsvRecord> records = new ArrayList<>();
    // Lines with too many or too few fields are let through here: the check below names them better.
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .commentStrategy(CommentStrategy.SKIP)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .ofCsvRecord(new StringReader(csv))) {
      reader.forEach(records::add);
    } catch (CsvParseException e) {
      String reason = e.getCause() == null ? e.getMessage() : e.getMessage() + ": " + e.getCause().getMessage();
      throw new TableFormatException(file, 0, "not readable as CSV: " + reason);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (records.isEmpty()) {
      throw new TableFormatException(file, 0, "the file is empty; the first line must name the columns");
    }
    int fields = records.get(0).getFieldCount();
    for (CsvRecord line : records) {
      if (line.getFieldCount() != fields) {
        throw new TableFormatException(
            file, line.getStartingLineNumber(), line.getFieldCount() + " fields instead of the " + fields + " of the header");
      }
    }
    return records;
  }

  /** A reader of CSV takes an open quotation mark for a cell of many lines, and any line that starts with '#' for a comment. */
  private static void refuseWhatWouldVanish(String file, String csv) {
    boolean belowHeader = false;
    int number = 0;
    for (String line : csv.lines().toList()) {
      number++;
      boolean comment = line.startsWith("#");
      if (comment && belowHeader) {
        throw new TableFormatException(
            file, number, "the row starts with '#': comments stand above the column names; a cell that starts so needs quotes");
      }
      if (!comment && !quotesClose(line)) {
        throw new TableFormatException(
            file, number, "a quotation mark is not closed on its line, or stands inside a cell without being doubled");
      }
      belowHeader |= !comment && !line.isBlank();
    }
  }

  /** Whether each cell has no quotation mark at all, or stands within two, with those inside doubled. */
  private static boolean quotesClose(String line) {
    boolean inside = false;
    for (int i = line.indexOf('"'); i >= 0; i = line.indexOf('"', i + 1)) {
      boolean last = i + 1 == line.length() || line.charAt(i + 1) == ',';
      if (!inside) {
        if (i > 0 && line.charAt(i - 1) != ',') {
          return false;
        }
        inside = true;
      } else if (last) {
        inside = false;
      } else if (line.charAt(i + 1) == '"') {
        i++;
      } else {
        return false;
      }
    }
    return !inside;
  }

  private List<String> header(CsvRecord first) {
    List<String> header = new ArrayList<>();
    for (String field : first.getFields()) {
      header.add(field.strip());
    }
    Set<String> unknown = new TreeSet<>(header);
    unknown.removeAll(descriptor.columns().keySet());
    Set<String> missing = new TreeSet<>(descriptor.columns().keySet());
    missing.removeAll(header);
    if (!unknown.isEmpty() || !missing.isEmpty() || header.size() != descriptor.columns().size()) {
      String fault =
          (unknown.isEmpty() ? "" : "columns " + unknown + " are not described; ")
              + (missing.isEmpty() ? "" : "columns " + missing + " are missing; ")
              + (unknown.isEmpty() && missing.isEmpty() ? "a column occurs twice; " : "");
      throw new TableFormatException(
          file, first.getStartingLineNumber(), fault + "described are " + descriptor.columns().keySet());
    }
    return header;
  }

  private double check(Column column, String text, long line) {
    if (text.isEmpty()) {
      if (!column.optional()) {
        throw new TableFormatException(file, line, "column '" + column.name() + "' must not be empty");
      }
      return Double.NaN;
    }
    switch (column.type()) {
      case NUMBER -> {
        return number(column, text, line);
      }
      case PROVENANCE -> {
        try {
          Provenance.of(text);
        } catch (IllegalArgumentException e) {
          throw new TableFormatException(file, line, e.getMessage());
        }
      }
      case SOURCES -> {
        for (String id : Table.split(text)) {
          if (!register.contains(id)) {
            throw new TableFormatException(file, line, "document '" + id + "' is not in the register of sources");
          }
        }
      }
      case TEXT -> {}
    }
    return Double.NaN;
  }

  private double number(Column column, String text, long line) {
    boolean finite = !NOT_FINITE.matcher(text).matches();
    if (finite && !DECIMAL.matcher(text).matches()) {
      throw new TableFormatException(
          file, line, "column '" + column.name() + "': '" + text + "' is not a number (decimal point, no unit)");
    }
    double value = finite ? Double.parseDouble(text) : Double.NaN;
    if (!Double.isFinite(value)) {
      throw new TableFormatException(file, line, "column '" + column.name() + "': '" + text + "' is not a finite number");
    }
    return value;
  }

  private void refuseDuplicates(
      List<CsvRecord> records, Map<String, String[]> texts, Map<String, double[]> numbers, int size) {
    Map<String, Long> seen = new HashMap<>();
    for (int row = 0; row < size; row++) {
      String key = key(texts, numbers, row, descriptor.key());
      long line = records.get(row + 1).getStartingLineNumber();
      Long earlier = seen.putIfAbsent(key, line);
      if (earlier != null) {
        throw new TableFormatException(file, line, "same key " + descriptor.key() + " = " + key + " as in line " + earlier);
      }
    }
  }

  /** Ranges of rows that agree in the other key columns must follow each other: from the last end, upwards. */
  private void refuseGaps(
      List<CsvRecord> records, Map<String, String[]> texts, Map<String, double[]> numbers, int size) {
    List<String> group = new ArrayList<>(descriptor.key());
    group.remove(descriptor.rangeFrom());
    group.remove(descriptor.rangeTo());
    double[] from = numbers.get(descriptor.rangeFrom());
    double[] to = numbers.get(descriptor.rangeTo());
    Map<String, Double> lastEnd = new HashMap<>();
    for (int row = 0; row < size; row++) {
      long line = records.get(row + 1).getStartingLineNumber();
      if (!(from[row] < to[row])) {
        throw new TableFormatException(file, line, "range over " + from[row] + " up to " + to[row] + " is empty");
      }
      Double end = lastEnd.put(key(texts, numbers, row, group), to[row]);
      if (end != null && end != from[row]) {
        throw new TableFormatException(
            file, line, "range starts at " + from[row] + " but the one before it ends at " + end + " (gap or overlap)");
      }
    }
  }

  /** Numbers count by value: 16 and 16.0 are one key. */
  private static String key(Map<String, String[]> texts, Map<String, double[]> numbers, int row, List<String> columns) {
    List<String> parts = new ArrayList<>();
    for (String column : columns) {
      boolean value = numbers.containsKey(column) && !texts.get(column)[row].isEmpty();
      parts.add(value ? plain(numbers.get(column)[row]) : texts.get(column)[row]);
    }
    return parts.toString();
  }

  private static String plain(double number) {
    return number == 0 ? "0" : new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
  }
}
