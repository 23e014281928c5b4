// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.List;

/** What the template of the report shows: texts and numbers only, in the order of the page. */
record AuditView(
    boolean passes,
    String verdict,
    AuditReport.SetLabel tables,
    AuditReport.SetLabel cases,
    Counts totals,
    NotVerified notVerified,
    List<EvidenceRow> evidence,
    List<SuiteRow> suites,
    boolean failed,
    List<ComparisonGroup> failures,
    List<ComparisonGroup> disclosed,
    List<Matrix> matrices,
    List<String> evidenceHeads,
    List<CalculationGroup> calculations,
    List<GradeRow> grades,
    List<String> provenanceHeads,
    List<String> confirmationHeads,
    List<CoverageRow> coverage,
    List<MemoryList> memoryOnly,
    List<DocumentRow> documents,
    String plot) {

  /** How many comparisons ended how. */
  record Counts(long comparisons, long agree, long disclosed, long undisclosed, long stale) {
    /** Those that make the audit fail. */
    long failing() {
      return undisclosed + stale;
    }
  }

  /** One kind of evidence. */
  record EvidenceRow(String label, String meaning, Counts counts) {}

  /** One suite; the number is its column in the matrices. */
  record SuiteRow(int number, String id, String title, String evidence, String page, Counts counts) {}

  /** Comparisons of one suite. */
  record ComparisonGroup(int number, String id, String title, int size, List<ComparisonRow> rows) {}

  /** A page with comparisons of one suite or one document; the marks of the pages beside it are empty where there is none. */
  record Part(String heading, String anchor, String previous, String next, String id, int size, List<ComparisonRow> rows) {}

  /** One document that comparisons cite. */
  record DocumentRow(String mark, String citation, int size, Counts counts) {}

  /** One comparison. */
  record ComparisonRow(
      String name,
      String published,
      String computed,
      String tolerance,
      String toleranceReason,
      String outcome,
      String disclosure,
      String source,
      String evidence) {}

  /** The public calculations of one package. */
  record CalculationGroup(String packageName, int size, List<CalculationRow> rows) {}

  /** A calculation: for each kind of evidence "caught of moved", or an empty text. */
  record CalculationRow(
      String calculation,
      String grade,
      String reason,
      List<String> cells,
      List<MatrixHead> suites,
      String worst,
      String sources) {}

  /** How many calculations reach a grade. */
  record GradeRow(String label, int count) {}

  /** The calculations of one package against the suites that check them. */
  record Matrix(String packageName, List<MatrixHead> suites, List<MatrixRow> rows) {}

  /** A column of a matrix. */
  record MatrixHead(int number, String id) {}

  /** A calculation: for each suite of the matrix its number of comparisons, or an empty text. */
  record MatrixRow(String calculation, List<String> cells, long total) {}

  /** How well one table is backed. */
  record CoverageRow(
      String id,
      String title,
      String source,
      int rows,
      int cells,
      List<String> byProvenance,
      String documents,
      List<String> byConfirmation,
      int reconstructed,
      String memoryOnly,
      String covered) {}

  /** Recalled rows of one table. */
  record MemoryList(String id, int size, List<String> addresses) {}
}
