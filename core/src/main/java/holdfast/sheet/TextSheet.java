// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.quantity.PlainText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Renders a sheet as text, at most 100 columns wide. */
final class TextSheet {
  private static final int WIDTH = 100;
  private static final int LABEL = 36;
  private static final String INDENT = "   ";

  private final Sheet sheet;
  private final SourceList sources;
  private final StringBuilder out = new StringBuilder();

  private TextSheet(Sheet sheet) {
    this.sheet = sheet;
    this.sources = new SourceList(sheet);
  }

  static String render(Sheet sheet) {
    return new TextSheet(sheet).render();
  }

  private String render() {
    line("=".repeat(WIDTH));
    wrap("", sheet.title().toUpperCase(Locale.ROOT), 0);
    wrap("", sheet.subtitle(), 0);
    line("=".repeat(WIDTH));
    int number = 0;
    for (Section section : sheet.sections()) {
      number++;
      line("");
      wrap("", number + "  " + section.title().toUpperCase(Locale.ROOT), 3);
      section.blocks().forEach(this::block);
    }
    line("");
    line("-".repeat(WIDTH));
    List<Map.Entry<String, String>> documents = sources.lines();
    if (!documents.isEmpty()) {
      wrap("", "Sources, by the numbers in brackets: document, then place. " + SourceList.LEGEND, 2);
    }
    documents.forEach(line -> wrap("  ", line.getKey() + ": " + line.getValue(), 6));
    sheet.marks().forEach(mark -> wrap("", mark, 0));
    return out.toString();
  }

  private void block(Block block) {
    if (block instanceof Block.Entry entry) {
      wrap(label(entry.label()), entry.value() + marks(entry), LABEL);
    } else if (block instanceof Block.Notice notice) {
      wrap(INDENT + notice.weight().label() + ": ", notice.text() + marks(notice), INDENT.length() + 2);
    } else if (block instanceof Block.Blank blank) {
      wrap(label(blank.label()), "____________________ " + blank.hint(), LABEL);
    } else if (block instanceof Block.Picture picture) {
      wrap(INDENT, picture.title() + ": " + picture.description(), INDENT.length() + 2);
    }
  }

  private String marks(Block block) {
    String marks = sources.marks(block);
    return marks.isEmpty() ? "" : " [" + marks + "]";
  }

  /** Breaks at blanks; lines after the first are indented. A word longer than the line stands on its own line, cut. */
  private void wrap(String head, String text, int indent) {
    List<String> lines = new ArrayList<>();
    StringBuilder current = new StringBuilder(PlainText.printable(head));
    boolean fresh = true;
    for (String word : PlainText.printable(text).split(" ", -1)) {
      String rest = word;
      if (!fresh && current.length() + 1 + rest.length() > WIDTH) {
        lines.add(current.toString());
        current = new StringBuilder(" ".repeat(indent));
        fresh = true;
      }
      while (current.length() + rest.length() > WIDTH) {
        int room = WIDTH - current.length();
        lines.add(current + rest.substring(0, room));
        rest = rest.substring(room);
        current = new StringBuilder(" ".repeat(indent));
        fresh = true;
      }
      current.append(fresh ? "" : " ").append(rest);
      fresh = false;
    }
    lines.add(current.toString());
    lines.forEach(this::line);
  }

  /** The label padded to its column; a long one stands on lines of its own. */
  private String label(String label) {
    if (INDENT.length() + label.length() < LABEL) {
      return INDENT + label + " ".repeat(LABEL - INDENT.length() - label.length());
    }
    wrap(INDENT, label, INDENT.length() + 2);
    return " ".repeat(LABEL);
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }
}
