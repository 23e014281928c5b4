// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.MountingPlan;
import holdfast.sheet.PaperSize;
import holdfast.tables.Edition;
import holdfast.tables.TableSet;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sheets that carry their job, so that anyone can compute them again. */
public final class JobSheet {
  private static final String OPEN = "<script type=\"application/yaml\" id=\"holdfast-paper\">";
  private static final Pattern BLOCK = Pattern.compile(
      Pattern.quote(OPEN) + "\n# program (.*), table set (.*), SHA-256 ([0-9a-f]{64})\n"
          + "# the job that follows, SHA-256 \\p{XDigit}{64}\n(.*?)</script>\n", Pattern.DOTALL);
  private static final Pattern PAPER = Pattern.compile("@page \\{ size: letter;");

  private JobSheet() {}

  /**
   * The sheet of a job as HTML for A4, with the job as a block of data in it.
   *
   * @param job the job
   * @return the page
   */
  public static String html(MountingPlan job) {
    return html(job, PaperSize.A4);
  }

  /**
   * The sheet of a job as HTML, with the job as a block of data in it.
   *
   * @param job the job
   * @param paper the paper on which it is printed
   * @return the page
   */
  public static String html(MountingPlan job, PaperSize paper) {
    return html(job, paper, Origin.here());
  }

  private static String html(MountingPlan job, PaperSize paper, Origin origin) {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(paper, "paper");
    String text = JobFile.text(job);
    // The sheet rounds; the digest knows a digit that no printed number shows.
    String block = OPEN + "\n# " + origin + "\n# the job that follows, SHA-256 " + digest(text) + "\n" + text + "</script>\n";
    String page = job.sheet().html(paper);
    int end = page.lastIndexOf("</body>");
    return page.substring(0, end) + block + page.substring(end);
  }

  private static String digest(String text) {
    try {
      byte[] bytes = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /**
   * What computed a page.
   *
   * @param program version of the program; words for one that runs from no jar
   * @param tables edition of the table set
   */
  public record Origin(String program, Edition tables) implements java.io.Serializable {
    // Refuses nulls.
    public Origin {
      Objects.requireNonNull(program, "program");
      Objects.requireNonNull(tables, "tables");
    }

    /**
     * This program with the tables that it uses.
     *
     * @return the versions
     */
    public static Origin here() {
      String version = JobSheet.class.getPackage().getImplementationVersion();
      TableSet tables = TableSet.bundled();
      return new Origin(version == null ? "(not run from a jar)" : version, new Edition(tables.version(), tables.digest()));
    }

    /** As a page states it. */
    @Override
    public String toString() {
      return "program " + program + ", " + tables;
    }
  }

  /**
   * What computed a page, as the page states it.
   *
   * @param page a page that {@link #html} wrote
   * @return the versions
   * @throws JobFileException if the page carries no job
   */
  public static Origin origin(String page) {
    Objects.requireNonNull(page, "page");
    Matcher block = block(page);
    return new Origin(block.group(1), new Edition(block.group(2), block.group(3)));
  }

  private static Matcher block(String page) {
    Matcher block = BLOCK.matcher(page);
    if (!block.find()) {
      throw new JobFileException("the page", List.of(new Fault(1, 1, "", "", "a page that this program wrote",
          "it carries no job")));
    }
    return block;
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
   * Computes a page again from the job in it and compares. What computed it is taken as the page states it: compare
   * {@link #origin} with {@link Origin#here()}.
   *
   * @param page a page that {@link #html} wrote
   * @return every line that differs; empty if the page is as computed
   * @throws JobFileException if the page carries no job that can be read
   */
  public static List<Difference> recompute(String page) {
    Objects.requireNonNull(page, "page");
    String job = block(page).group(4);
    PaperSize paper = PAPER.matcher(page).find() ? PaperSize.LETTER : PaperSize.A4;
    return differences(page.lines().toList(), html(JobFile.parse(job), paper, origin(page)).lines().toList());
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
