// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.io.Serializable;
import java.util.Objects;

/**
 * A physical quantity: immutable, finite, comparable with its own kind. Two quantities are equal if their values in
 * base units are equal. {@code toString()} rounds as a practitioner would write the value;
 * {@link #exactly} does not.
 *
 * @param <Q> the kind itself
 */
public sealed interface Quantity<Q extends Quantity<Q>> extends Comparable<Q>, Serializable permits Linear, Temperature {

  /**
   * The value in the base unit of this kind.
   *
   * @return a finite number
   */
  double base();

  /**
   * The value in a unit.
   *
   * @param unit a unit of the same kind
   * @return a finite number
   */
  default double in(Unit<Q> unit) {
    Objects.requireNonNull(unit, "unit");
    return unit.fromBase(base());
  }

  /**
   * The value in a unit, rounded for reading.
   *
   * @param unit a unit of the same kind
   * @param decimals digits after the point, 0 or more
   * @return for example {@code "25.40 mm"}
   */
  default String text(Unit<Q> unit, int decimals) {
    Objects.requireNonNull(unit, "unit");
    return Numbers.fixed(in(unit), decimals) + " " + unit.symbol();
  }

  /**
   * The value in a unit to 15 significant digits; parsing the text gives the same value to that accuracy.
   *
   * @param unit a unit of the same kind
   * @return for example {@code "25.4 mm"}
   */
  default String exactly(Unit<Q> unit) {
    Objects.requireNonNull(unit, "unit");
    return Numbers.shortest(in(unit)) + " " + unit.symbol();
  }

  @Override
  default int compareTo(Q other) {
    return Double.compare(base(), other.base());
  }
}
