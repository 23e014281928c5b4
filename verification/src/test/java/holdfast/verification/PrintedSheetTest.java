package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import holdfast.installation.ExampleJobs;
import holdfast.installation.InstallationPlan;
import holdfast.sheet.SheetUnits;
import java.io.File;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The HTML sheets as a reader meets them. What needs a browser runs where a headless one is installed. */
class PrintedSheetTest {
  private static final List<String> BROWSERS = List.of("chromium", "chromium-browser");
  private static final Pattern SVG = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);
  private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b");

  @TempDir private Path folder;

  @Test
  void everyPictureIsWellFormedAndTellsWhatItShows()
      throws IOException, SAXException, ParserConfigurationException {
    for (InstallationPlan plan : ExampleJobs.all().values()) {
      Matcher pictures = SVG.matcher(plan.sheet().html());
      int count = 0;
      while (pictures.find()) {
        Document svg =
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(pictures.group())));
        assertEquals("img", svg.getDocumentElement().getAttribute("role"), plan.job());
        assertFalse(svg.getElementsByTagName("title").item(0).getTextContent().isBlank(), plan.job());
        assertFalse(svg.getElementsByTagName("desc").item(0).getTextContent().isBlank(), plan.job());
        count++;
      }
      assertTrue(count >= 2, plan.job() + " has " + count + " pictures");
    }
  }

  @Test
  void aBrowserPrintsEverySheetOnTwoPagesWithoutComplaint() throws IOException, InterruptedException {
    String browser = browser();
    assumeTrue(browser != null, "no headless browser is installed here");
    for (InstallationPlan plan : ExampleJobs.all().values()) {
      for (SheetUnits units : List.of(SheetUnits.METRIC, SheetUnits.METRIC_AND_INCH)) {
        Path html = Files.writeString(folder.resolve("sheet.html"), plan.withUnits(units).sheet().html());
        Path pdf = folder.resolve("sheet.pdf");
        String console = run(browser, "--print-to-pdf=" + pdf, html.toUri().toString());
        assertFalse(console.contains("CONSOLE"), console);
        Matcher pages = PAGE.matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1));
        long count = pages.results().count();
        assertTrue(count == 1 || count == 2, plan.job() + ", " + units + ": " + count + " pages");
      }
    }
  }

  private static String browser() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .flatMap(directory -> BROWSERS.stream().map(name -> Path.of(directory, name)))
        .filter(Files::isExecutable)
        .map(Path::toString)
        .findFirst()
        .orElse(null);
  }

  private String run(String browser, String job, String page) throws IOException, InterruptedException {
    Path log = folder.resolve("log.txt");
    Process process =
        new ProcessBuilder(browser, "--headless", "--no-sandbox", "--disable-gpu", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync",
                "--no-pdf-header-footer", "--enable-logging=stderr", "--user-data-dir=" + folder.resolve("profile"), job, page)
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    assertTrue(process.waitFor(2, TimeUnit.MINUTES), "the browser hangs");
    return Files.readString(log);
  }
}
