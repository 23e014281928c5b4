// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** The kernels by themselves: values from another library or by hand, and the ends of what is permitted. */
class ReferenceKernelsTest {
  private static final double PLANE_MODULUS = 207000 / 0.91;

  @Test
  void constantsOfABallAreThoseOfAnotherLibrary() {
    // Reference computation, mpmath 1.3.0: the stated formulas with ellipk, ellipe and a search for the axis ratio.
    assertEquals(288182.1284936856, BallKernel.stiffness(8, 40, 4.12, 4.24), 1e-8 * 288182);
    assertEquals(2407.38578744703, BallKernel.pressure(1000, 8, 40, 4.12, true), 1e-8 * 2407);
    assertEquals(2309.4227894617, BallKernel.pressure(1000, 8, 40, 4.24, false), 1e-8 * 2309);
    assertEquals(2939.83577769984, BallKernel.innerRating(10_000, 9, 8, 40, 4.12, 4.24), 1e-8);
    assertEquals(4506.44619515774, BallKernel.outerRating(10_000, 9, 8, 40, 4.12, 4.24), 1e-8);
    assertEquals(0, BallKernel.pressure(0, 8, 40, 4.12, true));
  }

  @Test
  void constantsOfARollerAreThoseOfAnotherLibrary() {
    // Reference computation, mpmath 1.3.0: the stated formulas.
    assertEquals(278332.30865021155, LaminaKernel.stiffness(10), 1e-9 * 278332);
    assertEquals(3981.671724138679, LaminaKernel.innerRating(20_000, 14, 1, 0.125), 1e-9);
    assertEquals(5556.148900423431, LaminaKernel.outerRating(20_000, 14, 1, 0.125), 1e-9);
    assertEquals(2322.3678461334366, LaminaKernel.innerRating(20_000, 14, 2, 0.125), 1e-9);
    assertEquals(3240.70452027642, LaminaKernel.outerRating(20_000, 14, 2, 0.125), 1e-9);
    assertEquals(1.0885827609782859, LaminaKernel.edgeStressFactor(0.45), 1e-14);
    assertEquals(1.0885827609782859, LaminaKernel.edgeStressFactor(-0.45), 1e-14);
    assertEquals(2.3283270597839087, LaminaKernel.edgeStressFactor(0.5), 1e-12);
    assertEquals(1, LaminaKernel.edgeStressFactor(0));
    // Shares of a whole: all of it, and 1/2^9 to the power 7/9 = 1/2^7.
    assertEquals(1, LaminaKernel.ratingShare(1));
    assertEquals(1.0 / 128, LaminaKernel.ratingShare(1.0 / 512), 1e-17);
  }

  @Test
  void pressureOfALineOnBothRaceways() {
    // p = sqrt(w K/(π R)); Dwe = 5: 1/R = 0.4 + 2/35 inside, 0.4 - 2/45 outside.
    double k = 0.5 * PLANE_MODULUS;
    assertEquals(Math.sqrt(100 * k * (0.4 + 2.0 / 35) / Math.PI), LaminaKernel.pressure(100, 5, 35), 1e-9);
    assertEquals(Math.sqrt(100 * k * (0.4 - 2.0 / 45) / Math.PI), LaminaKernel.pressure(100, 5, -45), 1e-9);
    assertEquals(0, LaminaKernel.pressure(0, 5, 35));
  }

