// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

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
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(subtitle, "subtitle");
    Objects.requireNonNull(sections, "sections");
    Objects.requireNonNull(marks, "marks");
    sections = List.copyOf(sections);
    marks = List.copyOf(marks);
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
   * The sheet for print on A4: one HTML page without scripts and without anything loaded from elsewhere.
   *
   * @return the HTML
   */
  public String html() {
    return html(PaperSize.A4);
  }

  /**
   * The sheet for print: one HTML page without scripts and without anything loaded from elsewhere.
   *
   * @param paper the paper on which it is printed
   * @return the HTML
   */
  public String html(PaperSize paper) {
    Objects.requireNonNull(paper, "paper");
    return HtmlSheet.render(this, paper);
  }
}
