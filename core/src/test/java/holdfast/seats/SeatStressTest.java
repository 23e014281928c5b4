// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Stress;
import holdfast.seats.InterferenceFit.Validity;
import holdfast.tables.SourceRef;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Stresses of both parts of a seat: everything together, at every place, and no elastic figure beyond its range. */
class SeatStressTest {
  private static final SourceRef INVENTED = SourceRef.derived("invented for a test");
  private static final Material STEEL = steel(400, Ductility.DUCTILE);

  private static Material steel(double yield, Ductility ductility) {
    return Material.named("steel " + yield, INVENTED).kind(MaterialGroup.STEEL, ductility).elastic(MPa(210_000), 0.3)
        .expansion(umPerMK(11.5)).density(7850).yieldStrength(MPa(yield)).build();
  }

  private static InterferenceFit fit(InnerPart stud, OuterPart housing, double least, double greatest) {
    return InterferenceFit.of(stud, housing, InterferenceBand.of(mm(18), um(least), um(greatest)), mm(16))
        .withSmoothing(RoughnessRule.NONE);
  }

  /** σz 200, τ 50, p 100 on a solid stud: both cross stresses are -100, so √(300² + 3·50²). */
  @Test
  void pressureTensionAndTorsionActTogether() {
    assertEquals(Math.sqrt(300 * 300 + 3 * 50 * 50), StudBendingKernel.atPressedMouth(200, 50, 100, 18, 0), 1e-11);
    assertEquals(Math.sqrt(300 * 300 + 3 * 50 * 50), StudBendingKernel.atPressedBore(200, 50, 100, 18, 0), 1e-11);
    // Hollow, Q = 1/2: hoop -500/3 at the surface, -800/3 at the bore, where nothing presses.
    double surface = Math.sqrt(0.5 * (300 * 300 + 200.0 / 3 * 200 / 3 + 1100.0 / 3 * 1100 / 3) + 7500);
    assertEquals(surface, StudBendingKernel.atPressedMouth(200, 50, 100, 18, 9), 1e-11);
    double bore = Math.sqrt(0.5 * (200 * 200 + 800.0 / 3 * 800 / 3 + 1400.0 / 3 * 1400 / 3) + 7500);
    assertEquals(bore, StudBendingKernel.atPressedBore(200, 50, 100, 18, 9), 1e-11);
    assertEquals(600 + 500.0 / 3, StudBendingKernel.holePeak(200, 100, 18, 9), 1e-11);
  }

  /** An arc of radius L/φ has the strain d/2 over it: 210 000 · 9 · 0.000375/16 = 44.3 MPa. */
  @Test
  void leaningFacesBendTheStudToAnArc() {
    double radius = 16 / 0.000375;
    assertEquals(210_000 * 9 / radius, StudBendingKernel.forcedBending(0.000375, 210_000, 18, 16), 1e-12);
    StudLoad load = StudLoad.radial(kN(2.1), mm(20), mm(0.8)).tightened(kN(30), Nm(40));
    StudStrength square = StudStrength.of(ShankSection.drilled(mm(18), mm(3)), load).pressed(MPa(140));
    StudStrength leaning = square.bentByFaces(mrad(0.375), GPa(210), mm(16));
    assertEquals(square.tension().megapascal() + 44.296875, leaning.tension().megapascal(), 1e-9);
    assertTrue(leaning.equivalent().compareTo(square.equivalent()) > 0);
    assertEquals(leaning.equivalent().megapascal(), leaning.explain().result().value());
    assertTrue(leaning.radialLoadAt(MPa(590)).compareTo(square.radialLoadAt(MPa(590))) < 0);
    StudMaterial material = new StudMaterial(MPa(350), MPa(900), MPa(590));
    double margin = leaning.fatigue(StudDuty.REPEATED, 2.6, material, StudFatigueCriterion.GOODMAN).margin();
    assertTrue(margin < square.fatigue(StudDuty.REPEATED, 2.6, material, StudFatigueCriterion.GOODMAN).margin());
  }