  @Test
  void kernelsNameWhatTheyRefuse() {
    refused("ball diameter Dw", () -> BallKernel.stiffness(0, 40, 4, 4));
    refused("pitch diameter Dpw (8.0 mm) must be over Dw", () -> BallKernel.stiffness(8, 8, 4.16, 4.16));
    refused("pitch diameter Dpw (Infinity mm)", () -> BallKernel.stiffness(8, Double.POSITIVE_INFINITY, 4.16, 4.16));
    refused("outer groove radius over Dw (0.5)", () -> BallKernel.outerRating(1, 9, 8, 40, 4.16, 4));
    refused("inner groove radius over Dw (1.1", () -> BallKernel.innerRating(1, 9, 8, 40, 8.8, 4.16));
    refused("basic dynamic load rating Cr (0 N)", () -> BallKernel.innerRating(0, 9, 8, 40, 4.16, 4.16));
    refused("basic dynamic load rating Cr (0 N)", () -> BallKernel.outerRating(0, 9, 8, 40, 4.16, 4.16));
    refused("number of rolling elements Z (2)", () -> BallKernel.outerRating(1, 2, 8, 40, 4.16, 4.16));
    refused("ball load Q (-1 N)", () -> BallKernel.pressure(-1, 8, 40, 4.16, true));
    refused("inner groove radius over Dw (0.5)", () -> BallKernel.pressure(1, 8, 40, 4, true));
    refused("effective roller length Lwe (0 mm)", () -> LaminaKernel.stiffness(0));
    refused("number of rolling elements Z (2)", () -> LaminaKernel.innerRating(1, 2, 1, 0.1));
    refused("rows i (0)", () -> LaminaKernel.outerRating(1, 14, 0, 0.1));
    refused("basic dynamic load rating Cr (0 N)", () -> LaminaKernel.outerRating(0, 14, 1, 0.1));
    refused("ratio Dwe/Dpw (0.0) must be over 0 and under 1", () -> LaminaKernel.innerRating(1, 14, 1, 0));
    refused("ratio Dwe/Dpw (1.0) must be over 0 and under 1", () -> LaminaKernel.outerRating(1, 14, 1, 1));
    refused("position x/Lwe (0.51)", () -> LaminaKernel.edgeStressFactor(0.51));
    refused("share of a lamina (0)", () -> LaminaKernel.ratingShare(0));
    refused("line load w (-1 N/mm)", () -> LaminaKernel.pressure(-1, 5, 35));
    refused("roller diameter Dwe (0 mm)", () -> LaminaKernel.pressure(1, 0, 35));
    refused("raceway diameter (0 mm)", () -> LaminaKernel.pressure(1, 5, 0));
    refused("sum of curvatures (0 1/mm)", () -> LaminaKernel.pressure(1, 5, -5));
  }

  @Test
  void profilesAtTheirEnds() {
    // Up to and with Lwe = 2.5 Dwe the profile runs over the whole length: 0.00035 · 4 · ln(1/(1 - 0.8²)).
    assertEquals(0.0014 * Math.log(1 / 0.36), ProfileKernel.logarithmic(4, 10, 4), 1e-15);
    // Over it the ends of 1.25 Dwe: |x| = 5 of Lwe = 12, Dwe = 4, (10 - 2)/10.
    assertEquals(0.002 * Math.log(1 / 0.36), ProfileKernel.logarithmic(-5, 12, 4), 1e-15);
    assertEquals(0, ProfileKernel.logarithmic(0, 12, 4));
    // The 3-4-5 triangle.
    assertEquals(1, ProfileKernel.crowned(3, 8, 5), 1e-15);
    assertEquals(5, ProfileKernel.crowned(-5, 10, 5), 1e-15);
    double[] stations = {0.4, 0, 0.2};
    assertEquals(0.4, ProfileKernel.given(-5, 10, stations));
    assertEquals(0.1, ProfileKernel.given(-1.25, 10, stations), 1e-16);
    assertEquals(0.15, ProfileKernel.given(3.75, 10, stations), 1e-16);
    assertEquals(0.2, ProfileKernel.given(5, 10, stations), 1e-16);
    refused("position x (5.1 mm)", () -> ProfileKernel.logarithmic(5.1, 10, 4));
    refused("position x (-5.0) must be off the very end", () -> ProfileKernel.logarithmic(-5, 10, 4));
    refused("roller diameter Dwe (0 mm)", () -> ProfileKernel.logarithmic(1, 10, 0));
    refused("effective roller length Lwe (0 mm)", () -> ProfileKernel.logarithmic(0, 0, 4));
    refused("position x (5.1 mm)", () -> ProfileKernel.crowned(5.1, 10, 40));
    refused("position x (-5.1 mm)", () -> ProfileKernel.given(-5.1, 10, stations));
    refused("stations of the profile (1)", () -> ProfileKernel.given(0, 10, new double[1]));
    refused("drop of the profile P (-1 mm)", () -> ProfileKernel.given(0, 10, new double[] {0, -1, 0}));
    refused("drop of the profile P (11 mm)", () -> ProfileKernel.given(3, 10, new double[] {0, 0, 11}));
  }

