// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.trace.Warning;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Shapes of housings, elastic limits, end effects, roughness, friction, clearance of bearings. */
class HousingAndLimitsTest {
  private static final Material STEEL = Material.of("C45+QT");

  private static InterferenceFit fit(OuterPart housing) {
    return InterferenceFit.of(InnerPart.solid(STEEL), housing, InterferenceBand.of(mm(20), um(10), um(20)), mm(20))
        .withSmoothing(RoughnessRule.NONE);
  }

  @Property
  void shapesStiffenWithSizeTowardsTheWidePlate(@ForAll @DoubleRange(min = 0.75, max = 2.9) double x) {
    assertTrue(HousingShapeKernel.edgeEquivalent(x + 0.05) > HousingShapeKernel.edgeEquivalent(x));
    assertTrue(HousingShapeKernel.squareEquivalent(x + 0.05) > HousingShapeKernel.squareEquivalent(x));
    assertTrue(HousingShapeKernel.edgeHoop(x + 0.05) < HousingShapeKernel.edgeHoop(x));
    assertTrue(HousingShapeKernel.squareHoop(x + 0.05) < HousingShapeKernel.squareHoop(x));
    assertTrue(HousingShapeKernel.squareOutline(x + 0.05) < HousingShapeKernel.squareOutline(x));
    // The plate helps beyond a ring of the same least wall; the corners of a block help little.
    assertTrue(HousingShapeKernel.edgeEquivalent(x) > HousingShapeKernel.squareEquivalent(x));
    assertTrue(HousingShapeKernel.squareEquivalent(x) > 2 * x);
  }

  @Test
  void theEdgeGovernsBelow0866Diameters() {
    assertTrue(HousingShapeKernel.edgeOutline(0.86) > HousingShapeKernel.edgeHoop(0.86));
    assertTrue(HousingShapeKernel.edgeOutline(0.87) < HousingShapeKernel.edgeHoop(0.87));
    assertEquals(HousingShapeKernel.edgeEquivalent(3) / 3, HousingShapeKernel.edgeEquivalent(30) / 30, 1e-12);
    InputException error = assertThrows(InputException.class, () -> HousingShapeKernel.squareHoop(0.7));
    assertEquals("half side over bore diameter", error.parameter());
    assertThrows(InputException.class, () -> HousingShapeKernel.edgeHoop(Double.NaN));
  }

  @Test
  void pressureLiesBetweenThatOfTheInscribedRingAndTheWidePlate() {
    double ring = fit(OuterPart.ring(STEEL, mm(40))).pressure().greatest().base();
    double block = fit(OuterPart.of(STEEL, HousingShape.block(mm(40)))).pressure().greatest().base();
    double edge = fit(OuterPart.of(STEEL, HousingShape.nearEdge(mm(20)))).pressure().greatest().base();
    double wide = fit(OuterPart.wide(STEEL)).pressure().greatest().base();
    assertTrue(ring < block && block < edge && edge < wide);
    assertEquals(0.5, HousingShape.nearEdge(mm(20)).wallFactor(mm(20)), 1e-12);
    assertEquals(0.5, HousingShape.block(mm(40)).wallFactor(mm(20)), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, HousingShape.wide().equivalentDiameter(mm(20)), 0);
    assertEquals(mm(20), fit(OuterPart.of(STEEL, HousingShape.nearEdge(mm(20)))).stresses().get(3).radius());
    assertEquals(3, fit(OuterPart.wide(STEEL)).stresses().size());
  }

  @Test
  void warnsOfThinWallsAndOfShapesBeyondTheResults() {
    assertTrue(codes(fit(OuterPart.ring(STEEL, mm(30)))).contains("thin-wall"));
    assertFalse(codes(fit(OuterPart.ring(STEEL, mm(40)))).contains("thin-wall"));
    assertTrue(codes(fit(OuterPart.of(STEEL, HousingShape.block(mm(200))))).contains("shape-beyond-results"));
    assertThrows(InputException.class, () -> fit(OuterPart.of(STEEL, HousingShape.block(mm(25)))));
  }

  private static java.util.List<String> codes(InterferenceFit fit) {
    return fit.warnings().stream().map(Warning::code).toList();
  }

