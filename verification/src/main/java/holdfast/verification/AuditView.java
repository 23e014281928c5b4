package holdfast.verification;

import java.util.List;

/** What the template of the report shows: texts and numbers only, in the order of the page. */
record AuditView(
    boolean passes,
    String verdict,
    AuditReport.SetLabel tables,
    AuditReport.SetLabel cases,
    Counts totals,
    int memoryOnlyCount,
    List<EvidenceRow> evidence,
    List<SuiteRow> suites,
    boolean failed,
    List<ComparisonGroup> failures,
    List<ComparisonGroup> disclosed,
    List<Matrix> matrices,
    List<String> provenanceHeads,
    List<String> confirmationHeads,
    List<CoverageRow> coverage,
    List<MemoryList> memoryOnly,
    List<ComparisonGroup> all) {

  /** How many comparisons ended how. */
  record Counts(long comparisons, long agree, long disclosed, long undisclosed, long stale) {}

  /** One kind of evidence. */
  record EvidenceRow(String label, String meaning, Counts counts) {}

  /** One suite; the number is its column in the matrices. */
  record SuiteRow(int number, String id, String title, String evidence, Counts counts) {}

  /** Comparisons of one suite. */
  record ComparisonGroup(int number, String id, String title, int size, List<ComparisonRow> rows) {}

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
      List<String> byProvenance,
      List<String> byConfirmation,
      int reconstructed,
      String covered) {}

  /** Recalled rows of one table. */
  record MemoryList(String id, int size, List<String> addresses) {}
}