  @Test
  void equalLaminaeDivideTheLength() {
    double[] middle = new double[4];
    double[] width = new double[4];
    LaminaSpacing.EQUAL.cut(middle, width);
    assertArrayEquals(new double[] {-0.375, -0.125, 0.125, 0.375}, middle);
    assertArrayEquals(new double[] {0.25, 0.25, 0.25, 0.25}, width);
  }

  @Test
  void gradedLaminaeAreThePointsOfGaussAndLegendre() {
    double[] middle = new double[3];
    double[] width = new double[3];
    LaminaSpacing.GRADED.cut(middle, width);
    // Closed form: 0 and ±sqrt(3/5) with 8/9 and 5/9 on the interval of length 2.
    assertArrayEquals(new double[] {-0.5 * Math.sqrt(0.6), 0, 0.5 * Math.sqrt(0.6)}, middle, 1e-16);
    assertArrayEquals(new double[] {5.0 / 18, 4.0 / 9, 5.0 / 18}, width, 1e-14);
    // 30 of them integrate polynomials to the degree 59 exactly: ∫ (2x)^58 over the length is 1/59.
    middle = new double[30];
    width = new double[30];
    LaminaSpacing.GRADED.cut(middle, width);
    double sum = 0;
    for (int k = 0; k < 30; k++) {
      sum += width[k] * Math.pow(2 * middle[k], 58);
    }
    assertEquals(1.0 / 59, sum, 1e-14);
  }

  @Test
  void smallSystemsAreSolved() {
    double[] b = {8, 7};
    assertTrue(SmallMatrix.solve(new double[] {4, 2, 2, 3}, b, 2));
    // 4x + 2y = 8, 2x + 3y = 7.
    assertArrayEquals(new double[] {1.25, 1.5}, b, 1e-12);
    // L Lᵀ with L = (2; 1 3; -1 2 1), x = (1, -2, 3): (4 - 4 - 6, 2 - 20 + 15, -2 - 10 + 18).
    double[] c = {-6, -3, 6};
    assertTrue(SmallMatrix.solve(new double[] {4, 2, -2, 2, 10, 5, -2, 5, 6}, c, 3));
    assertArrayEquals(new double[] {1, -2, 3}, c, 1e-11);
    assertFalse(SmallMatrix.solve(new double[4], new double[] {1, 1}, 2));
    // Singular: the answer stays finite and solves what can be solved.
    double[] e = {2, 2};
    assertTrue(SmallMatrix.solve(new double[] {1, 1, 1, 1}, e, 2));
    assertEquals(2, e[0] + e[1], 1e-6);
  }

  @Test
  void condensedStiffnessIsThatOfSpringsInSeries() {
    // Springs 6 and 3 in series: the middle node follows, 6 · 3/9 = 2. Node 0 is moved, node 1 is held by the spring 3.
    assertEquals(2, SmallMatrix.condensed(new double[] {6, -6, -6, 9}, 2, 0, 1), 1e-12);
    // The same seen from the other node: 9 - 36/6.
    assertEquals(3, SmallMatrix.condensed(new double[] {6, -6, -6, 9}, 2, 1, 0), 1e-12);
    // Springs 6, 3 and 2 in series: 1/(1/6 + 1/3 + 1/2) = 1.
    double[] three = {6, -6, 0, -6, 9, -3, 0, -3, 5};
    assertEquals(1, SmallMatrix.condensed(three, 3, 0, 1, 2), 1e-12);
    assertEquals(6, SmallMatrix.condensed(new double[] {6, 0, 0, 0}, 2, 0, 1), 1e-12);
  }

