// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * A stress, a pressure or a modulus of elasticity.
 *
 * @param megapascal value in MPa; finite
 */
public record Stress(double megapascal) implements Linear<Stress> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Stress {
    megapascal = 0.0 + Check.finite(megapascal, "stress", "MPa");
  }

  /**
   * The force of this stress on an area.
   *
   * @param area the area
   * @return stress · area
   */
  public Force times(Area area) {
    Objects.requireNonNull(area, "area");
    return new Force(megapascal * area.base());
  }

  @Override
  public double base() {
    return megapascal;
  }

  @Override
  public Stress withBase(double base) {
    return new Stress(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "640 MPa"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Stress parse(String text) {
    return UnitParser.parse(text, "stress", KnownUnits.STRESSES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Math.abs(megapascal) < 10000
        ? Numbers.significant(in(KnownUnits.MPA), 4) + " " + KnownUnits.MPA.symbol()
        : Numbers.significant(in(KnownUnits.GPA), 4) + " " + KnownUnits.GPA.symbol();
  }
}
