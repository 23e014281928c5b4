// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * The inner part of an interference fit: a stud, solid or with a grease hole along its axis.
 *
 * @param material its material
 * @param hole diameter of the hole along the axis, 0 for a solid stud
 * @param roughness Rz of the seat, 0 if smooth or unknown
 */
public record InnerPart(Material material, Length hole, Length roughness) implements Serializable {
  // Refuses negative sizes; whether the hole leaves a wall shows when the joint diameter is known.
  public InnerPart {
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(roughness, "roughness");
    SeatChecks.gap(hole.mm(), "hole of the stud", "0 means solid");
    SeatChecks.gap(roughness.mm(), "roughness of the stud", "a roughness height");
  }

  /**
   * A solid stud with a smooth seat.
   *
   * @param material its material
   * @return the stud
   */
  public static InnerPart solid(Material material) {
    return new InnerPart(material, new Length(0), new Length(0));
  }

  /**
   * A stud with a hole along its axis.
   *
   * @param material its material
   * @param hole diameter of the hole, 0 or more
   * @return the stud
   * @throws holdfast.quantity.InputException if the diameter is negative
   */
  public static InnerPart hollow(Material material, Length hole) {
    return new InnerPart(material, hole, new Length(0));
  }

  /**
   * The same stud with a stated roughness of its seat.
   *
   * @param rz Rz, 0 or more
   * @return the stud
   * @throws holdfast.quantity.InputException if the height is negative
   */
  public InnerPart withRoughness(Length rz) {
    Objects.requireNonNull(rz, "rz");
    return new InnerPart(material, hole, rz);
  }

  /** Material and hole. */
  @Override
  public String toString() {
    return (hole.mm() == 0 ? "solid stud of " : "stud with " + hole + " hole of ") + material.name();
  }
}
