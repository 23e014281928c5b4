// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import java.io.Serializable;
import java.util.Objects;

/**
 * The shape of one body where it touches: two curvatures at right angles. Positive is convex, 0 straight, negative
 * concave.
 *
 * @param along curvature in the plane of rolling, 1/mm
 * @param across curvature at right angles to it, 1/mm
 */
public record ContactSurface(double along, double across) implements Serializable {
  // Refuses NaN and infinity.
  public ContactSurface {
    Check.finite(along, "curvature along", "1/mm");
    Check.finite(across, "curvature across", "1/mm");
  }

  /**
   * A cylindrical roller.
   *
   * @param diameter outer diameter, over 0
   * @return straight across
   * @throws holdfast.quantity.InputException if the diameter is not positive
   */
  public static ContactSurface cylinder(Length diameter) {
    Objects.requireNonNull(diameter, "diameter");
    return new ContactSurface(2 / positive(diameter, "roller diameter"), 0);
  }

  /**
   * A crowned roller.
   *
   * @param diameter outer diameter, over 0
   * @param crownRadius radius of the profile across, over 0
   * @return convex both ways
   * @throws holdfast.quantity.InputException if a size is not positive
   */
  public static ContactSurface crowned(Length diameter, Length crownRadius) {
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(crownRadius, "crownRadius");
    return new ContactSurface(2 / positive(diameter, "roller diameter"), 1 / positive(crownRadius, "crown radius"));
  }

  /**
   * A flat track.
   *
   * @return straight both ways
   */
  public static ContactSurface flat() {
    return new ContactSurface(0, 0);
  }

  /**
   * A convex track: the outside of a cam.
   *
   * @param radius radius of the track in the plane of rolling, over 0
   * @return convex along, straight across
   * @throws holdfast.quantity.InputException if the radius is not positive
   */
  public static ContactSurface cam(Length radius) {
    Objects.requireNonNull(radius, "radius");
    return new ContactSurface(1 / positive(radius, "cam radius"), 0);
  }

  /**
   * A concave track: the inside of a ring or a hollow curve.
   *
   * @param radius radius of the track in the plane of rolling, over 0
   * @return concave along, straight across
   * @throws holdfast.quantity.InputException if the radius is not positive
   */
  public static ContactSurface concave(Length radius) {
    Objects.requireNonNull(radius, "radius");
    return new ContactSurface(-1 / positive(radius, "track radius"), 0);
  }

  /**
   * A straight rail with a rounded head.
   *
   * @param headRadius radius of the head across, over 0
   * @return straight along, convex across
   * @throws holdfast.quantity.InputException if the radius is not positive
   */
  public static ContactSurface rail(Length headRadius) {
    Objects.requireNonNull(headRadius, "headRadius");
    return new ContactSurface(0, 1 / positive(headRadius, "radius of the rail head"));
  }

  /**
   * The same with a profile across: of a profiled cam, or of a groove.
   *
   * @param radius radius across; negative for a groove, not 0
   * @return this surface with another curvature across
   * @throws holdfast.quantity.InputException if the radius is 0
   */
  public ContactSurface profiled(Length radius) {
    Objects.requireNonNull(radius, "radius");
    Check.positive(Math.abs(radius.mm()), "size of the profile radius", "mm", "a radius of 0 is an edge");
    return new ContactSurface(along, 1 / radius.mm());
  }

  /** The radii, as the surface would be dimensioned. */
  @Override
  public String toString() {
    return text(along) + " along, " + text(across) + " across";
  }

  private static String text(double curvature) {
    return curvature == 0 ? "straight" : "R " + Numbers.significant(1 / curvature, 6) + " mm";
  }

  private static double positive(Length length, String parameter) {
    return Check.positive(length.mm(), parameter, "mm", "a concave surface has its own factory");
  }
}
