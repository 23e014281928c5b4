// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Check;
import holdfast.seats.StudMaterial;
import java.io.Serializable;
import java.util.Objects;

/**
 * What is known of the fatigue strength of a stud or pin.
 *
 * @param material endurance limit of the finished part, tensile and yield strength
 * @param notchFactor fatigue notch factor Kf at the mouth of a stud's seat or in the middle of a pin, without unit, 1 or more
 */
public record StudEndurance(StudMaterial material, double notchFactor) implements Serializable {
  // Refuses notches that lower the stress.
  public StudEndurance {
    Objects.requireNonNull(material, "material");
    Check.within(notchFactor, 1, 10, "fatigue notch factor Kf", "", "1 without a notch; press fits have about 2 to 4");
  }
}
