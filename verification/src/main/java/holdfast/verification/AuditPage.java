// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRegister;
import holdfast.tables.TableSet;
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
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The HTML page of an audit. The page is a template in the resources; this class fills its view. */
final class AuditPage {
  /** Characters of the rows of a page; tags and letters of more than a byte make it up to a third larger. */
  private static final int LARGEST_PART = 600_000;

  private AuditPage() {}

  static String of(AuditReport report) {
    return Page.TEMPLATE.execute(view(report));
  }

  /** The page to sign. */
  static String summary(AuditReport report) {
    return Page.SUMMARY.execute(view(report));
  }

  static String disclosed(AuditReport report) {
    return Page.DISCLOSED.execute(view(report));
  }

  /** The subject of a suite: the first part of its id. */
  static String subject(String suite) {
    int end = suite.indexOf('/');
    return end < 0 ? suite : suite.substring(0, end);
  }

  /** The pages with all comparisons, by suite and by document, each with its path; none is larger than a megabyte. */
  static SortedMap<String, String> pages(Audit audit) {
    SortedMap<String, String> pages = new TreeMap<>();
    int number = 0;
    for (Audit.Result result : audit.results()) {
      number++;
      String title = result.suite().id() + ": " + result.suite().title();
      add(pages, suitePath(result.suite().id()), title, "suite-" + number, result.comparisons());
    }
    byDocument(audit).forEach((document, comparisons) -> add(
        pages,
        "documents/" + SourceRegister.mark(document),
        Cases.set().sources().citation(document),
        SourceRegister.mark(document),
        comparisons));
    return pages;
  }

  private static String suitePath(String id) {
    return "comparisons/" + id.replace('/', '-');
  }

  private static SortedMap<String, List<Comparison>> byDocument(Audit audit) {
    SortedMap<String, List<Comparison>> documents = new TreeMap<>();
    // A sheet may cite a document without comparisons; its page says that there are none.
    for (SourceRegister register : List.of(TableSet.bundled().sources(), Cases.set().sources())) {
      register.documents().forEach(document -> documents.putIfAbsent(document.id(), new ArrayList<>()));
    }
    audit.comparisons().forEach(c -> documents.computeIfAbsent(c.source().document(), d -> new ArrayList<>()).add(c));
    return documents;
  }

  private static void add(Map<String, String> pages, String path, String title, String anchor, List<Comparison> comparisons) {
    List<List<ComparisonRow>> parts = parts(comparisons);
    for (int part = 0; part < parts.size(); part++) {
      List<ComparisonRow> rows = parts.get(part);
      String of = parts.size() == 1 ? "" : ", part " + (part + 1) + " of " + parts.size();
      pages.put(file(path, part), Page.PART.execute(new AuditView.Part(
          title + of, anchor, part == 0 ? "" : name(file(path, part - 1)),
          part + 1 == parts.size() ? "" : name(file(path, part + 1)), title, rows.size(), rows)));
    }
  }

  private static String file(String path, int part) {
    return path + (part == 0 ? "" : "-" + (part + 1)) + ".html";
  }

  private static String name(String path) {
    return path.substring(path.indexOf('/') + 1);
  }

  /** Rows cut into parts that make pages below a megabyte. */
  private static List<List<ComparisonRow>> parts(List<Comparison> comparisons) {
    List<List<ComparisonRow>> parts = new ArrayList<>(List.of(new ArrayList<>()));
    int length = 0;
    for (Comparison comparison : comparisons) {
      ComparisonRow row = row(comparison);
      length += row.toString().length();
      if (length > LARGEST_PART) {
        parts.add(new ArrayList<>());
        length = row.toString().length();
      }
      parts.get(parts.size() - 1).add(row);
    }
    return parts;
  }

  /** Parsed once, when the first page is made. */
  private static final class Page {
    // Values are escaped for HTML; a name that the view does not hold is an error.
    static final Template TEMPLATE = template("audit.html");
    static final Template SUMMARY = template("summary.html");
    static final Template PART = template("part.html");
    static final Template DISCLOSED = template("disclosed.html");

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
        byDocument(audit).entrySet().stream()
            .map(d -> new AuditView.DocumentRow(
                SourceRegister.mark(d.getKey()),
                Cases.set().sources().citation(d.getKey()),
                d.getValue().size(),
                counts(d.getValue())))
            .toList(),
        AuditPlot.svg(audit));
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
              rows.size() + 1, result.suite().id(), result.suite().title(), kinds, suitePath(result.suite().id()) + ".html",
              counts(result.comparisons())));
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
