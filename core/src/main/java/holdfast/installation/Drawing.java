// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Numbers;
import holdfast.sheet.Block;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Collects what a picture shows, in points of 1/72 inch, so that its text has the size it states. Not thread-safe. */
final class Drawing {
  /** Size of the text and height that a row of it takes. */
  static final double TEXT = 9;

  static final double ROW = 10.8;

  private static final double NARROWEST = 0.01;

  private final String id;
  private final double width;
  private final double height;
  private final List<Map<String, Object>> boxes = new ArrayList<>();
  private final List<Map<String, Object>> lines = new ArrayList<>();
  private final List<Map<String, Object>> arrows = new ArrayList<>();
  private final List<Map<String, Object>> texts = new ArrayList<>();

  Drawing(String id, double width, double height) {
    this.id = id;
    this.width = width;
    this.height = height;
  }

  /** How a box is filled. */
  enum Fill {
    /** White. */
    WHITE,
    /** Grey. */
    GREY,
    /** Black. */
    BLACK,
    /** Hatched: a part that is cut. */
    CUT
  }

  Drawing box(double x, double y, double w, double h, Fill fill) {
    if (w > NARROWEST && h > NARROWEST) {
      String paint = switch (fill) {
        case WHITE -> "#fff";
        case GREY -> "#ddd";
        case BLACK -> "#000";
        case CUT -> "url(#" + id + "-hatch)";
      };
      boxes.add(Map.of("x", px(x), "y", px(y), "w", px(w), "h", px(h), "fill", paint, "stroke", "0.8"));
    }
    return this;
  }

  Drawing line(double x1, double y1, double x2, double y2) {
    return line(x1, y1, x2, y2, "0.6", "");
  }

  Drawing axis(double x1, double x2, double y) {
    return line(x1, y, x2, y, "0.5", "9 2 2 2");
  }

  private Drawing line(double x1, double y1, double x2, double y2, String stroke, String dashes) {
    lines.add(Map.of("x1", px(x1), "y1", px(y1), "x2", px(x2), "y2", px(y2), "stroke", stroke,
        "dashes", dashes.isEmpty() ? List.of() : List.of(dashes)));
    return this;
  }

  /** A thick arrow whose tip is at x, y and that comes from the left if dx is over 0, from above if dy is over 0. */
  Drawing arrow(double x, double y, int dx, int dy, double length) {
    double bx = x - 7 * dx;
    double by = y - 7 * dy;
    arrows.add(Map.of("d", "M " + px(x) + " " + px(y) + " L " + px(bx - 4 * dy) + " " + px(by - 4 * dx) + " L "
        + px(bx + 4 * dy) + " " + px(by + 4 * dx) + " Z"));
    return line(x - length * dx, y - length * dy, bx, by, "2", "");
  }

  /** Where a text is held. */
  enum Anchor {
    /** At its start. */
    START,
    /** In its middle. */
    MIDDLE,
    /** At its end. */
    END
  }

  Drawing text(double x, double y, Anchor anchor, String text, boolean bold) {
    texts.add(Map.of("x", px(x), "y", px(y), "anchor", anchor.name().toLowerCase(Locale.ROOT), "text", text,
        "bold", bold));
    return this;
  }

  Block.Picture picture(String title, String description) {
    Map<String, Object> values = new HashMap<>();
    values.put("id", id);
    values.put("width", px(width));
    values.put("height", px(height));
    values.put("boxes", boxes);
    values.put("lines", lines);
    values.put("arrows", arrows);
    values.put("texts", texts);
    return new Block.Picture(title, description, "drawing.svg", values);
  }

  private static String px(double value) {
    return Numbers.significant(Math.rint(value * 100) / 100, 6);
  }
}
