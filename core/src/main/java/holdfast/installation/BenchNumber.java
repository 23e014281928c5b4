// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Check;
import holdfast.quantity.Quantity;
import holdfast.sheet.SafeRounding;
import holdfast.sheet.SheetUnits;
import java.io.Serializable;
import java.util.Objects;

/**
 * A number of the bench card: a result of the plan and how it is rounded.
 *
 * @param exact the result
 * @param side the safe side
 * @param digits significant digits, 1 to 12; temperatures are whole degrees
 */
public record BenchNumber(Quantity<?> exact, SafeRounding side, int digits) implements Serializable {
  // Refuses digits that nobody can print.
  public BenchNumber {
    Objects.requireNonNull(exact, "exact");
    Objects.requireNonNull(side, "side");
    Check.within(digits, 1, 12, "significant digits", "", "digits that say something");
  }

  /** A value at which the work stops, or that must not be exceeded: two digits, down. */
  static BenchNumber stop(Quantity<?> exact) {
    return new BenchNumber(exact, SafeRounding.DOWN, 2);
  }

  /** A value that must at least be reached: two digits, up. */
  static BenchNumber least(Quantity<?> exact) {
    return new BenchNumber(exact, SafeRounding.UP, 2);
  }

  /**
   * The number as it is printed.
   *
   * @param units units of the card
   * @return for example {@code "21 kN"}
   */
  public String text(SheetUnits units) {
    Objects.requireNonNull(units, "units");
    return units.safe(exact, side, digits);
  }
}