  @Property
  void limitsAreReachedByTheirOwnStress(
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double q, @ForAll @DoubleRange(min = 100, max = 1000) double yield) {
    double h = (1 + q * q) / (1 - q * q);
    double vm = ElasticLimitKernel.housingPressure(YieldRule.VON_MISES, yield, h);
    assertEquals(yield, EquivalentStressKernel.vonMises(h * vm, -vm), 1e-9 * yield);
    assertEquals(yield * (1 - q * q) / Math.sqrt(3 + Math.pow(q, 4)), vm, 1e-9 * yield);
    double tresca = ElasticLimitKernel.housingPressure(YieldRule.TRESCA, yield, h);
    assertEquals(yield, EquivalentStressKernel.tresca(h * tresca, -tresca), 1e-9 * yield);
    assertEquals(
        yield * (1 - q * q) / Math.sqrt(3), ElasticLimitKernel.housingPressure(YieldRule.MODIFIED_SHEAR, yield, h), 1e-9 * yield);
    assertTrue(tresca < vm);
    double stud = ElasticLimitKernel.studPressure(YieldRule.VON_MISES, yield, q);
    assertEquals(-yield, ThickRingKernel.hoopStress(q, q, 1, 0, stud), 1e-9 * yield);
    double brittle = ElasticLimitKernel.brittleHousingPressure(yield, h);
    assertEquals(yield, h * brittle, 1e-9 * yield);
  }

  @Property
  void equivalentStressesBoundEachOther(
      @ForAll @DoubleRange(min = -500, max = 500) double a,
      @ForAll @DoubleRange(min = -500, max = 500) double b) {
    double vm = EquivalentStressKernel.vonMises(a, b);
    double tresca = EquivalentStressKernel.tresca(a, b);
    assertTrue(vm <= tresca + 1e-9 && tresca <= 2 / Math.sqrt(3) * vm + 1e-9);
    assertEquals(vm, EquivalentStressKernel.vonMises(a, b, 0), 1e-9);
    assertEquals(EquivalentStressKernel.vonMises(b, a), vm, 1e-12);
  }

  @Test
  void aSolidStudTakesMoreThanADrilledOne() {
    assertEquals(400, ElasticLimitKernel.studPressure(YieldRule.TRESCA, 400, 0), 0);
    assertEquals(800 / Math.sqrt(3), ElasticLimitKernel.studPressure(YieldRule.MODIFIED_SHEAR, 400, 0), 1e-9);
    assertEquals(200 * 0.96, ElasticLimitKernel.studPressure(YieldRule.TRESCA, 400, 0.2), 1e-9);
    assertThrows(InputException.class, () -> ElasticLimitKernel.studPressure(YieldRule.TRESCA, 400, 1));
    assertThrows(InputException.class, () -> ElasticLimitKernel.housingPressure(YieldRule.TRESCA, 400, 0.9));
  }

  @Test
  void aBrittleHousingIsHeldToItsTensileStrength() {
    InterferenceFit iron =
        InterferenceFit.of(
            InnerPart.solid(STEEL),
            OuterPart.ring(Material.of("EN-GJL-250"), mm(30)),
            InterferenceBand.of(mm(20), um(40), um(90)),
            mm(20));
    FitLimits limits = iron.limits(YieldRule.VON_MISES);
    assertTrue(limits.housing().brittle());
    double h = (1 + 4.0 / 9) / (1 - 4.0 / 9);
    assertEquals(250 / h, limits.housing().pressure().orElseThrow().megapascal(), 1e-9);
    assertTrue(codes(iron).contains("housing-breaks"), codes(iron).toString());
    Material unknown = Material.of("steel");
    assertTrue(fit(OuterPart.ring(unknown, mm(40))).limits(YieldRule.TRESCA).housing().pressure().isEmpty());
    assertTrue(codes(fit(OuterPart.ring(unknown, mm(40)))).contains("housing-strength-unknown"));
  }

  @Test
  void endEffectsComeFromTheModels() {
    EndEffect shorter = EndEffect.of(EndEffect.Layout.HOUSING_SHORTER);
    assertEquals(0.9335, shorter.middleLeast(), 0);
    assertEquals(1.0085, shorter.middleGreatest(), 0);
    assertEquals(1.4459, shorter.nearEndGreatest(), 0);
    assertEquals(1.16648, EndEffect.of(EndEffect.Layout.STUD_SHORTER).meanLeast(), 0);
    assertEquals(1, EndEffect.of(EndEffect.Layout.EQUAL).nearEndGreatest(), 0);
    assertTrue(shorter.toString().contains("0.93 … 1.01"), shorter.toString());
  }

