// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * An area.
 *
 * @param mm2 value in mm²; finite
 */
public record Area(double mm2) implements Linear<Area> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Area {
    mm2 = 0.0 + Check.finite(mm2, "area", "mm²");
  }

  /**
   * The side of a rectangle of this area.
   *
   * @param side the other side, not zero
   * @return area / side
   * @throws InputException if the side is 0
   */
  public Length dividedBy(Length side) {
    Objects.requireNonNull(side, "side");
    return new Length(mm2 / Check.nonZero(side.base(), "side", "mm", "an area cannot be divided by 0"));
  }

  @Override
  public double base() {
    return mm2;
  }

  @Override
  public Area withBase(double base) {
    return new Area(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "245 mm²"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Area parse(String text) {
    return UnitParser.parse(text, "area", KnownUnits.AREAS);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.significant(in(KnownUnits.MM2), 4) + " " + KnownUnits.MM2.symbol();
  }
}
