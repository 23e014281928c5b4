// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Numbers;
import holdfast.sheet.Block;
import java.util.ArrayList;
import java.util.List;

/** Draws the margins of a plan as bars on a logarithmic scale, the governing one black. */
final class MarginPicture {
  private static final double WIDTH = 530;
  private static final double BARS = 215;
  private static final double LENGTH = 220;
  /** Ends of the scale; what lies beyond is drawn to its end and printed as a number. */
  private static final double LOW = 0.2;
  private static final double HIGH = 20;

  private MarginPicture() {}

  static Block.Picture of(PlanLimits limits) {
    List<LimitCheck> checks = limits.checks().stream().filter(check -> check.margin().isPresent()).toList();
    LimitCheck governing = limits.governing();
    double bottom = 4 + Drawing.ROW * checks.size();
    Drawing drawing = new Drawing("margins", WIDTH, bottom + 14);
    List<String> words = new ArrayList<>();
    double y = 2;
    for (LimitCheck check : checks) {
      double margin = check.margin().getAsDouble();
      boolean governs = check.equals(governing);
      drawing.text(BARS - 4, y + 8.5, Drawing.Anchor.END, check.name(), governs);
      drawing.box(BARS, y + 1.5, x(margin) - BARS, Drawing.ROW - 3,
          governs ? Drawing.Fill.BLACK : check.holds() ? Drawing.Fill.GREY : Drawing.Fill.CUT);
      String number = Numbers.significant(margin, 3);
      drawing.text(x(margin) + 4, y + 8.5, Drawing.Anchor.START,
          number + (governs ? ", governs" : "") + (check.holds() ? "" : ", EXCEEDED"), governs);
      words.add(check.name() + " " + number);
      y += Drawing.ROW;
    }
    drawing.line(x(1), 0, x(1), bottom);
    drawing.text(x(1), bottom + 10, Drawing.Anchor.MIDDLE, "1: the limit itself", false);
    return drawing.picture("Margins, logarithmic scale", String.join("; ", words) + "; governed by " + governing.name());
  }

  private static double x(double margin) {
    double share = Math.log(Math.min(HIGH, Math.max(LOW, margin)) / LOW) / Math.log(HIGH / LOW);
    return BARS + LENGTH * share;
  }
}