  @Test
  void roughnessByGradeProcessAndSeat() {
    assertEquals(um(1.6), SurfaceRoughness.ofGrade("N7").ra().least());
    assertEquals(um(10), SurfaceRoughness.ofGrade("N7").rz().orElseThrow().greatest());
    assertTrue(SurfaceRoughness.ofProcess("sawing").rz().isEmpty());
    assertEquals(um(6.3), SurfaceRoughness.ofSeat("housing bore IT6").rz().orElseThrow().least());
    assertThrows(InputException.class, () -> SurfaceRoughness.ofGrade("N13"));
    assertTrue(
        assertThrows(InputException.class, () -> SurfaceRoughness.ofProcess("licking")).getMessage().contains("reaming"));
    assertEquals(0.8 * 0.0163, RoughnessLossKernel.loss2001(0.010, 0.0063), 1e-15);
    assertEquals(
        2 * RoughnessLossKernel.loss2017(0.010, 0.0063), RoughnessLossKernel.loss2001(0.010, 0.0063), 1e-15);
    assertEquals(0.8 * 0.004, RoughnessLossKernel.loss2017OfPeaks(0.003, 0.001), 1e-15);
    assertThrows(InputException.class, () -> RoughnessLossKernel.loss2017(-1, 0));
  }

  @Test
  void adhesionByPairAndCondition() {
    assertEquals(0.05, Adhesion.pressed(MaterialGroup.GREY_IRON, true).least(), 0);
    assertEquals(0.12, Adhesion.pressed(MaterialGroup.GREY_IRON, false).greatest(), 0);
    assertEquals(0.2, Adhesion.shrunk(MaterialGroup.STEEL, true).least(), 0);
    assertEquals(0.14, Adhesion.shrunk(MaterialGroup.HARDENED_STEEL, false).least(), 0);
    assertEquals(0.16, Adhesion.shrunk(MaterialGroup.DUCTILE_IRON, true).least(), 0);
    assertEquals(0.10, Adhesion.shrunk(MaterialGroup.ALUMINIUM_ALLOY, false).least(), 0);
    InputException error = assertThrows(InputException.class, () -> Adhesion.pressed(MaterialGroup.OTHER, true));
    assertTrue(error.permitted().contains("grey iron, dry"), error.getMessage());
    assertThrows(InputException.class, () -> FrictionBand.of(0.2, 0.1));
    assertEquals(0.03, FrictionBand.testScatter(false).least(), 0);
  }

  @Test
  void aFitTakesInternalClearance() {
    // Solid shaft: U·d/F; rigid housing: U·E_r/D.
    assertEquals(0.02 * 25 / 32, InternalClearanceKernel.innerRing(0.02, 25, 32, 0), 1e-15);
    assertEquals(0.02 * 45 / 52, InternalClearanceKernel.outerRing(0.02, 52, 45, Double.POSITIVE_INFINITY), 1e-15);
    // Against the thick ring itself: growth of the raceway under the joint pressure.
    double p = ThickRingKernel.pressure(0.02, 25, 8, 32, 208_000, 0.3, 208_000, 0.3);
    assertEquals(
        2 * ThickRingKernel.radialDisplacement(16, 12.5, 16, p, 0, 208_000, 0.3),
        InternalClearanceKernel.innerRing(0.02, 25, 32, 8),
        1e-12);
    p = ThickRingKernel.pressure(0.02, 52, 45, 90, 208_000, 0.3, 208_000, 0.3);
    assertEquals(
        -2 * ThickRingKernel.radialDisplacement(22.5, 22.5, 26, 0, p, 208_000, 0.3),
        InternalClearanceKernel.outerRing(0.02, 52, 45, 90),
        1e-12);
    assertEquals(12e-6 * 10 * 38.5, InternalClearanceKernel.byTemperature(12e-6, 10, 32, 45), 1e-15);
    assertThrows(InputException.class, () -> InternalClearanceKernel.innerRing(0.02, 25, 25, 0));
  }
}
