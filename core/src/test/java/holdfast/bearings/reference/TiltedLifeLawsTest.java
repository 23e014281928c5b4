// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadRatings;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Laws over generated bearings: loads from 1e-4 Cr to Cr, preload and clearance, tilts far beyond half-length contact. */
class TiltedLifeLawsTest {
  record Roller(TiltedBearing bearing, Force load) {}

  @Provide
  Arbitrary<Roller> rollers() {
    Arbitrary<Integer> z = Arbitraries.integers().between(3, 60);
    Arbitrary<Double> dpw = Arbitraries.doubles().between(8, 200).ofScale(6);
    Arbitrary<Double> fill = Arbitraries.doubles().between(0.2, 0.98).ofScale(6);
    Arbitrary<Double> slender = Arbitraries.doubles().between(0.7, 8).ofScale(6);
    Arbitrary<Double> play = Arbitraries.doubles().between(-0.002, 0.02).ofScale(6);
    Arbitrary<Double> load = Arbitraries.doubles().between(-9.21, 0).ofScale(6);
    Arbitrary<Integer> profile = Arbitraries.integers().between(0, 2);
    Arbitrary<Integer> phase = Arbitraries.integers().between(0, 2);
    return Combinators.combine(z, dpw, fill, slender, play, load, profile, phase).as(TiltedLifeLawsTest::roller);
  }

  private static Roller roller(int z, double dpw, double fill, double slender, double play, double logLoad, int profile,
      int phase) {
    double dwe = Math.min(fill * dpw * Math.sin(Math.PI / z), 0.45 * dpw);
    double lwe = slender * dwe;
    // A rating of the usual size; its exact value does not matter to any law.
    double cr = 70 * Math.pow(lwe, 7.0 / 9) * Math.pow(z, 0.75) * Math.pow(dwe, 29.0 / 27);
    RollerProfile shape = switch (profile) {
      case 0 -> RollerProfile.logarithmic();
      case 1 -> RollerProfile.flat();
      default -> RollerProfile.crowned(new Length(100 * lwe));
    };
    RollerSet set = RollerSet.of(z, new Length(dwe), new Length(lwe), new Length(dpw)).profile(shape);
    LoadRatings ratings = LoadRatings.radialRoller(new Force(cr), new Force(cr));
    TiltedBearing bearing = TiltedBearing.of(ratings, set).clearance(new Length(play * dwe));
    double pitch = 2 * Math.PI / z;
    bearing = bearing.firstElementAt(new Angle(phase == 0 ? 0 : phase == 1 ? 0.5 * pitch : 0.37 * pitch));
    return new Roller(bearing, new Force(cr * Math.exp(logLoad)));
  }

  @Provide
  Arbitrary<Roller> balls() {
    Arbitrary<Integer> z = Arbitraries.integers().between(3, 40);
    Arbitrary<Double> dpw = Arbitraries.doubles().between(8, 200).ofScale(6);
    Arbitrary<Double> fill = Arbitraries.doubles().between(0.2, 0.98).ofScale(6);
    Arbitrary<Double> groove = Arbitraries.doubles().between(0.505, 0.55).ofScale(6);
    Arbitrary<Double> play = Arbitraries.doubles().between(-0.05, 0.6).ofScale(6);
    Arbitrary<Double> load = Arbitraries.doubles().between(-9.21, 0).ofScale(6);
    Arbitrary<Integer> phase = Arbitraries.integers().between(0, 2);
    return Combinators.combine(z, dpw, fill, groove, play, load, phase).as((count, d, f, g, s, logLoad, first) -> {
      double dw = Math.min(f * d * Math.sin(Math.PI / count), 0.45 * d);
      double cr = 50 * Math.pow(count, 2.0 / 3) * Math.pow(dw, 1.8);
      BallSet set = BallSet.of(count, new Length(dw), new Length(d)).grooves(new Length(g * dw), new Length((g + 0.01) * dw));
      LoadRatings ratings = LoadRatings.radialBall(new Force(cr), new Force(cr));
      double centres = (2 * g + 0.01 - 1) * dw;
      double clearance = Math.max(s * centres, -0.04 * dw);
      double pitch = 2 * Math.PI / count;
      TiltedBearing bearing = TiltedBearing.of(ratings, set).clearance(new Length(clearance))
          .firstElementAt(new Angle(first == 0 ? 0 : first == 1 ? 0.5 * pitch : 0.37 * pitch));
      return new Roller(bearing, new Force(cr * Math.exp(logLoad)));
    });
  }

  @Property(tries = 400)
  void rollersAreInEquilibriumAtEveryTilt(
      @ForAll("rollers") Roller roller, @ForAll @Scale(9) @DoubleRange(min = -0.02, max = 0.02) double along,
      @ForAll @Scale(9) @DoubleRange(min = -0.02, max = 0.02) double across) {
    inEquilibrium(roller.bearing.life(Loading.radial(roller.load).tilted(new Angle(along))));
    inEquilibrium(roller.bearing.life(Loading.radial(roller.load).tilted(new Angle(along), new Angle(across))));
  }

  @Property(tries = 200)
  void rollersAreInEquilibriumUnderEveryMoment(
      @ForAll("rollers") Roller roller, @ForAll @Scale(9) @DoubleRange(min = -3, max = 3) double along,
      @ForAll @Scale(9) @DoubleRange(min = -3, max = 3) double across) {
    double arm = ((RollerSet) roller.bearing.elements()).length().mm();
    Torque m = new Torque(along * arm * roller.load.newton());
    inEquilibrium(roller.bearing.life(Loading.radial(roller.load).moment(m)));
    inEquilibrium(roller.bearing.life(
        Loading.radial(roller.load).moment(m, new Torque(across * arm * roller.load.newton()))));
  }