  @Property
  void aTighterFitNeverLowersAStressOfTheStud(
      @ForAll @DoubleRange(min = 0, max = 300) double pressure, @ForAll @DoubleRange(min = 0, max = 50) double more,
      @ForAll @DoubleRange(min = 0, max = 20_000) double load, @ForAll @DoubleRange(min = 0, max = 50_000) double preload,
      @ForAll @DoubleRange(min = 0, max = 90_000) double torque, @ForAll @DoubleRange(min = 0, max = 15) double bore) {
    StudStrength loose =
        StudStrength.of(
                ShankSection.drilled(mm(18), mm(bore)),
                StudLoad.radial(N(load), mm(20), mm(0.8)).tightened(N(preload), Nm(torque / 1000)))
            .pressed(MPa(pressure));
    StudStrength tight = loose.pressed(MPa(pressure + more));
    assertTrue(tight.equivalent().megapascal() >= loose.equivalent().megapascal() * (1 - 1e-12), loose + ", " + tight);
    assertTrue(tight.crossHolePeak().megapascal() >= loose.crossHolePeak().megapascal() * (1 - 1e-12));
    StudStrength unpressed = loose.pressed(MPa(0));
    double parts =
        Math.max(
            StudBendingKernel.atTensionFibre(
                unpressed.bending().megapascal(), unpressed.axial().megapascal(), unpressed.torsion().megapascal()),
            StudBendingKernel.atNeutralAxis(
                unpressed.axial().megapascal(), unpressed.shear().megapascal(), unpressed.torsion().megapascal()));
    assertTrue(unpressed.equivalent().megapascal() >= parts * (1 - 1e-12));
  }

  @Property
  void aTighterFitNeverLowersStressPressureOrForce(
      @ForAll @DoubleRange(min = 1, max = 150) double greatest, @ForAll @DoubleRange(min = 0, max = 30) double more,
      @ForAll @DoubleRange(min = 22, max = 90) double outside, @ForAll @DoubleRange(min = 0, max = 12) double hole) {
    OuterPart ring = OuterPart.ring(STEEL, mm(outside));
    InnerPart stud = InnerPart.hollow(STEEL, mm(hole));
    InterferenceFit loose = fit(stud, ring, 0, greatest);
    InterferenceFit tight = fit(stud, ring, 0, greatest + more);
    assertTrue(notLess(tight.attainedPressure().greatest(), loose.attainedPressure().greatest()));
    assertTrue(notLess(tight.limits(YieldRule.VON_MISES).stud().stress(), loose.limits(YieldRule.VON_MISES).stud().stress()));
    assertTrue(
        notLess(tight.limits(YieldRule.VON_MISES).housing().stress(), loose.limits(YieldRule.VON_MISES).housing().stress()));
    FrictionBand friction = FrictionBand.of(0.08, 0.2);
    assertTrue(tight.pressInForce(friction).greatest().base() >= loose.pressInForce(friction).greatest().base() * (1 - 1e-9));
    assertTrue(tight.validity().compareTo(loose.validity()) >= 0);
    assertTrue(notLess(loose.pressure().greatest(), loose.attainedPressure().greatest()), "yielding takes pressure");
  }

  private static boolean notLess(Stress one, Stress other) {
    return one.base() >= other.base() * (1 - 1e-9);
  }

