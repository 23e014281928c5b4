// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.installation.ExampleJobs;
import holdfast.job.JobSheet;
import holdfast.quantity.InputException;
import holdfast.quantity.Units;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The words of the prompt, and how it tells of what went wrong. */
class PromptTest {
  @TempDir private Path folder;

  private static String printed(Runnable work) {
    PrintStream before = System.out;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
      work.run();
    } finally {
      System.setOut(before);
    }
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void whatIsPrintedIsTheSheetTheCardOrTheResult() {
    assertEquals(ExampleJobs.metricLever().sheet().text() + "\n", printed(() -> Prompt.print(ExampleJobs.metricLever())));
    assertEquals(ExampleJobs.metricLever().sheet().text() + "\n", printed(() -> Prompt.print(ExampleJobs.metricLever().sheet())));
    assertEquals(ExampleJobs.metricLever().card().text() + "\n", printed(() -> Prompt.print(ExampleJobs.metricLever().card())));
    assertEquals("2 mm\n", printed(() -> Prompt.print(Units.mm(2))));
    assertTrue(printed(() -> Prompt.print(ExampleJobs.metricLever().modifiedLife())).contains("WARNING: "));
    assertTrue(printed(Prompt::help).contains("save(job"));
    assertTrue(Prompt.help.toString().contains("save(job"));
  }

  @Test
  void jobsAreSavedAndOpened() throws Exception {
    String file = folder.resolve("lever.yaml").toString();
    printed(() -> Prompt.save(ExampleJobs.metricLever(), file));
    assertEquals(ExampleJobs.metricLever(), Prompt.open(file));
    assertThrows(InputException.class, () -> Prompt.save(ExampleJobs.metricLever(), file));
    Path page = folder.resolve("lever.html");
    printed(() -> Prompt.save(ExampleJobs.metricLever(), page.toString()));
    assertEquals(JobSheet.html(ExampleJobs.metricLever()), Files.readString(page));
    printed(() -> Prompt.save(ExampleJobs.metricLever().sheet(), page.toString()));
    assertEquals(ExampleJobs.metricLever().sheet().html(), Files.readString(page));
    printed(() -> Prompt.save(Units.mm(2), folder.resolve("two.txt").toString()));
    assertEquals("2 mm\n", Files.readString(folder.resolve("two.txt")));
    assertEquals(ExampleJobs.yokeInFork(), Prompt.open("yoke"));
    assertThrows(InputException.class, () -> Prompt.open(folder.resolve("none.yaml").toString()));
  }

  @Test
  void wholeInchesAreAFractionsFallen() {
    InputException e = assertThrows(InputException.class, () -> Prompt.inch(5 / 8));
    assertTrue(e.permitted().contains("inch(\"5/8\")"), e.permitted());
    assertEquals(50.8, Prompt.inch(2).mm(), 1e-12);
  }

  @Test
  void misspelledUnitsNameTheRightOnes() {
    Map<String, DoubleFunction<Object>> misspelled = Map.of("Nm(3)", Prompt::nm, "inLbf(3)", Prompt::lbfin, "ftLbf(3)", Prompt::ftlb,
        "rpm(3)", Prompt::RPM, "kN(3)", Prompt::KN, "mm(3)", Prompt::MM, "MPa(3)", Prompt::Mpa);
    misspelled.forEach((right, wrong) ->
        assertEquals("did you mean " + right + "?", assertThrows(InputException.class, () -> wrong.apply(3)).reason()));
    for (DoubleFunction<Object> wrong : List.<DoubleFunction<Object>>of(Prompt::NM, Prompt::inlb, Prompt::lbfft)) {
      assertThrows(InputException.class, () -> wrong.apply(3));
    }
  }

  @Test
  void anExceptionIsItsMessageWithoutItsStack() {
    try (JShell shell = JShell.builder().executionEngine(new QuietExecution(), Map.of()).build()) {
      EvalException e = (EvalException) shell.eval("int i = 1 / 0;").get(0).exception();
      assertEquals("/ by zero", e.getMessage());
      assertEquals("ArithmeticException", e.getExceptionClassName());
      assertEquals(0, e.getStackTrace().length);
      assertEquals("3", shell.eval("1 + 2").get(0).value());
    }
    assertSame("holdfast", new QuietExecution().name());
  }

  /** Every line that the greeting tells to try. */
  @Test
  void theTipsOfTheGreetingWork() throws Exception {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    String tips = "var fit = Fit.of(mm(25), \"H7/p6\")\nprint(fit.explain())\nprint(open(\"lever\"))\n";
    for (String tip : tips.lines().toList()) {
      assertTrue(Interactive.GREETING.contains(tip), tip);
    }
    printed(() -> assertEquals(0, Script.run(tips, "tips", System.out, new PrintStream(err, true, StandardCharsets.UTF_8)),
        () -> err.toString(StandardCharsets.UTF_8)));
  }

  /** The program as it is started, in the languages of its users: what it prints in a pipe is UTF-8, the same everywhere. */
  @Test
  void theLanguageOfTheMachineChangesNoByte() throws Exception {
    String expected = ExampleJobs.metricLever().card().text();
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    for (String language : List.of("C", "de-DE", "tr-TR", "ar-EG")) {
      ProcessBuilder builder = new ProcessBuilder(java, "-Duser.language=" + language.split("-", -1)[0].replace("C", "en"),
          "-Duser.country=" + (language.length() > 2 ? language.substring(3) : "US"), "-cp", System.getProperty("java.class.path"),
          "holdfast.shell.Main", "card");
      builder.environment().put("LANG", "C");
      builder.environment().put("LC_ALL", "C");
      Process process = builder.redirectErrorStream(true).start();
      StringBuilder text = new StringBuilder();
      try (BufferedReader reader = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
        reader.lines().forEach(line -> text.append(line).append('\n'));
      }
      assertEquals(0, process.waitFor());
      assertEquals(expected, text.toString(), language);
    }
  }
}
