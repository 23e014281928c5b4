// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.MountingPlan;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sheets that carry their job, so that anyone can compute them again. */
public final class JobSheet {
  private static final String OPEN = "<script type=\"application/yaml\" id=\"holdfast-paper\">";
  private static final Pattern BLOCK = Pattern.compile(Pattern.quote(OPEN) + "\n(.*?)</script>\n", Pattern.DOTALL);

  private JobSheet() {}

  /**
   * The sheet of a job as HTML, with the job as a block of data in it.
   *
   * @param job the job
   * @return the page
   */
  public static String html(MountingPlan job) {
    Objects.requireNonNull(job, "job");
    TableSet tables = TableSet.bundled();
    String block = OPEN + "\n# tables " + tables.version() + ", SHA-256 " + tables.digest() + "\n" + JobFile.text(job)
        + "</script>\n";
    String page = job.sheet().html();
    int end = page.lastIndexOf("</body>");
    return page.substring(0, end) + block + page.substring(end);
  }

  /**
   * What differs between two lines of a page and of the same page computed again.
   *
   * @param line line of the page, from 1; 0 for a line that the page lacks
   * @param stands what stands in the page, without mark-up; empty for a line that it lacks
   * @param computed what was computed; empty for a line that the page has too much
   */
  public record Difference(int line, String stands, String computed) implements java.io.Serializable {
    // Refuses nulls.
    public Difference {
      Objects.requireNonNull(stands, "stands");
      Objects.requireNonNull(computed, "computed");
    }
  }

  /**
   * Computes a page again from the job in it and compares.
   *
   * @param page a page that {@link #html} wrote
   * @return every line that differs; empty if the page is as computed
   * @throws JobFileException if the page carries no job that can be read
   */
  public static List<Difference> recompute(String page) {
    Objects.requireNonNull(page, "page");
    Matcher block = BLOCK.matcher(page);
    if (!block.find()) {
      throw new JobFileException("the page", List.of(new Fault(1, 1, "", "", "a page that this program wrote",
          "it carries no job")));
    }
    return differences(page.lines().toList(), html(JobFile.parse(block.group(1))).lines().toList());
  }

  /** The longest common run of lines is kept, all else differs. */
  private static List<Difference> differences(List<String> page, List<String> computed) {
    int[][] common = new int[page.size() + 1][computed.size() + 1];
    for (int i = page.size() - 1; i >= 0; i--) {
      for (int j = computed.size() - 1; j >= 0; j--) {
        common[i][j] = page.get(i).equals(computed.get(j))
            ? common[i + 1][j + 1] + 1
            : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    List<Difference> all = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < page.size() || j < computed.size()) {
      boolean both = i < page.size() && j < computed.size();
      if (both && page.get(i).equals(computed.get(j))) {
        i++;
        j++;
      } else if (both && common[i + 1][j + 1] == common[i][j]) {
        all.add(new Difference(i + 1, plain(page.get(i++)), plain(computed.get(j++))));
      } else if (j >= computed.size() || (i < page.size() && common[i + 1][j] >= common[i][j + 1])) {
        all.add(new Difference(i + 1, plain(page.get(i++)), ""));
      } else {
        all.add(new Difference(0, "", plain(computed.get(j++))));
      }
    }
    return all;
  }

  private static String plain(String line) {
    String text = line.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ").strip();
    return text.isEmpty() ? line.strip() : text;
  }
}
