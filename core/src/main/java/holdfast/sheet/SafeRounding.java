// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.quantity.Check;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** To which side a number is rounded for the shop. */
public enum SafeRounding {
  /** Down: values at which the work stops, greatest torques, forces and temperatures, intervals and lives. */
  DOWN(RoundingMode.FLOOR),
  /** Up: values that must at least be reached, such as grease, a torque to be held, a temperature that opens a fit. */
  UP(RoundingMode.CEILING);

  /** A conversion leaves dust in the 16th digit, which must not carry a number over the next step. */
  private static final MathContext DUST = new MathContext(12, RoundingMode.HALF_EVEN);

  private final RoundingMode mode;

  SafeRounding(RoundingMode mode) {
    this.mode = mode;
  }

  /**
   * Rounds to significant digits.
   *
   * @param value number without unit
   * @param digits significant digits, 1 to 12
   * @return the nearest number of so many digits on the safe side
   * @throws holdfast.quantity.InputException if the value is not finite or the digits are out of range
   */
  public double significant(double value, int digits) {
    return Double.parseDouble(text(value, digits));
  }

  /**
   * Rounds to significant digits.
   *
   * @param value number without unit
   * @param digits significant digits, 1 to 12
   * @return the number as it is printed, for example {@code "0.83"}
   * @throws holdfast.quantity.InputException if the value is not finite or the digits are out of range
   */
  public String text(double value, int digits) {
    Check.finite(value, "number to be rounded", "");
    Check.within(digits, 1, 12, "significant digits", "", "digits that say something");
    BigDecimal clean = BigDecimal.valueOf(value).round(DUST);
    if (clean.signum() == 0) {
      return "0";
    }
    int scale = digits - (clean.precision() - clean.scale());
    return plain(clean.setScale(scale, mode));
  }

  /**
   * Rounds to a whole number.
   *
   * @param value number without unit
   * @return the number as it is printed
   * @throws holdfast.quantity.InputException if the value is not finite
   */
  public String whole(double value) {
    Check.finite(value, "number to be rounded", "");
    return plain(BigDecimal.valueOf(value).round(DUST).setScale(0, mode));
  }

  private static String plain(BigDecimal rounded) {
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
