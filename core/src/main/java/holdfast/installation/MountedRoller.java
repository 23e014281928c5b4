// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerKind;
import java.io.Serializable;
import java.util.Optional;

/** What stud and yoke rollers have in common: all that their rolling asks for, whatever holds them. */
public sealed interface MountedRoller extends Serializable permits StudRoller, YokeRoller {
  /**
   * What the sheet calls it.
   *
   * @return the name
   */
  String name();

  /**
   * Outside diameter of the outer ring.
   *
   * @return D
   */
  Length outsideDiameter();

  /**
   * Width of the outer ring.
   *
   * @return the width
   */
  Length ringWidth();

  /**
   * Radius of the crown of the outer ring.
   *
   * @return the radius; 0 for a flat ring
   */
  Length crownRadius();

  /**
   * Diameter on which the roller sits: stands for its inner raceway, which makers seldom state.
   *
   * @return the diameter of the stud or of the bore
   */
  Length seatDiameter();

  /**
   * System of measures of the roller.
   *
   * @return metric or inch
   */
  MeasureSystem system();

  /**
   * Rolling elements.
   *
   * @return their kind
   */
  RollerKind kind();

  /**
   * Whether it has contact seals.
   *
   * @return true with contact seals
   */
  boolean sealed();

  /**
   * Load ratings.
   *
   * @return the ratings as {@link #ratingsFrom()} says
   */
  LoadRatings ratings();

  /**
   * Where the load ratings come from.
   *
   * @return the origin
   */
  ValueOrigin ratingsFrom();

  /**
   * Other limits as the maker states them.
   *
   * @return the limits
   */
  MakersLimits limits();

  /**
   * Rollers and play, if they are known.
   *
   * @return the inside of the roller
   */
  Optional<RollerInterior> knownInterior();

  /**
   * Whether the outer ring is crowned.
   *
   * @return false for a flat ring
   */
  default boolean crowned() {
    return crownRadius().mm() > 0;
  }

  /**
   * The diameter that counts for the film: the pitch diameter if the inside is known, else the mean of seat and outside
   * diameter, which ISO 281 lets stand for it.
   *
   * @return Dpw or (d + D)/2
   */
  default Length meanDiameter() {
    return knownInterior()
        .map(interior -> interior.rollers().pitchDiameter())
        .orElseGet(() -> seatDiameter().plus(outsideDiameter()).times(0.5));
  }

  /**
   * Lowest temperature that the roller may take.
   *
   * @return as its maker states it
   */
  default Temperature coldest() {
    return limits().coldest();
  }

  /**
   * Highest temperature that the roller may take.
   *
   * @return as its maker states it
   */
  default Temperature hottest() {
    return limits().hottest();
  }
}
