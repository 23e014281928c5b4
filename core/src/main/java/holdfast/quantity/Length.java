// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * A length, a size, a deviation or a displacement.
 *
 * @param mm value in mm; finite
 */
public record Length(double mm) implements Linear<Length> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Length {
    mm = 0.0 + Check.finite(mm, "length", "mm");
  }

  /**
   * The area of a rectangle.
   *
   * @param other the other side
   * @return this · other
   */
  public Area times(Length other) {
    Objects.requireNonNull(other, "other");
    return new Area(mm * other.mm);
  }

  @Override
  public double base() {
    return mm;
  }

  @Override
  public Length withBase(double base) {
    return new Length(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "25.4 mm"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Length parse(String text) {
    return UnitParser.parse(text, "length", KnownUnits.LENGTHS);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return LengthText.of(this);
  }
}
