// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadRatings;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The search for the equilibrium over a fixed set of generated bearings under loads from 1e-4 of the rating, and at the few
 * of 24 000 that need the way down from high loads.
 */
class SearchTest {
  private static final int SEEDS = 150;

  private static RollerProfile profile(int kind, double length) {
    return switch (kind) {
      case 0 -> RollerProfile.logarithmic();
      case 1 -> RollerProfile.flat();
      default -> RollerProfile.crowned(new Length(100 * length));
    };
  }

  private static Angle first(int seed, int z) {
    return new Angle(List.of(0.0, 0.5, 0.37).get(seed % 3) * 2 * Math.PI / z);
  }

  private static TiltedBearing rollers(Random random, int seed) {
    int z = 3 + random.nextInt(30);
    double dpw = 8 + 190 * random.nextDouble();
    double dwe = Math.min((0.2 + 0.78 * random.nextDouble()) * dpw * Math.sin(Math.PI / z), 0.45 * dpw);
    double lwe = dwe * (0.7 + 7 * random.nextDouble());
    double cr = 70 * Math.pow(lwe, 7.0 / 9) * Math.pow(z, 0.75) * Math.pow(dwe, 29.0 / 27);
    RollerSet set = RollerSet.of(z, new Length(dwe), new Length(lwe), new Length(dpw)).profile(profile(seed / 3 % 3, lwe));
    return TiltedBearing.of(LoadRatings.radialRoller(new Force(cr), new Force(cr)), set)
        .clearance(new Length((-0.002 + 0.022 * random.nextDouble()) * dwe)).laminae(30).firstElementAt(first(seed, z));
  }

  private static TiltedBearing balls(Random random, int seed) {
    int z = 3 + random.nextInt(30);
    double dpw = 8 + 190 * random.nextDouble();
    double dw = Math.min((0.2 + 0.78 * random.nextDouble()) * dpw * Math.sin(Math.PI / z), 0.45 * dpw);
    double groove = 0.505 + 0.045 * random.nextDouble();
    double cr = 50 * Math.pow(z, 2.0 / 3) * Math.pow(dw, 1.8);
    double centres = (2 * groove + 0.01 - 1) * dw;
    BallSet set =
        BallSet.of(z, new Length(dw), new Length(dpw)).grooves(new Length(groove * dw), new Length((groove + 0.01) * dw));
    return TiltedBearing.of(LoadRatings.radialBall(new Force(cr), new Force(cr)), set)
        .clearance(new Length(Math.max((-0.05 + 0.65 * random.nextDouble()) * centres, -0.04 * dw)))
        .firstElementAt(first(seed, z));
  }

  private static List<Loading> loadings(Random random, TiltedBearing bearing, boolean axial) {
    double load = bearing.ratings().dynamic().newton() * Math.exp(-9.21 * random.nextDouble());
    Angle along = new Angle(0.02 * (2 * random.nextDouble() - 1));
    Angle across = new Angle(0.02 * (2 * random.nextDouble() - 1));
    double arm = bearing.elements() instanceof RollerSet set ? set.length().mm() : 2;
    Torque momentAlong = new Torque(3 * (2 * random.nextDouble() - 1) * arm * load);
    Torque momentAcross = new Torque(3 * (2 * random.nextDouble() - 1) * arm * load);
    Loading base = Loading.radial(new Force(load));
    if (axial) {
      base = base.axial(new Force(load * 3 * (2 * random.nextDouble() - 1)));
    }
    return List.of(base, base.tilted(along), base.tilted(along, across), base.moment(momentAlong),
        base.moment(momentAlong, momentAcross));
  }

  /** Evaluations for each kind of loading; every one ends in equilibrium. */
  private static int[] effort(boolean balls, int fromSeed, int toSeed) {
    int[] effort = new int[5];
    for (int seed = fromSeed; seed < toSeed; seed++) {
      Random random = new Random(seed);
      TiltedBearing rollers = rollers(random, seed);
      List<Loading> ofRollers = loadings(random, rollers, false);
      TiltedBearing ofBalls = balls(random, seed);
      List<Loading> loadings = balls ? loadings(random, ofBalls, true) : ofRollers;
      for (int i = 0; i < 5; i++) {
        TiltedLife life = (balls ? ofBalls : rollers).life(loadings.get(i));
        assertTrue(life.residual() <= 1e-9, () -> life.residual() + ": " + life);
        effort[i] += life.iterations();
      }
    }
    return effort;
  }

