// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Loads, moments and lives recomputed from the stated laws, element by element. */
class TiltedModelTest {
  private static final int N = 12;
  private static final RollerSet ROLLERS = RollerSet.of(14, mm(5), mm(10), mm(40));
  private static final TiltedBearing BEARING =
      TiltedBearing.of(LoadRatings.radialRoller(kN(20), kN(25)), ROLLERS).clearance(um(20)).laminae(N).spacing(LaminaSpacing.EQUAL);
  private static final BallSet BALL_SET = BallSet.of(9, mm(8), mm(40)).grooves(mm(4.12), mm(4.24));
  private static final TiltedBearing BALLS =
      TiltedBearing.of(LoadRatings.radialBall(kN(14), kN(6.5)), BALL_SET).clearance(um(10));
  private static final Loading TILTED = Loading.radial(kN(4)).tilted(mrad(1), mrad(-0.5));

  private static List<TiltedBearing> rollerBearings() {
    TiltedBearing two = TiltedBearing.of(LoadRatings.radialRoller(kN(40), kN(50)), ROLLERS.rows(2, mm(11)))
        .clearance(um(20)).laminae(N).spacing(LaminaSpacing.EQUAL);
    return List.of(BEARING, BEARING.withoutEdgeStress(), BEARING.firstElementAt(rad(Math.PI / 14)),
        BEARING.firstElementAt(mrad(100)), two, BEARING.rings(RingMotion.ROTATING, RingMotion.ROTATING),
        BEARING.rings(RingMotion.STATIONARY, RingMotion.ROTATING), BEARING.rings(RingMotion.STATIONARY, RingMotion.STATIONARY));
  }

  private static List<Loading> loadings() {
    return List.of(TILTED, Loading.radial(kN(4)).tilted(mrad(2)), Loading.radial(kN(1)));
  }

  /** Radial, along and across the load, and the moments of all laminae or balls. */
  private record Sums(double along, double across, double momentAlong, double momentAcross) {}

  @Test
  void laminaLoadsFollowFromTheDisplacements() {
    LaminaWorkspace w = new LaminaWorkspace(14, 3);
    double[] x = {-4, 1, 4};
    double[] share = {0.3, 0.4, 0.3};
    double[] drop = {0.003, 0, 0.002};
    double first = 0.05;
    double stiffness = LaminaKernel.stiffness(10);
    LoadDistributionKernel.rollers(w, 14, first);
    LoadDistributionKernel.laminae(w, 3, x, share, drop, new double[] {1, 1, 1}, stiffness);
    LoadDistributionKernel.tilted(w, 4000, 0.02, 1e-3, -2e-3);
    double along = 0;
    double across = 0;
    double momentAlong = 0;
    double momentAcross = 0;
    for (int j = 0; j < 14; j++) {
      double angle = first + 2 * Math.PI / 14 * j;
      assertEquals(angle, w.angle(j), 1e-15);
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      double roller = 0;
      for (int k = 0; k < 3; k++) {
        double d = w.displacement() * c + w.sideDisplacement() * s - 0.01
            + x[k] * (Math.tan(1e-3) * c + Math.tan(-2e-3) * s) - 2 * drop[k];
        double q = d > 0 ? share[k] * stiffness * Math.pow(d, 10.0 / 9) : 0;
        assertEquals(q, w.laminaLoad(j, k), 1e-8);
        assertEquals(q / share[k], w.density(j, k), 1e-7);
        roller += q;
        along += q * c;
        across += q * s;
        momentAlong += q * c * x[k];
        momentAcross += q * s * x[k];
      }
      assertEquals(roller, w.rollerLoad(j), 1e-8);
    }
    assertEquals(4000, along, 1e-7);
    assertEquals(0, across, 1e-7);
    assertEquals(momentAlong, w.momentAlong(), 1e-6);
    assertEquals(momentAcross, w.momentAcross(), 1e-6);
    assertEquals(1e-3, w.tiltAlong(), 1e-15);
    assertEquals(-2e-3, w.tiltAcross(), 1e-15);
    assertFalse(w.symmetryUsed());
  }

