// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.installation.ExampleJobs;
import holdfast.installation.MountingPlan;
import holdfast.sheet.Sheet;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Prints the installation sheet of a bundled example job: {@code sheet [JOB] [FILE.html]}. */
final class SheetCommand {
  /** Stands in the head of every sheet. */
  private static final String MARK = "<meta name=\"generator\" content=\"Holdfast\">";

  private SheetCommand() {}

  static int run(String[] args, PrintStream out, PrintStream err) {
    Map<String, MountingPlan> jobs = ExampleJobs.all();
    String usage = "sheet takes a job (" + String.join(", ", jobs.keySet()) + ") and a file FILE.html, both optional";
    List<String> rest = new ArrayList<>(List.of(args).subList(1, args.length));
    MountingPlan plan = ExampleJobs.metricPressFit();
    if (!rest.isEmpty() && jobs.containsKey(rest.get(0))) {
      plan = jobs.get(rest.remove(0));
    } else if (!rest.isEmpty() && (rest.size() > 1 || !isHtml(rest.get(0)))) {
      err.println("no job '" + rest.get(0) + "'");
      err.println(usage);
      return 2;
    }
    if (rest.size() > 1 || (rest.size() == 1 && !isHtml(rest.get(0)))) {
      err.println("not one file FILE.html: " + String.join(" ", rest));
      err.println(usage);
      return 2;
    }
    Sheet sheet = plan.sheet();
    if (rest.isEmpty()) {
      out.print(sheet.text());
      return 0;
    }
    String name = rest.get(0);
    try {
      Path file = Path.of(name);
      if (Files.exists(file) && !isSheet(file)) {
        err.println("'" + name + "' is there already and is no sheet of Holdfast; it is not overwritten");
        return 2;
      }
      Files.writeString(file, sheet.html());
    } catch (IOException e) {
      err.println("'" + name + "' cannot be written: " + Texts.reason(e));
      return 2;
    } catch (InvalidPathException e) {
      err.println("'" + name + "' is no name of a file: " + e.getReason());
      return 2;
    }
    out.print(sheet.text());
    out.println("HTML written to " + name);
    return 0;
  }

  private static boolean isHtml(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(".html");
  }

  /** By the mark in its head, so that a page of the user's own is never lost. */
  private static boolean isSheet(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (var in = Files.newInputStream(file)) {
      return new String(in.readNBytes(1000), StandardCharsets.UTF_8).contains(MARK);
    }
  }
}
