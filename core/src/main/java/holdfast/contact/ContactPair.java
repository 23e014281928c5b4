// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Two bodies in contact, usually a roller and its track.
 *
 * @param roller shape of the first body
 * @param rollerMaterial its elasticity
 * @param track shape of the second body
 * @param trackMaterial its elasticity
 * @param crossing angle between the planes of rolling of the two bodies; 0 when they are aligned
 */
public record ContactPair(
    ContactSurface roller,
    ContactMaterial rollerMaterial,
    ContactSurface track,
    ContactMaterial trackMaterial,
    Angle crossing)
    implements Serializable {

  // Refuses surfaces that do not close on a point or a line.
  public ContactPair {
    Objects.requireNonNull(roller, "roller");
    Objects.requireNonNull(rollerMaterial, "rollerMaterial");
    Objects.requireNonNull(track, "track");
    Objects.requireNonNull(trackMaterial, "trackMaterial");
    Objects.requireNonNull(crossing, "crossing");
    ContactGeometryKernel.greater(roller.along(), roller.across(), track.along(), track.across(), crossing.radian());
  }

  /**
   * Two aligned steel bodies.
   *
   * @param roller shape of the roller
   * @param track shape of the track
   * @return the pair
   * @throws holdfast.quantity.InputException if a concave surface is not flatter than its partner
   */
  public static ContactPair ofSteel(ContactSurface roller, ContactSurface track) {
    return of(roller, ContactMaterial.steel(), track, ContactMaterial.steel());
  }

  /**
   * Two aligned bodies.
   *
   * @param roller shape of the roller
   * @param rollerMaterial its elasticity
   * @param track shape of the track
   * @param trackMaterial its elasticity
   * @return the pair
   * @throws holdfast.quantity.InputException if a concave surface is not flatter than its partner
   */
  public static ContactPair of(
      ContactSurface roller, ContactMaterial rollerMaterial, ContactSurface track, ContactMaterial trackMaterial) {
    return new ContactPair(roller, rollerMaterial, track, trackMaterial, new Angle(0));
  }

  /**
   * The same pair with crossed planes of rolling.
   *
   * @param angle angle between the planes
   * @return the pair
   */
  public ContactPair crossedAt(Angle angle) {
    Objects.requireNonNull(angle, "angle");
    return new ContactPair(roller, rollerMaterial, track, trackMaterial, angle);
  }

  /**
   * Line contact of this pair.
   *
   * @param force normal force, over 0
   * @param length contact length, over 0
   * @return the contact
   * @throws holdfast.quantity.InputException if the surfaces are not straight across, or a value is outside its range
   */
  public LineContact line(Force force, Length length) {
    return new LineContact(this, force, length);
  }

  /**
   * Elliptical contact of this pair on a face of given width.
   *
   * @param force normal force, over 0
   * @param faceWidth width across on which the ellipse must find room, over 0
   * @return the contact
   * @throws holdfast.quantity.InputException if the contact is a line, or a value is outside its range
   */
  public EllipticalContact ellipse(Force force, Length faceWidth) {
    return new EllipticalContact(this, force, faceWidth);
  }

  /**
   * Combined modulus E*.
   *
   * @return E* in MPa
   */
  double combinedModulus() {
    return ContactGeometryKernel.combinedModulus(
        rollerMaterial.modulus().megapascal(),
        rollerMaterial.poisson(),
        trackMaterial.modulus().megapascal(),
        trackMaterial.poisson());
  }

  double sum() {
    return ContactGeometryKernel.sum(roller.along(), roller.across(), track.along(), track.across());
  }

  double greater() {
    return ContactGeometryKernel.greater(
        roller.along(), roller.across(), track.along(), track.across(), crossing.radian());
  }

  double lesser() {
    return ContactGeometryKernel.lesser(
        roller.along(), roller.across(), track.along(), track.across(), crossing.radian());
  }
}
