// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.Stress;
import java.io.Serializable;
import java.util.Objects;

/**
 * Strengths of a stud.
 *
 * @param endurance endurance limit for reversed bending of the finished part, size and surface included, over 0
 * @param tensile tensile strength Rm, over 0
 * @param yield yield strength Re, over 0 and at most Rm
 */
public record StudMaterial(Stress endurance, Stress tensile, Stress yield) implements Serializable {
  // Refuses strengths in the wrong order.
  public StudMaterial {
    Objects.requireNonNull(endurance, "endurance");
    Objects.requireNonNull(tensile, "tensile");
    Objects.requireNonNull(yield, "yield");
    Check.positive(tensile.megapascal(), "tensile strength Rm", "MPa", "strength of the stud");
    Check.overUpTo(yield.megapascal(), 0, tensile.megapascal(), "yield strength Re", "MPa", "yield comes before fracture");
    Check.overUpTo(
        endurance.megapascal(), 0, tensile.megapascal(), "endurance limit σe", "MPa", "it lies below the tensile strength");
  }
}
