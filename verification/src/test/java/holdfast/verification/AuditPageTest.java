// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import holdfast.tables.SourceRef;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages of the audit as a reader meets them, where a headless browser is installed. */
class AuditPageTest {
  private static final String SEARCH =
      "<script>document.getElementById('words').value = 'COUNTERBORE'; document.getElementById('find').requestSubmit();"
          + "</script></body>";

  @TempDir private Path folder;

  @BeforeEach
  void write() throws IOException {
    assumeTrue(Browser.isInstalled(), "no headless browser is installed here");
    SourceRef place = SourceRef.published("NIST SP 811", "Appendix B");
    Comparison plain = Comparison.of("plain bore", place, Evidence.PRINT).numbers(1, 1, 0.1, "mm", "");
    Comparison other = Comparison.of("counterbore", place, Evidence.PRINT).numbers(1, 1, 0.1, "mm", "");
    AuditReport.of(Audit.of(List.of(FakeSuite.of(plain, other)))).write(folder);
  }

  @Test
  void theSummaryPrintsOnOnePageWithoutComplaint() throws IOException, InterruptedException {
    Path pdf = folder.resolve("summary.pdf");
    String console = Browser.run(folder, "--print-to-pdf=" + pdf, folder.resolve("summary.html").toUri().toString());
    assertFalse(console.contains("CONSOLE"), console);
    assertEquals(1, Browser.pages(pdf));
  }

  @Test
  void theSearchShowsWhatHoldsTheWords() throws IOException, InterruptedException {
    String page = Files.readString(folder.resolve("documents/nist-sp-811.html")).replace("</body>", SEARCH);
    Path searched = Files.writeString(folder.resolve("searched.html"), page);
    String shown = Browser.run(folder, "--dump-dom", searched.toUri().toString());
    assertFalse(shown.contains("CONSOLE"), "a complaint of the page");
    assertTrue(shown.matches("(?s).*<output id=\"found\" for=\"words\">1 of [0-9]+ rows</output>.*"), "one row is left");
    assertTrue(shown.contains("<tr><th scope=\"row\">counterbore"), "the row that holds the word");
    assertTrue(shown.contains("<tr hidden=\"\"><th scope=\"row\">plain bore"), "a row that does not");
  }
}
