// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * A speed along a path.
 *
 * @param mmPerS value in mm/s; finite
 */
public record Speed(double mmPerS) implements Linear<Speed> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Speed {
    mmPerS = 0.0 + Check.finite(mmPerS, "speed", "mm/s");
  }

  @Override
  public double base() {
    return mmPerS;
  }

  @Override
  public Speed withBase(double base) {
    return new Speed(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "1.5 m/s"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Speed parse(String text) {
    return UnitParser.parse(text, "speed", KnownUnits.SPEEDS);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.significant(in(KnownUnits.M_PER_S), 4) + " " + KnownUnits.M_PER_S.symbol();
  }
}
