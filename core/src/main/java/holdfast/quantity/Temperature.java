// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * A temperature on the Celsius scale. Temperatures do not add; their difference is a
 * {@link TemperatureDifference}.
 *
 * @param celsius value in °C; finite and not below absolute zero (-273.15 °C)
 */
public record Temperature(double celsius) implements Quantity<Temperature> {
  /** Absolute zero in °C, exact by the definition of the Celsius scale. */
  private static final double ABSOLUTE_ZERO = -273.15;

  // Refuses NaN, infinity and what is colder than absolute zero; makes -0 an ordinary 0.
  public Temperature {
    celsius = 0.0 + Check.finite(celsius, "temperature", "°C");
    if (celsius < ABSOLUTE_ZERO) {
      throw new InputException(
          "temperature", Numbers.shortest(celsius) + " °C", "-273.15 °C or more", "absolute zero");
    }
  }

  @Override
  public double base() {
    return celsius;
  }

  /**
   * A warmer temperature.
   *
   * @param rise how much warmer
   * @return this + rise
   */
  public Temperature plus(TemperatureDifference rise) {
    Objects.requireNonNull(rise, "rise");
    return new Temperature(celsius + rise.kelvin());
  }

  /**
   * A colder temperature.
   *
   * @param drop how much colder
   * @return this - drop
   */
  public Temperature minus(TemperatureDifference drop) {
    Objects.requireNonNull(drop, "drop");
    return new Temperature(celsius - drop.kelvin());
  }

  /**
   * The difference of two temperatures.
   *
   * @param other another temperature
   * @return this - other
   */
  public TemperatureDifference minus(Temperature other) {
    Objects.requireNonNull(other, "other");
    return new TemperatureDifference(celsius - other.celsius);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "20 °C"} or {@code "68 °F"}
   * @return the temperature
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Temperature parse(String text) {
    return UnitParser.parse(text, "temperature", KnownUnits.TEMPERATURES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.fixed(celsius, Math.abs(celsius - Math.rint(celsius)) < 0.05 ? 0 : 1) + " °C";
  }
}
