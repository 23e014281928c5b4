// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/**
 * A time in operation.
 *
 * @param hours value in h; finite
 */
public record OperatingTime(double hours) implements Linear<OperatingTime> {
  // Refuses NaN and infinity; makes -0 an ordinary 0, so that equal values are equal.
  public OperatingTime {
    hours = 0.0 + Check.finite(hours, "operating time", "h");
  }

  @Override
  public double base() {
    return hours;
  }

  @Override
  public OperatingTime withBase(double base) {
    return new OperatingTime(base);
  }

  /**
   * Reads a number with a unit.
   *
   * @param text for example {@code "20000 h"}
   * @return the quantity
   * @throws InputException if the text is not a number followed by a known unit
   */
  public static OperatingTime parse(String text) {
    return UnitParser.parse(text, "operating time", KnownUnits.OPERATING_TIMES);
  }

  /** The value as a practitioner would write it. */
  @Override
  public String toString() {
    return Numbers.significant(in(KnownUnits.H), 4) + " " + KnownUnits.H.symbol();
  }
}
