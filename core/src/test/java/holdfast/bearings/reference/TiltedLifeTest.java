// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import holdfast.trace.Warning;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TiltedLifeTest {
  private static final LoadRatings RATINGS = LoadRatings.radialRoller(kN(20), kN(25));
  private static final RollerSet ROLLERS = RollerSet.of(14, mm(5), mm(10), mm(40));
  private static final TiltedBearing BEARING = TiltedBearing.of(RATINGS, ROLLERS).clearance(um(20));
  private static final TiltedBearing BALLS =
      TiltedBearing.of(LoadRatings.radialBall(kN(14), kN(6.5)), BallSet.of(9, mm(7.94), mm(38.5))).clearance(um(10));

  private static List<String> codes(TiltedLife life) {
    return life.warnings().stream().map(Warning::code).toList();
  }

  @Test
  void theDerivationEndsInTheRatio() {
    for (TiltedLife life : List.of(BEARING.life(kN(4), mrad(1)), BALLS.life(kN(2), mrad(4)))) {
      assertEquals(life.lifeRatio(), life.explain().result().value());
      assertTrue(life.explain().toString().contains("[memory]"));
      assertTrue(life.explain().toString().contains("[derived]"));
      assertTrue(codes(life).contains("recalled-method"), codes(life).toString());
    }
  }

  @Test
  void theTextGivesTheRatioFirst() {
    String text = BEARING.life(kN(4), mrad(1)).toString();
    assertTrue(text.matches("life ratio 0\\.749 against the aligned bearing \\(Fr = 4 kN, tilt 1 mrad\\);"
        + " as recalled, not confirmed: \\d+\\.\\d million revolutions"), text);
  }

  @Test
  void theDivisionOfTheRatingsCancels() {
    TiltedLife life = BEARING.life(kN(4), mrad(1));
    assertEquals(2.107, life.recalledLife() / life.life(), 0.0005);
    assertEquals(life.life() / life.alignedLife(), life.lifeRatio());
    TiltedLife other = TiltedBearing.of(LoadRatings.radialRoller(kN(40), kN(25)), ROLLERS).clearance(um(20)).life(kN(4), mrad(1));
    assertEquals(life.lifeRatio(), other.lifeRatio(), 1e-12);
    assertEquals(16, other.life() / life.life(), 1e-9);
  }

  @Test
  void momentAndTiltAnswerEachOther() {
    for (TiltedBearing bearing : List.of(BEARING, BALLS, BEARING.firstElementAt(mrad(100)))) {
      TiltedLife tilted = bearing.life(Loading.radial(kN(3)).tilted(mrad(2), mrad(-3)));
      TiltedLife moved = bearing.life(Loading.radial(kN(3)).moment(tilted.momentAlong(), tilted.momentAcross()));
      assertEquals(2e-3, moved.tiltAlong().radian(), 1e-9);
      assertEquals(-3e-3, moved.tiltAcross().radian(), 1e-9);
      assertEquals(tilted.lifeRatio(), moved.lifeRatio(), 1e-7);
    }
  }

  @Test
  void withoutMomentARollerBearingStaysAligned() {
    TiltedLife life = BEARING.life(Loading.radial(kN(4)).moment(new Torque(0)));
    assertEquals(0, life.tiltAlong().radian(), 1e-12);
    assertEquals(1, life.lifeRatio(), 1e-12);
  }

  @Test
  void stiffnessesAreDerivatives() {
    double h = 1e-6;
    for (TiltedBearing bearing : List.of(BEARING, BALLS)) {
      TiltedLife at = bearing.life(kN(4), mrad(1));
      double up = bearing.life(N(4000 + 0.5), mrad(1)).displacement().mm();
      double down = bearing.life(N(4000 - 0.5), mrad(1)).displacement().mm();
      assertEquals(1 / (up - down), at.radialStiffness().newtonPerMm(), 1e-4 / (up - down));
      double more = bearing.life(kN(4), rad(1e-3 + h)).momentAlong().newtonMillimetre();
      double less = bearing.life(kN(4), rad(1e-3 - h)).momentAlong().newtonMillimetre();
      assertEquals((more - less) / (2 * h), at.tiltStiffness(), 1e-4 * at.tiltStiffness());
    }
  }

  @Test
  void theDistributionCarriesTheLoad() {
    TiltedBearing two = TiltedBearing.of(RATINGS, ROLLERS.rows(2, mm(12))).clearance(um(20));
    for (TiltedBearing bearing : List.of(BEARING, BALLS, two, BEARING.firstElementAt(mrad(30)))) {
      TiltedLife life = bearing.life(Loading.radial(kN(4)).tilted(mrad(1), mrad(0.5)));
      LoadDistribution distribution = life.distribution();
      double along = 0;
      double across = 0;
      double greatest = 0;
      double pressure = 0;
      for (LoadDistribution.Element element : distribution.elements()) {
        double radial = element.load().newton() * Math.cos(element.contactAngle().radian());
        along += radial * Math.cos(element.position().radian());
        across += radial * Math.sin(element.position().radian());
        greatest = Math.max(greatest, element.load().newton());
        double sum = 0;
        for (LoadDistribution.Lamina lamina : element.laminae()) {
          sum += lamina.load().newton();
          pressure = Math.max(pressure, lamina.pressure().megapascal());
        }
        assertEquals(element.load().newton(), sum, 1e-9 * 4000);
      }
      assertEquals(4000, along, 1e-8 * 4000);
      assertEquals(0, across, 1e-8 * 4000);
      assertEquals(life.greatestLoad().newton(), greatest, 1e-9);
      assertEquals(life.greatestPressure().megapascal(), pressure, 1e-9);
    }
  }

  @Test
  void tiltLoadsOneOfTwoRowsMore() {
    TiltedBearing two = TiltedBearing.of(RATINGS, ROLLERS.rows(2, mm(12)));
    List<LoadDistribution.Element> elements = two.life(kN(8), mrad(1)).distribution().elements();
    assertTrue(elements.get(14).load().newton() > elements.get(0).load().newton());
    // The same roller set in two rows under twice the share of the rating lives as long as one row.
    double one = TiltedBearing.of(RATINGS, ROLLERS).life(kN(4), mrad(0)).life();
    double both = TiltedBearing.of(LoadRatings.radialRoller(kN(20 * Math.pow(2, 7.0 / 9)), kN(50)), ROLLERS.rows(2, mm(12)))
        .life(kN(8), mrad(0)).life();
    assertEquals(one * Math.pow(2, -8.0 / 9), both, 1e-9 * one);
  }

  @Test
  void warnings() {
    assertEquals(List.of("recalled-method"), codes(BEARING.life(kN(4), mrad(1))));
    assertEquals(List.of("recalled-method", "contact-under-half"), codes(BEARING.life(kN(2), mrad(5))));
    assertEquals(List.of("recalled-method", "few-laminae"), codes(BEARING.laminae(10).life(kN(4), mrad(1))));
    List<String> overloaded = codes(BEARING.life(kN(60), mrad(20)));
    assertTrue(overloaded.containsAll(List.of("load-above-half-C", "pressure-above-static-limit")), overloaded.toString());
    for (OuterRing ring : List.of(OuterRing.RIGID, OuterRing.DEFLECTING)) {
      TiltedLife track = TiltedBearing.trackRoller(LoadRatings.trackRoller(kN(20), kN(25), ring), ROLLERS).life(kN(4), mrad(1));
      Warning warning = track.warnings().get(1);
      assertEquals("ring-bending-not-covered", warning.code());
      assertTrue(warning.message().contains(ring.toString()), warning.message());
    }
  }

  @Test
  void straightAlignedRollersAreLoadedEvenly() {
    TiltedLife life = TiltedBearing.of(RATINGS, ROLLERS.profile(RollerProfile.flat())).life(kN(4), mrad(0));
    LoadDistribution.Element top = life.distribution().elements().get(0);
    for (LoadDistribution.Lamina lamina : top.laminae()) {
      assertEquals(life.greatestPressure().megapascal(), lamina.pressure().megapascal(), 1e-9 * 4000);
    }
    // p = sqrt(w E/[2 (1-ν²)] (2/Dwe + 2/Di) / π), Di = 35 mm
    double w = top.load().newton() / 10;
    assertEquals(Math.sqrt(w * 207000 / (2 * 0.91) * (0.4 + 2.0 / 35) / Math.PI), life.greatestPressure().megapascal(), 1e-6);
  }

  /** Two half-spaces under a strip of length L: δ = 4 w (1-ν²)/(π E) [ln(2 L/b) + 1/2], b² = 4 w R / (π K). */
  @Test
  void theRecalledLineLawIsNearTheLawOfHalfSpaces() {
    for (double lineLoad : new double[] {30, 100, 300, 1000}) {
      double ours = Math.pow(lineLoad * 10 / LaminaKernel.stiffness(10), 0.9);
      double ratio = 2 * halfSpaces(lineLoad) / ours;
      assertTrue(ratio > 1 && ratio < 1.25, () -> "softer by " + ratio + " at " + lineLoad + " N/mm");
      double exponent = Math.log(1.01) / Math.log(halfSpaces(1.01 * lineLoad) / halfSpaces(lineLoad));
      assertTrue(exponent > 1.06 && exponent < LaminaKernel.EXPONENT, () -> "exponent " + exponent);
    }
  }

  private static double halfSpaces(double lineLoad) {
    double modulus = 207000 / 0.91;
    double radius = 1 / (0.4 + 2.0 / 35);
    double b = Math.sqrt(4 * lineLoad * radius / (Math.PI * modulus / 2));
    return 4 * lineLoad / (Math.PI * modulus) * (Math.log(2 * 10 / b) + 0.5);
  }

  @Test
  void aWiderLoadZoneIsNoGain() {
    TiltedLife across = BEARING.life(Loading.radial(kN(4)).tilted(mrad(0), mrad(2)));
    assertTrue(across.lifeRatio() > 1.005, across::toString);
    assertEquals(List.of("recalled-method", "ratio-above-one"), codes(across));
  }

  @Test
  void laminaeAreRefinedForShortContacts() {
    TiltedBearing crowned = TiltedBearing.of(RATINGS, ROLLERS.profile(RollerProfile.crowned(mm(200))));
    TiltedLife refined = crowned.life(N(20), mrad(2));
    assertTrue(refined.bearing().laminae() >= 120, refined.bearing()::toString);
    assertTrue(refined.laminaChange() > 0 && refined.laminaChange() <= 0.005);
    assertEquals(crowned.laminae(2000).life(N(20), mrad(2)).lifeRatio(), refined.lifeRatio(), 0.01 * refined.lifeRatio());
    assertEquals(30, crowned.laminae(30).life(N(20), mrad(2)).bearing().laminae());
  }

  @Test
  void errorsNameParameterAndRange() {
    refused("radial load Fr (0 N) must be over 0 N", () -> BEARING.life(kN(0), mrad(1)));
    refused("tilt (0.3 rad) must be from -0.2 rad to 0.2 rad", () -> BEARING.life(kN(1), rad(0.3)));
    refused("number of rolling elements Z (2) must be from 3 to 1000", () -> RollerSet.of(2, mm(5), mm(10), mm(40)));
    refused("diameter of the rolling elements (20 mm) must be from 0 mm to", () -> RollerSet.of(14, mm(20), mm(10), mm(40)));
    refused("radial clearance s (6 mm) must be from -0.25 mm to 5 mm", () -> BEARING.clearance(mm(6)));
    refused("number of laminae (1) must be from 2 to 4000", () -> BEARING.laminae(1));
    refused("family of the ratings (radial ball bearing) must be radial roller bearing",
        () -> TiltedBearing.of(LoadRatings.radialBall(kN(1), kN(1)), ROLLERS));
    refused("axial load Fa (100 N) must be 0 N", () -> BEARING.life(Loading.radial(kN(1)).axial(N(100))));
    refused("drop of the profile P (-0.001 mm) must be from 0 mm to 10 mm", () -> RollerProfile.given(mm(0), mm(-0.001)));
    refused("stations of the profile (1) must be from 2 to", () -> RollerProfile.given(mm(0)));
    refused("crown radius r (4 mm) must be from 5 mm",
        () -> TiltedBearing.of(RATINGS, ROLLERS.profile(RollerProfile.crowned(mm(4)))).life(kN(1), mrad(0)));
    refused("inner groove radius over Dw (0.5) must be from 0.501 to 1",
        () -> BallKernel.stiffness(8, 40, 4, 4.16));
    refused("workspace (empty) must be set up", () -> LoadDistributionKernel.tilted(new LaminaWorkspace(14, 30), 1, 0, 0, 0));
    refused("workspace (unsolved) must be solved", () -> LaminaLifeKernel.life(new LaminaWorkspace(14, 30), 1, 1, true, false));
    refused("factor aISO of a lamina (0) must be over 0", () -> BEARING.life(kN(1), mrad(0)).modifiedLifeRatio(x -> 0));
    refused("distance between rows (5 mm) must be from 10 mm", () -> ROLLERS.rows(2, mm(5)));
    refused("position x (5.0) must be off the very end", () -> RollerProfile.logarithmic().drop(mm(5), mm(10), mm(5)));
  }

  private static void refused(String start, org.junit.jupiter.api.function.Executable call) {
    InputException error = assertThrows(InputException.class, call);
    assertTrue(error.getMessage().startsWith(start), error.getMessage());
  }

  @Test
  void modifiedLifeWithAConstantFactorHasTheSameRatio() {
    for (TiltedBearing bearing : List.of(BEARING, BALLS)) {
      TiltedLife life = bearing.life(kN(4), mrad(8));
      assertEquals(life.lifeRatio(), life.modifiedLifeRatio(x -> 7), 1e-12);
      // A factor that falls with load makes tilt dearer.
      assertTrue(life.modifiedLifeRatio(x -> 1 / (x * x)) < life.lifeRatio());
    }
  }

  @Test
  void modifiedLifeDoesNotDependOnTheNumberOfLaminae() {
    TiltedLife few = BEARING.laminae(60).life(kN(4), mrad(1));
    TiltedLife many = BEARING.laminae(600).life(kN(4), mrad(1));
    // A factor that is not a power of the load, so that a wrong argument does not cancel in the ratio.
    assertEquals(many.modifiedLifeRatio(r -> 0.3 + 0.15 / r), few.modifiedLifeRatio(r -> 0.3 + 0.15 / r), 1e-3);
    assertEquals(many.modifiedLifeRatio(r -> 50 - 20 * r), few.modifiedLifeRatio(r -> 50 - 20 * r), 1e-3);
  }

  @Test
  void profiles() {
    assertEquals(0, RollerProfile.flat().drop(mm(4), mm(10), mm(5)).mm());
    // 0.00035 · 5 · ln(1/(1 - 0.8²))
    assertEquals(0.00035 * 5 * Math.log(1 / 0.36), RollerProfile.logarithmic().drop(mm(4), mm(10), mm(5)).mm(), 1e-15);
    // Lwe = 30 > 2.5 Dwe = 12.5: flat up to 8.75, then 0.0005 Dwe ln
    assertEquals(0, RollerProfile.logarithmic().drop(mm(8.7), mm(30), mm(5)).mm());
    double u = (2 * 12 - 17.5) / 12.5;
    assertEquals(0.0005 * 5 * Math.log(1 / (1 - u * u)), RollerProfile.logarithmic().drop(mm(-12), mm(30), mm(5)).mm(), 1e-15);
    assertEquals(1000 - Math.sqrt(1e6 - 16), RollerProfile.crowned(mm(1000)).drop(mm(4), mm(10), mm(5)).mm(), 1e-12);
    Length[] stations = Stream.of(8.0, 2.0, 0.0, 2.0, 8.0).map(value -> um(value)).toArray(Length[]::new);
    assertEquals(0.0014, RollerProfile.given(stations).drop(mm(1.75), mm(10), mm(5)).mm(), 1e-12);
    assertEquals(0.008, RollerProfile.given(stations).drop(mm(5), mm(10), mm(5)).mm(), 1e-12);
  }

  @Test
  void aFineGivenProfileIsTheSameAsTheFormula() {
    Length[] stations = new Length[2001];
    for (int i = 0; i < stations.length; i++) {
      stations[i] = RollerProfile.crowned(mm(1000)).drop(mm((i - 1000) * 0.005), mm(10), mm(5));
    }
    TiltedLife crowned = TiltedBearing.of(RATINGS, ROLLERS.profile(RollerProfile.crowned(mm(1000)))).life(kN(4), mrad(2));
    TiltedLife given = TiltedBearing.of(RATINGS, ROLLERS.profile(RollerProfile.given(stations))).life(kN(4), mrad(2));
    assertEquals(crowned.lifeRatio(), given.lifeRatio(), 1e-6);
  }

  @Test
  void resultsAreSerializable() throws Exception {
    for (TiltedLife life : List.of(BEARING.life(kN(4), mrad(1)), BALLS.life(kN(2), mrad(1)))) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(life);
        out.writeObject(life.distribution());
      }
      try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
        assertEquals(life, in.readObject());
        assertEquals(life.distribution(), in.readObject());
      }
    }
  }

  @Test
  void manyTiltsAtOnce() {
    LaminaWorkspace w = new LaminaWorkspace(14, 2);
    LoadDistributionKernel.rollers(w, 14, 0);
    LoadDistributionKernel.laminae(
        w, 2, new double[] {-3, 3}, new double[] {0.5, 0.5}, new double[2], new double[] {1, 1}, LaminaKernel.stiffness(10));
    double[] ratios = new double[3];
    LaminaLifeKernel.lifeRatios(w, 1000, 0.01, new double[] {0, 1e-3, -1e-3}, 2000, 2500, true, false, ratios);
    assertEquals(1, ratios[0]);
    assertTrue(ratios[1] < 1);
    assertEquals(ratios[1], ratios[2], 1e-12);
  }

  /** At zero clearance half the rollers are loaded; those at a right angle to the load carry the rounding of its cosine. */
  @Test
  void rollersThatCarryTheNoiseOfTheSolutionAreNotCounted() {
    for (int z : new int[] {8, 12, 16, 20}) {
      TiltedBearing bearing = TiltedBearing.of(RATINGS, RollerSet.of(z, mm(4), mm(10), mm(40))).clearance(um(0));
      TiltedLife life = bearing.life(kN(4), mrad(0));
      assertEquals(z / 2 - 1, life.loadedElements(), z + " rollers, two of them at a right angle");
      assertEquals(Math.PI, life.loadZone().radian(), Math.toRadians(1.01), "half a turn");
    }
  }

  /** A load within the length of the rollers makes a moment of half that length at most. */
  @Test
  void aTiltThatTheLoadCannotHoldIsSaid() {
    assertTrue(codes(BEARING.life(N(20), mrad(10))).contains("tilt-not-held"));
    assertTrue(codes(BALLS.life(N(5), mrad(10))).contains("tilt-not-held"));
    assertTrue(!codes(BEARING.life(kN(4), mrad(0.5))).contains("tilt-not-held"));
    TiltedLife held = BEARING.life(N(20), mrad(10));
    assertTrue(Math.abs(held.momentAlong().newtonMillimetre()) > 20 * 5, held.momentAlong().toString());
    TiltedLife stated = BEARING.life(Loading.radial(N(20)).moment(held.momentAlong()));
    assertTrue(!codes(stated).contains("tilt-not-held"), "who states the moment knows what holds it");
  }
}
