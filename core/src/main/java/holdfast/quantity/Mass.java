// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * A mass.
 *
 * @param gram value in g; finite
 */
public record Mass(double gram) implements Linear<Mass> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public Mass {
    gram = 0.0 + Check.finite(gram, "mass", "g");
  }

  @Override
  public double base() {
    return gram;
  }

  @Override
  public Mass withBase(double base) {
    return new Mass(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "3.5 g"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static Mass parse(String text) {
    return UnitParser.parse(text, "mass", KnownUnits.MASSES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Math.abs(gram) < 1000
        ? Numbers.significant(in(KnownUnits.G), 3) + " " + KnownUnits.G.symbol()
        : Numbers.significant(in(KnownUnits.KG), 4) + " " + KnownUnits.KG.symbol();
  }
}
