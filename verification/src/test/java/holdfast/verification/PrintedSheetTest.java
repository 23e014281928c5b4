// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import holdfast.installation.ExampleJobs;
import holdfast.installation.MountingPlan;
import holdfast.sheet.PaperSize;
import holdfast.sheet.SheetUnits;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The HTML sheets as a reader meets them. What needs a browser runs where a headless one is installed. */
class PrintedSheetTest {
  private static final Pattern SVG = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);

  @TempDir private Path folder;

  @Test
  void everyPictureIsWellFormedAndTellsWhatItShows()
      throws IOException, SAXException, ParserConfigurationException {
    for (MountingPlan plan : ExampleJobs.all().values()) {
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
  void aBrowserPrintsEverySheetOnFourPagesAndEveryCardOnOneWithoutComplaint() throws IOException, InterruptedException {
    assumeTrue(Browser.isInstalled(), "no headless browser is installed here");
    for (MountingPlan plan : ExampleJobs.all().values()) {
      for (SheetUnits units : List.of(SheetUnits.METRIC, SheetUnits.INCH)) {
        long pages = printed(plan.withUnits(units).sheet().html());
        assertTrue(pages >= 1 && pages <= 4, plan.job() + ", " + units + ": " + pages + " pages");
        assertEquals(1, printed(plan.withUnits(units).card().html(PaperSize.A4)), plan.job() + ", " + units);
      }
    }
  }

  private long printed(String page) throws IOException, InterruptedException {
    Path html = Files.writeString(folder.resolve("page.html"), page);
    Path pdf = folder.resolve("page.pdf");
    String console = Browser.run(folder, "--print-to-pdf=" + pdf, html.toUri().toString());
    assertFalse(console.contains("CONSOLE"), console);
    return Browser.pages(pdf);
  }
}
