// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * A torque or a moment. It is not work, though the units look alike.
 *
 * @param newtonMillimetre value in N·mm; finite
 */
public record Torque(double newtonMillimetre) implements Linear<Torque> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Torque {
    newtonMillimetre = 0.0 + Check.finite(newtonMillimetre, "torque", "N·mm");
  }

  /**
   * The force that makes this torque on an arm.
   *
   * @param arm lever arm, not zero
   * @return torque / arm
   * @throws InputException if the arm is 0
   */
  public Force over(Length arm) {
    Objects.requireNonNull(arm, "arm");
    return new Force(newtonMillimetre / Check.nonZero(arm.base(), "lever arm", "mm", "no force without an arm makes a torque"));
  }

  @Override
  public double base() {
    return newtonMillimetre;
  }

  @Override
  public Torque withBase(double base) {
    return new Torque(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "60 N·m"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Torque parse(String text) {
    return UnitParser.parse(text, "torque", KnownUnits.TORQUES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Math.abs(newtonMillimetre) < 1000
        ? Numbers.significant(in(KnownUnits.N_MM), 4) + " " + KnownUnits.N_MM.symbol()
        : Numbers.significant(in(KnownUnits.N_M), 4) + " " + KnownUnits.N_M.symbol();
  }
}
