// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A measured dimension against a tabulated one.
 *
 * @param dimension what was measured, for example {@code "stud diameter"}
 * @param measured the measured value
 * @param tabulated the nominal value of the table
 */
public record Difference(String dimension, Length measured, Length tabulated) implements Serializable {
  public Difference {
    Objects.requireNonNull(dimension, "dimension");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(tabulated, "tabulated");
  }

  /**
   * How far the measured value is from the table.
   *
   * @return measured less tabulated
   */
  public Length deviation() {
    return measured.minus(tabulated);
  }

  /** For example {@code "stud diameter 15.99 mm (table 16 mm, -10.0 µm)"}. */
  @Override
  public String toString() {
    return dimension + " " + measured + " (table " + tabulated + ", " + deviation().text(KnownUnits.UM, 1) + ")";
  }
}
