// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.Document;
import holdfast.verification.CalculationCoverage.Grade;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What an audit leaves open, whatever its verdict.
 *
 * @param tables for each table that has any: rows and cells that only memory supports
 * @param unchecked for each package: its public calculations without an outside check
 * @param calculations number of public calculations
 * @param loose calculations whose checks let an error of one per cent pass
 * @param weakly calculations that only recalled values, common practice or their own formula support
 * @param disclosed comparisons that disagree and say why
 * @param weak comparisons that prove nothing, or only that practice agrees
 * @param readded comparisons that only re-add cells of our own tables
 * @param lostDocuments documents of the register that a stranger could not identify
 * @param lostComparisons comparisons that cite such a document
 * @param measuredHere whether the dependence of comparisons on calculations was measured with these tables and cases
 */
public record NotVerified(
    List<MemoryTable> tables,
    SortedMap<String, Integer> unchecked,
    int calculations,
    int loose,
    int weakly,
    long disclosed,
    long weak,
    long readded,
    int lostDocuments,
    long lostComparisons,
    boolean measuredHere) {
  /**
   * A table with values that only memory supports.
   *
   * @param id the table
   * @param rows how many of its rows
   * @param of out of so many rows
   * @param cells how many cells these rows hold
   */
  public record MemoryTable(String id, int rows, int of, int cells) {}

  static NotVerified of(AuditReport report) {
    List<MemoryTable> tables = new ArrayList<>();
    for (TableCoverage t : report.coverage()) {
      if (!t.memoryOnly().isEmpty()) {
        tables.add(new MemoryTable(t.id(), t.memoryOnly().size(), t.rows(), t.cellsOfMemoryOnly()));
      }
    }
    SortedMap<String, Integer> unchecked = new TreeMap<>();
    for (CalculationCoverage c : report.calculations()) {
      if (c.grade() == Grade.UNCHECKED) {
        unchecked.merge(AuditMatrix.packageOf(c.name()), 1, Integer::sum);
      }
    }
    Audit audit = report.audit();
    Set<String> lost =
        AuditDocuments.lost(Cases.set().sources()).stream().map(Document::id).collect(Collectors.toUnmodifiableSet());
    return new NotVerified(
        List.copyOf(tables),
        unchecked,
        report.calculations().size(),
        count(report, Grade.MOVED),
        count(report, Grade.WEAK),
        audit.count(Comparison.Outcome.DISCLOSED),
        audit.comparisons().stream().filter(c -> CalculationCoverage.WEAK.contains(c.evidence())).count(),
        audit.comparisons().stream().filter(c -> c.evidence() == Evidence.RECOMBINED).count(),
        lost.size(),
        audit.comparisons().stream().filter(c -> lost.contains(c.source().document())).count(),
        report.measuredHere());
  }

  private static int count(AuditReport report, Grade grade) {
    return (int) report.calculations().stream().filter(c -> c.grade() == grade).count();
  }

  /**
   * Rows that only memory supports.
   *
   * @return how many in all tables
   */
  public int memoryRows() {
    return tables.stream().mapToInt(MemoryTable::rows).sum();
  }

  /**
   * Cells that only memory supports.
   *
   * @return how many in all tables
   */
  public int memoryCells() {
    return tables.stream().mapToInt(MemoryTable::cells).sum();
  }

  /**
   * Calculations without an outside check.
   *
   * @return how many in all packages
   */
  public int uncheckedCalculations() {
    return unchecked.values().stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * The statement in words.
   *
   * @return one sentence or two for each point
   */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(memoryRows() + " table rows with " + memoryCells() + " cells in " + tables.size()
        + " tables were recalled and found in no print. Check such a value in its document before you rely on it.");
    lines.add(uncheckedCalculations() + " of " + calculations
        + " public calculations have no check against anything outside the project.");
    lines.add(loose + " further calculations have checks, but an error of 1 % would pass them.");
    lines.add(weakly + " further calculations are compared only with recalled values, common practice or"
        + " the same formula coded a second time.");
    lines.add(disclosed + " published values are not reproduced within their tolerance; each states its reason.");
    lines.add(weak + " comparisons are with recalled values, common practice or the same formula coded a second time and prove"
        + " little.");
    lines.add(lostDocuments + " cited documents could not be identified by a stranger; " + lostComparisons
        + " comparisons cite them. documents.txt says what is missing, and which editions have been replaced.");
    lines.add(readded + " comparisons only re-add cells of our own tables, which were compared with such prints before: they"
        + " guard against slips and prove little.");
    lines.add("Holdfast has not checked the documents themselves, the inputs of a job, or whether a formula suits a machine.");
    if (!measuredHere) {
      lines.add("Which comparison depends on which calculation was measured with other tables or cases than these.");
    }
    return List.copyOf(lines);
  }
}
