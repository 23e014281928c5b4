// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.installation.ExampleJobs;
import holdfast.installation.MountingPlan;
import holdfast.sheet.Sheet;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Prints the installation sheet of a bundled example job: {@code sheet [JOB] [FILE.html]}. */
final class SheetCommand {
  private SheetCommand() {}

  static int run(String[] args, PrintStream out, PrintStream err) throws IOException {
    Map<String, MountingPlan> jobs = ExampleJobs.all();
    List<String> rest = new ArrayList<>(List.of(args).subList(1, args.length));
    MountingPlan plan = ExampleJobs.metricPressFit();
    if (!rest.isEmpty() && jobs.containsKey(rest.get(0))) {
      plan = jobs.get(rest.remove(0));
    }
    if (rest.size() > 1) {
      err.println("sheet takes a job (" + String.join(", ", jobs.keySet()) + ") and a file name, both optional");
      return 2;
    }
    Sheet sheet = plan.sheet();
    out.print(sheet.text());
    if (rest.size() == 1) {
      Path file = Path.of(rest.get(0));
      Files.writeString(file, sheet.html());
      out.println("HTML written to " + file);
    }
    return 0;
  }
}
