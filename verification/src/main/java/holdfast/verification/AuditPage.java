// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.verification.AuditView.ComparisonGroup;
import holdfast.verification.AuditView.ComparisonRow;
import holdfast.verification.AuditView.Counts;
import holdfast.verification.AuditView.CoverageRow;
import holdfast.verification.AuditView.EvidenceRow;
import holdfast.verification.AuditView.GradeRow;
import holdfast.verification.AuditView.MemoryList;
import holdfast.verification.AuditView.SuiteRow;
import holdfast.verification.CalculationCoverage.Grade;
import holdfast.verification.Comparison.Outcome;
import holdfast.verification.TableCoverage.Confirmation;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The HTML page of an audit. The page is a template in the resources; this class fills its view. */
final class AuditPage {
  private AuditPage() {}

  static String of(AuditReport report) {
    return Page.TEMPLATE.execute(view(report));
  }

  /** The page to sign. */
  static String summary(AuditReport report) {
    return Page.SUMMARY.execute(view(report));
  }

  /** Parsed once, when the first page is made. */
  private static final class Page {
    // Values are escaped for HTML; a name that the view does not hold is an error.
    static final Template TEMPLATE = template("audit.html");
    static final Template SUMMARY = template("summary.html");

    static Template template(String name) {
      return Mustache.compiler().emptyStringIsFalse(true).withLoader(Page::open).compile(open(name));
    }

    static Reader open(String name) {
      InputStream stream = AuditPage.class.getResourceAsStream("report/" + name);
      if (stream == null) {
        throw new IllegalStateException("the report's template " + name + " is missing");
      }
      try (stream) {
        return new StringReader(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  static AuditView view(AuditReport report) {
    Audit audit = report.audit();
    List<ComparisonGroup> failures = groups(audit, c -> c.outcome().fails());
    return new AuditView(
        report.passes(),
        AuditText.verdict(report),
        report.tables(),
        report.cases(),
        counts(audit.comparisons()),
        report.notVerified(),
        evidence(audit),
        suites(audit),
        !failures.isEmpty(),
        failures,
        groups(audit, c -> c.outcome() == Outcome.DISCLOSED),
        AuditMatrix.matrices(audit),
        Arrays.stream(Evidence.values()).map(Evidence::label).toList(),
        AuditMatrix.calculations(report),
        grades(report),
        Arrays.stream(Provenance.values()).map(Provenance::label).toList(),
        Arrays.stream(Confirmation.values()).map(Confirmation::label).toList(),
        report.coverage().stream().map(AuditPage::coverage).toList(),
        report.coverage().stream()
            .filter(t -> !t.memoryOnly().isEmpty())
            .map(t -> new MemoryList(t.id(), t.memoryOnly().size(), t.memoryOnly()))
            .toList(),
        groups(audit, c -> true));
  }

  private static List<GradeRow> grades(AuditReport report) {
    return Arrays.stream(Grade.values())
        .map(g -> new GradeRow(g.label(), (int) report.calculations().stream().filter(c -> c.grade() == g).count()))
        .toList();
  }

  private static Counts counts(Collection<Comparison> comparisons) {
    Map<Outcome, Long> of = new EnumMap<>(Outcome.class);
    comparisons.forEach(c -> of.merge(c.outcome(), 1L, Long::sum));
    return new Counts(
        comparisons.size(),
        of.getOrDefault(Outcome.AGREES, 0L),
        of.getOrDefault(Outcome.DISCLOSED, 0L),
        of.getOrDefault(Outcome.UNDISCLOSED, 0L),
        of.getOrDefault(Outcome.STALE_DISCLOSURE, 0L));
  }

  private static List<EvidenceRow> evidence(Audit audit) {
    List<EvidenceRow> rows = new ArrayList<>();
    for (Evidence kind : Evidence.values()) {
      List<Comparison> ofKind = audit.comparisons().stream().filter(c -> c.evidence() == kind).toList();
      rows.add(new EvidenceRow(kind.label(), kind.meaning(), counts(ofKind)));
    }
    return rows;
  }

  private static List<SuiteRow> suites(Audit audit) {
    List<SuiteRow> rows = new ArrayList<>();
    for (Audit.Result result : audit.results()) {
      String kinds =
          result.comparisons().stream().map(c -> c.evidence().label()).distinct().sorted().collect(Collectors.joining(", "));
      rows.add(
          new SuiteRow(
              rows.size() + 1, result.suite().id(), result.suite().title(), kinds, counts(result.comparisons())));
    }
    return rows;
  }

  private static List<ComparisonGroup> groups(Audit audit, Predicate<Comparison> which) {
    List<ComparisonGroup> groups = new ArrayList<>();
    int number = 0;
    for (Audit.Result result : audit.results()) {
      number++;
      List<ComparisonRow> rows = result.comparisons().stream().filter(which).map(AuditPage::row).toList();
      if (!rows.isEmpty()) {
        groups.add(new ComparisonGroup(number, result.suite().id(), result.suite().title(), rows.size(), rows));
      }
    }
    return groups;
  }

  private static ComparisonRow row(Comparison c) {
    return new ComparisonRow(
        c.name(),
        c.published(),
        c.computed(),
        c.tolerance(),
        c.toleranceReason(),
        c.outcome().label(),
        c.disclosure(),
        c.source().toString(),
        c.evidence().label());
  }

  private static CoverageRow coverage(TableCoverage t) {
    return new CoverageRow(
        t.id(),
        t.title(),
        t.source(),
        t.rows(),
        t.cells(),
        Arrays.stream(Provenance.values()).map(p -> number(t.cellsByProvenance().getOrDefault(p, 0))).toList(),
        AuditCsv.documents(t),
        Arrays.stream(Confirmation.values()).map(c -> number(t.byConfirmation().get(c))).toList(),
        t.reconstructed(),
        number(t.memoryOnly().size()),
        share(t.covered(), t.rows()));
  }

  private static String number(int count) {
    return Integer.toString(count);
  }

  /** A share in per cent, cut off and not rounded: 100 % means all. */
  static String share(int part, int whole) {
    return whole == 0 ? "-" : Numbers.fixed(Math.floor(1000.0 * part / whole) / 10, 1) + " %";
  }
}
