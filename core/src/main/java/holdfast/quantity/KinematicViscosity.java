// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * A kinematic viscosity.
 *
 * @param mm2PerS value in mm²/s; finite
 */
public record KinematicViscosity(double mm2PerS) implements Linear<KinematicViscosity> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public KinematicViscosity {
    mm2PerS = 0.0 + Check.finite(mm2PerS, "kinematic viscosity", "mm²/s");
  }

  @Override
  public double base() {
    return mm2PerS;
  }

  @Override
  public KinematicViscosity withBase(double base) {
    return new KinematicViscosity(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "100 mm²/s"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static KinematicViscosity parse(String text) {
    return UnitParser.parse(text, "kinematic viscosity", KnownUnits.KINEMATIC_VISCOSITIES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.significant(in(KnownUnits.MM2_PER_S), 4) + " " + KnownUnits.MM2_PER_S.symbol();
  }
}
