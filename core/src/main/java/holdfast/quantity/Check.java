package holdfast.quantity;

/**
 * Checks of arguments in kernels. Every comparison is written so that NaN fails it. Nothing is allocated unless a
 * check fails.
 */
public final class Check {
  private Check() {}

  /**
   * Requires a finite number.
   *
   * @param value the number
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @return the number
   * @throws InputException if the value is NaN or infinite
   */
  public static double finite(double value, String parameter, String unit) {
    if (!Double.isFinite(value)) {
      throw new InputException(parameter, text(value, unit), "a finite number", "NaN and infinity are refused");
    }
    return value;
  }

  /**
   * Requires a finite number other than zero.
   *
   * @param value the number
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limit
   * @return the number
   * @throws InputException if the value is 0, NaN or infinite
   */
  public static double nonZero(double value, String parameter, String unit, String reason) {
    if (!(Math.abs(value) > 0 && Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw new InputException(parameter, text(value, unit), "a finite number other than 0", reason);
    }
    return value;
  }

  /**
   * Requires a finite number above zero.
   *
   * @param value the number
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limit
   * @return the number
   * @throws InputException if not {@code 0 < value < infinity}
   */
  public static double positive(double value, String parameter, String unit, String reason) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new InputException(parameter, text(value, unit), "over 0" + suffix(unit), reason);
    }
    return value;
  }

  /**
   * Requires a finite number that is not negative.
   *
   * @param value the number
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limit
   * @return the number
   * @throws InputException if not {@code 0 <= value < infinity}
   */
  public static double notNegative(double value, String parameter, String unit, String reason) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new InputException(parameter, text(value, unit), "0" + suffix(unit) + " or more", reason);
    }
    return value;
  }

  /**
   * Requires a number in a closed interval.
   *
   * @param value the number
   * @param from least permitted value
   * @param to greatest permitted value
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limits
   * @return the number
   * @throws InputException if not {@code from <= value <= to}
   */
  public static double within(double value, double from, double to, String parameter, String unit, String reason) {
    if (!(value >= from && value <= to)) {
      throw new InputException(
          parameter, text(value, unit), "from " + text(from, unit) + " to " + text(to, unit), reason);
    }
    return value;
  }

  /**
   * Requires a number over a lower end, up to and including an upper end.
   *
   * @param value the number
   * @param over the value must be greater than this
   * @param upTo greatest permitted value
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limits
   * @return the number
   * @throws InputException if not {@code over < value <= upTo}
   */
  public static double overUpTo(double value, double over, double upTo, String parameter, String unit, String reason) {
    if (!(value > over && value <= upTo)) {
      throw new InputException(
          parameter, text(value, unit), "over " + text(over, unit) + " up to " + text(upTo, unit), reason);
    }
    return value;
  }

  private static String text(double value, String unit) {
    return Numbers.shortest(value) + suffix(unit);
  }

  private static String suffix(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }
}
