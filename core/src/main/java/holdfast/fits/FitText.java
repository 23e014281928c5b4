// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Unit;

/** Sizes and deviations as they stand on a drawing. */
final class FitText {
  private FitText() {}

  /** A size in mm, at least three decimals; more only where a tenth of a micrometre is meant. */
  static String size(Length size) {
    return decimals(size.mm(), 3) + " mm";
  }

  /** A nominal size as it stands before a tolerance class: the bare number of mm, or inches with their unit. */
  static String nominal(Length size, boolean inches) {
    return Numbers.significant(size.in(inches ? KnownUnits.INCH : KnownUnits.MM), 10) + (inches ? " in" : "");
  }

  /** A deviation in µm with its sign, to a hundredth of a micrometre where needed. */
  static String deviation(Length deviation) {
    return signed(deviation, KnownUnits.UM);
  }

  /** A deviation with its sign, to a hundredth of the unit where needed. */
  static String signed(Length deviation, Unit<Length> unit) {
    return plus(deviation) + hundredths(deviation, unit) + " " + unit.symbol();
  }

  static String deviations(LimitDeviations deviations, boolean inches) {
    return inches
        ? plus(deviations.upper()) + inch(deviations.upper()) + " / " + plus(deviations.lower()) + inch(deviations.lower())
        : deviations.toString();
  }

  /** Limits in mm; of an inch size in inches, with the mm beside them. */
  static String limits(LimitsOfSize limits, boolean inches) {
    return inches ? inch(limits.lower()) + " … " + inch(limits.upper()) + " (" + limits + ")" : limits.toString();
  }

  /** A limit of size in mm; of an inch size in inches, with the mm beside it. */
  static String drawn(Length size, boolean inches) {
    return inches ? inch(size) + " (" + size(size) + ")" : size(size);
  }

  /** Measured sizes: no digit below a tenth of a micrometre or a hundred-thousandth of an inch. */
  static String measured(LimitsOfSize sizes, boolean inches) {
    String mm = sizes.lower().text(KnownUnits.MM, 4) + " … " + sizes.upper().text(KnownUnits.MM, 4);
    return inches
        ? sizes.lower().text(KnownUnits.INCH, 5) + " … " + sizes.upper().text(KnownUnits.INCH, 5) + " (" + mm + ")"
        : mm;
  }

  /** The span of clearance or interference of a fit, the smaller amount first; of an inch fit in inches and µm. */
  static String clearances(Length least, Length greatest, boolean inches) {
    return switch (FitKind.of(least, greatest)) {
      case CLEARANCE -> span(least, "", greatest, "clearance", inches);
      case INTERFERENCE -> span(greatest, "", least, "interference", inches);
      case TRANSITION -> span(least, " interference", greatest, "clearance", inches);
    };
  }

  private static String span(Length first, String word, Length last, String lastWord, boolean inches) {
    String text = amount(first, inches) + word + " … " + amount(last, inches) + " " + lastWord;
    return inches ? text + " (" + amount(first, false) + " … " + amount(last, false) + ")" : text;
  }

  /** An amount without sign. */
  static String amount(Length length, boolean inches) {
    Length positive = length.mm() < 0 ? length.negated() : length;
    return inches ? inch(positive) : hundredths(positive, KnownUnits.UM) + " µm";
  }

  private static String plus(Length deviation) {
    return deviation.mm() > 1e-9 ? "+" : "";
  }

  private static String hundredths(Length length, Unit<Length> unit) {
    return Numbers.significant(Math.rint(length.in(unit) * 100) / 100, 9);
  }

  /** Inches with four decimals, or as many more as it takes. */
  private static String inch(Length length) {
    return decimals(length.in(KnownUnits.INCH), 4) + " in";
  }

  private static String decimals(double value, int decimals) {
    String text = Numbers.fixed(value, decimals);
    for (int more = decimals + 1; more <= decimals + 2 && Math.abs(Double.parseDouble(text) - value) > 2e-7; more++) {
      text = Numbers.fixed(value, more);
    }
    return text;
  }
}
