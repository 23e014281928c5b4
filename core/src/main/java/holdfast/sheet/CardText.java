// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.quantity.PlainText;
import java.util.Locale;

/** Renders a card as text, at most 100 columns wide. */
final class CardText {
  private static final int WIDTH = 100;

  private CardText() {}

  static String of(Card card) {
    StringBuilder out = new StringBuilder();
    wrap(out, "", card.title().toUpperCase(Locale.ROOT), "");
    wrap(out, "", card.subtitle(), "");
    out.append('\n');
    for (Card.Stop stop : card.stops()) {
      wrap(out, "DO NOT INSTALL: ", stop.why() + " " + stop.opens(), "  ");
    }
    card.drawing().ifPresent(picture -> wrap(out, "", picture.title() + ": " + picture.description(), "  "));
    int number = 0;
    for (Card.Item item : card.items()) {
      number++;
      wrap(out, "[ ] " + number + " ", item.title(), "");
      item.lines().forEach(line -> wrap(out, "      ", line.text(), "        "));
    }
    card.marks().forEach(mark -> wrap(out, "", mark, ""));
    return out.toString();
  }

  private static void wrap(StringBuilder out, String head, String text, String indent) {
    StringBuilder line = new StringBuilder(head);
    boolean fresh = true;
    for (String word : PlainText.printable(text).split(" ", -1)) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        out.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(indent);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }
}
