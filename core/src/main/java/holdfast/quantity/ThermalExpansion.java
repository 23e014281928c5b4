// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * A coefficient of linear thermal expansion.
 *
 * @param perKelvin value in 1/K; finite
 */
public record ThermalExpansion(double perKelvin) implements Linear<ThermalExpansion> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public ThermalExpansion {
    perKelvin = 0.0 + Check.finite(perKelvin, "coefficient of thermal expansion", "1/K");
  }

  @Override
  public double base() {
    return perKelvin;
  }

  @Override
  public ThermalExpansion withBase(double base) {
    return new ThermalExpansion(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "11.5 µm/(m·K)"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static ThermalExpansion parse(String text) {
    return UnitParser.parse(text, "coefficient of thermal expansion", KnownUnits.THERMAL_EXPANSIONS);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.significant(in(KnownUnits.UM_PER_M_K), 4) + " " + KnownUnits.UM_PER_M_K.symbol();
  }
}
