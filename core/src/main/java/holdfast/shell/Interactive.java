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
  private static final String GREETING =
      """
      Units are functions: mm(25), kN(2.1), inch("5/8"), Nm(60), degC(80).
      Try   Fit.of(mm(25), "H7/p6")   then   $1.explain()   or   InstallationPlan.example().sheet().text()
      End with /exit.
      """;

  private Interactive() {}

  static void open(PrintStream out) throws Exception {
    out.println("Holdfast " + Versions.code() + ", table set " + TableSet.bundled().version());
    out.print(GREETING);
    Path startup = startupFile();
    try {
      JavaShellToolBuilder.builder()
          .start(
              "--class-path", Vocabulary.classPath(),
              "--execution",
              "local",
              "--feedback",
              "concise",
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
