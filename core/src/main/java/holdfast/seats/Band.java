// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.InputException;
import holdfast.quantity.Quantity;
import holdfast.quantity.Unit;
import java.io.Serializable;
import java.util.Objects;

/**
 * The least and the greatest value that a quantity can take.
 *
 * @param <Q> kind of quantity
 * @param least least value
 * @param greatest greatest value, not below the least
 */
public record Band<Q extends Quantity<Q>>(Q least, Q greatest) implements Serializable {
  // Refuses ends in the wrong order.
  public Band {
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
    if (greatest.compareTo(least) < 0) {
      throw new InputException("greatest value of a band", greatest.toString(), "at least " + least, "it is not below the least");
    }
  }

  /**
   * Whether a value lies in the band, ends included.
   *
   * @param value a value
   * @return true if least ≤ value ≤ greatest
   */
  public boolean contains(Q value) {
    Objects.requireNonNull(value, "value");
    return least.compareTo(value) <= 0 && value.compareTo(greatest) <= 0;
  }

  /**
   * Both ends in a unit, rounded for reading.
   *
   * @param unit a unit of the same kind
   * @param decimals digits after the point, 0 or more
   * @return for example {@code "2108 lbf … 5270 lbf"}
   */
  public String text(Unit<Q> unit, int decimals) {
    Objects.requireNonNull(unit, "unit");
    return least.text(unit, decimals) + " … " + greatest.text(unit, decimals);
  }

  /** Both ends: {@code "12 MPa … 48 MPa"}. */
  @Override
  public String toString() {
    return least + " … " + greatest;
  }
}