  @Test
  void ballLoadsFollowFromTheDisplacements() {
    BallWorkspace w = new BallWorkspace(9);
    double first = 0.1;
    BallDistributionKernel.balls(w, 9, first);
    BallDistributionKernel.contacts(w, 8, 40, 4.12, 4.24, 0.02);
    BallDistributionKernel.tilted(w, 2000, 700, 2e-3, -3e-3);
    double a = 0.36;
    double circle = 20 + 0.12 * (1 - 0.01 / a);
    double stiffness = BallKernel.stiffness(8, 40, 4.12, 4.24);
    double along = 0;
    double across = 0;
    double axial = 0;
    double momentAlong = 0;
    double momentAcross = 0;
    for (int j = 0; j < 9; j++) {
      double angle = first + 2 * Math.PI / 9 * j;
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      double radial = a - 0.01 + w.displacement() * c + w.sideDisplacement() * s;
      double axially = w.axialDisplacement() + circle * (Math.tan(2e-3) * c + Math.tan(-3e-3) * s);
      double d = Math.hypot(radial, axially) - a;
      double q = d > 0 ? stiffness * Math.pow(d, 1.5) : 0;
      assertEquals(q, w.ballLoad(j), 1e-6);
      double contact = Math.atan2(axially, radial);
      assertEquals(q > 0 ? contact : 0, w.contactAngle(j), 1e-12);
      along += q * Math.cos(contact) * c;
      across += q * Math.cos(contact) * s;
      axial += q * Math.sin(contact);
      momentAlong += q * Math.sin(contact) * c * circle;
      momentAcross += q * Math.sin(contact) * s * circle;
    }
    assertEquals(2000, along, 1e-5);
    assertEquals(0, across, 1e-5);
    assertEquals(700, axial, 1e-5);
    assertEquals(momentAlong, w.momentAlong(), 1e-4);
    assertEquals(momentAcross, w.momentAcross(), 1e-4);
    assertEquals(2e-3, w.tiltAlong(), 1e-15);
    assertEquals(-3e-3, w.tiltAcross(), 1e-15);
  }

  @Test
  void momentsAreThoseOfTheDistribution() {
    for (TiltedBearing bearing : rollerBearings()) {
      for (Loading loading : loadings()) {
        TiltedLife life = bearing.life(loading);
        Sums sums = sums(life);
        double fr = loading.radial().newton();
        assertEquals(fr, sums.along, 1e-8 * fr);
        assertEquals(0, sums.across, 1e-8 * fr);
        assertEquals(sums.momentAlong, life.momentAlong().newtonMillimetre(), 1e-7 * fr);
        assertEquals(sums.momentAcross, life.momentAcross().newtonMillimetre(), 1e-7 * fr);
      }
    }
  }

  private static Sums sums(TiltedLife life) {
    double along = 0;
    double across = 0;
    double momentAlong = 0;
    double momentAcross = 0;
    for (LoadDistribution.Element element : life.distribution().elements()) {
      double c = Math.cos(element.position().radian());
      double s = Math.sin(element.position().radian());
      for (LoadDistribution.Lamina lamina : element.laminae()) {
        double q = lamina.load().newton();
        along += q * c;
        across += q * s;
        momentAlong += q * c * lamina.position().mm();
        momentAcross += q * s * lamina.position().mm();
      }
    }
    return new Sums(along, across, momentAlong, momentAcross);
  }

  /** {Σ [(qei/qci)^(9/2) + (qee/qce)^(9/2)]}^(-8/9), qc = Qc n^(-7/9), each lamina with its factor a at (qe/qc) n^(2/9). */
  private static double life(TiltedBearing bearing, Loading loading, DoubleUnaryOperator factor) {
    List<LoadDistribution.Element> elements = bearing.life(loading).distribution().elements();
    int rows = elements.size() / 14;
    double cr = bearing.ratings().dynamic().newton();
    double share = Math.pow(1.0 / N, 7.0 / 9);
    double qci = share * LaminaKernel.innerRating(cr, 14, rows, 0.125);
    double qce = share * LaminaKernel.outerRating(cr, 14, rows, 0.125);
    double sum = 0;
    for (int row = 0; row < rows; row++) {
      for (int k = 0; k < N; k++) {
        double f = bearing.edgeStress() ? LaminaKernel.edgeStressFactor((k + 0.5) / N - 0.5) : 1;
        List<Double> loads = new ArrayList<>();
        for (LoadDistribution.Element element : elements.subList(14 * row, 14 * row + 14)) {
          loads.add(f * element.laminae().get(k).load().newton());
        }
        double[] shares = {ring(loads, bearing.innerRing()) / qci, ring(loads, bearing.outerRing()) / qce};
        for (double p : shares) {
          sum += p == 0 ? 0 : Math.pow(p, 4.5) * Math.pow(factor.applyAsDouble(p * Math.pow(N, 2.0 / 9)), -9.0 / 8);
        }
      }
    }
    return Math.pow(sum, -8.0 / 9);
  }

