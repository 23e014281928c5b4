package holdfast.sheet;

import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;

/**
 * A sheet for the bench.
 *
 * @param title what the sheet is for
 * @param subtitle the job
 * @param sections its sections in the order of the work
 * @param marks lines at the foot: table set, digest, version
 */
public record Sheet(String title, String subtitle, List<Section> sections, List<String> marks) implements Serializable {
  // Keeps unmodifiable copies of the lists.
  public Sheet {
    sections = List.copyOf(sections);
    marks = List.copyOf(marks);
  }

  /**
   * The sources of the whole sheet with their numbers, in order of first use.
   *
   * @return source to number, counted from 1
   */
  public Map<SourceRef, Integer> numberedSources() {
    Map<SourceRef, Integer> numbers = new LinkedHashMap<>();
    for (Section section : sections) {
      for (Block block : section.blocks()) {
        block.sources().forEach(source -> numbers.putIfAbsent(source, numbers.size() + 1));
      }
    }
    return numbers;
  }

  /**
   * The sheet for a terminal, at most 100 columns wide.
   *
   * @return the text
   */
  public String text() {
    return TextSheet.render(this);
  }

  /**
   * The sheet for print: one HTML page without scripts and without anything loaded from elsewhere.
   *
   * @return the HTML
   */
  public String html() {
    return HtmlSheet.render(this);
  }

  /** The numbers of a block's sources, runs drawn together: {@code "3, 9–14"}; empty if it has none. */
  static String marks(Block block, Map<SourceRef, Integer> numbers) {
    int[] sorted = block.sources().stream().mapToInt(numbers::get).distinct().sorted().toArray();
    StringJoiner marks = new StringJoiner(", ");
    for (int first = 0; first < sorted.length; ) {
      int last = first;
      while (last + 1 < sorted.length && sorted[last + 1] == sorted[last] + 1) {
        last++;
      }
      // Two neighbours are no run worth a dash.
      String run = last == first ? "" : (last == first + 1 ? ", " : "–") + sorted[last];
      marks.add(sorted[first] + run);
      first = last + 1;
    }
    return marks.toString();
  }
}
