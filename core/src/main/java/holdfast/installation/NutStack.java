// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Check;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * What the nut takes of the stud's length.
 *
 * @param height height of the nut, both nuts if there are two, over 0
 * @param washer thickness of the washers under it; 0 without washer
 */
public record NutStack(Length height, Length washer) implements Serializable {
  // Refuses sizes that no nut has.
  public NutStack {
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(washer, "washer");
    Check.positive(height.mm(), "height of the nut", "mm", "it is a size");
    Check.notNegative(washer.mm(), "thickness of the washer", "mm", "0 stands for none");
  }
}
