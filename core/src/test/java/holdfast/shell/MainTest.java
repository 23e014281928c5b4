// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.installation.ExampleJobs;
import holdfast.installation.InstallationPlan;
import holdfast.tables.TableSet;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command line: what each word does, what it answers and its exit status. */
class MainTest {
  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) throws Exception {
    out.reset();
    err.reset();
    return Main.run(
        args,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void helpIsPrintedWhenAsked() throws Exception {
    for (String word : List.of("help", "-h", "--help")) {
      assertEquals(0, run(word));
      for (String command : List.of("SCRIPT", "sheet [JOB] [HTML]", "tables diff A B", "version")) {
        assertTrue(out().contains("java -jar holdfast.jar " + command), out());
      }
      assertEquals("", err());
    }
  }

  @Test
  void versionNamesCodeAndTables() throws Exception {
    assertEquals(0, run("version"));
    TableSet tables = TableSet.bundled();
    // A checkout is no jar, so the code has no version here.
    assertEquals("Holdfast (not run from a jar), table set " + tables.version() + ", SHA-256 " + tables.digest(), out().strip());
  }

  @Test
  void aScriptIsReadFromItsFile() throws Exception {
    Path script = Files.writeString(folder.resolve("two.jsh"), "mm(2)\n");
    assertEquals(0, run(script.toString()));
    assertEquals("2 mm\n", out());
    Files.writeString(script, "int i = 1 / 0;\n");
    assertEquals(1, run(script.toString()));
    assertEquals(script + ": int i = 1 / 0;\n  ArithmeticException: / by zero\n", err());
  }

  @Test
  void whatIsNoScriptIsRefused() throws Exception {
    String absent = folder.resolve("absent.jsh").toString();
    assertEquals(2, run(absent));
    assertTrue(err().startsWith("no script '" + absent + "'\nHoldfast\n"), err());
    assertEquals(2, run("a.jsh", "b.jsh"));
    assertTrue(err().startsWith("one script at a time; given: a.jsh b.jsh\nHoldfast\n"), err());
    assertEquals("", out());
  }

  @Test
  void tablesAreComparedByTheirCommand() throws Exception {
    assertEquals(0, run("tables", "diff", "bundled", "bundled"));
    assertEquals(2, run("tables"));
  }

  @Test
  void linesPipedInAreAScript() throws Exception {
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream("\"µm\"\n".getBytes(StandardCharsets.UTF_8)));
      assertFalse(Terminal.interactive());
      assertEquals(0, run());
      assertEquals("µm\n", out());
      System.setIn(new ByteArrayInputStream("mm(\n".getBytes(StandardCharsets.UTF_8)));
      assertEquals(1, run());
      assertTrue(err().startsWith("standard input: mm("), err());
    } finally {
      System.setIn(before);
    }
  }

  @Test
  void theSheetOfAJobIsPrinted() throws Exception {
    assertEquals(0, run("sheet"));
    assertEquals(InstallationPlan.example().sheet().text(), out());
    assertTrue(ExampleJobs.all().keySet().containsAll(List.of("press-fit", "slip-fit", "impossible")));
    for (String job : ExampleJobs.all().keySet()) {
      assertEquals(0, run("sheet", job));
      assertEquals(ExampleJobs.all().get(job).sheet().text(), out());
    }
  }

  @Test
  void theSheetIsWrittenToAFile() throws Exception {
    Path file = folder.resolve("sheet.html");
    assertEquals(0, run("sheet", file.toString()));
    assertEquals(InstallationPlan.example().sheet().text() + "HTML written to " + file + "\n", out());
    assertEquals(InstallationPlan.example().sheet().html(), Files.readString(file));
    assertEquals(0, run("sheet", "slip-fit", file.toString()));
    assertEquals(ExampleJobs.all().get("slip-fit").sheet().html(), Files.readString(file));
  }

  @Test
  void oneJobAndOneFileAtATime() throws Exception {
    assertEquals(2, run("sheet", "slip-fit", "a.html", "b.html"));
    assertTrue(err().startsWith("sheet takes a job (") && err().contains("slip-fit"), err());
    assertEquals(2, run("sheet", "no-job", "b.html"));
    assertEquals("", out());
  }
}