  /** Limit pressure by the closed forms of the limits, stress by the thick-ring stresses: two roads to one safety. */
  @Property
  void safetyByStressIsSafetyByPressure(
      @ForAll YieldRule rule, @ForAll @DoubleRange(min = 1, max = 150) double greatest,
      @ForAll @DoubleRange(min = 22, max = 90) double outside, @ForAll @DoubleRange(min = 0, max = 12) double hole) {
    for (HousingShape shape : List.of(
        HousingShape.ring(mm(outside)), HousingShape.wide(), HousingShape.nearEdge(mm(outside * 0.75)),
        HousingShape.block(mm(outside * 1.5)))) {
      InterferenceFit fit = fit(InnerPart.hollow(STEEL, mm(hole)), OuterPart.of(STEEL, shape), 0, greatest);
      double pressure = fit.pressure().greatest().base();
      FitLimits limits = fit.limits(rule);
      for (FitLimits.PartLimit part : List.of(limits.stud(), limits.housing())) {
        double safety = part.safety().orElseThrow();
        assertEquals(part.limitPressure().base() / pressure, safety, 1e-9 * safety, shape + " " + part);
      }
    }
  }

  @Test
  void nearAnEdgeYieldingBeginsWhereTheLimitsSay() {
    OuterPart edge = OuterPart.of(STEEL, HousingShape.nearEdge(mm(0.75 * 18)));
    InterferenceFit just = fit(InnerPart.solid(STEEL), edge, 0, 10);
    double limit = just.limits(YieldRule.TRESCA).housing().limitPressure().base();
    // 0.75 diameters from the edge: hoop 3.25/1.25 p at the bore, so 3.6 p after Tresca; the outline carries 3.2 p.
    assertEquals(400 / 3.6, limit, 1e-9);
    double atLimit = 10 * limit / just.pressure().greatest().base();
    ElasticPlasticFit below = fit(InnerPart.solid(STEEL), edge, 0, atLimit * 0.999).elasticPlastic(YieldRule.TRESCA);
    assertFalse(below.yields());
    assertTrue(below.safety() > 1);
    InterferenceFit beyond = fit(InnerPart.solid(STEEL), edge, 0, atLimit * 1.001);
    assertTrue(beyond.limits(YieldRule.TRESCA).housing().exceeded());
    InputException refusal = assertThrows(InputException.class, () -> beyond.elasticPlastic(YieldRule.TRESCA));
    assertTrue(refusal.getMessage().contains("shape of the housing"), refusal.getMessage());
    assertEquals(Validity.BEYOND, fit(InnerPart.solid(STEEL), edge, 0, atLimit * 1.2).validity());
  }

  @Test
  void beyondYieldTheForceIsElasticPlasticOrNotCovered() {
    InnerPart stud = InnerPart.solid(steel(900, Ductility.DUCTILE));
    InterferenceFit elastic = fit(stud, OuterPart.ring(STEEL, mm(36)), 0, 20);
    assertEquals(Validity.ELASTIC, elastic.validity());
    assertEquals(elastic.pressure(), elastic.attainedPressure());
    InterferenceFit yields = fit(stud, OuterPart.ring(STEEL, mm(36)), 0, 60);
    assertEquals(Validity.ELASTIC_PLASTIC, yields.validity());
    ElasticPlasticFit plastic = yields.elasticPlastic(YieldRule.MODIFIED_SHEAR);
    assertEquals(plastic.pressure().base(), yields.attainedPressure().greatest().base(), 1e-9);
    assertEquals(
        0.2 * plastic.pressure().base() * Math.PI * 18 * 16,
        yields.pressInForce(FrictionBand.of(0.1, 0.2)).greatest().base(), 1e-6);
    assertTrue(yields.pressing(FrictionBand.of(0.1, 0.2)).explain().toString().contains("plastic zone"));
    assertEquals(Validity.BEYOND, fit(stud, OuterPart.ring(STEEL, mm(36)), 0, 200).validity());
    assertEquals(
        Validity.BEYOND, fit(stud, OuterPart.ring(steel(400, Ductility.LIMITED), mm(36)), 0, 60).validity(), "not ductile");
    assertEquals(Validity.BEYOND, fit(InnerPart.solid(steel(60, Ductility.DUCTILE)), OuterPart.wide(STEEL), 0, 60).validity());
  }