  /** Mean of the powers 4 on a ring that rotates against the load, of the powers 9/2 on one that stands still. */
  private static double ring(List<Double> loads, RingMotion motion) {
    double power = motion == RingMotion.ROTATING ? 4 : 4.5;
    return Math.pow(loads.stream().mapToDouble(q -> Math.pow(q, power)).sum() / loads.size(), 1 / power);
  }

  @Test
  void theLifeOfRollersIsThatOfTheWeakestLink() {
    for (TiltedBearing bearing : rollerBearings()) {
      for (Loading loading : loadings()) {
        TiltedLife result = bearing.life(loading);
        double expected = life(bearing, loading, p -> 1);
        assertEquals(expected, result.life(), 1e-7 * expected, bearing + ", " + loading);
        assertEquals(life(bearing, loading.aligned(), p -> 1), result.alignedLife(), 1e-7 * result.alignedLife());
        double modified = life(bearing, loading, p -> 1 / (p + 0.1)) / life(bearing, loading.aligned(), p -> 1 / (p + 0.1));
        assertEquals(modified, result.modifiedLifeRatio(p -> 1 / (p + 0.1)), 1e-7 * modified);
      }
    }
  }

  @Test
  void theLifeOfBallsIsThatOfBothRings() {
    double qci = BallKernel.innerRating(14_000, 9, 8, 40, 4.12, 4.24);
    double qce = BallKernel.outerRating(14_000, 9, 8, 40, 4.12, 4.24);
    for (RingMotion inner : RingMotion.values()) {
      for (RingMotion outer : RingMotion.values()) {
        for (TiltedBearing place : List.of(BALLS, BALLS.firstElementAt(rad(Math.PI / 9)), BALLS.firstElementAt(mrad(100)))) {
          TiltedBearing bearing = place.rings(inner, outer);
          TiltedLife life = bearing.life(Loading.radial(kN(2)).axial(N(500)).tilted(mrad(3)));
          double[] q = life.distribution().elements().stream().mapToDouble(e -> e.load().newton()).toArray();
          double i = Math.pow(ballRing(q, inner) / qci, 10.0 / 3);
          double e = Math.pow(ballRing(q, outer) / qce, 10.0 / 3);
          double expected = Math.pow(i + e, -0.9);
          assertEquals(expected, life.life(), 1e-8 * expected);
          assertEquals(expected, life.recalledLife(), 1e-8 * expected);
          TiltedLife aligned = bearing.life(Loading.radial(kN(2)).axial(N(500)));
          double modified = modifiedBalls(life, qci, qce) / modifiedBalls(aligned, qci, qce);
          assertEquals(modified, life.modifiedLifeRatio(p -> 1 / (p + 0.1)), 1e-8 * modified);
        }
      }
    }
  }

  private static double modifiedBalls(TiltedLife life, double qci, double qce) {
    double[] q = life.distribution().elements().stream().mapToDouble(e -> e.load().newton()).toArray();
    double i = ballRing(q, life.bearing().innerRing()) / qci;
    double e = ballRing(q, life.bearing().outerRing()) / qce;
    return Math.pow(Math.pow(i, 10.0 / 3) * Math.pow(i + 0.1, 10.0 / 9) + Math.pow(e, 10.0 / 3) * Math.pow(e + 0.1, 10.0 / 9), -0.9);
  }

  private static double ballRing(double[] loads, RingMotion motion) {
    double power = motion == RingMotion.ROTATING ? 3 : 10.0 / 3;
    double sum = 0;
    for (double q : loads) {
      sum += Math.pow(q, power);
    }
    return Math.pow(sum / loads.length, 1 / power);
  }

  @Test
  void pressuresAreThoseOfTheMostLoadedContact() {
    TiltedLife life = BALLS.life(kN(2), mrad(3));
    double q = life.greatestLoad().newton();
    // The inner ring is pressed harder: it is convex along the groove, and here its groove is tighter by less than that.
    double p = Math.max(BallKernel.pressure(q, 8, 40, 4.12, true), BallKernel.pressure(q, 8, 40, 4.24, false));
    assertEquals(p, life.greatestPressure().megapascal(), 1e-9 * p);
    TiltedLife rollers = BEARING.life(TILTED);
    for (LoadDistribution.Element element : rollers.distribution().elements()) {
      for (LoadDistribution.Lamina lamina : element.laminae()) {
        double line = lamina.load().newton() / (10.0 / N);
        assertEquals(LaminaKernel.pressure(line, 5, 35), lamina.pressure().megapascal(), 1e-8);
      }
    }
  }

