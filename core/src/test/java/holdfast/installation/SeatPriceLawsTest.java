// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.reference.Loading;
import holdfast.bearings.reference.RollerProfile;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws over generated stud rollers of usual slenderness, loads from 0.02 C to 0.5 C. */
class SeatPriceLawsTest {
  record Job(RollerInterior interior, LoadRatings ratings, Force load) {
    SeatPriceBuilder price(double crown) {
      Length stud = interior.rollers().pitchDiameter().times(0.75);
      return SeatPrice.of(interior, ratings).duty(load, rpm(100)).seat(stud, stud).ring(new Length(40), new Length(crown))
          .bending(new Angle(0));
    }

    TiltedBearing bearing() {
      return interior.bearing(ratings);
    }
  }

  @Provide
  Arbitrary<Job> jobs() {
    Arbitrary<Integer> z = Arbitraries.integers().between(8, 30);
    Arbitrary<Double> dpw = Arbitraries.doubles().between(8, 60).ofScale(4);
    Arbitrary<Double> slender = Arbitraries.doubles().between(1, 5).ofScale(4);
    Arbitrary<Double> play = Arbitraries.doubles().between(0, 0.01).ofScale(5);
    Arbitrary<Double> share = Arbitraries.doubles().between(0.02, 0.5).ofScale(4);
    Arbitrary<Boolean> straight = Arbitraries.of(true, false);
    return Combinators.combine(z, dpw, slender, play, share, straight).as((count, d, slim, s, f, flat) -> {
      double dwe = Math.min(0.9 * d * Math.sin(Math.PI / count), 0.3 * d);
      double lwe = slim * dwe;
      Force c = new Force(70 * Math.pow(lwe, 7.0 / 9) * Math.pow(count, 0.75) * Math.pow(dwe, 29.0 / 27));
      RollerInterior interior =
          RollerInterior.describe()
              .rollers(count, new Length(dwe), new Length(lwe), ValueOrigin.ESTIMATED)
              .pitchDiameter(new Length(d), ValueOrigin.ESTIMATED)
              .clearance(new Length(s * dwe), ValueOrigin.ESTIMATED)
              .profile(flat ? RollerProfile.flat() : RollerProfile.logarithmic(), ValueOrigin.ESTIMATED)
              .build();
      return new Job(interior, LoadRatings.trackRoller(c, c, OuterRing.RIGID), c.times(f));
    });
  }

  @Property(tries = 100)
  void withoutLeanTheRatioIsOne(@ForAll("jobs") Job job, @ForAll @Scale(4) @DoubleRange(min = -0.05, max = 0) double clearance) {
    assertEquals(1, job.price(0).clearance(new Length(clearance)).build().lifeRatio());
    assertEquals(1, job.price(500).clearance(new Length(clearance)).build().lifeRatio());
  }

  @Property(tries = 60)
  void theSideToWhichTheStudLeansDoesNotMatter(
      @ForAll("jobs") Job job, @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.04) double clearance) {
    SeatPrice price = job.price(0).clearance(new Length(clearance)).build();
    double lean = price.loosest().tilt().raceways().radian();
    double other = job.bearing().life(job.load, new Angle(-lean)).lifeRatio();
    assertEquals(price.lifeRatio(), other, 1e-8 * other);
  }

  /** Up to the accuracy of 1 % of each ratio and the small gain by a wider load zone that the bearing model documents. */
  @Property(tries = 60)
  void moreClearanceNeverGainsLife(
      @ForAll("jobs") Job job, @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.04) double clearance,
      @ForAll @Scale(3) @DoubleRange(min = 1.05, max = 3) double factor) {
    double less = job.price(0).clearance(new Length(clearance)).build().lifeRatio();
    double more = job.price(0).clearance(new Length(clearance * factor)).build().lifeRatio();
    assertTrue(more <= 1.02 * less && less <= 1.02, () -> more + " after " + less);
  }

  @Property(tries = 60)
  void constantFactorsCancel(
      @ForAll("jobs") Job job, @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.04) double clearance,
      @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 4) double factor) {
    LoadRatings others =
        LoadRatings.trackRoller(job.ratings.dynamic().times(factor), job.ratings.staticRating(), OuterRing.DEFLECTING);
    Length play = new Length(clearance);
    SeatPrice one = job.price(0).clearance(play).build();
    SeatPrice two = new Job(job.interior, others, job.load).price(0).clearance(play).build();
    assertEquals(one.lifeRatio(), two.lifeRatio(), 1e-9 * one.lifeRatio());
    double power = Math.pow(factor, 4);
    double lives = two.loosest().life().life() / one.loosest().life().life();
    // Rings under moving load count with exponent 4, under standing load with 4.5 · 8/9 = 4.
    assertEquals(power, lives, 1e-9 * power);
  }

  @Property(tries = 60)
  void aCrownedRingLeavesTheRollersWhatBalancesTheLoad(
      @ForAll("jobs") Job job, @ForAll @Scale(5) @DoubleRange(min = 1e-4, max = 0.005) double lean,
      @ForAll @Scale(1) @DoubleRange(min = 50, max = 5000) double crown) {
    RacewayTilt tilt = RacewayTilt.of(job.bearing(), job.load, new Angle(lean), new Length(crown), new Length(40));
    double raceways = tilt.raceways().radian();
    assertTrue(raceways > 0 && raceways < lean);
    assertEquals(lean, raceways + tilt.ring().radian(), 1e-12);
    double byLoad = job.load.newton() * (crown - 20) * tilt.ring().radian();
    assertEquals(byLoad, tilt.moment().newtonMillimetre(), 1e-6 * byLoad);
    // The same moment put on the bearing must lead back to the same tilt.
    TiltedBearing cut = job.bearing().laminae(job.bearing().life(job.load, new Angle(lean)).bearing().laminae());
    double back = cut.life(Loading.radial(job.load).moment(tilt.moment())).tiltAlong().radian();
    assertEquals(raceways, back, 1e-5 * lean);
    RacewayTilt blunt = RacewayTilt.of(job.bearing(), job.load, new Angle(lean), new Length(1e9), new Length(40));
    assertEquals(lean, blunt.raceways().radian(), 1e-3 * lean, "a crown without end is a flat ring");
    RacewayTilt sharper = RacewayTilt.of(job.bearing(), job.load, new Angle(lean), new Length(crown / 2), new Length(40));
    assertTrue(sharper.raceways().compareTo(tilt.raceways()) < 0);
  }

  /** Springs in series, from the stiffness that the bearing tells. */
  @Property(tries = 60)
  void aSmallLeanIsSharedLikeSpringsInSeries(
      @ForAll("jobs") Job job, @ForAll @Scale(1) @DoubleRange(min = 50, max = 5000) double crown) {
    double lean = 1e-7;
    double stiffness = job.bearing().life(job.load, new Angle(0)).tiltStiffness();
    double expected = lean / (1 + stiffness / (job.load.newton() * (crown - 20)));
    double raceways =
        RacewayTilt.of(job.bearing(), job.load, new Angle(lean), new Length(crown), new Length(40)).raceways().radian();
    assertEquals(expected, raceways, 0.01 * expected);
  }
}
