// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ScriptTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String text) {
    return Script.run(
        text,
        "script",
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  @Test
  void expressionsPrintAndDeclarationsAreSilent() {
    assertEquals(0, run("var fit = Fit.of(mm(25), \"H7/p6\")\nfit\nfit.kind()\nString s = \"a b\"\ns\n"));
    assertEquals(
        "25 H7/p6: interference fit, 1 µm … 35 µm interference\ninterference fit\na b\n", out.toString(StandardCharsets.UTF_8));
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void stringsPrintAsTheyAre() {
    assertEquals(0, run("\"a\\tb\\\\c \\\"q\\\" µ\\nend \\u00e9\""));
    assertEquals("a\tb\\c \"q\" µ\nend é\n", out.toString(StandardCharsets.UTF_8));
  }

  @Test
  void statementsRunOverLines() {
    assertEquals(0, run("var n = List.of(1, 2)\n    .stream()\n    .count()\nfor (int i = 0; i < 1; i++) {\n}\n// comment\nn"));
    assertEquals("2\n", out.toString(StandardCharsets.UTF_8));
  }

  @Test
  void theFirstErrorEndsTheScript() {
    assertEquals(1, run("mm(-1)\nFit.of(mm(25), \"H77/p6\")\nmm(3)"));
    assertEquals("-1 mm\n", out.toString(StandardCharsets.UTF_8));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("H77"), err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void whatIsNotKnownIsSaid() {
    assertEquals(1, run("foo bar"));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("not known: class foo"));
    assertEquals(1, run("Fit.of(mm(25), "));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("ends in the middle"));
  }

  @Test
  void onlyExpressionsThatHaveAValuePrint() {
    assertEquals(0, run("7\n'c'\n\"\"\nint i = 3\ni = 4\ni\nvoid f() { i++; }\nf()\nint g() { return h(); }\nint h() { return i; }\ng()\n"));
    assertEquals("7\n'c'\n\n4\n5\n", out.toString(StandardCharsets.UTF_8));
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aLineMayHoldSeveralStatements() {
    assertEquals(0, run("int a = 1; int b = 2;\na + b\n"));
    assertEquals("3\n", out.toString(StandardCharsets.UTF_8));
    assertEquals(1, run("int c = 1; int d = 1 / 0; int e = 3;\nc\n"));
    assertEquals("3\n", out.toString(StandardCharsets.UTF_8));
  }

  @Test
  void errorsNameTheirLineAndTheirReason() {
    assertEquals(1, run("int a = 1;\nint b = a / 0;\n"));
    assertEquals("script: int b = a / 0;\n  ArithmeticException: / by zero\n", err.toString(StandardCharsets.UTF_8));
    err.reset();
    assertEquals(1, run("int n = \"text\";\n"));
    String text = err.toString(StandardCharsets.UTF_8);
    assertTrue(text.startsWith("script: int n = \"text\";\n  incompatible types: "), text);
    err.reset();
    assertEquals(1, run("int f() { return missing(); }\nf()\n"));
    text = err.toString(StandardCharsets.UTF_8);
    assertTrue(text.startsWith("script: f()\n  "), text);
    assertTrue(text.lines().skip(1).findFirst().orElseThrow().contains("unresolved references"), text);
  }

  @Test
  void aQuotientOfWholeNumbersIsNoFraction() {
    for (String typed : new String[] {"inch(5/8)", "inch( 1 - 1/2 )", "var t = inch(1-1/2)", "mm(1/2)"}) {
      err.reset();
      assertEquals(1, run(typed + "\n"), typed);
      String text = err.toString(StandardCharsets.UTF_8);
      assertTrue(text.contains("write it as a text: ") && text.contains("(\""), text);
    }
    out.reset();
    assertEquals(0, run("inch(\"1-1/2\")\ninch(5.0/8)\ninch(2)\n"));
    assertEquals("38.1 mm\n15.875 mm\n50.8 mm\n", out.toString(StandardCharsets.UTF_8));
  }

  @Test
  void wordsOfThePromptWorkInScripts() {
    assertEquals(0, run("print(mm(2))\nopen(\"lever\").equals(InstallationPlan.example())\n"));
    assertEquals(1, run("nm(60)\n"));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("did you mean Nm(60)?"), err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aScriptMayEndWithAComment() {
    assertEquals(0, run("mm(3)\n// the end"));
    assertEquals("3 mm\n", out.toString(StandardCharsets.UTF_8));
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }
}
