// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * A coefficient of linear thermal expansion, or a sum, difference or multiple of some. What is used as that of a part is
 * checked where it is used: {@link #ofSolid}.
 *
 * @param perKelvin value in 1/K; finite
 */
public record ThermalExpansion(double perKelvin) implements Linear<ThermalExpansion> {
  /** No solid expands more, 1/K: a larger number has lost its millionth. */
  public static final double GREATEST = 1e-3;

  /** A few solids shrink a little when warmed, none more than this, 1/K. */
  private static final double LEAST = -1e-5;

  private static final String SLIP = "steel has 11.5e-6 1/K, which is 11.5 µm/(m·K); check the unit";

  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public ThermalExpansion {
    perKelvin = 0.0 + Check.finite(perKelvin, "coefficient of thermal expansion", "1/K");
  }

  /**
   * Requires the coefficient of a solid.
   *
   * @param perKelvin the coefficient, 1/K
   * @param parameter its name
   * @return the coefficient, 1/K
   * @throws InputException if it is not from -1e-5 to 1e-3 1/K
   */
  public static double ofSolid(double perKelvin, String parameter) {
    Objects.requireNonNull(parameter, "parameter");
    return Check.within(perKelvin, LEAST, GREATEST, parameter, "1/K", SLIP);
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
