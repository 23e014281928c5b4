// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import holdfast.quantity.InputException;
import holdfast.sheet.PaperSize;
import holdfast.sheet.SheetUnits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Writes the papers that a browser looks at; {@code .ci/papers} calls it with {@code -Dpapers=FOLDER}. */
class PapersTest {
  private static final int RANDOM = 10;

  private static Map<String, MountingPlan> jobs() {
    Map<String, MountingPlan> jobs = new LinkedHashMap<>(ExampleJobs.all());
    ExampleJobs.all().forEach((name, job) -> {
      jobs.put(name + "-inch", job.withUnits(SheetUnits.INCH));
      jobs.put(name + "-both", job.withUnits(SheetUnits.METRIC_AND_INCH));
    });
    int bundled = jobs.size();
    RandomPlans random = new RandomPlans(77);
    for (int draw = 0; jobs.size() < bundled + RANDOM; draw++) {
      try {
        MountingPlan plan = draw % 3 == 0 ? random.yoke() : random.stud();
        if (plan.stops().isEmpty()) {
          jobs.put("random-" + draw, plan);
        }
      } catch (InputException refused) {
        // Parts that do not go together make no job.
      }
    }
    return jobs;
  }

  @Test
  void papersAreWritten() throws IOException {
    String folder = System.getProperty("papers");
    assumeTrue(folder != null, "only with -Dpapers=FOLDER");
    Path out = Files.createDirectories(Path.of(folder));
    int written = 0;
    for (Map.Entry<String, MountingPlan> job : jobs().entrySet()) {
      for (PaperSize paper : PaperSize.values()) {
        String name = "card-" + paper.name().toLowerCase(Locale.ROOT) + "-" + job.getKey() + ".html";
        Files.writeString(out.resolve(name), job.getValue().card().html(paper));
        written++;
      }
      Files.writeString(out.resolve("record-a4-" + job.getKey() + ".html"), job.getValue().sheet().html());
      written++;
    }
    assertEquals(3 * (12 + RANDOM), written);
  }
}
