// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Unit;
import java.io.Serializable;
import java.util.Objects;

/**
 * Lower and upper limit of size of a part.
 *
 * @param lower lower limit of size (LLS)
 * @param upper upper limit of size (ULS), not below the lower
 */
public record LimitsOfSize(Length lower, Length upper) implements Serializable {
  // Refuses limits in the wrong order.
  public LimitsOfSize {
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(upper, "upper");
    if (upper.compareTo(lower) < 0) {
      throw new InputException("upper limit of size", upper.toString(), "at least " + lower, "it is not below the lower limit");
    }
  }

  /**
   * Whether a size lies within the limits, ends included.
   *
   * @param size a size
   * @return true if lower ≤ size ≤ upper
   */
  public boolean contains(Length size) {
    Objects.requireNonNull(size, "size");
    return lower.compareTo(size) <= 0 && size.compareTo(upper) <= 0;
  }

  /**
   * The tolerance.
   *
   * @return upper - lower
   */
  public Length tolerance() {
    return upper.minus(lower);
  }

  /**
   * Both limits in a unit, rounded for reading.
   *
   * @param unit a unit of length
   * @param decimals digits after the point, 0 or more
   * @return for example {@code "0.6250 in … 0.6255 in"}
   */
  public String text(Unit<Length> unit, int decimals) {
    Objects.requireNonNull(unit, "unit");
    return lower.text(unit, decimals) + " … " + upper.text(unit, decimals);
  }

  /** Both limits in mm with three decimals, or as many as they need. */
  @Override
  public String toString() {
    return FitText.size(lower) + " … " + FitText.size(upper);
  }
}
