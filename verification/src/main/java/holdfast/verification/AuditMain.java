// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Runs the audit from the command line. */
public final class AuditMain {
  private static final String USAGE =
      """
      usage: java -jar holdfast-audit.jar [--out FOLDER]   (default: the current folder)
      exit status: 0 passed; 1 an undisclosed disagreement, a disclosure that no longer holds or a changed table;
                   2 wrong command or folder""";

  private AuditMain() {}

  /**
   * Prints the summary and writes the files of {@link AuditReport#FILES}. Exit status: 0 if the audit passes, 1 if a
   * disagreement is not disclosed, a disclosure no longer holds or a table is not the one committed, 2 if the
   * command or the folder cannot be used.
   *
   * @param arguments nothing, or {@code --out} and a folder
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), false, StandardCharsets.UTF_8);
    int status = run(List.of(arguments), Suites.all(), out, err);
    out.flush();
    err.flush();
    System.exit(status);
  }

  static int run(List<String> arguments, List<Suite> suites, PrintStream out, PrintStream err) {
    if (arguments.equals(List.of("--help"))) {
      out.println(USAGE);
      return 0;
    }
    boolean toFolder = arguments.size() == 2 && arguments.get(0).equals("--out");
    if (!arguments.isEmpty() && !toFolder) {
      err.println(USAGE);
      return 2;
    }
    Audit audit = Audit.of(suites);
    AuditReport report = AuditReport.of(audit);
    out.print(report.text());
    try {
      Path folder = Path.of(toFolder ? arguments.get(1) : "");
      report.write(folder);
      out.println("Written to " + folder.toAbsolutePath().normalize() + ": " + String.join(", ", AuditReport.FILES));
    } catch (IOException | InvalidPathException e) {
      err.println("The report cannot be written: " + e);
      return 2;
    }
    if (out.checkError()) {
      return 2;
    }
    return report.passes() ? 0 : 1;
  }
}
