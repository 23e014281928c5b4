// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.reference.RingMotion;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.fits.Fit;
import holdfast.fits.FitAtTemperature;
import holdfast.fits.MeasuredFit;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import holdfast.seats.SeatTilt;
import holdfast.trace.Traced;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Collects what the price of a seat needs. It may be built again after a change. Not thread-safe. */
public final class SeatPriceBuilder {
  private static final String LOOSEST = "loosest pair";
  private static final String TIGHTEST = "tightest pair";

  private final RollerInterior interior;
  private final LoadRatings ratings;
  private RingMotion inner = RingMotion.STATIONARY;
  private RingMotion outer = RingMotion.ROTATING;
  private Force load;
  private RotationalSpeed speed;
  private Length stud;
  private Length seatLength;
  private Length outside;
  private Length crownRadius;
  private Angle bending;
  private Length runout;
  private Length faceDiameter;
  private Map<String, Length> clearances;
  private Traced play;
  private final Choice pair = new Choice("play of the seat");

  SeatPriceBuilder(RollerInterior interior, LoadRatings ratings) {
    this.interior = interior;
    this.ratings = ratings;
  }

  /**
   * States the duty.
   *
   * @param radialLoad radial load, over 0
   * @param ringSpeed speed of the outer ring, over 0
   * @return this builder
   */
  public SeatPriceBuilder duty(Force radialLoad, RotationalSpeed ringSpeed) {
    this.load = Objects.requireNonNull(radialLoad, "radialLoad");
    this.speed = Objects.requireNonNull(ringSpeed, "ringSpeed");
    return this;
  }

  /**
   * States other motions of the rings than those of a stud roller.
   *
   * @param innerRing motion of the inner ring or stud against the load
   * @param outerRing motion of the outer ring against the load
   * @return this builder
   */
  public SeatPriceBuilder rings(RingMotion innerRing, RingMotion outerRing) {
    this.inner = Objects.requireNonNull(innerRing, "innerRing");
    this.outer = Objects.requireNonNull(outerRing, "outerRing");
    return this;
  }

  /**
   * States the seat.
   *
   * @param studDiameter stud diameter d1
   * @param length length over which stud and bore touch, chamfers not counted
   * @return this builder
   */
  public SeatPriceBuilder seat(Length studDiameter, Length length) {
    this.stud = Objects.requireNonNull(studDiameter, "studDiameter");
    this.seatLength = Objects.requireNonNull(length, "length");
    return this;
  }

  /**
   * States the outer ring.
   *
   * @param outsideDiameter its outside diameter D
   * @param crown radius of its crown, over D/2; 0 for a flat ring, which is taken to lie flat on its track
   * @return this builder
   */
  public SeatPriceBuilder ring(Length outsideDiameter, Length crown) {
    this.outside = Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    this.crownRadius = Objects.requireNonNull(crown, "crown");
    return this;
  }

  /**
   * States the slope of the stud at the roller under the load.
   *
   * @param slope slope by bending, 0 or more; 0 for a stud taken as rigid
   * @return this builder
   */
  public SeatPriceBuilder bending(Angle slope) {
    this.bending = Objects.requireNonNull(slope, "slope");
    return this;
  }

  /**
   * States the squareness of the face that is clamped when the nut is tight. Optional.
   *
   * @param faceRunout run-out of the face to the axis of the bore, 0 or more
   * @param diameter diameter over which it is measured: that of the flange of the stud
   * @return this builder
   */
  public SeatPriceBuilder face(Length faceRunout, Length diameter) {
    this.runout = Objects.requireNonNull(faceRunout, "faceRunout");
    this.faceDiameter = Objects.requireNonNull(diameter, "diameter");
    return this;
  }

