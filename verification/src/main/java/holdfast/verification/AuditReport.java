// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.TableSet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The outcome of an audit as documents: a summary of one page, a page with everything, and files for programs. The same
 * audit over the same tables gives the same bytes; there are no dates and nothing of the machine in them. What belongs to
 * the machine stands in {@code environment.txt}.
 *
 * @param audit the outcome of the suites
 * @param coverage how well each table is backed
 * @param calculations how well each public calculation is checked
 * @param measuredHere whether the dependence of comparisons on calculations was measured with these tables and cases
 * @param tables the tables that were audited
 * @param cases the case tables with the published values
 * @param committed the files of the tables against the digests that were committed
 */
public record AuditReport(
    Audit audit,
    List<TableCoverage> coverage,
    List<CalculationCoverage> calculations,
    boolean measuredHere,
    SetLabel tables,
    SetLabel cases,
    CommittedTables committed) {
  /** The files that {@link #write} makes, in the order in which a reader wants them. */
  public static final List<String> FILES =
      List.of(
          "summary.html", "summary.txt", "audit.html", "disclosed.html", "audit.csv", "calculations.csv", "tables.csv",
          "audit.json", "documents.txt", "bibliography.bib", "bibliography.json", "environment.txt");

  /**
   * Which set of tables it was.
   *
   * @param version version of the set
   * @param digest SHA-256 of its files
   */
  public record SetLabel(String version, String digest) {
    static SetLabel of(TableSet set) {
      return new SetLabel(set.version(), set.digest());
    }
  }

  // Keeps unmodifiable copies of the lists.
  public AuditReport {
    coverage = List.copyOf(coverage);
    calculations = List.copyOf(calculations);
  }

  /**
   * Makes the report of an audit of the bundled tables.
   *
   * @param audit the outcome of the suites
   * @return the report
   */
  public static AuditReport of(Audit audit) {
    TableSet tables = TableSet.bundled();
    Dependence dependence = Dependence.measured();
    SetLabel ofTables = SetLabel.of(tables);
    SetLabel ofCases = SetLabel.of(Cases.set());
    return new AuditReport(
        audit,
        TableCoverage.of(tables, audit.comparisons()),
        CalculationCoverage.of(audit, dependence),
        dependence.tables().equals(ofTables.digest()) && dependence.cases().equals(ofCases.digest()),
        ofTables,
        ofCases,
        CommittedTables.of(tables));
  }

  /**
   * Whether nothing is hidden and nothing was changed.
   *
   * @return true if the audit passes and the tables are those committed, or another edition
   */
  public boolean passes() {
    return audit.passes() && committed.passes();
  }

  /**
   * What the audit leaves open.
   *
   * @return the figures and the statement
   */
  public NotVerified notVerified() {
    return NotVerified.of(this);
  }

  /**
   * The console summary.
   *
   * @return lines of text
   */
  public String text() {
    return AuditText.of(this);
  }

  /**
   * The page for reading and printing.
   *
   * @return an HTML document
   */
  public String html() {
    return AuditPage.of(this);
  }

  /**
   * All comparisons.
   *
   * @return CSV (RFC 4180 quoting, lines end with a line feed); the first line names the columns
   */
  public String csv() {
    return AuditCsv.of(audit);
  }

  /**
   * Everything, for programs.
   *
   * @return a JSON object
   */
  public String json() {
    return AuditJson.of(this);
  }

  /**
   * Writes the {@link #FILES} in UTF-8, and beside them the pages with all comparisons in the folders {@code comparisons}, by
   * suite, and {@code documents}, by document.
   *
   * @param folder where to; made if it does not exist
   * @throws IOException if a file cannot be written
   */
  public void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    for (String file : FILES) {
      Files.writeString(folder.resolve(file), content(file), StandardCharsets.UTF_8);
    }
    for (Map.Entry<String, String> page : AuditPage.pages(audit).entrySet()) {
      Path file = folder.resolve(page.getKey());
      Files.createDirectories(file.getParent());
      Files.writeString(file, page.getValue(), StandardCharsets.UTF_8);
    }
  }

  private String content(String file) {
    return switch (file) {
      case "summary.html" -> AuditPage.summary(this);
      case "summary.txt" -> AuditText.summary(this);
      case "audit.html" -> html();
      case "disclosed.html" -> AuditPage.disclosed(this);
      case "audit.csv" -> csv();
      case "calculations.csv" -> AuditCsv.calculations(calculations);
      case "tables.csv" -> AuditCsv.tables(coverage);
      case "audit.json" -> json();
      case "documents.txt" -> AuditDocuments.text(audit, Cases.set().sources());
      case "bibliography.bib" -> Bibliography.bibtex(Cases.set().sources().documents());
      case "bibliography.json" -> Bibliography.cslJson(Cases.set().sources().documents());
      case "environment.txt" -> Environment.text();
      default -> throw new IllegalArgumentException(file);
    };
  }
}
