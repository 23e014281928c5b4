// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * Checks of arguments in kernels. Every comparison is written so that NaN fails it. Nothing is allocated unless a
 * check fails.
 *
 * <p>A number may be as large as {@link #GREATEST} and a divisor as small as {@link #LEAST}. No dimension, force or life
 * of a machine comes near either, and the products, quotients and powers that the formulas form of such numbers stay
 * finite, so that no infinity arises inside.
 *
 * <p>The texts of a check are read only when it refuses; then a missing one is refused by its name.
 */
public final class Check {
  /** Greatest size of a number that is taken, in whatever base unit. */
  public static final double GREATEST = 1e30;

  /** Least size of a number that must not be 0, in whatever base unit. */
  public static final double LEAST = 1e-30;

  private static final String TOO_FAR = "no machine has such a number, and formulas would leave the range of the numbers";

  private Check() {}

  /**
   * Requires a finite number no larger than {@link #GREATEST} either way.
   *
   * @param value the number in the unit named
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @return the number
   * @throws InputException if the value is NaN, infinite or larger than {@link #GREATEST}
   */
  public static double finite(double value, String parameter, String unit) {
    if (!(Math.abs(value) <= GREATEST)) {
      throw tooLarge(value, parameter, unit, "NaN and infinity are refused");
    }
    return value;
  }

  /**
   * Requires a finite number other than zero, its size from {@link #LEAST} to {@link #GREATEST}.
   *
   * @param value the number in the unit named
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limit
   * @return the number
   * @throws InputException if the value is 0, NaN or infinite
   */
  public static double nonZero(double value, String parameter, String unit, String reason) {
    if (!(Math.abs(value) >= LEAST && Math.abs(value) <= GREATEST)) {
      if (value != 0 && Double.isFinite(value)) {
        throw tooSmallOrLarge(value, parameter, unit);
      }
      throw new InputException(parameter, text(value, unit), "a finite number other than 0", reason);
    }
    return value;
  }

  /**
   * Requires a number above zero, from {@link #LEAST} to {@link #GREATEST}.
   *
   * @param value the number in the unit named
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limit
   * @return the number
   * @throws InputException if not {@code LEAST <= value <= GREATEST}
   */
  public static double positive(double value, String parameter, String unit, String reason) {
    if (!(value >= LEAST && value <= GREATEST)) {
      if (value > 0) {
        throw tooSmallOrLarge(value, parameter, unit);
      }
      throw new InputException(parameter, text(value, unit), "over 0" + suffix(unit), reason);
    }
    return value;
  }

  /**
   * Requires a number from zero to {@link #GREATEST}.
   *
   * @param value the number in the unit named
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limit
   * @return the number
   * @throws InputException if not {@code 0 <= value <= GREATEST}
   */
  public static double notNegative(double value, String parameter, String unit, String reason) {
    return atLeast(value, 0, parameter, unit, reason);
  }

  /**
   * Requires a number from a lower end to {@link #GREATEST}.
   *
   * @param value the number in the unit named
   * @param least least permitted value in the unit named
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limit
   * @return the number
   * @throws InputException if not {@code least <= value <= GREATEST}
   */
  public static double atLeast(double value, double least, String parameter, String unit, String reason) {
    if (!(value >= least && value <= GREATEST)) {
      if (value > least) {
        throw tooLarge(value, parameter, unit, reason);
      }
      throw new InputException(parameter, text(value, unit, least, least), text(least, unit) + " or more", reason);
    }
    return value;
  }

  /**
   * Requires a number in a closed interval.
   *
   * @param value the number in the unit named
   * @param from least permitted value in the unit named
   * @param to greatest permitted value in the unit named
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limits
   * @return the number
   * @throws InputException if not {@code from <= value <= to}
   */
  public static double within(double value, double from, double to, String parameter, String unit, String reason) {
    if (!(value >= from && value <= to)) {
      throw new InputException(
          parameter, text(value, unit, from, to), "from " + text(from, unit) + " to " + text(to, unit), reason);
    }
    return value;
  }

  /**
   * Requires a number over a lower end, up to and including an upper end.
   *
   * @param value the number in the unit named
   * @param over the value, in the unit named, must be greater than this
   * @param upTo greatest permitted value in the unit named
   * @param parameter its name
   * @param unit its unit, empty for a pure number
   * @param reason why, or the source of the limits
   * @return the number
   * @throws InputException if not {@code over < value <= upTo}
   */
  public static double overUpTo(double value, double over, double upTo, String parameter, String unit, String reason) {
    if (!(value > over && value <= upTo)) {
      throw new InputException(
          parameter, text(value, unit, over, upTo), "over " + text(over, unit) + " up to " + text(upTo, unit), reason);
    }
    return value;
  }

  private static InputException tooLarge(double value, String parameter, String unit, String reason) {
    boolean number = Double.isFinite(value);
    String permitted = number ? "1E30" + suffix(unit) + " or less in size" : "a finite number";
    return new InputException(parameter, text(value, unit), permitted, number ? TOO_FAR : reason);
  }

  private static InputException tooSmallOrLarge(double value, String parameter, String unit) {
    if (Math.abs(value) > GREATEST) {
      return tooLarge(value, parameter, unit, "NaN and infinity are refused");
    }
    return new InputException(parameter, text(value, unit), "1E-30" + suffix(unit) + " or more in size", TOO_FAR);
  }

  /** A refused value beside its limits: if rounding makes it read like one of them, all its digits. */
  private static String text(double value, String unit, double from, double to) {
    String text = text(value, unit);
    boolean looksRight = text.equals(text(from, unit)) || text.equals(text(to, unit));
    return looksRight && value != from && value != to ? Double.toString(value) + suffix(unit) : text;
  }

  private static String text(double value, String unit) {
    double size = Math.abs(value);
    boolean readable = size == 0 || (size >= 1e-15 && size < 1e18);
    return (readable ? Numbers.shortest(value) : Double.toString(value)) + suffix(unit);
  }

  private static String suffix(String unit) {
    return Objects.requireNonNull(unit, "unit").isEmpty() ? "" : " " + unit;
  }
}
