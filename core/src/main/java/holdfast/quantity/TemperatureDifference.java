// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * A difference of two temperatures, or a rise.
 *
 * @param kelvin value in K; finite
 */
public record TemperatureDifference(double kelvin) implements Linear<TemperatureDifference> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public TemperatureDifference {
    kelvin = 0.0 + Check.finite(kelvin, "temperature difference", "K");
  }

  @Override
  public double base() {
    return kelvin;
  }

  @Override
  public TemperatureDifference withBase(double base) {
    return new TemperatureDifference(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "80 K"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static TemperatureDifference parse(String text) {
    return UnitParser.parse(text, "temperature difference", KnownUnits.TEMPERATURE_DIFFERENCES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.significant(in(KnownUnits.K), 4) + " " + KnownUnits.K.symbol();
  }
}
