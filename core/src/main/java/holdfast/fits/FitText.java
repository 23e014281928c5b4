package holdfast.fits;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;

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
    return signed(deviation, false);
  }

  static String deviations(LimitDeviations deviations, boolean inches) {
    return signed(deviations.upper(), inches) + " / " + signed(deviations.lower(), inches);
  }

  static String limits(LimitsOfSize limits, boolean inches) {
    if (!inches) {
      return limits.toString();
    }
    return decimals(limits.lower().in(KnownUnits.INCH), 4) + " in … " + decimals(limits.upper().in(KnownUnits.INCH), 4) + " in";
  }

  /** The span of clearance or interference of a fit, the smaller amount first. */
  static String clearances(Length least, Length greatest, boolean inches) {
    String loose = amount(greatest, inches);
    String tight = amount(least, inches);
    return switch (FitKind.of(least, greatest)) {
      case CLEARANCE -> tight + " … " + loose + " clearance";
      case INTERFERENCE -> loose + " … " + tight + " interference";
      case TRANSITION -> tight + " interference … " + loose + " clearance";
    };
  }

  /** An amount without sign. */
  static String amount(Length length, boolean inches) {
    Length positive = length.mm() < 0 ? length.negated() : length;
    return number(positive, inches) + unit(inches);
  }

  private static String signed(Length deviation, boolean inches) {
    String text = number(deviation, inches);
    return (deviation.mm() > 0 && !text.equals("0") ? "+" : "") + text + unit(inches);
  }

  private static String number(Length length, boolean inches) {
    double grain = inches ? 1e6 : 100;
    double value = length.in(inches ? KnownUnits.INCH : KnownUnits.UM);
    return Numbers.significant(Math.rint(value * grain) / grain, 9);
  }

  private static String unit(boolean inches) {
    return inches ? " in" : " µm";
  }

  private static String decimals(double value, int decimals) {
    String text = Numbers.fixed(value, decimals);
    for (int more = decimals + 1; more <= decimals + 2 && Math.abs(Double.parseDouble(text) - value) > 2e-7; more++) {
      text = Numbers.fixed(value, more);
    }
    return text;
  }
}
