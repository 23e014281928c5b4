// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads a number with a unit. The decimal sign is the point in every locale; a comma is refused, not guessed. */
final class UnitParser {
  private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d++(\\.\\d*+)?|\\.\\d++)([eE][+-]?\\d++)?");
  /** Whole part, then numerator and denominator: 1-1/2, 1 1/2 or 5/8. "1 - 1/2" would be a sum and is refused. */
  private static final Pattern FRACTION = Pattern.compile("([+-]?)(?:(\\d+)(?:-| +))?(\\d+)/(\\d+)");

  private static final Pattern LEADING_NUMBER =
      Pattern.compile("[+-]?(?:\\d+[- ]+\\d+/\\d+|\\d+/\\d+|[\\d.,]+(?:[eE][+-]?\\d+)?)\\s*");

  private UnitParser() {}

  static <Q extends Quantity<Q>> Q parse(String text, String parameter, List<Unit<Q>> units) {
    String stripped = normal(Objects.requireNonNull(text, "text"));
    int split = unitStart(stripped);
    String unitText = stripped.substring(split);
    String numberText = stripped.substring(0, split).strip();
    for (Unit<Q> unit : units) {
      if (unit.isCalled(unitText)) {
        return unit.of(number(numberText, text, parameter));
      }
    }
    String known = units.stream().map(Unit::symbol).collect(Collectors.joining(", "));
    throw new InputException(
        parameter,
        "'" + text + "'",
        "a number and one of the units " + known,
        unitText.isEmpty() ? "the unit is missing" : "'" + unitText + "' is not one of them" + meant(unitText, units));
  }

  /** The unit that is spelled alike but for capitals and the sign between its parts, if there is one. */
  private static <Q extends Quantity<Q>> String meant(String typed, List<Unit<Q>> units) {
    for (Unit<Q> unit : units) {
      if (unit.names().stream().anyMatch(name -> letters(name).equals(letters(typed)))) {
        return "; did you mean " + unit.symbol() + "?";
      }
    }
    return "";
  }

  private static String letters(String unit) {
    return unit.toLowerCase(Locale.ROOT).replaceAll("[\\s·.*-]", "");
  }

  static double number(String text, String parameter) {
    return number(text, text, parameter);
  }

  /** The number in a text, of which an error shows all that was typed. */
  private static double number(String text, String typed, String parameter) {
    String stripped = normal(text);
    if (DECIMAL.matcher(stripped).matches()) {
      return Double.parseDouble(stripped);
    }
    Matcher fraction = FRACTION.matcher(stripped);
    if (fraction.matches()) {
      double numerator = Double.parseDouble(fraction.group(3));
      double denominator = Double.parseDouble(fraction.group(4));
      boolean mixed = fraction.group(2) != null;
      // A whole number beside a fraction of one or more ("1-3/2") is a slip of the pen.
      if (denominator > 0 && !(mixed && numerator >= denominator)) {
        double value = (mixed ? Double.parseDouble(fraction.group(2)) : 0) + numerator / denominator;
        return fraction.group(1).equals("-") ? -value : value;
      }
    }
    throw new InputException(
        parameter,
        "'" + typed + "'",
        "a number such as 25, 25.4, 5/8 or 1-1/2",
        stripped.contains(",") ? "the decimal sign is a point" : "it cannot be read as a number");
  }

  /** Without what typography adds: spaces at the ends, fixed and narrow spaces, the minus sign. */
  private static String normal(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ').replace('\u2009', ' ').replace('\u2212', '-').strip();
  }

  /** The unit starts behind the last digit that belongs to the number. */
  private static int unitStart(String text) {
    Matcher matcher = LEADING_NUMBER.matcher(text);
    return matcher.lookingAt() ? matcher.end() : 0;
  }
}
