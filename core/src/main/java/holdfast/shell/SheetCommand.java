package holdfast.shell;

import holdfast.installation.InstallationPlan;
import holdfast.sheet.Sheet;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Prints the installation sheet of the bundled example job. */
final class SheetCommand {
  private SheetCommand() {}

  static int run(String[] args, PrintStream out, PrintStream err) throws IOException {
    if (args.length > 2) {
      err.println("sheet takes at most one file name");
      return 2;
    }
    Sheet sheet = InstallationPlan.example().sheet();
    out.print(sheet.text());
    if (args.length == 2) {
      Path file = Path.of(args[1]);
      Files.writeString(file, sheet.html());
      out.println("HTML written to " + file);
    }
    return 0;
  }
}
