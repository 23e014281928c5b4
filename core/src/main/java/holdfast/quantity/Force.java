// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * A force.
 *
 * @param newton value in N; finite
 */
public record Force(double newton) implements Linear<Force> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Force {
    newton = 0.0 + Check.finite(newton, "force", "N");
  }

  /**
   * The moment of this force.
   *
   * @param arm lever arm
   * @return force · arm
   */
  public Torque times(Length arm) {
    Objects.requireNonNull(arm, "arm");
    return new Torque(newton * arm.base());
  }

  /**
   * The mean stress that this force makes.
   *
   * @param area area under the force, not zero
   * @return force / area
   * @throws InputException if the area is 0
   */
  public Stress over(Area area) {
    Objects.requireNonNull(area, "area");
    return new Stress(newton / Check.nonZero(area.base(), "area", "mm²", "a force on no area makes no stress"));
  }

  @Override
  public double base() {
    return newton;
  }

  @Override
  public Force withBase(double base) {
    return new Force(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "12.5 kN"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Force parse(String text) {
    return UnitParser.parse(text, "force", KnownUnits.FORCES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Math.abs(newton) < 1000
        ? Numbers.significant(in(KnownUnits.N), 4) + " " + KnownUnits.N.symbol()
        : Numbers.significant(in(KnownUnits.KN), 4) + " " + KnownUnits.KN.symbol();
  }
}
