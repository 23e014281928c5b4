// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Length;
import holdfast.trace.Derivation;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the limit deviations of a part come from: a tolerance class of ISO 286, a class of inch limits and fits, or
 * deviations given by a drawing, a catalogue or a measurement.
 */
public interface DeviationOrigin extends Serializable {
  /**
   * How a drawing names it.
   *
   * @return for example {@code "H7"}
   */
  String designation();

  /**
   * How the deviations follow, cell by cell.
   *
   * @param nominalSize the nominal size
   * @return a derivation whose last two steps are the upper and the lower limit deviation, in that order
   */
  Derivation explain(Length nominalSize);

  /**
   * What the reader must know about the values used.
   *
   * @param nominalSize the nominal size
   * @return the warnings; empty if there are none
   */
  default List<Warning> warnings(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return List.of();
  }

  /**
   * What the deviations are for, if they say it themselves, as a class in capital or small letters does.
   *
   * @return hole or shaft; empty if they can be those of either
   */
  default Optional<Feature> appliesTo() {
    return Optional.empty();
  }

  /**
   * Whether sizes and deviations are read in inches.
   *
   * @return true for inch limits and fits
   */
  default boolean inInches() {
    return false;
  }
}
