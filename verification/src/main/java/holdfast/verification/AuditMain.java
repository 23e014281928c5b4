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
             java -jar holdfast-audit.jar --sample NUMBER --seed NUMBER   comparisons to look up in a library
      exit status: 0 passed; 1 an undisclosed disagreement, a disclosure that no longer holds or a changed table;
                   2 wrong command or folder""";

  private AuditMain() {}

  /**
   * Prints the summary and writes the files of {@link AuditReport#FILES}. Exit status: 0 if the audit passes, 1 if a
   * disagreement is not disclosed, a disclosure no longer holds or a table is not the one committed, 2 if the
   * command or the folder cannot be used.
   *
   * @param arguments nothing, {@code --out} and a folder, or {@code --sample} and {@code --seed} with their numbers
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
    if (arguments.size() == 4 && arguments.get(0).equals("--sample") && arguments.get(2).equals("--seed")) {
      return sample(arguments.get(1), arguments.get(3), suites, out, err);
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

  private static int sample(String number, String seed, List<Suite> suites, PrintStream out, PrintStream err) {
    if (!number.matches("[1-9][0-9]{0,4}") || !seed.matches("[0-9]{1,9}")) {
      err.println(USAGE);
      return 2;
    }
    out.print(AuditDocuments.sample(
        Audit.of(suites), Cases.set().sources(), Integer.parseInt(number), Long.parseLong(seed)));
    return out.checkError() ? 2 : 0;
  }
}
