// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadRatings;
import holdfast.quantity.Angle;
import holdfast.quantity.InputException;
import holdfast.trace.Step;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Arrangement of the elements, what touches, and what the results say of themselves. */
class WorkspaceTest {
  private static TiltedBearing rollers() {
    return TiltedBearing.of(LoadRatings.radialRoller(kN(20), kN(25)), RollerSet.of(14, mm(5), mm(10), mm(40)))
        .clearance(um(20)).laminae(12).spacing(LaminaSpacing.EQUAL);
  }

  private static TiltedBearing balls() {
    return TiltedBearing.of(LoadRatings.radialBall(kN(14), kN(6.5)), BallSet.of(9, mm(8), mm(40))).clearance(um(10));
  }

  private static void refused(String start, Executable call) {
    InputException error = assertThrows(InputException.class, call);
    assertTrue(error.getMessage().startsWith(start), error.getMessage());
  }

  @Test
  void pairsAreMirrorsOfEachOtherToTheLastDigit() {
    for (int z : new int[] {13, 14}) {
      BallWorkspace w = new BallWorkspace(z);
      BallDistributionKernel.balls(w, z, 0);
      for (int j = 1; j < z; j++) {
        assertEquals(w.cos[j], w.cos[z - j]);
        assertEquals(w.sin[j], -w.sin[z - j] + 0.0);
      }
      assertEquals(0, w.sin[0]);
      BallDistributionKernel.balls(w, z, Math.PI / z);
      for (int j = 0; j < z; j++) {
        assertEquals(w.cos[j], w.cos[z - 1 - j]);
        assertEquals(w.sin[j], -w.sin[z - 1 - j] + 0.0);
        assertEquals(Math.PI / z + 2 * Math.PI / z * j, w.angle(j), 1e-14);
        assertEquals(Math.cos(w.angle(j)), w.cos[j], 1e-14);
      }
    }
  }

  @Test
  void symmetryHalvesTheWork() {
    BallWorkspace w = new BallWorkspace(9);
    BallDistributionKernel.contacts(w, 8, 40, 4.16, 4.16, 0.01);
    BallDistributionKernel.balls(w, 9, 0);
    BallDistributionKernel.tilted(w, 1000, 100, 1e-3, 0);
    assertTrue(w.symmetryUsed());
    assertEquals(5, w.evaluated);
    BallDistributionKernel.tilted(w, 1000, 100, 1e-3, 1e-3);
    assertFalse(w.symmetryUsed());
    assertEquals(9, w.evaluated);
    BallDistributionKernel.underMoment(w, 1000, 100, 10, 0);
    assertTrue(w.symmetryUsed());
    BallDistributionKernel.underMoment(w, 1000, 100, 10, 1);
    assertFalse(w.symmetryUsed());
    BallDistributionKernel.balls(w, 9, Math.PI / 9);
    BallDistributionKernel.tilted(w, 1000, 100, 1e-3, 0);
    assertTrue(w.symmetryUsed());
    assertEquals(5, w.evaluated);
    BallDistributionKernel.balls(w, 9, 0.1);
    BallDistributionKernel.tilted(w, 1000, 100, 1e-3, 0);
    assertFalse(w.symmetryUsed());
    assertTrue(w.iterations() > 1);
    w.residual = 0.5;
    assertEquals(0.5, w.residual());
    LaminaWorkspace l = new LaminaWorkspace(14, 2);
    LoadDistributionKernel.rollers(l, 14, 0);
    LoadDistributionKernel.laminae(
        l, 2, new double[] {-3, 3}, new double[] {0.5, 0.5}, new double[2], new double[] {1, 1}, LaminaKernel.stiffness(10));
    LoadDistributionKernel.tilted(l, 1000, 0.01, 1e-3, 0);
    assertEquals(8, l.evaluated);
    LoadDistributionKernel.underMoment(l, 1000, 0.01, 100, 0);
    assertTrue(l.symmetryUsed());
    LoadDistributionKernel.underMoment(l, 1000, 0.01, 100, 10);
    assertFalse(l.symmetryUsed());
    // A workspace is used again for another load as if it were new.
    double again = l.displacement();
    LoadDistributionKernel.tilted(l, 9000, 0.02, -3e-3, 1e-3);
    LoadDistributionKernel.underMoment(l, 1000, 0.01, 100, 10);
    assertEquals(again, l.displacement(), 1e-12);
  }

