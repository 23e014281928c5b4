// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * Force per displacement.
 *
 * @param newtonPerMm value in N/mm; finite
 */
public record Stiffness(double newtonPerMm) implements Linear<Stiffness> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Stiffness {
    newtonPerMm = 0.0 + Check.finite(newtonPerMm, "stiffness", "N/mm");
  }

  @Override
  public double base() {
    return newtonPerMm;
  }

  @Override
  public Stiffness withBase(double base) {
    return new Stiffness(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "450 kN/mm"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Stiffness parse(String text) {
    return UnitParser.parse(text, "stiffness", KnownUnits.STIFFNESSES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.significant(in(KnownUnits.KN_PER_MM), 4) + " " + KnownUnits.KN_PER_MM.symbol();
  }
}