  /** A stud that grows more than its bore is stressed by the heat, and both parts are looked at. */
  @Test
  void temperatureReachesBothParts() {
    Material light = Material.named("light", INVENTED).kind(MaterialGroup.STEEL, Ductility.DUCTILE)
        .elastic(MPa(70_000), 0.33).expansion(umPerMK(23)).yieldStrength(MPa(250)).build();
    InterferenceFit stud = fit(InnerPart.hollow(steel(200, Ductility.DUCTILE), mm(9)), OuterPart.wide(STEEL), 2, 6);
    ServiceState cool = stud.atWork(degC(20), degC(20));
    assertFalse(codes(cool).contains("stud-limit-at-work"));
    ServiceState hotStud = stud.atWork(degC(200), degC(20));
    assertTrue(codes(hotStud).contains("stud-limit-at-work"), codes(hotStud).toString());
    assertTrue(hotStud.limits(YieldRule.VON_MISES).stud().exceeded());
    assertEquals(Validity.BEYOND, hotStud.validity());
    InterferenceFit lever = fit(InnerPart.solid(steel(900, Ductility.DUCTILE)), OuterPart.ring(light, mm(36)), 10, 50);
    assertEquals(Validity.ELASTIC, lever.atWork(degC(20), degC(20)).validity());
    assertTrue(codes(lever.atWork(degC(-60), degC(-60))).contains("housing-limit-at-work"));
  }

  /** Free spinning ring: the hoop stress of the bore is that of the kernel for the bore, and the loads balance. */
  @Test
  void turningStressesCount() {
    InterferenceFit fit = fit(InnerPart.hollow(STEEL, mm(6)), OuterPart.ring(STEEL, mm(90)), 10, 30);
    double still = fit.limits(YieldRule.VON_MISES).housing().stress().base();
    ServiceState turning = fit.atWork(degC(20), degC(20), rpm(60_000));
    assertTrue(turning.limits(YieldRule.VON_MISES).housing().stress().base() > still);
    assertTrue(codes(turning).contains("housing-limit-at-work"), codes(turning).toString());
    assertEquals(
        turning.rotationHoop().base(), RotationKernel.hoopStress(18, 18, 90, 7850, 0.3, 60_000), 1e-9);
    assertEquals(0, RotationKernel.radialStress(18, 18, 90, 7850, 0.3, 60_000), 1e-9);
    assertEquals(0, RotationKernel.radialStress(90, 18, 90, 7850, 0.3, 60_000), 1e-9);
    assertEquals(
        RotationKernel.hoopStress(0, 0, 90, 7850, 0.3, 60_000), RotationKernel.radialStress(0, 0, 90, 7850, 0.3, 60_000),
        1e-9, "alike on the axis of a disc");
    // Equilibrium d(r σr)/dr - σθ + ρω²r² = 0 in the middle of the wall.
    double h = 1e-3;
    double omega = 60_000 * Math.PI / 30;
    double slope =
        (27.5 * RotationKernel.radialStress(55, 18, 90, 7850, 0.3, 60_000)
            - 26.5 * RotationKernel.radialStress(53, 18, 90, 7850, 0.3, 60_000));
    double inertia = 7850e-12 * omega * omega * 27 * 27;
    assertEquals(0, slope - RotationKernel.hoopStress(54, 18, 90, 7850, 0.3, 60_000) + inertia, h * inertia);
  }

  /** The recalled table of press fits in bending. */
  @Test
  void pressFitsNotchTheStud() {
    double[][] table = {{400, 1.8}, {500, 2.0}, {600, 2.2}, {700, 2.3}, {800, 2.5}, {900, 2.6}, {1000, 2.7}, {1100, 2.8},
        {1200, 2.9}};
    for (double[] row : table) {
      assertEquals(row[1], StudNotchKernel.pressFit(row[0]), 0.05, "Rm " + row[0]);
    }
  }

  private static List<String> codes(ServiceState state) {
    return state.warnings().stream().map(warning -> warning.code()).toList();
  }
}
