// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Length;
import java.util.Objects;

/** Kind of a fit (ISO 286-1:2010, 3.3). */
public enum FitKind {
  /** The hole is never smaller than the shaft. */
  CLEARANCE("clearance fit"),
  /** Clearance or interference, as the parts turn out. */
  TRANSITION("transition fit"),
  /** The hole is never larger than the shaft. */
  INTERFERENCE("interference fit");

  private final String label;

  FitKind(String label) {
    this.label = label;
  }

  /**
   * The kind that two clearances make.
   *
   * @param minimumClearance least clearance; negative for an interference
   * @param maximumClearance greatest clearance; negative for an interference
   * @return clearance if the least clearance is not negative, else interference if the greatest is not positive, else
   *     transition; a millionth of a micrometre is 0, so that the rounding of corrected sizes decides nothing
   */
  public static FitKind of(Length minimumClearance, Length maximumClearance) {
    Objects.requireNonNull(minimumClearance, "minimumClearance");
    Objects.requireNonNull(maximumClearance, "maximumClearance");
    if (minimumClearance.mm() >= -Conformity.NOISE) {
      return CLEARANCE;
    }
    return maximumClearance.mm() <= Conformity.NOISE ? INTERFERENCE : TRANSITION;
  }

  @Override
  public String toString() {
    return label;
  }
}
