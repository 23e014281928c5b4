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
import holdfast.verification.AuditView.Matrix;
import holdfast.verification.AuditView.MatrixHead;
import holdfast.verification.AuditView.MatrixRow;
import holdfast.verification.AuditView.MemoryList;
import holdfast.verification.AuditView.SuiteRow;
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
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The HTML page of an audit. The page is a template in the resources; this class fills its view. */
final class AuditPage {
  private AuditPage() {}

  static String of(AuditReport report) {
    return Page.TEMPLATE.execute(view(report));
  }

  /** Parsed once, when the first page is made. */
  private static final class Page {
    // Values are escaped for HTML; a name that the view does not hold is an error.
    static final Template TEMPLATE =
        Mustache.compiler().emptyStringIsFalse(true).withLoader(Page::open).compile(open("audit.html"));

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
        audit.passes(),
        AuditText.verdict(audit),
        report.tables(),
        report.cases(),
        counts(audit.comparisons()),
        report.coverage().stream().mapToInt(t -> t.memoryOnly().size()).sum(),
        evidence(audit),
        suites(audit),
        !failures.isEmpty(),
        failures,
        groups(audit, c -> c.outcome() == Outcome.DISCLOSED),
        matrices(audit),
        Arrays.stream(Provenance.values()).map(Provenance::label).toList(),
        Arrays.stream(Confirmation.values()).map(Confirmation::label).toList(),
        report.coverage().stream().map(AuditPage::coverage).toList(),
        report.coverage().stream()
            .filter(t -> !t.memoryOnly().isEmpty())
            .map(t -> new MemoryList(t.id(), t.memoryOnly().size(), t.memoryOnly()))
            .toList(),
        groups(audit, c -> true));
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

  /** One matrix a package, so that each shows only the suites that check something in it. */
  private static List<Matrix> matrices(Audit audit) {
    Map<String, Set<String>> calculations = new TreeMap<>();
    for (Audit.Result result : audit.results()) {
      for (String calculation : result.suite().calculations()) {
        calculations.computeIfAbsent(packageOf(calculation), p -> new TreeSet<>()).add(calculation);
      }
    }
    List<Matrix> matrices = new ArrayList<>();
    calculations.forEach((packageName, names) -> matrices.add(matrix(audit, packageName, names)));
    return matrices;
  }

  private static Matrix matrix(Audit audit, String packageName, Set<String> names) {
    List<MatrixHead> heads = new ArrayList<>();
    List<Audit.Result> checking = new ArrayList<>();
    int number = 0;
    for (Audit.Result result : audit.results()) {
      number++;
      if (result.suite().calculations().stream().anyMatch(names::contains)) {
        heads.add(new MatrixHead(number, result.suite().id()));
        checking.add(result);
      }
    }
    List<MatrixRow> rows = new ArrayList<>();
    for (String name : names) {
      List<String> cells = new ArrayList<>();
      long total = 0;
      for (Audit.Result result : checking) {
        boolean checks = result.suite().calculations().contains(name);
        cells.add(checks ? Integer.toString(result.comparisons().size()) : "");
        total += checks ? result.comparisons().size() : 0;
      }
      String within = packageName.isEmpty() ? name : name.substring(packageName.length() + 1);
      rows.add(new MatrixRow(within, cells, total));
    }
    return new Matrix(packageName, heads, rows);
  }

  /** The leading names that start with a small letter: "holdfast.fits" of "holdfast.fits.Fit#of". */
  private static String packageOf(String calculation) {
    List<String> parts = new ArrayList<>();
    for (String part : calculation.split("\\.", -1)) {
      if (part.isEmpty() || part.indexOf('#') >= 0 || Character.isUpperCase(part.charAt(0))) {
        break;
      }
      parts.add(part);
    }
    return String.join(".", parts);
  }

  private static CoverageRow coverage(TableCoverage t) {
    return new CoverageRow(
        t.id(),
        t.title(),
        t.source(),
        t.rows(),
        Arrays.stream(Provenance.values()).map(p -> number(t.byProvenance().getOrDefault(p, 0))).toList(),
        Arrays.stream(Confirmation.values()).map(c -> number(t.byConfirmation().get(c))).toList(),
        t.reconstructed(),
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
