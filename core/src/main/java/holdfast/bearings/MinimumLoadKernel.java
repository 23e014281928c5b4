// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;
import java.util.Objects;

/** Least load for rolling without sliding. */
public final class MinimumLoadKernel {
  private MinimumLoadKernel() {}

  /**
   * Guiding value of the least load: 0.01 C for ball bearings, 0.02 C for roller bearings.
   *
   * @param family family of the bearing
   * @param c basic dynamic load rating in N, over 0
   * @return load in N
   * @throws holdfast.quantity.InputException if the rating is not above zero
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = "page 106, minimum load, general rule")
  public static double guidingValue(BearingFamily family, double c) {
    Objects.requireNonNull(family, "family");
    return (family.ball() ? 0.01 : 0.02) * BasicLifeKernel.checkRating(c);
  }

  /**
   * Least load of a track roller, {@code 0.0167 C0}.
   *
   * @param c0r basic static load rating in N, over 0
   * @return load in N
   * @throws holdfast.quantity.InputException if the rating is not above zero
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = "pages 966 to 985, cam followers, minimum load")
  public static double trackRoller(double c0r) {
    return 0.0167 * Check.positive(c0r, "basic static load rating C0r", "N", "a rating is a force above zero");
  }
}
