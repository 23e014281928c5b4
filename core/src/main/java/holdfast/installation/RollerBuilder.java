// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Temperature;
import holdfast.quantity.Torque;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerKind;
import java.util.Objects;

/**
 * Collects what stud and yoke rollers have in common. Not thread-safe.
 *
 * @param <R> the roller that the description ends in
 * @param <B> the builder itself
 */
public abstract sealed class RollerBuilder<R extends MountedRoller, B extends RollerBuilder<R, B>> extends Description<R>
    permits StudRollerBuilder, YokeRollerBuilder {
  final String name;
  private Length outsideDiameter;
  private Length ringWidth;
  private Length crownRadius;
  private MeasureSystem system;
  RollerKind kind;
  boolean sealed;
  LoadRatings ratings;
  ValueOrigin ratingsFrom;
  RollerInterior interior;
  private Temperature coldest;
  private Temperature hottest;
  private Force turning;
  private Force standing;
  private Force trackAt40Hrc;
  private RotationalSpeed speed;

  RollerBuilder(String name) {
    this.name = name;
  }

  abstract B self();

  Length outsideDiameter() {
    return outsideDiameter;
  }

  Length ringWidth() {
    return ringWidth;
  }

  Length crownRadius() {
    return crownRadius;
  }

  MeasureSystem system() {
    return system;
  }

  /** The system of measures: metric if nothing tells it. */
  final MeasureSystem measures() {
    MeasureSystem known = system();
    return known == null ? MeasureSystem.METRIC : known;
  }

  /** The limits common to all rollers with those of what holds it; null where not stated. */
  final MakersLimits limits(Force stud, Torque tightening) {
    return new MakersLimits(coldest, hottest, turning, standing, stud, trackAt40Hrc, speed, tightening);
  }

  /** What every roller needs. */
  @Override
  void missing(Missing missing) {
    missing
        .need(name, "name")
        .need(outsideDiameter(), "ring")
        .need(kind, "inside (rolling elements and seals)")
        .need(ratings, "ratings")
        .need(coldest, "temperatures");
  }

  /**
   * States the load ratings.
   *
   * @param makersRatings as the maker states them
   * @return this builder
   */
  public B ratings(LoadRatings makersRatings) {
    Objects.requireNonNull(makersRatings, "makersRatings");
    return ratings(makersRatings, ValueOrigin.STATED);
  }

  /**
   * States the load ratings and where they come from; the sheet says so where they are estimated from geometry.
   *
   * @param known the ratings
   * @param origin their origin
   * @return this builder
   */
  public B ratings(LoadRatings known, ValueOrigin origin) {
    this.ratings = Objects.requireNonNull(known, "known");
    this.ratingsFrom = Objects.requireNonNull(origin, "origin");
    return self();
  }

  /**
   * States the temperatures that the roller may take.
   *
   * @param lowest lowest temperature
   * @param highest highest temperature
   * @return this builder
   */
  public B temperatures(Temperature lowest, Temperature highest) {
    this.coldest = Objects.requireNonNull(lowest, "lowest");
    this.hottest = Objects.requireNonNull(highest, "highest");
    return self();
  }

  /**
   * States what the outer ring bears. Optional.
   *
   * @param whileTurning greatest radial load while it turns
   * @param atStandstill greatest radial load at standstill
   * @return this builder
   */
  public B ringLimits(Force whileTurning, Force atStandstill) {
    this.turning = Objects.requireNonNull(whileTurning, "whileTurning");
    this.standing = Objects.requireNonNull(atStandstill, "atStandstill");
    return self();
  }

  /**
   * States what a track bears. Optional.
   *
   * @param at40Hrc load that a track of 40 HRC takes from this roller
   * @return this builder
   */
  public B trackCapacity(Force at40Hrc) {
    this.trackAt40Hrc = Objects.requireNonNull(at40Hrc, "at40Hrc");
    return self();
  }

  /**
   * States the greatest speed. Optional: without it the published speed factor of the kind is taken.
   *
   * @param limit greatest speed of the outer ring
   * @return this builder
   */
  public B speedLimit(RotationalSpeed limit) {
    this.speed = Objects.requireNonNull(limit, "limit");
    return self();
  }

  /**
   * States rollers and play. Optional: without it the sheet does not say what a loose seat costs in life.
   *
   * @param rollersAndPlay the inside of the roller, each value with its origin
   * @return this builder
   */
  public B interior(RollerInterior rollersAndPlay) {
    this.interior = Objects.requireNonNull(rollersAndPlay, "rollersAndPlay");
    return self();
  }

  /**
   * States the outer ring.
   *
   * @param diameter outside diameter D
   * @param width width of the ring
   * @param crown radius of its crown; 0 mm for a flat ring
   * @return this builder
   */
  public B ring(Length diameter, Length width, Length crown) {
    this.outsideDiameter = Objects.requireNonNull(diameter, "diameter");
    this.ringWidth = Objects.requireNonNull(width, "width");
    this.crownRadius = Objects.requireNonNull(crown, "crown");
    return self();
  }

  /**
   * States rolling elements and seals.
   *
   * @param rollingElements the kind of rolling elements
   * @param contactSeals whether the roller has contact seals
   * @return this builder
   */
  public B inside(RollerKind rollingElements, boolean contactSeals) {
    this.kind = Objects.requireNonNull(rollingElements, "rollingElements");
    this.sealed = contactSeals;
    return self();
  }

  /**
   * States the system of measures of fittings and ports. Metric if it is not stated.
   *
   * @param measures metric or inch
   * @return this builder
   */
  public B system(MeasureSystem measures) {
    this.system = Objects.requireNonNull(measures, "measures");
    return self();
  }
}
