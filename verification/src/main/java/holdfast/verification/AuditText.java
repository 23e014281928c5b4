// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.Provenance;
import holdfast.verification.CalculationCoverage.Grade;
import holdfast.verification.Comparison.Outcome;
import holdfast.verification.TableCoverage.Confirmation;
import java.util.Locale;

/** The console summary of an audit. */
final class AuditText {
  private final StringBuilder text = new StringBuilder();

  private AuditText() {}

  static String of(AuditReport report) {
    AuditText summary = new AuditText();
    summary.suites(report.audit());
    summary.tables(report);
    summary.failures(report.audit());
    return summary.text.toString() + "\n" + summary(report);
  }

  /** One page, with the statement of what was not verified and lines to sign. */
  static String summary(AuditReport report) {
    AuditText page = new AuditText();
    Audit audit = report.audit();
    page.line("Audit: published values against computed ones");
    page.line("Tables %s, SHA-256 %s", report.tables().version(), report.tables().digest());
    page.line("%s", report.committed().text());
    page.line("Cases  %s, SHA-256 %s", report.cases().version(), report.cases().digest());
    page.line("");
    page.line("%s", verdict(report));
    page.evidence(audit);
    long agree = audit.comparisons().stream().filter(Comparison::agrees).count();
    page.line("%-24s %11d %7d", "all kinds", audit.comparisons().size(), agree);
    page.line("");
    page.line("%-40s %s", "public calculations", "number");
    for (Grade grade : Grade.values()) {
      page.line("%-40s %6d", grade.label(), report.calculations().stream().filter(c -> c.grade() == grade).count());
    }
    page.line("");
    page.line("Not verified:");
    report.notVerified().lines().forEach(line -> page.line("- %s", line));
    page.line("");
    page.line("Recalled rows, table by table (audit.html lists them):");
    report.notVerified().tables().forEach(t -> page.line("%5d of %3d  %s", t.rows(), t.of(), t.id()));
    page.line("");
    page.line("I have read this summary, and I know what was not verified.");
    page.line("Name ________________________  Date ______________  Signature ________________________");
    return page.text.toString();
  }

  static String verdict(AuditReport report) {
    Audit audit = report.audit();
    if (audit.passes() && !report.committed().passes()) {
      return report.committed().text();
    }
    return audit.passes()
        ? "PASSED: every published value is reproduced, or its disagreement is disclosed with a reason."
        : String.format(
            Locale.ROOT,
            "FAILED: %d undisclosed disagreements, %d disclosures that no longer hold.",
            audit.count(Outcome.UNDISCLOSED),
            audit.count(Outcome.STALE_DISCLOSURE));
  }

  private void suites(Audit audit) {
    int width = audit.results().stream().mapToInt(r -> r.suite().id().length()).max().orElse(0);
    width = Math.max(width, "suite".length());
    String format = "%-" + width + "s %11s %7s %9s %11s %5s";
    line(format, "suite", "comparisons", "agree", "disclosed", "undisclosed", "stale");
    for (Audit.Result r : audit.results()) {
      line(
          format,
          r.suite().id(),
          r.comparisons().size(),
          r.count(Outcome.AGREES),
          r.count(Outcome.DISCLOSED),
          r.count(Outcome.UNDISCLOSED),
          r.count(Outcome.STALE_DISCLOSURE));
    }
    line(
        format,
        "total",
        audit.comparisons().size(),
        audit.count(Outcome.AGREES),
        audit.count(Outcome.DISCLOSED),
        audit.count(Outcome.UNDISCLOSED),
        audit.count(Outcome.STALE_DISCLOSURE));
  }

  private void evidence(Audit audit) {
    line("");
    line("%-24s %11s %7s", "kind of evidence", "comparisons", "agree");
    audit
        .byEvidence()
        .forEach(
            (kind, count) ->
                line(
                    "%-24s %11d %7d",
                    kind.label(),
                    count,
                    audit.comparisons().stream().filter(c -> c.evidence() == kind && c.agrees()).count()));
  }

  private void tables(AuditReport report) {
    int width = report.coverage().stream().mapToInt(t -> t.id().length()).max().orElse(0);
    width = Math.max(width, "table".length());
    String format = "%-" + width + "s %6s %9s %7s %6s %6s | %4s %4s %7s %8s %4s | %6s %7s";
    line("");
    line("Table rows: by provenance | confirmed by so many documents | computed anew, share backed by any of these");
    line(
        format, "table", "rows", "published", "derived", "other", "memory", "2+", "1",
        "listing", "indirect", "none", "anew", "backed");
    for (TableCoverage t : report.coverage()) {
      int published = t.byProvenance().getOrDefault(Provenance.PUBLISHED, 0);
      int derived = t.byProvenance().getOrDefault(Provenance.DERIVED, 0);
      int memory = t.byProvenance().getOrDefault(Provenance.MEMORY, 0);
      line(
          format,
          t.id(),
          t.rows(),
          published,
          derived,
          t.rows() - published - derived - memory,
          memory,
          t.byConfirmation().get(Confirmation.TWO_OR_MORE),
          t.byConfirmation().get(Confirmation.ONE),
          t.byConfirmation().get(Confirmation.LISTING),
          t.byConfirmation().get(Confirmation.INDIRECT),
          t.byConfirmation().get(Confirmation.NONE),
          t.reconstructed(),
          AuditPage.share(t.covered(), t.rows()));
    }
  }

  private void failures(Audit audit) {
    for (Audit.Result result : audit.results()) {
      for (Comparison c : result.comparisons()) {
        if (c.outcome().fails()) {
          line("");
          line("%s: %s", c.outcome().label(), c.name());
          line("  published %s, computed %s, tolerance %s (%s)", c.published(), c.computed(), c.tolerance(), c.toleranceReason());
          line("  %s", c.source());
          if (!c.disclosure().isEmpty()) {
            line("  disclosed: %s", c.disclosure());
          }
        }
      }
    }
  }

  private void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values).stripTrailing()).append('\n');
  }
}
