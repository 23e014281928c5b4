// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.trace.SignalWord;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One side of paper for the bench: a picture and numbered steps to be ticked off, or the reasons why nothing is done.
 *
 * @param title what the card is for
 * @param subtitle the job and its parts
 * @param picture what the job looks like; null on a card that is not released
 * @param items the steps in the order of the work; empty on a card that is not released
 * @param stops why nothing is done, each followed by what opens it; empty on a card that is released
 * @param marks lines at the foot
 */
public record Card(
    String title, String subtitle, Block.Picture picture, List<Item> items, List<Stop> stops, List<String> marks)
    implements Serializable {

  /** How a piece of a line is printed. */
  public enum Style {
    /** As text. */
    PLAIN,
    /** A number of the record, in bold. */
    NUMBER,
    /** The number on which the work hangs, large. */
    LARGE,
    /** Room to write. */
    BLANK
  }

  /**
   * A piece of a line.
   *
   * @param text what is printed; for room to write what is to be written
   * @param style how it is printed
   */
  public record Part(String text, Style style) implements Serializable {
    public Part {
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(style, "style");
    }
  }

  /**
   * A line of a step.
   *
   * @param signal what can happen; null for plain advice
   * @param hold whether the work waits here until somebody signs
   * @param parts its pieces, which follow each other
   */
  public record Line(SignalWord signal, boolean hold, List<Part> parts) implements Serializable {
    // Keeps an unmodifiable copy.
    public Line {
      Objects.requireNonNull(parts, "parts");
      parts = List.copyOf(parts);
    }

    /**
     * The line as it reads.
     *
     * @return the text; a row of underscores stands for room to write
     */
    public String text() {
      StringBuilder text = new StringBuilder();
      if (hold) {
        text.append("HOLD POINT. ");
      }
      if (signal != null) {
        text.append(signal).append(": ");
      }
      parts.forEach(part -> text.append(part.style() == Style.BLANK ? "________" : part.text()));
      return text.toString();
    }
  }

  /**
   * A step.
   *
   * @param title what is done
   * @param lines how
   */
  public record Item(String title, List<Line> lines) implements Serializable {
    // Keeps an unmodifiable copy.
    public Item {
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(lines, "lines");
      lines = List.copyOf(lines);
    }
  }

  /**
   * A reason why nothing is done.
   *
   * @param why the reason in one sentence
   * @param opens what opens the way
   */
  public record Stop(String why, String opens) implements Serializable {
    public Stop {
      Objects.requireNonNull(why, "why");
      Objects.requireNonNull(opens, "opens");
    }
  }

  // Keeps unmodifiable copies.
  public Card {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(subtitle, "subtitle");
    Objects.requireNonNull(items, "items");
    Objects.requireNonNull(stops, "stops");
    Objects.requireNonNull(marks, "marks");
    items = List.copyOf(items);
    stops = List.copyOf(stops);
    marks = List.copyOf(marks);
  }

  /**
   * The card for print: one page without scripts and without anything loaded from elsewhere.
   *
   * @param paper the paper
   * @return the HTML
   */
  public String html(PaperSize paper) {
    Objects.requireNonNull(paper, "paper");
    Map<String, Object> values = new HashMap<>();
    values.put("title", title);
    values.put("subtitle", subtitle);
    values.put("paper", paper.toString());
    values.put("picture", picture == null ? "" : picture.svg());
    values.put("released", stops.isEmpty());
    values.put("stops", stops.stream().map(stop -> Map.of("why", stop.why(), "opens", stop.opens())).toList());
    values.put("marks", marks);
    List<Map<String, Object>> steps = new ArrayList<>();
    for (Item item : items) {
      steps.add(Map.of("number", steps.size() + 1, "title", item.title(),
          "lines", item.lines().stream().map(Card::line).toList()));
    }
    values.put("items", steps);
    return Templates.render("card.html", values);
  }

  private static Map<String, Object> line(Line line) {
    String word = line.signal() == null ? "" : line.signal().name();
    boolean field = line.hold() || line.parts().stream().filter(part -> part.style() == Style.BLANK).count() > 1;
    return Map.of("field", field, "signal", word, "kind", word.toLowerCase(Locale.ROOT),
        "marked", line.signal() != null, "hold", line.hold(),
        "parts", line.parts().stream().map(part -> Map.of("text", part.text(),
            "plain", part.style() == Style.PLAIN, "number", part.style() == Style.NUMBER,
            "large", part.style() == Style.LARGE, "blank", part.style() == Style.BLANK)).toList());
  }

  /**
   * The card for a terminal, at most 100 columns wide.
   *
   * @return the text
   */
  public String text() {
    return CardText.of(this);
  }

  /**
   * What the job looks like.
   *
   * @return the picture; empty on a card that is not released
   */
  public Optional<Block.Picture> drawing() {
    return Optional.ofNullable(picture);
  }
}
