// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Quantity;
import holdfast.quantity.Stress;
import holdfast.quantity.Temperature;
import holdfast.quantity.Torque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds metric quantities in a sentence. */
final class MetricText {
  /** A number and a unit that no other unit goes on from, as in mm²/s or kN/mm. */
  private static final Pattern QUANTITY =
      Pattern.compile("(?<![\\w.,–-])(-?\\d+(?:\\.\\d+)?) (mm|µm|kN|N·mm|N·m|N|MPa|GPa|°C)(?![\\w·/²³])");

  private static final Pattern INCH = Pattern.compile("\\d (in|lbf|lbf·in|lbf·ft|psi|ksi|°F)(?![\\w²³])");

  private MetricText() {}

  static boolean hasInch(String sentence) {
    return INCH.matcher(sentence).find();
  }

  static String convert(String sentence, SheetUnits units) {
    Matcher matcher = QUANTITY.matcher(sentence);
    StringBuilder text = new StringBuilder();
    while (matcher.find()) {
      matcher.appendReplacement(text, Matcher.quoteReplacement(units.text(read(matcher.group(), matcher.group(2)))));
    }
    return matcher.appendTail(text).toString();
  }

  private static Quantity<?> read(String quantity, String unit) {
    return switch (unit) {
      case "mm", "µm" -> Length.parse(quantity);
      case "N", "kN" -> Force.parse(quantity);
      case "N·m", "N·mm" -> Torque.parse(quantity);
      case "MPa", "GPa" -> Stress.parse(quantity);
      default -> Temperature.parse(quantity);
    };
  }
}
