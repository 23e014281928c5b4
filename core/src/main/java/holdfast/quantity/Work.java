// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * Work or energy. It is not a torque, though the units look alike.
 *
 * @param newtonMillimetre value in N·mm; finite
 */
public record Work(double newtonMillimetre) implements Linear<Work> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Work {
    newtonMillimetre = 0.0 + Check.finite(newtonMillimetre, "work", "N·mm");
  }

  @Override
  public double base() {
    return newtonMillimetre;
  }

  @Override
  public Work withBase(double base) {
    return new Work(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "12 J"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Work parse(String text) {
    return UnitParser.parse(text, "work", KnownUnits.WORKS);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.significant(in(KnownUnits.J), 4) + " " + KnownUnits.J.symbol();
  }
}
