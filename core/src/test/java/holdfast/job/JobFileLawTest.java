// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.ExampleJobs;
import holdfast.installation.MountingPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Assertions;

/** Whatever a file holds: a job, or a list of faults; never anything else. */
class JobFileLawTest {
  private static final List<String> TEXTS = ExampleJobs.all().values().stream().map(JobFile::text).toList();
  private static final List<String> SPICES = List.of("\t", "\u0000", "\u202e", "\ufeff", "\r\n", ": ", "- ", "&a ", "*a", "!!x ", "{", "]",
      "\"", "'", "|\n", ">\n", "#", "NaN", "Infinity", "1e999", "-", "--- ", "...", "%", "@", "`", "999999999999999999999", "0", "-1", "\n\n",
      "\ud800", "١", "½", "no", "null", "~", "? ", "<script>", "\u2028");

  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void aMutatedFileIsAJobOrAListOfFaults(@ForAll long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(TEXTS.get(random.nextInt(TEXTS.size())));
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      mutate(text, random);
    }
    MountingPlan job;
    try {
      job = JobFile.parse(text.toString());
    } catch (JobFileException e) {
      Assertions.assertFalse(e.faults().isEmpty());
      return;
    }
    Assertions.assertEquals(job, JobFile.parse(JobFile.text(job)));
  }

  private static void mutate(StringBuilder text, Random random) {
    int at = random.nextInt(text.length());
    switch (random.nextInt(6)) {
      case 0 -> text.insert(at, SPICES.get(random.nextInt(SPICES.size())));
      case 1 -> text.deleteCharAt(at);
      case 2 -> text.setCharAt(at, (char) (32 + random.nextInt(95)));
      case 3 -> text.delete(at, Math.min(text.length() - 1, at + random.nextInt(200)));
      case 4 -> text.insert(at, text.substring(at, Math.min(text.length(), at + random.nextInt(200))));
      default -> {
        List<String> lines = new ArrayList<>(text.toString().lines().toList());
        String line = lines.remove(random.nextInt(lines.size()));
        lines.add(random.nextInt(lines.size()), line);
        text.setLength(0);
        text.append(String.join("\n", lines)).append('\n');
      }
    }
    if (text.length() == 0) {
      text.append('x');
    }
  }
}
