// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.tables.TableSet;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import jdk.jshell.tool.JavaShellToolBuilder;

/** JShell at a terminal. */
final class Interactive {
  static final String GREETING =
      """
      Units are functions: mm(25), kN(2.1), inch("5/8"), Nm(60), degC(80).
      Try   var fit = Fit.of(mm(25), "H7/p6")   then   print(fit.explain())   or   print(open("lever"))
      help tells more, exit ends.
      """;

  private Interactive() {}

  static void open(PrintStream out) throws Exception {
    out.println("Holdfast " + Versions.code() + ", table set " + TableSet.bundled().version());
    out.print(Vocabulary.words() ? GREETING : "End with /exit.\n");
    Path startup = startupFile();
    Prompt.interactive();
    try {
      JavaShellToolBuilder.builder()
          .start(
              "--class-path", Vocabulary.classPath(),
              "--execution",
              Vocabulary.words() ? QuietExecution.NAME : "local",
              "--feedback",
              "normal",
              "--startup",
              startup.toString());
    } finally {
      Files.deleteIfExists(startup);
    }
  }

  private static Path startupFile() throws IOException {
    Path file = Files.createTempFile("holdfast", ".jsh");
    return Files.writeString(file, Vocabulary.text());
  }
}
