package holdfast.verification;

import holdfast.tables.TableSet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The outcome of an audit as documents: a console summary, an HTML page and a CSV file of all comparisons. The same
 * audit over the same tables gives the same bytes; there are no dates and nothing of the machine in them.
 *
 * @param audit the outcome of the suites
 * @param coverage how well each table is backed
 * @param tables the tables that were audited
 * @param cases the case tables with the published values
 */
public record AuditReport(Audit audit, List<TableCoverage> coverage, SetLabel tables, SetLabel cases) {
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

  // Keeps an unmodifiable copy of the list.
  public AuditReport {
    coverage = List.copyOf(coverage);
  }

  /**
   * Makes the report of an audit of the bundled tables.
   *
   * @param audit the outcome of the suites
   * @return the report
   */
  public static AuditReport of(Audit audit) {
    TableSet tables = TableSet.bundled();
    return new AuditReport(
        audit, TableCoverage.of(tables, audit.comparisons()), SetLabel.of(tables), SetLabel.of(Cases.set()));
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
   * Writes {@code audit.html} and {@code audit.csv} in UTF-8.
   *
   * @param folder where to; made if it does not exist
   * @throws IOException if a file cannot be written
   */
  public void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("audit.html"), html(), StandardCharsets.UTF_8);
    Files.writeString(folder.resolve("audit.csv"), csv(), StandardCharsets.UTF_8);
  }
}
