// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Internal geometry of a bearing, from which its ratings follow.
 *
 * @param type type of the bearing
 * @param rows rows i of a radial bearing; 1 for thrust bearings, whose rows are rated one by one
 * @param elements rolling elements Z of one row (thrust: that carry load in one direction)
 * @param elementDiameter ball diameter Dw or mean roller diameter Dwe
 * @param elementLength effective roller length Lwe; null for balls
 * @param pitchDiameter pitch diameter Dpw
 * @param contactAngle nominal contact angle α
 */
public record BearingGeometry(
    BearingType type,
    int rows,
    int elements,
    Length elementDiameter,
    Length elementLength,
    Length pitchDiameter,
    Angle contactAngle)
    implements Serializable {

  // Refuses geometry that is incomplete or impossible; the ranges of the tables are checked when ratings are asked for.
  public BearingGeometry {
    Objects.requireNonNull(elementDiameter, "elementDiameter");
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    Objects.requireNonNull(contactAngle, "contactAngle");
    Objects.requireNonNull(type, "type");
    DynamicRatingKernel.checkRows(rows);
    DynamicRatingKernel.checkElements(elements);
    StaticRatingKernel.checkPitch(pitchDiameter.mm(), holdfast.quantity.Check.positive(
        elementDiameter.mm(), "diameter of the rolling elements", "mm", "a rolling element has a diameter"));
    if (type.family().thrust()) {
      ContactAngle.thrust(contactAngle.radian());
    } else {
      ContactAngle.radial(contactAngle.radian());
    }
    if (rows != 1 && (type.family().thrust() || type == BearingType.MAGNETO_BALL)) {
      throw Refusal.of("number of rows i", rows, "", "1", type.family().thrust()
          ? "rows of a thrust bearing are rated one by one and combined" : "magneto bearings have one row");
    }
    if (type.family().ball() != (elementLength == null)) {
      throw Refusal.of("effective roller length Lwe", elementLength, type.family().ball() ? "none" : "a length", "rollers have a"
          + " length, balls do not");
    }
    if (elementLength != null) {
      DynamicRatingKernel.checkLength(elementLength.mm());
    }
  }

  /**
   * Geometry of a ball bearing.
   *
   * @param type a ball type
   * @param rows rows i
   * @param balls balls Z of one row
   * @param ballDiameter ball diameter Dw
   * @param pitchDiameter pitch diameter Dpw
   * @param contactAngle nominal contact angle α
   * @return the geometry
   * @throws holdfast.quantity.InputException if the geometry is impossible
   */
  public static BearingGeometry balls(
      BearingType type, int rows, int balls, Length ballDiameter, Length pitchDiameter, Angle contactAngle) {
    Objects.requireNonNull(ballDiameter, "ballDiameter");
    return new BearingGeometry(type, rows, balls, ballDiameter, null, pitchDiameter, contactAngle);
  }

  /**
   * Geometry of a roller bearing.
   *
   * @param type a roller type
   * @param rows rows i
   * @param rollers rollers Z of one row
   * @param rollerDiameter mean roller diameter Dwe
   * @param rollerLength effective roller length Lwe
   * @param pitchDiameter pitch diameter Dpw
   * @param contactAngle nominal contact angle α
   * @return the geometry
   * @throws holdfast.quantity.InputException if the geometry is impossible
   */
  public static BearingGeometry rollers(BearingType type, int rows, int rollers, Length rollerDiameter, Length rollerLength,
      Length pitchDiameter, Angle contactAngle) {
    Objects.requireNonNull(rollerDiameter, "rollerDiameter");
    Objects.requireNonNull(rollerLength, "rollerLength");
    return new BearingGeometry(type, rows, rollers, rollerDiameter, rollerLength, pitchDiameter, contactAngle);
  }

  /**
   * Ratings of this geometry.
   *
   * @return C, C0 and Cu with their factors
   * @throws holdfast.quantity.InputException if the geometry lies outside the tables
   */
  public GeometryRatings ratings() {
    return GeometryRatings.of(this);
  }

  /**
   * Fatigue load limit from the contact stress of 1500 MPa, for groove radii of one's own.
   *
   * @param innerGroove groove radius of the inner ring over Dw (dimensionless), over 0.5
   * @param outerGroove groove radius of the outer ring over Dw (dimensionless), over 0.5
   * @return Cu
   * @throws holdfast.quantity.InputException if a radius is not over 0.5 or this is a roller bearing
   */
  public Force detailedFatigueLimit(double innerGroove, double outerGroove) {
    if (!type.family().ball()) {
      throw Refusal.of("type of bearing", type, "a ball bearing", "grooves belong to balls");
    }
    double qu = FatigueLimitKernel.ballContact(elementDiameter.mm(), ratio(), innerGroove, outerGroove);
    return detailed(qu);
  }

  /**
   * Fatigue load limit from the contact stress of 1500 MPa: ball bearings with the widest grooves for which the ratings
   * hold (0.52 Dw inner and 0.53 Dw outer; self-aligning 0.53 Dw and sphere; thrust 0.54 Dw), roller bearings with even
   * pressure along the rollers, which is an upper bound.
   *
   * @return Cu
   */
  public Force detailedFatigueLimit() {
    if (!type.family().ball()) {
      return detailed(FatigueLimitKernel.rollerContact(elementDiameter.mm(), elementLength.mm(), ratio()));
    }
    if (type.family().thrust()) {
      return detailedFatigueLimit(0.54, 0.54);
    }
    return type == BearingType.SELF_ALIGNING_BALL
        ? detailedFatigueLimit(0.53, 0.5 * (1 + 1 / ratio()))
        : detailedFatigueLimit(0.52, 0.53);
  }

  /**
   * The ratio γ of the tables.
   *
   * @return Dw cos α/Dpw; 0 at 90°
   */
  public double ratio() {
    double alpha = contactAngle.radian();
    return ContactAngle.is90(alpha) ? 0 : elementDiameter.mm() * Math.cos(alpha) / pitchDiameter.mm();
  }

  private Force detailed(double qu) {
    return new Force(
        FatigueLimitKernel.fromContact(type.family(), qu, elements, rows, contactAngle.radian(), pitchDiameter.mm()));
  }

  /** For example {@code "deep groove ball bearing, 1 row of 9 × 7.94 mm on 39.04 mm"}. */
  @Override
  public String toString() {
    return type + " bearing, " + rows + (rows == 1 ? " row of " : " rows of ") + elements + " × " + elementDiameter + " on "
        + pitchDiameter;
  }
}
