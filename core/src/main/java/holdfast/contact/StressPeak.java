// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import java.io.Serializable;
import java.util.Objects;

/**
 * A largest stress below the surface and where it acts.
 *
 * @param stress the largest value
 * @param depth its depth below the surface
 */
public record StressPeak(Stress stress, Length depth) implements Serializable {
  public StressPeak {
    Objects.requireNonNull(stress, "stress");
    Objects.requireNonNull(depth, "depth");
  }

  /** For example {@code 355.6 MPa at 0.2053 mm}. */
  @Override
  public String toString() {
    return stress + " at a depth of " + depth;
  }
}
