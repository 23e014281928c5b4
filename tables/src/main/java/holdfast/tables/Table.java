// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;

/**
 * A validated table of reference data. Immutable. Rows are addressed by their index from 0 to {@link #size()} - 1 in
 * the order of the file; numbers come in the unit that the descriptor states for the column.
 */
public final class Table {
  /** Column that overrides the table's provenance for its row. */
  static final String PROVENANCE = "provenance";
  /** Column with the documents in which the row was found. */
  static final String CONFIRMED_BY = "confirmed_by";
  /** Column with the documents in which only the mirrored value (same letter, opposite sign) was found. */
  static final String MIRRORED_BY = "mirrored_by";
  /** Column with remarks. */
  static final String NOTE = "note";

  private final TableDescriptor descriptor;
  private final Map<String, String[]> texts;
  private final Map<String, double[]> numbers;
  private final int size;

  Table(TableDescriptor descriptor, Map<String, String[]> texts, Map<String, double[]> numbers, int size) {
    this.descriptor = descriptor;
    this.texts = texts;
    this.numbers = numbers;
    this.size = size;
  }

  /**
   * What the table is and where it comes from.
   *
   * @return the descriptor
   */
  public TableDescriptor descriptor() {
    return descriptor;
  }

  /**
   * Number of rows.
   *
   * @return the number of rows
   */
  public int size() {
    return size;
  }

  /**
   * A text cell.
   *
   * @param row row index
   * @param column name of the column
   * @return its text, empty for an absent optional cell
   * @throws IllegalArgumentException if there is no such column
   * @throws IndexOutOfBoundsException if there is no such row
   */
  public String text(int row, String column) {
    String[] values = texts.get(column);
    if (values == null) {
      throw noSuchColumn(column);
    }
    return values[row];
  }

  /**
   * Whether an optional cell is filled.
   *
   * @param row row index
   * @param column name of the column
   * @return true if it holds a value
   * @throws IllegalArgumentException if there is no such column
   */
  public boolean has(int row, String column) {
    return !text(row, column).isEmpty();
  }

  /**
   * A number.
   *
   * @param row row index
   * @param column name of the column
   * @return the number, in the unit of the column
   * @throws IllegalArgumentException if the column does not hold numbers or the cell is empty
   */
  public double number(int row, String column) {
    double[] values = numbers.get(column);
    if (values == null) {
      throw noSuchColumn(column);
    }
    if (Double.isNaN(values[row])) {
      throw new IllegalArgumentException(address(row) + ": no value in column '" + column + "'");
    }
    return values[row];
  }

  /**
   * A whole column of numbers.
   *
   * @param column name of the column
   * @return a copy; {@code NaN} where an optional cell is empty
   * @throws IllegalArgumentException if the column does not hold numbers
   */
  public double[] numbers(String column) {
    double[] values = numbers.get(column);
    if (values == null) {
      throw noSuchColumn(column);
    }
    return values.clone();
  }

  /**
   * Finds the row whose text columns equal the given values.
   *
   * @param columnsAndValues column names and wanted texts in turn
   * @return the row index, or -1 if no row matches
   * @throws IllegalArgumentException if there is no such column or the count is odd
   */
  public int find(String... columnsAndValues) {
    if (columnsAndValues.length % 2 != 0) {
      throw new IllegalArgumentException("columns and values must come in pairs: " + Arrays.toString(columnsAndValues));
    }
    for (int row = 0; row < size; row++) {
      boolean matches = true;
      for (int i = 0; matches && i < columnsAndValues.length; i += 2) {
        matches = text(row, columnsAndValues[i]).equals(columnsAndValues[i + 1]);
      }
      if (matches) {
        return row;
      }
    }
    return -1;
  }

  /**
   * Provenance of a row: its own, or the table's.
   *
   * @param row row index
   * @return the provenance
   */
  public Provenance provenance(int row) {
    String own = texts.containsKey(PROVENANCE) ? texts.get(PROVENANCE)[row] : "";
    return own.isEmpty() ? descriptor.source().provenance() : Provenance.of(own);
  }

  /**
   * Documents in which a row was found.
   *
   * @param row row index
   * @return their ids; empty if the table does not say or nobody confirms the row
   */
  public List<String> confirmedBy(int row) {
    return documents(CONFIRMED_BY, row);
  }

  /**
   * Documents in which only the mirror of a row was found: for a shaft the hole of the same letter, and the reverse.
   *
   * @param row row index
   * @return their ids; empty if the table does not say or there is none
   */
  public List<String> mirroredBy(int row) {
    return documents(MIRRORED_BY, row);
  }

  /**
   * Names the place of a row.
   *
   * @param row row index
   * @return for example {@code "ISO 286-1:2010, Table 1, over 18 up to 30 mm, IT7"}
   */
  public String address(int row) {
    Matcher names = TableDescriptor.NAME_IN_BRACES.matcher(descriptor.address());
    String place = names.replaceAll(name -> Matcher.quoteReplacement(texts.get(name.group(1))[row]));
    return descriptor.source().document() + ", " + descriptor.source().locator() + ", " + place;
  }

  /**
   * A number with its place, source and confirmations.
   *
   * @param row row index
   * @param column name of a number column
   * @return the cell
   * @throws IllegalArgumentException if the column does not hold numbers or the cell is empty
   */
  public Cell cell(int row, String column) {
    SourceRef source = new SourceRef(descriptor.source().document(), descriptor.source().locator(), provenance(row));
    String note = texts.containsKey(NOTE) ? texts.get(NOTE)[row] : "";
    return new Cell(
        address(row), number(row, column), descriptor.columns().get(column).unit(), source, confirmedBy(row), note);
  }

  private List<String> documents(String column, int row) {
    return texts.containsKey(column) ? split(texts.get(column)[row]) : List.of();
  }

  static List<String> split(String ids) {
    List<String> result = new ArrayList<>();
    for (String id : ids.split(";", -1)) {
      if (!id.isBlank()) {
        result.add(id.strip());
      }
    }
    return result;
  }

  private IllegalArgumentException noSuchColumn(String column) {
    return new IllegalArgumentException(
        "table " + descriptor.id() + " has no column '" + column + "' of that kind; it has " + descriptor.columns().keySet());
  }
}
