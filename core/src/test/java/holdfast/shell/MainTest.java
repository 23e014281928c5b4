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
    assertTrue(err().contains("\nsheet takes a job (") && err().contains("slip-fit"), err());
    assertEquals(2, run("sheet", "no-job", "b.html"));
    assertEquals("", out());
  }

  @Test
  void aWordThatIsNoJobPrintsNoOtherJobAndWritesNoFile() throws Exception {
    for (String word : List.of("nosuchjob", "my-job.jsh", "slip-fit.txt", "")) {
      Path file = folder.resolve(word.isEmpty() ? "x" : word);
      Files.writeString(file, "mine");
      assertEquals(2, run("sheet", word.isEmpty() ? word : file.toString()));
      assertTrue(err().startsWith("no job '") && err().contains("sheet takes a job (press-fit, "), err());
      assertEquals(2, run("sheet", "yoke", file.toString()));
      assertTrue(err().startsWith("not one file FILE.html: "), err());
      assertEquals("", out());
      assertEquals("mine", Files.readString(file));
    }
  }

  @Test
  void aPageOfTheUsersOwnIsNeverOverwritten() throws Exception {
    Path page = Files.writeString(folder.resolve("mine.html"), "<!DOCTYPE html>\n<p>mine");
    assertEquals(2, run("sheet", page.toString()));
    assertEquals("'" + page + "' is there already and is no sheet of Holdfast; it is not overwritten\n", err());
    assertEquals("", out());
    assertEquals("<!DOCTYPE html>\n<p>mine", Files.readString(page));
    Path directory = Files.createDirectory(folder.resolve("folder.html"));
    assertEquals(2, run("sheet", directory.toString()));
    assertTrue(err().contains("is there already"), err());
  }

  @Test
  void whereASheetCannotBeWrittenIsSaidInALine() throws Exception {
    String nowhere = folder.resolve("nowhere").resolve("sheet.html").toString();
    assertEquals(2, run("sheet", nowhere));
    assertEquals("'" + nowhere + "' cannot be written: there is no such file or folder\n", err());
    assertEquals(2, run("sheet", "a\0.html"));
    assertTrue(err().startsWith("'a\0.html' is no name of a file: "), err());
    assertEquals("", out());
  }

  @Test
  void aScriptThatCannotBeReadIsNamed() throws Exception {
    assertEquals(2, run(folder.toString()));
    assertEquals("script '" + folder + "' cannot be read: Is a directory\n", err());
    Path latin = Files.write(folder.resolve("latin.jsh"), "\"Größe\"\n".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(2, run(latin.toString()));
    assertEquals("script '" + latin + "' cannot be read: it is not written in UTF-8\n", err());
    assertEquals(2, run("a\0.jsh"));
    assertTrue(err().startsWith("no script 'a\0.jsh'\n"), err());
    assertEquals(2, run("tables", "diff", "bundled", "a\0"));
    assertTrue(err().startsWith("'a\0' is no name of a file: "), err());
  }

  @Test
  void aByteOrderMarkIsNoPartOfAScript() throws Exception {
    Path script = Files.writeString(folder.resolve("mark.jsh"), "\uFEFFmm(2)\n");
    assertEquals(0, run(script.toString()), err());
    assertEquals("2 mm\n", out());
  }
}
