// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * A speed of rotation.
 *
 * @param rpm value in rpm; finite
 */
public record RotationalSpeed(double rpm) implements Linear<RotationalSpeed> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public RotationalSpeed {
    rpm = 0.0 + Check.finite(rpm, "rotational speed", "rpm");
  }

  @Override
  public double base() {
    return rpm;
  }

  @Override
  public RotationalSpeed withBase(double base) {
    return new RotationalSpeed(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "180 rpm"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static RotationalSpeed parse(String text) {
    return UnitParser.parse(text, "rotational speed", KnownUnits.ROTATIONAL_SPEEDS);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.significant(in(KnownUnits.RPM), 4) + " " + KnownUnits.RPM.symbol();
  }
}