  @Test
  void theLoadZoneIsWhereTheRingsComeNearer() {
    double step = Math.toRadians(0.5);
    TiltedBearing flat = TiltedBearing.of(LoadRatings.radialRoller(kN(20), kN(25)), ROLLERS.profile(RollerProfile.flat()));
    // Without clearance half the circle, less the two ends where nothing comes nearer.
    assertEquals(Math.PI, flat.life(kN(2), mrad(0)).loadZone().radian(), 1.01 * step);
    assertEquals(2 * Math.PI, flat.clearance(um(-100)).life(N(10), mrad(0)).loadZone().radian(), 1e-12);
    TiltedLife play = flat.clearance(um(20)).life(kN(1), mrad(0));
    assertEquals(2 * Math.acos(0.01 / play.displacement().mm()), play.loadZone().radian(), 2.01 * step);
    // Tilted in its plane the end x = 5 mm comes nearer by 5 tan ψ.
    TiltedLife tilted = flat.clearance(um(20)).laminae(2000).spacing(LaminaSpacing.EQUAL).life(kN(1), mrad(1));
    assertEquals(2 * Math.acos(0.01 / (tilted.displacement().mm() + 4.9975 * Math.tan(1e-3))), tilted.loadZone().radian(),
        2.01 * step);
    // The tilt across the load takes the zone along to one side, the same for both directions.
    double left = flat.clearance(um(20)).life(Loading.radial(kN(1)).tilted(mrad(1), mrad(2))).loadZone().radian();
    double right = flat.clearance(um(20)).life(Loading.radial(kN(1)).tilted(mrad(1), mrad(-2))).loadZone().radian();
    assertEquals(left, right, 1.01 * step);
    // Loaded elements of every bearing lie in the zone and those outside carry nothing.
    for (TiltedBearing bearing : List.of(BEARING, BALLS)) {
      TiltedLife life = bearing.firstElementAt(mrad(30)).life(TILTED);
      assertEquals(life.loadZone().radian() / (2 * Math.PI) * bearing.elements().count(), life.loadedElements(), 1);
      long loaded = life.distribution().elements().stream().filter(e -> e.load().newton() > 0).count();
      assertEquals(loaded, life.loadedElements());
    }
    // Balls without tilt and axial load: a ball is loaded where δ cos φ is over half the clearance.
    TiltedLife balls = BALLS.life(kN(1), mrad(0));
    assertEquals(2 * Math.acos(0.005 / balls.displacement().mm()), balls.loadZone().radian(), 2.01 * step);
    TiltedLife thrust = BALLS.life(Loading.radial(N(10)).axial(kN(2)));
    assertEquals(2 * Math.PI, thrust.loadZone().radian(), 1e-12);
    assertEquals(9, thrust.loadedElements());
  }

  @Test
  void theTouchingShareIsThatOfTheMostLoadedRoller() {
    for (TiltedBearing bearing : rollerBearings()) {
      TiltedLife life = bearing.life(Loading.radial(kN(1)).tilted(mrad(4)));
      LoadDistribution.Element most = life.distribution().elements().get(0);
      for (LoadDistribution.Element element : life.distribution().elements()) {
        // Of a symmetric pair, equal but for the last digits of their sums, the first.
        most = element.load().newton() > most.load().newton() * (1 + 1e-12) ? element : most;
      }
      long touching = most.laminae().stream().filter(lamina -> lamina.load().newton() > 0).count();
      assertTrue(touching < N, life::toString);
      assertEquals((double) touching / N, life.touchingShare(), 1e-12);
      assertEquals(most.load().newton(), life.greatestLoad().newton(), 1e-9);
    }
    assertEquals(1, BALLS.life(kN(1), mrad(1)).touchingShare());
  }

  @Test
  void theSearchTakesFewSteps() {
    for (TiltedBearing bearing : List.of(BEARING, BEARING.firstElementAt(mrad(100)), BALLS, BALLS.firstElementAt(mrad(100)))) {
      for (Loading loading : List.of(Loading.radial(kN(4)), TILTED, Loading.radial(kN(4)).moment(new Torque(2000)),
          Loading.radial(kN(4)).moment(new Torque(2000), new Torque(-1000)))) {
        TiltedLife life = bearing.life(loading);
        assertTrue(life.iterations() <= 40, () -> life.iterations() + " for " + loading);
        assertTrue(life.residual() <= 1e-11, () -> life.residual() + " for " + loading);
      }
    }
  }