  @Test
  void whatTouchesFollowsFromTheDisplacements() {
    for (Loading loading : List.of(Loading.radial(kN(1)).tilted(mrad(2), mrad(-3)), Loading.radial(kN(1)).tilted(mrad(-1)))) {
      RollerModel rollers = (RollerModel) Model.of(rollers().firstElementAt(mrad(100)));
      rollers.solve(loading);
      LaminaWorkspace w = (LaminaWorkspace) rollers.workspace();
      BallModel balls = (BallModel) Model.of(balls().firstElementAt(mrad(100)));
      balls.solve(loading.axial(N(300)));
      BallWorkspace b = (BallWorkspace) balls.workspace();
      double circle = 20 + 0.16 * (1 - 0.005 / 0.32);
      for (int i = 0; i < 180; i++) {
        double angle = Math.toRadians(2 * i + 0.123);
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        double slope = c * Math.tan(loading.tiltAlong().radian()) + s * Math.tan(loading.tiltAcross().radian());
        double nearest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < 12; k++) {
          double x = 10 * ((k + 0.5) / 12 - 0.5);
          double drop = 0.00035 * 5 * Math.log(1 / (1 - x * x / 25));
          nearest = Math.max(nearest, c * w.displacement() + s * w.sideDisplacement() - 0.01 + x * slope - 2 * drop);
        }
        assertEquals(nearest > 0, rollers.touches(c, s, slope), "roller at " + angle + ": " + nearest);
        double radial = 0.32 - 0.005 + c * b.displacement() + s * b.sideDisplacement();
        double axial = b.axialDisplacement() + circle * slope;
        assertEquals(Math.hypot(radial, axial) > 0.32, balls.touches(c, s, slope), "ball at " + angle);
      }
    }
  }

  @Test
  void rowsStandSideBySide() {
    TiltedBearing three = TiltedBearing.of(LoadRatings.radialRoller(kN(20), kN(25)),
        RollerSet.of(14, mm(5), mm(10), mm(40)).rows(3, mm(12))).laminae(12).spacing(LaminaSpacing.EQUAL);
    List<LoadDistribution.Element> elements = three.life(kN(4), mrad(1)).distribution().elements();
    assertEquals(42, elements.size());
    double end = 5 - 5.0 / 12;
    for (int row = 0; row < 3; row++) {
      LoadDistribution.Element first = elements.get(14 * row);
      assertEquals(row + 1, first.row());
      assertEquals(12 * (row - 1) - end, first.laminae().get(0).position().mm(), 1e-12);
      assertEquals(12 * (row - 1) + end, first.laminae().get(11).position().mm(), 1e-12);
    }
  }

  @Test
  void refusalsCountRowsAndPitches() {
    refused("angle of the first element", () -> rollers().firstElementAt(rad(0.46)));
    refused("angle of the first element", () -> LoadDistributionKernel.rollers(new LaminaWorkspace(14, 2), 14, 0.46));
    assertEquals(0.44, rollers().firstElementAt(rad(0.44)).firstElement());
    TiltedBearing two = TiltedBearing.of(LoadRatings.radialRoller(kN(20), kN(25)),
        RollerSet.of(14, mm(5), mm(10), mm(40)).rows(2, mm(12)));
    assertEquals(2000, two.laminae(2000).laminae());
    refused("number of laminae (2001) must be from 2 to 2000", () -> two.laminae(2001));
    refused("number of rolling elements Z (2)", () -> BallSet.of(2, mm(8), mm(40)));
    refused("roller diameter Dwe (0 mm)", () -> BallSet.of(9, mm(0), mm(40)));
    refused("pitch diameter Dpw (0 mm)", () -> BallSet.of(9, mm(8), mm(0)));
    // Nine on 40 mm: 40 sin 20° = 13.68 mm at most.
    refused("diameter of the rolling elements (13.69 mm)", () -> BallSet.of(9, mm(13.69), mm(40)));
    assertEquals(13.68, BallSet.of(9, mm(13.68), mm(40)).diameter().mm());
    refused("groove radius of the inner ring over Dw (0.5)", () -> BallSet.of(9, mm(8), mm(40)).grooves(mm(4), mm(4.2)));
    refused("groove radius of the outer ring over Dw (0.5)", () -> BallSet.of(9, mm(8), mm(40)).grooves(mm(4.2), mm(4)));
    assertEquals(mm(4.16), BallSet.of(9, mm(8), mm(40)).innerGroove());
    assertEquals(mm(4.2), BallSet.of(9, mm(8), mm(40)).grooves(mm(4.12), mm(4.2)).outerGroove());
    refused("rows i (21)", () -> RollerSet.of(14, mm(5), mm(10), mm(40)).rows(21, mm(12)));
  }

  @Test
  void warningsBeginAboveTheirLimits() {
    // Half of Cr itself is permitted.
    assertFalse(codes(rollers().life(kN(10), mrad(0))).contains("load-above-half-C"));
    assertTrue(codes(rollers().life(kN(10.001), mrad(0))).contains("load-above-half-C"));
    // Balls bear 4200 MPa, rollers 4000 MPa. The pressure of a ball grows with the cube root of its load.
    double load = 2000;
    TiltedLife ball = balls().life(N(load), mrad(0));
    for (int i = 0; i < 20; i++) {
      load *= Math.pow(4100 / ball.greatestPressure().megapascal(), 3);
      ball = balls().life(N(load), mrad(0));
    }
    assertEquals(4100, ball.greatestPressure().megapascal(), 1);
    assertFalse(codes(ball).contains("pressure-above-static-limit"));
    assertTrue(codes(balls().life(N(1.2 * load), mrad(0))).contains("pressure-above-static-limit"));
    double line = 20_000;
    TiltedLife roller = rollers().life(N(line), mrad(0));
    for (int i = 0; i < 20; i++) {
      line *= Math.pow(4100 / roller.greatestPressure().megapascal(), 2);
      roller = rollers().life(N(line), mrad(0));
    }
    assertTrue(codes(roller).contains("pressure-above-static-limit"));
    assertFalse(codes(balls().life(kN(2), mrad(1))).contains("few-laminae"));
    TiltedLife half = rollers().life(kN(2), mrad(6));
    assertTrue(half.touchingShare() < 0.5, half::toString);
    Warning warning = half.warnings().stream().filter(w -> w.code().equals("contact-under-half")).findFirst().orElseThrow();
    assertTrue(warning.message().matches("the most loaded roller touches over (8|16|25|33|41|50)(\\.\\d)? % of its length.*"),
        warning.message());
  }

  private static List<String> codes(TiltedLife life) {
    return life.warnings().stream().map(Warning::code).toList();
  }

  @Test
  void theRecalledLifeIsAStepOfTheDerivation() {
    TiltedLife life = rollers().life(kN(4), mrad(1));
    double recalled = life.explain().steps().stream().filter(step -> step.symbol().equals("Lrec")).mapToDouble(Step::value)
        .findFirst().orElseThrow();
    assertEquals(life.life() / Math.pow(0.83, 4), recalled, 1e-9 * recalled);
    assertEquals(life.life() / Math.pow(0.83, 4), life.recalledLife(), 1e-9 * recalled);
  }

  @Test
  void momentsTurnTheBearingTheWayTheyAct() {
    for (TiltedBearing bearing : List.of(rollers().firstElementAt(new Angle(0.1)), balls().firstElementAt(new Angle(0.1)))) {
      TiltedLife turned = bearing.life(Loading.radial(kN(3)).moment(Nm(3), Nm(-2)));
      assertEquals(3000, turned.momentAlong().newtonMillimetre(), 1e-5);
      assertEquals(-2000, turned.momentAcross().newtonMillimetre(), 1e-5);
      assertTrue(turned.tiltAlong().radian() > 0 && turned.tiltAcross().radian() < 0, turned::toString);
    }
  }
}
