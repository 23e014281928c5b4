// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.installation.ExampleJobs;
import holdfast.installation.InstallationPlan;
import holdfast.job.JobFile;
import holdfast.job.JobQuestions;
import holdfast.job.JobSheet;
import holdfast.sheet.PaperSize;
import holdfast.tables.TableSet;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
      for (String command : List.of("SCRIPT", "new KIND", "sheet [JOB]", "tables diff A B", "version")) {
        assertTrue(out().contains(" " + command), out());
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
    assertTrue(ExampleJobs.all().keySet().containsAll(List.of("lever", "slip-fit", "impossible")));
    for (String job : ExampleJobs.all().keySet()) {
      assertEquals(ExampleJobs.all().get(job).stops().isEmpty() ? 0 : 1, run("sheet", job));
      assertEquals(ExampleJobs.all().get(job).sheet().text(), out());
    }
  }

  @Test
  void theSheetIsWrittenToAFileWithItsJobAndIsReplacedByAnother() throws Exception {
    Path file = folder.resolve("sheet.html");
    assertEquals(0, run("sheet", "--html", file.toString()));
    assertEquals(InstallationPlan.example().sheet().text() + "HTML written to " + file + "\n", out());
    assertEquals(0, run("recompute", file.toString()));
    run("sheet", "slip-fit", "--html=" + file);
    assertEquals(JobSheet.html(ExampleJobs.inchSlipFit(), PaperSize.LETTER), Files.readString(file));
    Files.writeString(file, Files.readString(file).replace("DO NOT", "D0 NOT").replace("380", "381"));
    assertEquals(1, run("recompute", file.toString()));
  }

  @Test
  void whatIsNoJobPrintsNoOtherJobAndWritesNoFile() throws Exception {
    for (String word : List.of("nosuchjob", "my-job.jsh", "slip-fit.txt")) {
      Path page = folder.resolve(word + ".html");
      assertEquals(2, run("sheet", word, "--html", page.toString()));
      assertTrue(err().contains("lever, slip-fit") && err().contains(word), err());
      assertEquals("", out());
      Path file = Files.writeString(folder.resolve(word), "mine");
      assertEquals(2, run("sheet", file.toString(), "--html", page.toString()));
      assertEquals("", out());
      assertEquals("mine", Files.readString(file));
      assertFalse(Files.exists(page));
    }
    assertEquals(2, run("sheet", "yoke", "slip-fit"));
    assertEquals(2, run("sheet", "yoke", "--htm", "x.html"));
    assertEquals(2, run("sheet", ""));
    assertEquals(2, run("sheet", folder.toString()));
    assertEquals("", out());
  }

  @Test
  void aFileOfTheUsersOwnIsNeverOverwritten() throws Exception {
    Path page = Files.writeString(folder.resolve("mine.html"), "<!DOCTYPE html>\n<p>mine");
    Path directory = Files.createDirectory(folder.resolve("folder.html"));
    for (Path there : List.of(page, directory)) {
      assertEquals(2, run("sheet", "--html", there.toString()));
      assertTrue(err().startsWith("'" + there + "': a file is in the way"), err());
    }
    assertEquals(2, run("new", "stud-metric", page.toString()));
    assertEquals(2, run("sheet", "--text", page.toString()));
    assertEquals(2, run("what-if", "lever", "member.bore=K7", "--to", page.toString()));
    assertEquals("<!DOCTYPE html>\n<p>mine", Files.readString(page));
    try (var files = Files.list(folder)) {
      assertEquals(2, files.count());
    }
  }

  @Test
  void whereASheetCannotBeWrittenIsSaidInALine() throws Exception {
    String nowhere = folder.resolve("nowhere").resolve("sheet.html").toString();
    assertEquals(2, run("sheet", "--html", nowhere));
    assertEquals(1, err().lines().count());
    assertEquals(2, run("sheet", "--html", "a\0.html"));
    assertTrue(err().contains("is no name of a file: "), err());
  }

  @Test
  void aNewJobIsCheckedPrintedChangedAndCompared() throws Exception {
    Path file = folder.resolve("lever.yaml");
    assertEquals(0, run("new", "stud-metric", file.toString()));
    assertEquals(0, run("check", file.toString()));
    assertEquals(0, run("sheet", file.toString()));
    assertEquals(0, run("compare", file.toString(), "slip-fit"));
    Path other = folder.resolve("k7.yaml");
    run("what-if", file.toString(), "member.bore=K7", "--to", other.toString());
    assertEquals("K7", ((InstallationPlan) JobFile.read(other)).member().boreTolerance());
    assertEquals(2, run("what-if", file.toString(), "member.bor=K7"));
    assertTrue(err().contains("'member.bore'"), err());
    Files.writeString(file, Files.readString(file).replace("torque: 75 N·m", "torque: 75"));
    assertEquals(2, run("check", file.toString()));
    assertTrue(err().contains("nut.torque") && err().contains("line "), err());
    assertEquals(0, run("new", "stud-inch", "--size", "inch 1-1/4 in"));
    assertEquals(0, run("schema", "json"));
    assertEquals(0, run("schema", "page"));
  }

  @Test
  void theQuestionsOfAJobEndInItsFile() throws Exception {
    InputStream before = System.in;
    try {
      List<String> answers = new ArrayList<>();
      JobQuestions questions = JobQuestions.start();
      while (questions.next().isPresent()) {
        JobQuestions.Question question = questions.next().get();
        String answer = !question.needed() && !question.key().endsWith(".material") ? "" : question.example();
        answers.add(answer);
        questions = questions.answer(answer);
      }
      System.setIn(new ByteArrayInputStream((String.join("\n", answers) + "\n").getBytes(StandardCharsets.UTF_8)));
      Path file = folder.resolve("asked.yaml");
      assertEquals(0, run("ask", file.toString()));
      assertEquals(questions.job(), JobFile.read(file));
      System.setIn(new ByteArrayInputStream("stud in a member\n".getBytes(StandardCharsets.UTF_8)));
      assertEquals(2, run("ask"));
    } finally {
      System.setIn(before);
    }
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
