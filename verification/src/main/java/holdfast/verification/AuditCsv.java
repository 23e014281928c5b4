package holdfast.verification;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** All comparisons of an audit as CSV, one a line. */
final class AuditCsv {
  private AuditCsv() {}

  static String of(Audit audit) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      csv.writeRecord(
          "suite", "comparison", "published", "computed", "tolerance", "tolerance_reason", "outcome", "disclosure",
          "document", "locator", "provenance", "evidence");
      for (Audit.Result result : audit.results()) {
        for (Comparison c : result.comparisons()) {
          csv.writeRecord(
              result.suite().id(), c.name(), c.published(), c.computed(), c.tolerance(), c.toleranceReason(),
              c.outcome().label(), c.disclosure(), c.source().document(), c.source().locator(),
              c.source().provenance().label(), c.evidence().label());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
