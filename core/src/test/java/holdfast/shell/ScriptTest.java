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
}
