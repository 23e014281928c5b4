// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import java.io.Serializable;
import java.util.Objects;

/**
 * What equivalent loads need to know of a bearing.
 *
 * @param type type of the bearing
 * @param rows rows i; thrust bearings 1 for single-direction, 2 for double-direction; a pair back to back or face to
 *     face is 2
 * @param contactAngle nominal contact angle α
 * @param ratings load ratings; of the pair if it is one
 * @param f0 factor f0 of a ball bearing; 0 if it is not known, then ball bearings up to 15° refuse axial load
 */
public record LoadedBearing(BearingType type, int rows, Angle contactAngle, LoadRatings ratings, double f0)
    implements Serializable {

  // Refuses a type that does not belong to the ratings.
  public LoadedBearing {
    Objects.requireNonNull(contactAngle, "contactAngle");
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(type, "type");
    DynamicRatingKernel.checkRows(rows);
    Check.notNegative(f0, "factor f0", "", "a factor above zero, or 0 for unknown");
    if (type.family() != ratings.family()) {
      throw Refusal.of("type of bearing", type, "a " + ratings.family(), "the ratings are of that family");
    }
  }

  /**
   * A single-row bearing without f0.
   *
   * @param type type of the bearing
   * @param contactAngle nominal contact angle
   * @param ratings load ratings
   * @return the bearing
   * @throws holdfast.quantity.InputException if the type does not belong to the family of the ratings
   */
  public static LoadedBearing of(BearingType type, Angle contactAngle, LoadRatings ratings) {
    return new LoadedBearing(type, 1, contactAngle, ratings, 0);
  }

  /**
   * The bearing of a computed geometry.
   *
   * @param computed ratings from geometry
   * @return the bearing, with f0
   */
  public static LoadedBearing of(GeometryRatings computed) {
    Objects.requireNonNull(computed, "computed");
    BearingGeometry g = computed.geometry();
    return new LoadedBearing(g.type(), g.rows(), g.contactAngle(), computed.loadRatings(), computed.f0());
  }

  /**
   * The same bearing with a factor f0.
   *
   * @param factor f0 (dimensionless), over 0
   * @return the bearing
   * @throws holdfast.quantity.InputException if the factor is not above zero
   */
  public LoadedBearing withF0(double factor) {
    return new LoadedBearing(type, rows, contactAngle, ratings, Check.positive(factor, "factor f0", "", "a factor above zero"));
  }

  /**
   * The same bearing with several rows, or double-direction. A pair of single-row angular contact bearings face to face or
   * back to back is one bearing of two rows with the ratings of both; bearings in tandem stay one row with the ratings of all.
   *
   * @param number rows i
   * @return the bearing
   * @throws holdfast.quantity.InputException if the number is below 1
   */
  public LoadedBearing withRows(int number) {
    return new LoadedBearing(type, number, contactAngle, ratings, f0);
  }

  /**
   * Dynamic equivalent load.
   *
   * @param radial radial load Fr, 0 or more
   * @param axial axial load Fa, 0 or more
   * @return P with its factors
   * @throws holdfast.quantity.InputException if a load is negative, both are 0 or the bearing cannot carry them
   */
  public EquivalentLoad dynamicLoad(Force radial, Force axial) {
    Objects.requireNonNull(radial, "radial");
    Objects.requireNonNull(axial, "axial");
    return EquivalentLoad.of(this, radial, axial);
  }

  /**
   * Static equivalent load.
   *
   * @param radial radial load Fr, 0 or more
   * @param axial axial load Fa, 0 or more
   * @param running how the bearing has to run
   * @return P0 with the safety factor
   * @throws holdfast.quantity.InputException if a load is negative, both are 0 or the bearing cannot carry them
   */
  public StaticLoad staticLoad(Force radial, Force axial, Running running) {
    Objects.requireNonNull(radial, "radial");
    Objects.requireNonNull(axial, "axial");
    return StaticLoad.of(this, radial, axial, running);
  }

  double relativeAxialLoad(Force axial) {
    boolean needed = EquivalentLoadKernel.loadDependent(type)
        && RadialBallFactors.dependsOnLoad(Math.toDegrees(contactAngle.radian())) && axial.newton() > 0;
    if (!needed) {
      return 0;
    }
    Check.positive(f0, "factor f0", "", "ball bearings up to 15° need it for axial load; see ISO 76:2006, Table 1");
    return EquivalentLoadKernel.relativeAxialLoad(type, rows, f0, axial.newton(), ratings.staticRating().newton());
  }
}