  @Test
  void workspacesNameWhatTheyRefuse() {
    refused("number of rolling elements Z (2)", () -> new BallWorkspace(2));
    refused("number of rolling elements Z (1001)", () -> new LaminaWorkspace(1001, 30));
    refused("number of laminae (1)", () -> new LaminaWorkspace(14, 1));
    refused("number of laminae (4001)", () -> new LaminaWorkspace(14, 4001));
    BallWorkspace balls = new BallWorkspace(9);
    refused("number of rolling elements Z (10) must be from 3 to 9", () -> BallDistributionKernel.balls(balls, 10, 0));
    refused("angle of the first element (-0.1 rad)", () -> BallDistributionKernel.balls(balls, 9, -0.1));
    refused("workspace (empty)", () -> BallDistributionKernel.tilted(balls, 1, 0, 0, 0));
    BallDistributionKernel.balls(balls, 9, 0);
    refused("workspace (empty)", () -> BallDistributionKernel.underMoment(balls, 1, 0, 0, 0));
    // A = 0.32 mm: from -A/2 to 1.99 A.
    refused("radial clearance s (0.65 mm) must be from", () -> BallDistributionKernel.contacts(balls, 8, 40, 4.16, 4.16, 0.65));
    refused("radial clearance s (-0.17 mm) must be from", () -> BallDistributionKernel.contacts(balls, 8, 40, 4.16, 4.16, -0.17));
    BallDistributionKernel.contacts(balls, 8, 40, 4.16, 4.16, 0.01);
    refused("workspace (unsolved)", () -> BallLifeKernel.life(balls, 1, 1, true, false));
    refused("workspace (unsolved)", () -> BallLifeKernel.modifiedLife(balls, 1, 1, true, false, x -> 1));
    refused("workspace (unsolved)", balls::radialStiffness);
    refused("workspace (unsolved)", balls::tiltStiffness);
    refused("workspace (unsolved)", balls::tiltAlong);
    refused("workspace (unsolved)", balls::tiltAcross);
    refused("radial load Fr (0 N)", () -> BallDistributionKernel.tilted(balls, 0, 0, 0, 0));
    refused("tilt (0.21 rad)", () -> BallDistributionKernel.tilted(balls, 1, 0, 0.21, 0));
    refused("tilt (-0.21 rad)", () -> BallDistributionKernel.tilted(balls, 1, 0, 0, -0.21));
    refused("axial load Fa (NaN N)", () -> BallDistributionKernel.tilted(balls, 1, Double.NaN, 0, 0));
    refused("moment in the plane of the load", () -> BallDistributionKernel.underMoment(balls, 1, 0, Double.NaN, 0));
    refused("moment across the load", () -> BallDistributionKernel.underMoment(balls, 1, 0, 0, Double.NaN));
    BallDistributionKernel.tilted(balls, 1000, 0, 0, 0);
    refused("rating of the inner ring (0 N)", () -> BallLifeKernel.life(balls, 0, 1, true, false));
    refused("rating of the outer ring (0 N)", () -> BallLifeKernel.life(balls, 1, 0, true, false));
    refused("factor aISO of a ring (0)", () -> BallLifeKernel.modifiedLife(balls, 1, 1, true, false, x -> 0));
    refused("number of the rolling element (9)", () -> balls.ballLoad(9));
    refused("number of the rolling element (9)", () -> balls.angle(9));
    refused("number of the rolling element (-1)", () -> balls.contactAngle(-1));
  }

