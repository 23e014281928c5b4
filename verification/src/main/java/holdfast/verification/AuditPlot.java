// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where the evidence is: a disc for each subject and kind of evidence, its area that of the number of comparisons. Kinds that
 * prove little are hollow.
 */
final class AuditPlot {
  private static final int LEFT = 110;
  private static final int TOP = 62;
  private static final int STEP = 82;
  private static final int ROW = 40;
  /** Radius of the greatest disc. */
  private static final double GREATEST = 18;
  private static final double LEAST = 1.5;
  /** Letters in a line of a heading. */
  private static final int WORDS = 13;

  private AuditPlot() {}

  /** The number of comparisons of a subject and kind. */
  static Map<String, Map<Evidence, Long>> counts(Audit audit) {
    Map<String, Map<Evidence, Long>> counts = new TreeMap<>();
    for (Audit.Result result : audit.results()) {
      String subject = AuditPage.subject(result.suite().id());
      for (Comparison comparison : result.comparisons()) {
        counts.computeIfAbsent(subject, s -> new EnumMap<>(Evidence.class)).merge(comparison.evidence(), 1L, Long::sum);
      }
    }
    return counts;
  }

  static String svg(Audit audit) {
    Map<String, Map<Evidence, Long>> counts = counts(audit);
    long most = counts.values().stream().flatMap(of -> of.values().stream()).mapToLong(Long::longValue).max().orElse(1);
    Evidence[] kinds = Evidence.values();
    int width = LEFT + STEP * kinds.length + 10;
    int height = TOP + ROW * counts.size() + 8;
    StringBuilder svg = new StringBuilder();
    svg.append("<svg role=\"img\" aria-label=\"Comparisons by subject and kind of evidence\" viewBox=\"0 0 ")
        .append(width).append(' ').append(height).append("\" width=\"100%\" style=\"max-width:").append(width).append("px\">\n");
    for (int k = 0; k < kinds.length; k++) {
      String[] words = lines(kinds[k].label());
      double x = LEFT + STEP * (k + 0.4);
      for (int line = 0; line < words.length; line++) {
        text(svg, x, TOP - 8 - 13 * (words.length - 1 - line), "middle", words[line]);
      }
    }
    int row = 0;
    for (Map.Entry<String, Map<Evidence, Long>> subject : counts.entrySet()) {
      double y = TOP + ROW * (row + 0.5);
      svg.append("<path stroke=\"#999\" d=\"M0 ").append(TOP + ROW * row).append('H').append(width).append("\"/>\n");
      text(svg, 4, y + 5, "start", subject.getKey());
      for (int k = 0; k < kinds.length; k++) {
        long count = subject.getValue().getOrDefault(kinds[k], 0L);
        if (count > 0) {
          disc(svg, LEFT + STEP * (k + 0.4), y, count, most, CalculationCoverage.WEAK.contains(kinds[k]));
        }
      }
      row++;
    }
    return svg.append("</svg>\n").toString();
  }

  private static void disc(StringBuilder svg, double x, double y, long count, long most, boolean weak) {
    double radius = Math.max(LEAST, GREATEST * Math.sqrt((double) count / most));
    String fill = weak ? "none" : "#bbb";
    svg.append(String.format(
        Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" fill=\"%s\" stroke=\"#000\"/>\n", x, y, radius, fill));
    text(svg, x + radius + 3, y + 5, "start", Long.toString(count));
  }

  /** The words in lines that a column takes. */
  private static String[] lines(String label) {
    StringBuilder lines = new StringBuilder();
    int length = 0;
    for (String word : label.split(" ", -1)) {
      boolean fits = length > 0 && length + word.length() < WORDS;
      lines.append(length == 0 ? "" : fits ? " " : "\n").append(word);
      length = fits ? length + 1 + word.length() : word.length();
    }
    return lines.toString().split("\n", -1);
  }

  private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
    svg.append(String.format(
        Locale.ROOT,
        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" font-size=\"13\">%s</text>\n",
        x,
        y,
        anchor,
        escaped(words)));
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
