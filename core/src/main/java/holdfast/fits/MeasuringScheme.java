// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.io.Serializable;
import java.util.Objects;

/**
 * How many readings a part needs before its conformity can be proved, and by which rule they prove it.
 *
 * @param stations places along the seat, 1 to 100
 * @param directions directions across it at each station, 1 to 100
 * @param rule how far inside a limit a reading must lie
 */
public record MeasuringScheme(int stations, int directions, DecisionRule rule) implements Serializable {
  // Refuses to accept parts that nobody measured.
  public MeasuringScheme {
    Check.within(stations, 1, 100, "stations", "", "a part without a reading is not measured");
    Check.within(directions, 1, 100, "directions", "", "a part without a reading is not measured");
    Objects.requireNonNull(rule, "rule");
  }

  /**
   * A scheme with the cautious rule: the whole uncertainty is the guard band.
   *
   * @param stations places along the seat, 1 to 100
   * @param directions directions across it at each station, 1 to 100
   */
  public MeasuringScheme(int stations, int directions) {
    this(stations, directions, DecisionRule.WHOLE_UNCERTAINTY);
  }

  /**
   * The same readings by another rule.
   *
   * @param decision how far inside a limit a reading must lie
   * @return the scheme
   */
  public MeasuringScheme by(DecisionRule decision) {
    Objects.requireNonNull(decision, "decision");
    return new MeasuringScheme(stations, directions, decision);
  }

  /**
   * The usual scheme.
   *
   * @return three stations, two directions, the whole uncertainty as guard band
   */
  @Source(document = "common practice", locator = "three stations, two directions", provenance = Provenance.COMMON_PRACTICE)
  public static MeasuringScheme usual() {
    return new MeasuringScheme(3, 2);
  }

  /** For example {@code "3 stations × 2 directions"}. */
  @Override
  public String toString() {
    return count(stations, "station") + " × " + count(directions, "direction");
  }

  private static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