  @Test
  void laminaeNameWhatTheyRefuse() {
    LaminaWorkspace w = new LaminaWorkspace(14, 3);
    double[] x = {-3, 3};
    double[] half = {0.5, 0.5};
    double[] none = new double[2];
    double[] one = {1, 1};
    refused("number of laminae (4) must be from 2 to 3",
        () -> LoadDistributionKernel.laminae(w, 4, new double[4], new double[4], new double[4], new double[4], 1));
    refused("length of the arrays (2) must be from 3", () -> LoadDistributionKernel.laminae(w, 3, x, half, none, one, 1));
    refused("stiffness of a roller (0 N/mm^(10/9))", () -> LoadDistributionKernel.laminae(w, 2, x, half, none, one, 0));
    refused("greatest axial position (0 mm)", () -> LoadDistributionKernel.laminae(w, 2, none, half, none, one, 1));
    refused("axial position x (NaN mm)",
        () -> LoadDistributionKernel.laminae(w, 2, new double[] {3, Double.NaN}, half, none, one, 1));
    refused("edge stress factor f (0.9)",
        () -> LoadDistributionKernel.laminae(w, 2, x, half, none, new double[] {1, 0.9}, 1));
    refused("share of a lamina (0)", () -> LoadDistributionKernel.laminae(w, 2, x, none, none, one, 1));
    refused("drop of the profile P (-1 mm)",
        () -> LoadDistributionKernel.laminae(w, 2, x, half, new double[] {0, -1}, one, 1));
    refused("number of rolling elements Z (2)", () -> LoadDistributionKernel.rollers(w, 2, 0));
    LoadDistributionKernel.rollers(w, 14, 0);
    refused("workspace (empty)", () -> LoadDistributionKernel.underMoment(w, 1, 0, 0, 0));
    LoadDistributionKernel.laminae(w, 2, x, half, none, one, LaminaKernel.stiffness(10));
    refused("tilt (-0.21 rad)", () -> LoadDistributionKernel.tilted(w, 1, 0, 0, -0.21));
    refused("tilt (0.21 rad)", () -> LoadDistributionKernel.tilted(w, 1, 0, 0.21, 0));
    refused("radial clearance s (NaN mm)", () -> LoadDistributionKernel.tilted(w, 1, Double.NaN, 0, 0));
    refused("moment in the plane of the load", () -> LoadDistributionKernel.underMoment(w, 1, 0, Double.NaN, 0));
    refused("moment across the load", () -> LoadDistributionKernel.underMoment(w, 1, 0, 0, Double.NaN));
    refused("workspace (unsolved)", w::tiltStiffness);
    refused("workspace (unsolved)", () -> LaminaLifeKernel.modifiedLife(w, 1, 1, true, false, v -> 1));
    LoadDistributionKernel.tilted(w, 1000, 0, 0, 0);
    refused("rating of the inner ring contact (0 N)", () -> LaminaLifeKernel.life(w, 0, 1, true, false));
    refused("rating of the outer ring contact (0 N)", () -> LaminaLifeKernel.life(w, 1, 0, true, false));
    refused("number of the rolling element (14)", () -> w.laminaLoad(14, 0));
    refused("number of the rolling element (14)", () -> w.rollerLoad(14));
    refused("number of the lamina (2)", () -> w.laminaLoad(0, 2));
    refused("number of the lamina (2)", () -> w.position(2));
    refused("life ratios (1 entries) must be 2 entries",
        () -> LaminaLifeKernel.lifeRatios(w, 1, 0, new double[2], 1, 1, true, false, new double[1]));
    assertEquals(2, w.laminae());
    assertEquals(-3, w.position(0));
    assertEquals(14, w.elements());
  }

  private static void refused(String start, Executable call) {
    InputException error = assertThrows(InputException.class, call);
    assertTrue(error.getMessage().startsWith(start), error.getMessage());
  }
}
