// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.DocumentKind;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRegister;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How well the rows of one table are backed: where they come from, how many documents confirm them, and which of them
 * were computed anew by the formula behind the table.
 *
 * @param id path of the table
 * @param title what it holds
 * @param source document and locator of the table
 * @param rows number of rows
 * @param cells number of cells that hold a value, an address or a remark not counted (see {@link TableCells})
 * @param cellsByProvenance cells of each provenance that occurs
 * @param cellsByDocument cells that each confirming document holds, by its id
 * @param cellsOfMemoryOnly cells of the rows of {@code memoryOnly}
 * @param byProvenance rows of each provenance that occurs
 * @param byConfirmation rows of each degree of confirmation, zeros included
 * @param reconstructed rows for which an agreeing formula reconstruction names the address of the row
 * @param covered rows found in print, confirmed at least indirectly, or reconstructed
 * @param memoryOnly addresses of the rows that are recalled and found in no print
 */
public record TableCoverage(
    String id,
    String title,
    String source,
    int rows,
    int cells,
    Map<Provenance, Integer> cellsByProvenance,
    SortedMap<String, Integer> cellsByDocument,
    int cellsOfMemoryOnly,
    Map<Provenance, Integer> byProvenance,
    Map<Confirmation, Integer> byConfirmation,
    int reconstructed,
    int covered,
    List<String> memoryOnly) {

  /** How many documents, besides the one that the table cites, hold a row. */
  public enum Confirmation {
    /** Two documents or more. */
    TWO_OR_MORE("two or more documents"),
    /** One document. */
    ONE("one document"),
    /** Data listings only, whose own origin is not stated. */
    LISTING("only a data listing"),
    /** Only the mirrored value was found, or the row follows from other rows by a stated derivation. */
    INDIRECT("only a mirror or a derivation"),
    /** No document besides the cited one. */
    NONE("none named");

    private final String label;

    Confirmation(String label) {
      this.label = label;
    }

    /**
     * The words used in reports.
     *
     * @return the label
     */
    public String label() {
      return label;
    }
  }

  // Keeps unmodifiable copies that iterate in the order of the enums.
  public TableCoverage {
    cellsByProvenance = Collections.unmodifiableMap(new EnumMap<>(cellsByProvenance));
    cellsByDocument = Collections.unmodifiableSortedMap(new TreeMap<>(cellsByDocument));
    byProvenance = Collections.unmodifiableMap(new EnumMap<>(byProvenance));
    byConfirmation = Collections.unmodifiableMap(new EnumMap<>(byConfirmation));
    memoryOnly = List.copyOf(memoryOnly);
  }

  /**
   * Coverage of every table of a set.
   *
   * @param tables the set
   * @param comparisons comparisons of the audit; a formula reconstruction counts for the row whose
   *     {@link Table#address} its name equals or starts with
   * @return one entry a table, in the order of the set
   */
  public static List<TableCoverage> of(TableSet tables, Collection<Comparison> comparisons) {
    TreeSet<String> reconstructions = new TreeSet<>();
    for (Comparison c : comparisons) {
      if (c.evidence() == Evidence.RECONSTRUCTION && c.agrees()) {
        reconstructions.add(c.name());
      }
    }
    List<TableCoverage> coverage = new ArrayList<>();
    for (Table table : tables.all()) {
      coverage.add(of(table, tables.sources(), reconstructions));
    }
    return coverage;
  }

  private static TableCoverage of(Table table, SourceRegister register, TreeSet<String> reconstructions) {
    Map<Provenance, Integer> byProvenance = new EnumMap<>(Provenance.class);
    Map<Confirmation, Integer> byConfirmation = new EnumMap<>(Confirmation.class);
    for (Confirmation confirmation : Confirmation.values()) {
      byConfirmation.put(confirmation, 0);
    }
    TableCells cells = new TableCells(table);
    int reconstructed = 0;
    int covered = 0;
    int memoryCells = 0;
    List<String> memoryOnly = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      Provenance provenance = table.provenance(row);
      Confirmation confirmation = confirmation(table, row, register);
      boolean recomputed = named(reconstructions, table.address(row));
      byProvenance.merge(provenance, 1, Integer::sum);
      byConfirmation.merge(confirmation, 1, Integer::sum);
      reconstructed += recomputed ? 1 : 0;
      covered += provenance == Provenance.PUBLISHED || confirmation != Confirmation.NONE || recomputed ? 1 : 0;
      if (provenance == Provenance.MEMORY && !printed(confirmation)) {
        memoryOnly.add(table.address(row) + remark(confirmation, recomputed));
        memoryCells += cells.inRow(row);
      }
    }
    return new TableCoverage(
        table.descriptor().id(),
        table.descriptor().title(),
        table.descriptor().source().document() + ", " + table.descriptor().source().locator(),
        table.size(),
        cells.total(),
        cells.byProvenance(),
        cells.byDocument(register),
        memoryCells,
        byProvenance,
        byConfirmation,
        reconstructed,
        covered,
        memoryOnly);
  }

  private static Confirmation confirmation(Table table, int row, SourceRegister register) {
    List<DocumentKind> kinds =
        table.confirmedBy(row).stream()
            .distinct()
            .map(id -> register.document(id).kind())
            .filter(DocumentKind::publication)
            .toList();
    long prints = kinds.stream().filter(kind -> kind != DocumentKind.DATA_LISTING).count();
    if (prints > 0) {
      return prints > 1 ? Confirmation.TWO_OR_MORE : Confirmation.ONE;
    }
    if (!kinds.isEmpty()) {
      return Confirmation.LISTING;
    }
    boolean indirect =
        !table.confirmedBy(row).isEmpty()
            || !table.mirroredBy(row).isEmpty()
            || table.provenance(row) == Provenance.DERIVED;
    return indirect ? Confirmation.INDIRECT : Confirmation.NONE;
  }

  private static boolean printed(Confirmation confirmation) {
    return confirmation == Confirmation.TWO_OR_MORE || confirmation == Confirmation.ONE;
  }

  /** Whether a name equals the address or goes on behind it with a comma or a colon. */
  private static boolean named(TreeSet<String> names, String address) {
    return names.contains(address) || startsWith(names, address + ",") || startsWith(names, address + ":");
  }

  private static boolean startsWith(TreeSet<String> names, String prefix) {
    String next = names.ceiling(prefix);
    return next != null && next.startsWith(prefix);
  }

  private static String remark(Confirmation confirmation, boolean recomputed) {
    String indirect =
        switch (confirmation) {
          case INDIRECT -> "only a mirror or a derivation confirms it";
          case LISTING -> "only a data listing confirms it";
          default -> "";
        };
    String formula = recomputed ? "a formula reconstruction agrees" : "";
    String both = indirect + (indirect.isEmpty() || formula.isEmpty() ? "" : "; ") + formula;
    return both.isEmpty() ? "" : " (" + both + ")";
  }
}
