// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text: always with a decimal point, whatever the locale of the machine, and never as 1.2E-5. */
public final class Numbers {
  private static final int MOST_DIGITS = 1000;

  private Numbers() {}

  /**
   * Rounds to a number of decimals, half to even on the shortest decimal form of the double.
   *
   * @param value a number
   * @param decimals digits after the point, from 0 to 1000
   * @return the text, for example {@code "25.400"}; never {@code "-0.000"}
   * @throws InputException if the number of digits is outside its range
   */
  public static String fixed(double value, int decimals) {
    Check.within(decimals, 0, MOST_DIGITS, "decimals", "", "digits after the point");
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.toPlainString();
  }

  /**
   * Rounds to significant digits and drops zeros that say nothing.
   *
   * @param value a number
   * @param digits significant digits, from 1 to 1000
   * @return the text, for example {@code "57.38"} for 57.3829 and 4 digits, {@code "12000"} for 12000
   * @throws InputException if the number of digits is outside its range
   */
  public static String significant(double value, int digits) {
    Check.within(digits, 1, MOST_DIGITS, "significant digits", "", "digits that say something");
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
    return rounded.stripTrailingZeros().toPlainString();
  }

  /**
   * A computed number without the digits that its inputs do not support.
   *
   * @param value finite number in any unit
   * @param digits significant digits, 1 or more
   * @return the nearest number with so many digits, in the unit of the value
   * @throws InputException if the value is not finite or the number of digits is outside its range
   */
  public static double rounded(double value, int digits) {
    Check.finite(value, "value", "");
    return Double.parseDouble(significant(value, digits));
  }

  /**
   * The shortest text that reads back as the same double to 15 significant digits.
   *
   * @param value a number
   * @return the text, without exponent
   */
  public static String shortest(double value) {
    return significant(value, 15);
  }
}