  /** A guard against slower searching: about 1.3 times the mean effort when this was written. */
  @Test
  void theSearchEndsInEquilibriumSoon() {
    int[] rollers = effort(false, 0, SEEDS);
    int[] balls = effort(true, 0, SEEDS);
    double[] most = {11, 10, 14, 25, 30, 40, 27, 28, 68, 77};
    for (int i = 0; i < 5; i++) {
      double ofRollers = (double) rollers[i] / SEEDS;
      double ofBalls = (double) balls[i] / SEEDS;
      assertTrue(ofRollers <= most[i], ofRollers + " for loading " + i);
      assertTrue(ofBalls <= most[5 + i], ofBalls + " for loading " + i);
    }
  }

  @Test
  void littleLoadInMuchPlayIsReachedFromAbove() {
    for (int seed : new int[] {6424, 7662, 8152}) {
      int[] effort = effort(true, seed, seed + 1);
      assertTrue(effort[1] > 600 || effort[2] > 600, "this case does not need the way down from high loads any more");
    }
  }

  @Test
  void aUsualBearingTakesAFewSteps() {
    TiltedBearing usual = TiltedBearing.of(LoadRatings.radialRoller(kN(20), kN(25)), RollerSet.of(14, mm(5), mm(10), mm(40)))
        .clearance(um(20));
    // One unknown: Newton doubles the digits, and 52 bits are there after six or seven steps from a fair start.
    assertTrue(usual.life(kN(4), mrad(0)).iterations() <= 10);
    assertTrue(usual.life(kN(4), mrad(2)).iterations() <= 10);
  }

  @Test
  void stiffnessesOfFewElementsAreDerivatives() {
    TiltedBearing rollers = TiltedBearing.of(LoadRatings.radialRoller(kN(20), kN(25)), RollerSet.of(4, mm(10), mm(15), mm(40)))
        .clearance(um(5)).firstElementAt(rad(0.3)).laminae(30);
    TiltedBearing balls = TiltedBearing.of(LoadRatings.radialBall(kN(14), kN(6.5)), BallSet.of(4, mm(12), mm(40)))
        .clearance(um(5)).firstElementAt(rad(0.3));
    for (TiltedBearing bearing : List.of(rollers, balls)) {
      Loading loading = Loading.radial(kN(4));
      TiltedLife at = bearing.life(loading.tilted(mrad(1), mrad(-0.5)));
      double up = bearing.life(Loading.radial(N(4001)).tilted(mrad(1), mrad(-0.5))).displacement().mm();
      double down = bearing.life(Loading.radial(N(3999)).tilted(mrad(1), mrad(-0.5))).displacement().mm();
      assertEquals(2 / (up - down), at.radialStiffness().newtonPerMm(), 1e-5 * at.radialStiffness().newtonPerMm());
      double h = 1e-6;
      double more = bearing.life(loading.tilted(rad(1e-3 + h), mrad(-0.5))).momentAlong().newtonMillimetre();
      double less = bearing.life(loading.tilted(rad(1e-3 - h), mrad(-0.5))).momentAlong().newtonMillimetre();
      assertEquals((more - less) / (2 * h), at.tiltStiffness(), 1e-5 * at.tiltStiffness());
    }
  }

  @Test
  void symmetricBallsHaveNoMomentAcross() {
    BallSet set = BallSet.of(9, mm(8), mm(40));
    TiltedBearing balls = TiltedBearing.of(LoadRatings.radialBall(kN(14), kN(6.5)), set).clearance(um(10));
    TiltedLife life = balls.life(Loading.radial(kN(2)).axial(N(300)).tilted(mrad(3)));
    assertEquals(0, life.momentAcross().newtonMillimetre());
    double along = 0;
    double axial = 0;
    for (LoadDistribution.Element element : life.distribution().elements()) {
      double push = element.load().newton() * Math.sin(element.contactAngle().radian());
      axial += push;
      along += push * Math.cos(element.position().radian());
    }
    assertEquals(300, axial, 1e-6);
    // On the circle of the groove centres of the inner ring: 20 + (4.16 - 4) cos α0, cos α0 = 1 - 0.005/0.32.
    double circle = 20 + 0.16 * (1 - 0.005 / 0.32);
    assertEquals(along * circle, life.momentAlong().newtonMillimetre(), 1e-5);
  }
}
