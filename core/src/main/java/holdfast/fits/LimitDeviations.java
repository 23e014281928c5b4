// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Lower and upper limit deviation from the nominal size: EI and ES of a hole, ei and es of a shaft.
 *
 * @param lower lower limit deviation (EI, ei)
 * @param upper upper limit deviation (ES, es), not below the lower
 */
public record LimitDeviations(Length lower, Length upper) implements Serializable {
  // Refuses deviations in the wrong order.
  public LimitDeviations {
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(upper, "upper");
    if (upper.compareTo(lower) < 0) {
      throw new InputException(
          "upper limit deviation", FitText.deviation(upper), "at least " + FitText.deviation(lower), "it is not below the lower");
    }
  }

  /**
   * The limits of size for a nominal size.
   *
   * @param nominalSize the nominal size
   * @return nominal size + deviations
   */
  public LimitsOfSize at(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return new LimitsOfSize(nominalSize.plus(lower), nominalSize.plus(upper));
  }

  /**
   * Sizes and deviations are decimals: without the noise of binary fractions a clearance of 0 is 0, whichever unit they came
   * in.
   */
  static Length difference(Length of, Length less) {
    return new Length(Math.rint((of.mm() - less.mm()) * 1e11) / 1e11);
  }

  /**
   * The tolerance.
   *
   * @return upper - lower
   */
  public Length tolerance() {
    return upper.minus(lower);
  }

  /** Upper deviation first, as on a drawing: {@code "+6 µm / -15 µm"}. */
  @Override
  public String toString() {
    return FitText.deviation(upper) + " / " + FitText.deviation(lower);
  }
}
