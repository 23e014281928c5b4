// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * An angle.
 *
 * @param radian value in rad; finite
 */
public record Angle(double radian) implements Linear<Angle> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Angle {
    radian = 0.0 + Check.finite(radian, "angle", "rad");
  }

  @Override
  public double base() {
    return radian;
  }

  @Override
  public Angle withBase(double base) {
    return new Angle(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "1.2 mrad"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Angle parse(String text) {
    return UnitParser.parse(text, "angle", KnownUnits.ANGLES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Math.abs(radian) < 0.02
        ? Numbers.significant(in(KnownUnits.MRAD), 4) + " " + KnownUnits.MRAD.symbol()
        : Numbers.significant(in(KnownUnits.DEG), 4) + " " + KnownUnits.DEG.symbol();
  }
}