  /**
   * Prices the limits of a fit at 20 °C.
   *
   * @param fit the fit
   * @return this builder
   * @throws holdfast.quantity.InputException if one clearance is stated too
   */
  public SeatPriceBuilder fit(Fit fit) {
    Objects.requireNonNull(fit, "fit");
    return pairs(fit.maximumClearance(), fit.meanClearance(), fit.minimumClearance(), fit);
  }

  /**
   * Prices the limits of a fit at the temperatures of the work.
   *
   * @param fit the fit, warm or cold
   * @return this builder
   * @throws holdfast.quantity.InputException if one clearance is stated too
   */
  public SeatPriceBuilder fit(FitAtTemperature fit) {
    Objects.requireNonNull(fit, "fit");
    Length most = fit.maximumClearance();
    Length least = fit.minimumClearance();
    return pairs(most, most.plus(least).times(0.5), least, fit);
  }

  /**
   * Prices measured parts: their mean clearance, and the extremes of the readings widened by the uncertainty.
   *
   * @param fit the readings
   * @return this builder
   * @throws holdfast.quantity.InputException if one clearance is stated too
   */
  public SeatPriceBuilder fit(MeasuredFit fit) {
    Objects.requireNonNull(fit, "fit");
    Length most = fit.maximumClearance().plus(fit.uncertainty());
    return pairs(most, fit.clearance(), fit.minimumClearance().minus(fit.uncertainty()), fit);
  }

  /**
   * Prices one clearance.
   *
   * @param clearance diametral clearance at the temperature of the work; negative for an interference
   * @return this builder
   * @throws holdfast.quantity.InputException if a fit is stated too
   */
  public SeatPriceBuilder clearance(Length clearance) {
    Objects.requireNonNull(clearance, "clearance");
    pair.make("clearance");
    this.clearances = new LinkedHashMap<>(Map.of("given pair", clearance));
    return this;
  }

  private SeatPriceBuilder pairs(Length loose, Length mean, Length tight, Traced source) {
    pair.make("fit");
    this.clearances = new LinkedHashMap<>();
    clearances.put(LOOSEST, loose);
    clearances.put("mean pair", mean);
    clearances.put(TIGHTEST, tight);
    this.play = source;
    return this;
  }

  /**
   * Computes the price.
   *
   * @return the price
   * @throws holdfast.quantity.InputException if something is missing (one error names all of it) or out of range
   */
  public SeatPrice build() {
    new Missing("price of a seat")
        .need(interior, "inside of the roller")
        .need(ratings, "ratings")
        .need(load, "load")
        .need(speed, "speed")
        .need(stud, "stud diameter")
        .need(seatLength, "seat length")
        .need(crownRadius, "diameter and crown of the ring (crown 0 mm for a flat ring)")
        .need(bending, "slope by bending (0 mrad for a stud taken as rigid)")
        .need(clearances, "fit or clearance")
        .refuse();
    TiltedBearing bearing = interior.bearing(ratings).rings(inner, outer);
    List<PricedPair> pairs = new ArrayList<>();
    clearances.forEach((name, clearance) -> pairs.add(pair(bearing, name, clearance)));
    SeatPrice.Play found = play == null ? null : new SeatPrice.Play(play.explain(), play.warnings());
    return new SeatPrice(interior, bearing, load, speed, pairs, found);
  }

  private PricedPair pair(TiltedBearing bearing, String name, Length clearance) {
    SeatTilt.Builder leaning = SeatTilt.of(clearance, stud, seatLength).bending(bending);
    boolean faceGiven = runout != null;
    SeatTilt seat = (faceGiven ? leaning.clampedFace(runout, faceDiameter) : leaning).build();
    RacewayTilt tilt = RacewayTilt.of(bearing, load, PricedPair.greatest(seat), crownRadius, outside);
    RacewayTilt tight = faceGiven ? RacewayTilt.of(bearing, load, seat.total(), crownRadius, outside) : null;
    return new PricedPair(
        name, seat, tilt, bearing.life(load, tilt.raceways()), faceGiven ? bearing.life(load, tight.raceways()) : null);
  }
}
