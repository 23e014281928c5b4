// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import holdfast.trace.Message;
import java.io.Serializable;
import java.util.Objects;

/**
 * The outer part of an interference fit: the housing.
 *
 * @param material its material
 * @param shape its shape round the bore
 * @param roughness Rz of the bore, 0 if smooth or unknown
 */
public record OuterPart(Material material, HousingShape shape, Length roughness) implements Serializable {
  // Refuses a negative roughness.
  public OuterPart {
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(roughness, "roughness");
    SeatChecks.gap(roughness.mm(), "roughness of the housing bore", "a roughness height");
  }

  /**
   * A housing of a stated shape with a smooth bore.
   *
   * @param material its material
   * @param shape its shape
   * @return the housing
   */
  public static OuterPart of(Material material, HousingShape shape) {
    return new OuterPart(material, shape, new Length(0));
  }

  /**
   * A ring, hub or lever eye.
   *
   * @param material its material
   * @param outside its outside diameter
   * @return the housing
   */
  public static OuterPart ring(Material material, Length outside) {
    Objects.requireNonNull(outside, "outside");
    return of(material, HousingShape.ring(outside));
  }

  /**
   * A housing so wide on all sides that its outline does not matter.
   *
   * @param material its material
   * @return the housing
   */
  public static OuterPart wide(Material material) {
    return of(material, HousingShape.wide());
  }

  /**
   * The same housing with a stated roughness of its bore.
   *
   * @param rz Rz, 0 or more
   * @return the housing
   * @throws holdfast.quantity.InputException if the height is negative
   */
  public OuterPart withRoughness(Length rz) {
    Objects.requireNonNull(rz, "rz");
    return new OuterPart(material, shape, rz);
  }

  /**
   * The part in words, its size as a quantity.
   *
   * @return shape and material
   */
  public Message words() {
    return Message.of("housing (", shape.words(), ") of ", material.name());
  }

  /** Shape and material. */
  @Override
  public String toString() {
    return words().toString();
  }
}
