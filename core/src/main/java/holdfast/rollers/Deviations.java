// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import java.io.Serializable;
import java.util.Objects;

/**
 * Permitted deviations from a nominal dimension, as a catalogue prints them.
 *
 * @param lower lower deviation
 * @param upper upper deviation, not below the lower
 */
public record Deviations(Length lower, Length upper) implements Serializable {
  // Refuses deviations in the wrong order.
  public Deviations {
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(upper, "upper");
    if (upper.compareTo(lower) < 0) {
      throw new InputException("upper deviation", upper.toString(), "at least " + lower, "it is not below the lower");
    }
  }

  static Deviations ofMicrometres(double lower, double upper) {
    return new Deviations(KnownUnits.UM.of(lower), KnownUnits.UM.of(upper));
  }

  /** For example {@code "0/-18 µm"}. */
  @Override
  public String toString() {
    return signed(upper) + "/" + signed(lower) + " µm";
  }

  private static String signed(Length deviation) {
    double um = deviation.in(KnownUnits.UM);
    return (um > 0 ? "+" : "") + Numbers.significant(um, 6);
  }
}