  @Test
  void stiffnessOfTheFreeRingIsThatOfAllUnknowns() {
    double h = 1e-6;
    for (TiltedBearing bearing : List.of(BEARING.firstElementAt(mrad(100)), BALLS.firstElementAt(mrad(100)))) {
      Loading loading = Loading.radial(kN(4)).tilted(mrad(1), mrad(-0.5));
      TiltedLife at = bearing.life(loading);
      double up = bearing.life(Loading.radial(N(4000.5)).tilted(mrad(1), mrad(-0.5))).displacement().mm();
      double down = bearing.life(Loading.radial(N(3999.5)).tilted(mrad(1), mrad(-0.5))).displacement().mm();
      assertEquals(1 / (up - down), at.radialStiffness().newtonPerMm(), 1e-4 / (up - down));
      double more = bearing.life(Loading.radial(kN(4)).tilted(rad(1e-3 + h), mrad(-0.5))).momentAlong().newtonMillimetre();
      double less = bearing.life(Loading.radial(kN(4)).tilted(rad(1e-3 - h), mrad(-0.5))).momentAlong().newtonMillimetre();
      assertEquals((more - less) / (2 * h), at.tiltStiffness(), 1e-4 * at.tiltStiffness());
    }
  }

  @Test
  void texts() {
    assertEquals("9 balls 8 mm on 40 mm", BALL_SET.toString());
    assertEquals("14 rollers 5 mm × 10 mm on 40 mm, logarithmic profile [recalled]", ROLLERS.toString());
    assertEquals("14 rollers 5 mm × 10 mm on 40 mm in 2 rows, straight rollers",
        ROLLERS.rows(2, mm(12)).profile(RollerProfile.flat()).toString());
    assertEquals("rollers crowned with r = 900 mm", RollerProfile.crowned(mm(900)).toString());
    assertEquals("given profile of 2 stations", RollerProfile.given(mm(0), mm(0)).toString());
    assertEquals("Fr = 2 kN, tilt 1 mrad", Loading.radial(kN(2)).tilted(mrad(1)).toString());
    assertEquals("Fr = 2 kN, Fa = 500 N, tilt 1 mrad and 2 mrad across",
        Loading.radial(kN(2)).axial(N(500)).tilted(mrad(1), mrad(2)).toString());
    assertEquals("Fr = 2 kN, moment 1 N·m", Loading.radial(kN(2)).moment(new Torque(1000)).toString());
    assertEquals("Fr = 2 kN, moment 1 N·m and 2 N·m across",
        Loading.radial(kN(2)).moment(new Torque(1000), new Torque(2000)).toString());
    assertEquals("rotates against the load", RingMotion.ROTATING.toString());
    assertEquals("stands still under the load", RingMotion.STATIONARY.toString());
  }

  @Test
  void theDerivationNamesWhatItUses() {
    String rollers = BEARING.life(TILTED).explain().toString();
    for (String part : List.of("35948", "{Σ [(qei/qci)^(9/2)", "L / 0.83^4", "Cr = 20 kN", "Z = 14", "given",
        "inner ring rotates against the load", "outer ring stands still under the load")) {
      assertTrue(rollers.contains(part), part + " in " + rollers);
    }
    String balls = BALLS.life(Loading.radial(kN(2)).moment(new Torque(500))).explain().toString();
    for (String part : List.of("1.48 E", "[(Qei/Qci)^(10/3)", "Cr = 14 kN", "Z = 9", "root of Σ M_j cos φ_j = M")) {
      assertTrue(balls.contains(part), part + " in " + balls);
    }
    assertFalse(balls.contains("0.83^4"), balls);
  }

  @Test
  void trackRollersTurnTheirOuterRing() {
    TiltedBearing track = TiltedBearing.trackRoller(LoadRatings.trackRoller(kN(20), kN(25), OuterRing.RIGID), ROLLERS);
    assertEquals(RingMotion.STATIONARY, track.innerRing());
    assertEquals(RingMotion.ROTATING, track.outerRing());
    assertTrue(track.edgeStress());
    assertFalse(BALLS.edgeStress());
  }
}