  @Property(tries = 200)
  void ballsAreInEquilibrium(
      @ForAll("balls") Roller ball, @ForAll @Scale(9) @DoubleRange(min = -0.02, max = 0.02) double along,
      @ForAll @Scale(9) @DoubleRange(min = -0.02, max = 0.02) double across,
      @ForAll @Scale(9) @DoubleRange(min = -3, max = 3) double axial) {
    Loading loading = Loading.radial(ball.load).axial(ball.load.times(axial));
    // Up to the tilt that takes up twice the distance of the groove centres.
    BallSet set = (BallSet) ball.bearing.elements();
    double centres = set.innerGroove().mm() + set.outerGroove().mm() - set.diameter().mm();
    double full = 200 * centres / set.pitchDiameter().mm();
    inEquilibrium(ball.bearing.life(loading.tilted(new Angle(full * along))));
    inEquilibrium(ball.bearing.life(loading.tilted(new Angle(full * along), new Angle(full * across))));
    double arm = ball.bearing.elements().pitchDiameter().mm();
    inEquilibrium(ball.bearing.life(loading.moment(
        new Torque(50 * along * arm * ball.load.newton()), new Torque(50 * across * arm * ball.load.newton()))));
  }

  private static void inEquilibrium(TiltedLife life) {
    assertTrue(life.residual() <= 1e-9, () -> "residual " + life.residual() + " after " + life.iterations() + ": " + life);
    assertTrue(life.lifeRatio() > 0 && life.lifeRatio() < Double.POSITIVE_INFINITY, life::toString);
  }

  @Property(tries = 200)
  void withoutTiltTheRatioIsOneAndTheSignOfTheTiltDoesNotMatter(
      @ForAll("rollers") Roller roller, @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.02) double tilt) {
    assertEquals(1, roller.bearing.life(roller.load, new Angle(0)).lifeRatio());
    double plus = roller.bearing.life(roller.load, new Angle(tilt)).lifeRatio();
    double minus = roller.bearing.life(roller.load, new Angle(-tilt)).lifeRatio();
    assertEquals(plus, minus, 1e-8 * plus);
  }

  /**
   * Up to the accuracy of 1 % for each ratio, and to the gain by a wider load zone that light load and clearance allow: 4.4 %
   * over 34 000 generated bearings, 0.7 % at loads over 0.02 Cr.
   */
  @Property(tries = 200)
  void theRatioFallsWithTilt(
      @ForAll("rollers") Roller roller, @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.01) double tilt,
      @ForAll @Scale(9) @DoubleRange(min = 1.05, max = 3) double factor) {
    double less = roller.bearing.life(roller.load, new Angle(tilt)).lifeRatio();
    double more = roller.bearing.life(roller.load, new Angle(factor * tilt)).lifeRatio();
    boolean light = roller.load.newton() < 0.02 * roller.bearing.ratings().dynamic().newton();
    double slack = light ? 0.06 : 0.02;
    assertTrue(more <= less * (1 + slack), () -> more + " at " + factor * tilt + " against " + less + " at " + tilt);
    assertTrue(less <= 1 + slack, () -> less + " at " + tilt);
  }

  /** Usual rollers under 0.1 to 0.3 of Cr: a tilt that leaves them touching over less than 70 % of their length costs life. */
  @Property(tries = 200, maxDiscardRatio = 20)
  void underLoadATiltThatLiftsARollerEndCostsLife(
      @ForAll @IntRange(min = 8, max = 30) int z, @ForAll @Scale(4) @DoubleRange(min = 1, max = 4) double slender,
      @ForAll @Scale(4) @DoubleRange(min = -2.3, max = -1.2) double logLoad, @ForAll @IntRange(min = 0, max = 1) int profile,
      @ForAll @Scale(9) @DoubleRange(min = 0.008, max = 0.02) double tilt) {
    Roller roller = roller(z, 50, 0.9, slender, 0.002, logLoad, profile, 0);
    TiltedLife life = roller.bearing.life(roller.load, new Angle(tilt));
    Assume.that(life.touchingShare() < 0.7);
    assertTrue(life.lifeRatio() < 1, life::toString);
  }

  @Property(tries = 60)
  void moreLaminaeChangeNothing(
      @ForAll("rollers") Roller roller, @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.005) double tilt) {
    double refined = roller.bearing.life(roller.load, new Angle(tilt)).lifeRatio();
    double many = roller.bearing.laminae(1500).life(roller.load, new Angle(tilt)).lifeRatio();
    assertEquals(many, refined, 0.01 * many);
  }

  @Property(tries = 100)
  void symmetryOfTheBearingIsOnlyAShortCut(
      @ForAll("rollers") Roller roller, @ForAll @Scale(9) @DoubleRange(min = -0.005, max = 0.005) double tilt) {
    // A tilt across that is too small to matter takes the way for all directions.
    TiltedLife half = roller.bearing.life(roller.load, new Angle(tilt));
    TiltedLife whole = roller.bearing.life(Loading.radial(roller.load).tilted(new Angle(tilt), new Angle(1e-14)));
    assertEquals(half.life(), whole.life(), 1e-6 * half.life());
    assertEquals(half.greatestLoad().newton(), whole.greatestLoad().newton(), 1e-6 * roller.load.newton());
  }
}
