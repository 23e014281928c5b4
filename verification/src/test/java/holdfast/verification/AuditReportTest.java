// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import holdfast.tables.SourceRef;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuditReportTest {
  private static final SourceRef PLACE = SourceRef.published("NIST SP 811", "Appendix <B>, \"8\"");

  private static Comparison comparison(String name, double computed, String disclosure) {
    return Comparison.of(name, PLACE, Evidence.PRINT).disclosed(disclosure).numbers(1, computed, 0.01, "mm", "half a digit");
  }

  private static final Comparison AGREES = comparison("agrees & <b>bold</b> 'quoted'", 1.005, "");
  private static final Comparison DISCLOSED = comparison("disclosed, with a comma", 2, "misprint: \"2\" <i>\nsecond line");
  private static final Comparison UNDISCLOSED = comparison("hidden", 2, "");
  private static final Comparison STALE = comparison("stale", 1, "no longer true");

  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(Suite suite, String... arguments) {
    return AuditMain.run(
        List.of(arguments),
        List.of(suite),
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private static String html(Comparison... comparisons) {
    return AuditReport.of(Audit.of(List.of(FakeSuite.of(comparisons)))).html();
  }

  @Test
  void exitStatusSaysWhetherSomethingIsHidden() {
    assertEquals(0, run(FakeSuite.of(AGREES, DISCLOSED), "--out", folder.toString()));
    assertEquals(1, run(FakeSuite.of(AGREES, UNDISCLOSED), "--out", folder.toString()));
    assertEquals(1, run(FakeSuite.of(AGREES, STALE), "--out", folder.toString()));
  }

  @Test
  void summaryNamesWhatFails() {
    run(FakeSuite.of(AGREES, DISCLOSED, UNDISCLOSED, STALE), "--out", folder.toString());
    String text = out.toString(StandardCharsets.UTF_8);
    assertTrue(text.contains("FAILED: 1 undisclosed disagreements, 1 disclosures that no longer hold."), text);
    assertTrue(text.contains("undisclosed: hidden"), text);
    assertTrue(text.contains("stale disclosure: stale"), text);
    assertTrue(Pattern.compile("fake/suite +4 +1 +1 +1 +1\\n").matcher(text).find(), text);
  }

  @Test
  void wrongArgumentsAreRefusedWithTheUsage() {
    assertEquals(2, run(FakeSuite.of(AGREES), "--ouput", "x"));
    assertEquals(2, run(FakeSuite.of(AGREES), "--out"));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("usage:"));
    assertEquals("", out.toString(StandardCharsets.UTF_8));
    assertEquals(0, run(FakeSuite.of(AGREES), "--help"));
  }

  @Test
  void folderThatIsAFileIsReported() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "");
    assertEquals(2, run(FakeSuite.of(AGREES), "--out", file.toString()));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("cannot be written"));
  }

  @Test
  void sameAuditGivesSameBytes() throws IOException {
    run(FakeSuite.of(AGREES, DISCLOSED), "--out", folder.resolve("a").toString());
    run(FakeSuite.of(AGREES, DISCLOSED), "--out", folder.resolve("b").toString());
    for (String name : AuditReport.FILES) {
      assertArrayEquals(Files.readAllBytes(folder.resolve("a").resolve(name)), Files.readAllBytes(folder.resolve("b").resolve(name)));
    }
    assertFalse(Files.readString(folder.resolve("a/audit.html")).contains("\r"));
  }

  @Test
  void textIsEscapedInHtml() {
    Audit audit = Audit.of(List.of(FakeSuite.of(AGREES, DISCLOSED)));
    String page = html(AGREES, DISCLOSED) + String.join("", AuditPage.pages(audit).values());
    assertTrue(page.contains("agrees &amp; &lt;b&gt;bold&lt;/b&gt; &#39;quoted&#39;"), "escaped");
    assertFalse(page.contains("<b>"), "no raw markup from a name");
    assertFalse(page.contains("<i>"), "no raw markup from a reason");
    assertFalse(page.contains("Appendix <B>"), "no raw markup from a source");
  }

  @Test
  void pageIsWellFormedAndAccessible() {
    String page = html(AGREES, DISCLOSED, UNDISCLOSED, STALE);
    assertTrue(page.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"));
    assertTrue(page.contains("<title>Holdfast audit</title>"));
    assertTrue(page.contains("<label for=\"words\">"));
    assertEquals(1, count(page, "<script>"), "one script, in the page");
    assertEquals(0, count(page, "<script "), "no script from elsewhere");
    assertTrue(page.contains("<form id=\"find\" role=\"search\" hidden>"), "without the script the search is not shown");
    assertFalse(page.contains("{{"), "template filled");
    assertEquals(count(page, "<table>"), count(page, "<caption>"), "each table has a caption");
    assertEquals(0, count(page, "<th>"), "each head says what it heads");
    assertEquals(List.of(), unclosed(page));
  }

  @Test
  void pageShowsDisclosureVerdictAndDigest() {
    String page = html(AGREES, DISCLOSED);
    assertTrue(AuditPage.disclosed(AuditReport.of(Audit.of(List.of(FakeSuite.of(AGREES, DISCLOSED)))))
        .contains("misprint: &quot;2&quot; &lt;i&gt;"));
    assertTrue(page.contains("PASSED"));
    assertTrue(page.contains(holdfast.tables.TableSet.bundled().digest()));
    assertFalse(page.contains("id=\"failures\""));
    assertTrue(html(UNDISCLOSED).contains("id=\"failures\""));
  }

  @Test
  void csvReadsBackAsTheComparisons() throws IOException {
    List<Comparison> comparisons = List.of(AGREES, DISCLOSED, UNDISCLOSED, STALE);
    String csv = AuditReport.of(Audit.of(List.of(FakeSuite.of(AGREES, DISCLOSED, UNDISCLOSED, STALE)))).csv();
    List<CsvRecord> records = new ArrayList<>();
    try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(new StringReader(csv))) {
      reader.forEach(records::add);
    }
    assertEquals(5, records.size());
    for (int i = 0; i < comparisons.size(); i++) {
      Comparison c = comparisons.get(i);
      assertEquals(
          List.of(
              "fake/suite", c.name(), c.published(), c.computed(), c.tolerance(), c.toleranceReason(),
              c.outcome().label(), c.disclosure(), c.source().document(), c.source().locator(), "published",
              "independent print"),
          records.get(i + 1).getFields());
    }
  }

  @Test
  void summaryIsWellFormedAndSaysWhatWasNotVerified() throws IOException {
    run(FakeSuite.of(AGREES, DISCLOSED), "--out", folder.toString());
    String page = Files.readString(folder.resolve("summary.html"));
    assertEquals(List.of(), unclosed(page));
    AuditReport report = AuditReport.of(Audit.of(List.of(FakeSuite.of(AGREES, DISCLOSED))));
    String text = Files.readString(folder.resolve("summary.txt"));
    assertTrue(report.notVerified().memoryRows() > 0 && report.notVerified().weakly() > 0);
    for (String line : report.notVerified().lines()) {
      assertTrue(page.contains("<li>" + line + "</li>"), line);
      assertTrue(text.contains("- " + line + "\n"), line);
    }
    assertTrue(page.contains("Signature") && text.contains("Signature"));
  }

  @Test
  void everyCalculationAndEveryTableIsInTheirFiles() throws IOException {
    AuditReport report = AuditReport.of(Audit.of(List.of(FakeSuite.of(AGREES))));
    report.write(folder);
    assertEquals(
        report.calculations().stream().map(CalculationCoverage::name).toList(), firstColumn(folder.resolve("calculations.csv")));
    assertEquals(report.coverage().stream().map(TableCoverage::id).toList(), firstColumn(folder.resolve("tables.csv")));
    for (TableCoverage t : report.coverage()) {
      assertEquals(t.cells(), t.cellsByProvenance().values().stream().mapToInt(Integer::intValue).sum(), t.id());
      assertTrue(t.cells() >= t.rows(), t.id() + " has rows without a value");
    }
    for (CalculationCoverage c : report.calculations()) {
      boolean typed = !c.name().contains("Kernel#");
      assertTrue(typed || !c.sources().isEmpty(), c.name() + " shows its source");
    }
  }

  private static List<String> firstColumn(Path csv) throws IOException {
    List<String> column = new ArrayList<>();
    try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(csv)) {
      reader.forEach(line -> column.add(line.getField(0)));
    }
    return column.subList(1, column.size());
  }

  @Test
  void jsonHoldsTheComparisonsWordForWord() {
    String json = AuditReport.of(Audit.of(List.of(FakeSuite.of(AGREES, DISCLOSED)))).json();
    Map<?, ?> top = (Map<?, ?>) StrictJson.parse(json);
    assertEquals(true, top.get("passes"));
    Map<?, ?> suite = (Map<?, ?>) ((List<?>) top.get("suites")).get(0);
    Map<?, ?> second = (Map<?, ?>) ((List<?>) suite.get("comparisons")).get(1);
    assertEquals(DISCLOSED.name(), second.get("name"));
    assertEquals(DISCLOSED.disclosure(), second.get("disclosure"));
    assertThrows(IllegalArgumentException.class, () -> StrictJson.parse(json.replaceFirst(",", ",,")));
  }

  /** Two runs over all suites, as the command makes them. */
  @Test
  void realAuditPassesAndGivesTheSameBytesTwice() throws IOException {
    Audit audit = Audit.of(Suites.all());
    assertEquals(List.of(), audit.comparisons().stream().filter(c -> c.outcome().fails()).map(Comparison::name).toList());
    AuditReport.of(audit).write(folder.resolve("a"));
    AuditReport.of(Audit.of(Suites.all())).write(folder.resolve("b"));
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder.resolve("a"))) {
      files = all.filter(Files::isRegularFile).map(folder.resolve("a")::relativize).toList();
    }
    for (Path name : files) {
      assertEquals(-1, Files.mismatch(folder.resolve("a").resolve(name), folder.resolve("b").resolve(name)), name.toString());
    }
    pagesAreSmallCompleteAndLinked(audit, files);
    assertEquals(true, ((Map<?, ?>) StrictJson.parse(Files.readString(folder.resolve("a/audit.json")))).get("passes"));
  }

  /** A page is below a megabyte; each comparison stands on a page of its suite and of its document; each link leads somewhere. */
  private void pagesAreSmallCompleteAndLinked(Audit audit, List<Path> files) throws IOException {
    Pattern link = Pattern.compile("href=\"([^\"#]*)(?:#([^\"]*))?\"");
    int bySuite = 0;
    int byDocument = 0;
    List<String> dead = new ArrayList<>();
    for (Path name : files) {
      if (!name.toString().endsWith(".html")) {
        continue;
      }
      Path file = folder.resolve("a").resolve(name);
      String page = Files.readString(file);
      assertTrue(Files.size(file) < 1_000_000, name + ": " + Files.size(file));
      assertEquals(List.of(), unclosed(page), name.toString());
      int rows = count(page, "<tr><th scope=\"row\">");
      bySuite += name.startsWith("comparisons") ? rows : 0;
      byDocument += name.startsWith("documents") ? rows : 0;
      Matcher links = link.matcher(page);
      while (links.find()) {
        Path to = links.group(1).isEmpty() ? file : file.resolveSibling(links.group(1));
        boolean there = Files.exists(to)
            && (links.group(2) == null || Files.readString(to).contains(" id=\"" + links.group(2) + "\""));
        if (!there) {
          dead.add(name + " to " + links.group());
        }
      }
    }
    assertEquals(List.of(), dead);
    assertEquals(audit.comparisons().size(), bySuite);
    assertEquals(audit.comparisons().size(), byDocument);
  }

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }

  /** Names of elements that are opened and closed in the wrong order. */
  private static List<String> unclosed(String page) {
    List<String> open = new ArrayList<>();
    Matcher tag = Pattern.compile("<(/?)([a-z0-9]+)(?:[^>]*[^/>])?>").matcher(page.substring(page.indexOf("<html")).replaceFirst("(?s)<script>.*</script>", ""));
    while (tag.find()) {
      String name = tag.group(2);
      if (List.of("meta", "br", "input").contains(name)) {
        continue;
      }
      if (tag.group(1).isEmpty()) {
        open.add(name);
      } else if (!open.isEmpty() && open.get(open.size() - 1).equals(name)) {
        open.remove(open.size() - 1);
      } else {
        return List.of("</" + name + "> behind " + open);
      }
    }
    return open;
  }
}
