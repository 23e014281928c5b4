// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

/** Ends of the permitted ranges of the kernels of rings and seats, with the error that names them. */
class SeatKernelLimitsTest {
  private static final double INF = Double.POSITIVE_INFINITY;

  @Test
  void elasticConstantsOfEveryPart() {
    for (double modulus : new double[] {0.999, 1.0001e7}) {
      refused("modulus of elasticity (stud)", "from 1 MPa", () -> ThickRingKernel.innerCompliance(0, 30, modulus, 0.3));
      refused("modulus of elasticity (housing)", "from 1 MPa", () -> ThickRingKernel.outerCompliance(30, 60, modulus, 0.3));
      refused("modulus of elasticity (ring)", "from 1 MPa",
          () -> ThickRingKernel.radialDisplacement(10, 10, 20, 1, 0, modulus, 0.3));
      refused("modulus of elasticity (ring)", "from 1 MPa", () -> ThickRingKernel.planeStrainModulus(modulus, 0.3));
    }
    for (double poisson : new double[] {-0.001, 0.501, Double.NaN}) {
      refused("Poisson's ratio (stud)", "from 0 to 0.5", () -> ThickRingKernel.innerCompliance(0, 30, 1, poisson));
      refused("Poisson's ratio (housing)", "from 0 to 0.5", () -> ThickRingKernel.outerCompliance(30, 60, 1, poisson));
      refused("Poisson's ratio (ring)", "from 0 to 0.5", () -> ThickRingKernel.planeStrainModulus(1, poisson));
    }
    // Solid stud: (1 - ν)/E; at both ends of the moduli and of Poisson's ratio.
    assertEquals(1, ThickRingKernel.innerCompliance(0, 30, 1, 0));
    assertEquals(0.5e-7, ThickRingKernel.innerCompliance(0, 30, 1e7, 0.5), 1e-22);
    // Endless housing: (1 + ν)/E. Ring of 2 to 1: (5/3 + ν)/E.
    assertEquals(1.5, ThickRingKernel.outerCompliance(30, INF, 1, 0.5));
    assertEquals(5.0 / 3 + 0.25, ThickRingKernel.outerCompliance(30, 60, 1, 0.25), 1e-15);
    assertEquals(5.0 / 3 - 0.25, ThickRingKernel.innerCompliance(15, 30, 1, 0.25), 1e-15);
    // Plane strain: E/(1 - ν²).
    assertEquals(4.0 / 3, ThickRingKernel.planeStrainModulus(1, 0.5), 1e-15);
  }

  @Test
  void wallsOfStudAndHousing() {
    refused("joint diameter", "from 0.000001 mm", () -> ThickRingKernel.innerCompliance(0, 0, 1, 0.3));
    refused("hole of the stud", "from 0 mm", () -> ThickRingKernel.innerCompliance(-1, 30, 1, 0.3));
    refused("hole of the stud", "from 0 mm", () -> ThickRingKernel.innerCompliance(30, 30, 1, 0.3));
    refused("joint diameter", "from 0.000001 mm", () -> ThickRingKernel.outerCompliance(0, 30, 1, 0.3));
    refused("outside diameter", "over the joint diameter 30 mm", () -> ThickRingKernel.outerCompliance(30, 30, 1, 0.3));
    refused("outside diameter", "over the joint diameter 30 mm", () -> ThickRingKernel.outerCompliance(30, 1.1e9, 1, 0.3));
    assertEquals(1.3, ThickRingKernel.outerCompliance(30, 1e9, 1, 0.3), 1e-14);
    refused("inner radius", "0 mm or more", () -> ThickRingKernel.hoopStress(1, -1, 2, 1, 0));
    refused("radius", "from 1 mm to 2 mm", () -> ThickRingKernel.radialStress(2.1, 1, 2, 1, 0));
    refused("pressure inside", "from -1000000000 MPa", () -> ThickRingKernel.radialStress(1, 1, 2, 1.1e9, 0));
    refused("pressure outside", "from -1000000000 MPa", () -> ThickRingKernel.radialStress(1, 1, 2, 0, -1.1e9));
    refused("radius", "from 1 mm to 2 mm", () -> ThickRingKernel.radialDisplacement(0.9, 1, 2, 1, 0, 1, 0.3));
    refused("outer radius", "over 2 mm", () -> ThickRingKernel.axialStressClosed(2, 2, 1, 0));
    refused("radius", "from 1 mm to 2 mm", () -> ThickRingKernel.radialDisplacementClosed(3, 1, 2, 1, 0, 1, 0.3));
  }

  @Test
  void stressesOfARingOfTwoToOne() {
    // Lamé, a = 1, b = 2, p = 3 inside: hoop 5 at the bore, 2 outside; radial -3 and 0; half way by A ± B/r², A = 1, B = 4.
    assertEquals(5, ThickRingKernel.hoopStress(1, 1, 2, 3, 0), 1e-15);
    assertEquals(2, ThickRingKernel.hoopStress(2, 1, 2, 3, 0), 1e-15);
    assertEquals(1 + 4 / 2.25, ThickRingKernel.hoopStress(1.5, 1, 2, 3, 0), 1e-15);
    assertEquals(1 - 4 / 2.25, ThickRingKernel.radialStress(1.5, 1, 2, 3, 0), 1e-15);
    assertEquals(0, ThickRingKernel.radialStress(2, 1, 2, 3, 0), 1e-15);
    // 3 outside: A = -4, B = -4.
    assertEquals(-8, ThickRingKernel.hoopStress(1, 1, 2, 0, 3), 1e-15);
    assertEquals(-5, ThickRingKernel.hoopStress(2, 1, 2, 0, 3), 1e-15);
    // Closed ends: the axial stress is A = (p_i a² - p_o b²)/(b² - a²); it draws the wall in by ν A r/E.
    assertEquals(1, ThickRingKernel.axialStressClosed(1, 2, 3, 0), 1e-15);
    assertEquals((5 + 0.25 * 3) / 10, ThickRingKernel.radialDisplacement(1, 1, 2, 3, 0, 10, 0.25), 1e-15);
    assertEquals((5 - 0.25 * (-3 + 1)) / 10, ThickRingKernel.radialDisplacementClosed(1, 1, 2, 3, 0, 10, 0.25), 1e-15);
    assertEquals(2 * (2 - 0.25) / 10, ThickRingKernel.radialDisplacementClosed(2, 1, 2, 3, 0, 10, 0.25), 1e-15);
    // 6 inside: A = 2, B = 8.
    assertEquals((10 - 0.25 * (-6 + 2)) / 10, ThickRingKernel.radialDisplacementClosed(1, 1, 2, 6, 0, 10, 0.25), 1e-15);
    assertEquals(2 * (4 - 0.25 * 2) / 10, ThickRingKernel.radialDisplacementClosed(2, 1, 2, 6, 0, 10, 0.25), 1e-15);
    // Hoop limit 5 at pressure 3 and bore 1: back to the outer radius 2.
    assertEquals(2, ThickRingKernel.outerRadiusForHoop(1, 3, 5), 1e-15);
    refused("inner radius", "over 0 mm", () -> ThickRingKernel.outerRadiusForHoop(0, 3, 5));
    refused("pressure inside", "0 MPa or more", () -> ThickRingKernel.outerRadiusForHoop(1, -3, 5));
    refused("hoop stress limit", "over the pressure 3 MPa", () -> ThickRingKernel.outerRadiusForHoop(1, 3, 3));
    refused("hoop stress limit", "over the pressure 3 MPa", () -> ThickRingKernel.outerRadiusForHoop(1, 3, 1.1e30));
  }

  @Test
  void interferenceAndPressure() {
    refused("interference", "from 0 mm to 30 mm", () -> ThickRingKernel.pressure(30.1, 30, 0, 60, 1, 0.3, 1, 0.3));
    refused("joint diameter", "from", () -> ThickRingKernel.pressure(0, 0, 0, 60, 1, 0.3, 1, 0.3));
    refused("joint pressure", "0 MPa or more", () -> ThickRingKernel.interference(-1, 30, 0, 60, 1, 0.3, 1, 0.3));
    refused("bore of the housing", "from", () -> ThickRingKernel.pressureOfParts(30, 0, 0, 60, 1, 0.3, 1, 0.3));
    refused("stud diameter", "from 30 mm to 60 mm", () -> ThickRingKernel.pressureOfParts(60.1, 30, 0, 90, 1, 0.3, 1, 0.3));
    double[] one = {-0.1};
    refused("interference", "from 0 mm to 30 mm",
        () -> ThickRingKernel.pressures(one, 30, 0, 60, 1, 0.3, 1, 0.3, new double[1]));
    refused("result array", "at least 1", () -> ThickRingKernel.pressures(one, 30, 0, 60, 1, 0.3, 1, 0.3, new double[0]));
    // Solid stud of 30.03 in an endless housing of 30, like materials: p = (0.03/30) E/2, whatever Poisson's ratio.
    assertEquals(105, ThickRingKernel.pressureOfParts(30.03, 30, 0, INF, 210_000, 0.3, 210_000, 0.3), 1e-9);
    assertEquals(0, ThickRingKernel.pressureOfParts(30, 30, 0, INF, 210_000, 0.3, 210_000, 0.3));
  }

  @Test
  void elasticLimitsAndEquivalentStresses() {
    for (YieldRule rule : YieldRule.values()) {
      refused("yield strength of the housing", "over 0 MPa", () -> ElasticLimitKernel.housingPressure(rule, 0, 2));
      refused("yield strength of the stud", "over 0 MPa", () -> ElasticLimitKernel.studPressure(rule, 0, 0.5));
    }
    refused("hoop stress over pressure", "1 or more", () -> ElasticLimitKernel.housingPressure(YieldRule.TRESCA, 1, 0.99));
    refused("hoop stress over pressure", "1 or more", () -> ElasticLimitKernel.brittleHousingPressure(1, 0.99));
    refused("hoop stress over pressure", "1 or more", () -> ElasticLimitKernel.brittleHousingPressure(1, INF));
    refused("tensile strength of the housing", "over 0 MPa", () -> ElasticLimitKernel.brittleHousingPressure(0, 2));
    refused("hole over joint diameter", "from 0", () -> ElasticLimitKernel.studPressure(YieldRule.TRESCA, 1, -0.01));
    // The endless plate, hoop = pressure: Re/√3, Re/2, Re/√3.
    assertEquals(1 / Math.sqrt(3), ElasticLimitKernel.housingPressure(YieldRule.VON_MISES, 1, 1), 1e-15);
    assertEquals(0.5, ElasticLimitKernel.housingPressure(YieldRule.TRESCA, 1, 1), 1e-15);
    assertEquals(1 / Math.sqrt(3), ElasticLimitKernel.housingPressure(YieldRule.MODIFIED_SHEAR, 1, 1), 1e-15);
    assertEquals(1, ElasticLimitKernel.brittleHousingPressure(1, 1));
    assertEquals(0.75 / Math.sqrt(3), ElasticLimitKernel.studPressure(YieldRule.MODIFIED_SHEAR, 1, 0.5), 1e-15);
    // Three unlike principal stresses: 3, 1, -2. Mises √((4 + 9 + 25)/2) = √19, greatest difference 5.
    assertEquals(Math.sqrt(19), EquivalentStressKernel.vonMises(3, 1, -2), 1e-15);
    assertEquals(Math.sqrt(19), EquivalentStressKernel.vonMises(-2, 3, 1), 1e-15);
    assertEquals(5, EquivalentStressKernel.tresca(3, 1, -2));
    assertEquals(5, EquivalentStressKernel.tresca(1, -2, 3));
    assertEquals(3, EquivalentStressKernel.tresca(3, 1));
    assertEquals(Math.sqrt(7), EquivalentStressKernel.vonMises(3, 1), 1e-15);
    double much = 1.1e9;
    refused("hoop stress", "from -1000000000 MPa", () -> EquivalentStressKernel.vonMises(much, 0));
    refused("radial stress", "from -1000000000 MPa", () -> EquivalentStressKernel.vonMises(0, much));
    refused("first principal stress", "from", () -> EquivalentStressKernel.vonMises(much, 0, 0));
    refused("second principal stress", "from", () -> EquivalentStressKernel.vonMises(0, much, 0));
    refused("third principal stress", "from", () -> EquivalentStressKernel.vonMises(0, 0, much));
    refused("first principal stress", "from", () -> EquivalentStressKernel.tresca(much, 0, 0));
    refused("second principal stress", "from", () -> EquivalentStressKernel.tresca(0, much, 0));
    refused("third principal stress", "from", () -> EquivalentStressKernel.tresca(0, 0, much));
  }

  @Test
  void plasticRings() {
    for (double ratio : new double[] {-0.01, 1}) {
      refused("joint over outside diameter", "from 0", () -> PlasticRingKernel.pressure(1, ratio, 300));
      refused("joint over outside diameter", "from 0", () -> PlasticRingKernel.fullyPlasticPressure(ratio, 300));
      refused("joint over outside diameter", "from 0", () -> PlasticRingKernel.greatestPlasticRatio(ratio));
      refused("joint over outside diameter", "from 0", () -> PlasticRingKernel.plasticRatio(1, ratio, 300));
      refused("joint over outside diameter", "from 0", () -> PlasticRingKernel.plasticShare(1, ratio));
    }
    refused("yield stress difference", "over 0 MPa", () -> PlasticRingKernel.pressure(1, 0.5, 0));
    refused("yield stress difference", "over 0 MPa", () -> PlasticRingKernel.fullyPlasticPressure(0.5, 0));
    refused("yield strength of the housing", "over 0 MPa", () -> PlasticRingKernel.yieldDifference(YieldRule.TRESCA, 0));
    refused("joint pressure", "from 0 MPa", () -> PlasticRingKernel.plasticRatio(-1, 0.5, 300));
    refused("plastic radius over joint radius", "from 1 to 2", () -> PlasticRingKernel.plasticShare(2.01, 0.5));
    refused("plastic radius over joint radius", "from 1 to 2", () -> PlasticRingKernel.pressure(0.99, 0.5, 300));
    refused("radius over joint radius", "from 1 to 2", () -> PlasticRingKernel.hoopStress(0.9, 1.5, 0.5, 300));
    refused("modulus of elasticity (housing)", "from 1 MPa", () -> PlasticRingKernel.interference(1, 0.5, 30, 1, 0, 0.3, 1));
    refused("joint diameter", "from", () -> PlasticRingKernel.interference(1, 0.5, 0, 1, 1, 0.3, 1));
    refused("relative yield of the stud", "over 0", () -> PlasticRingKernel.interference(1, 0.5, 30, 0, 1, 0.3, 1));
    refused("interference", "from 0 mm", () -> PlasticRingKernel.plasticRatioOfInterference(-1, 0.5, 30, 1, 1, 0.3, 1));
    // Half the section: (ζ² - 1)/(1/q² - 1) = 1.5/3 at ζ² = 2.5, q = 1/2.
    assertEquals(0.5, PlasticRingKernel.plasticShare(Math.sqrt(2.5), 0.5), 1e-15);
    assertEquals(1, PlasticRingKernel.plasticShare(2, 0.5), 1e-15);
    // Flow: p = k/2 (2 ln ζ - q²ζ² + 1); fully plastic at ζ = 2: k ln 2.
    assertEquals(300 * Math.log(2), PlasticRingKernel.pressure(2, 0.5, 300), 1e-12);
    assertEquals(150 * (2 * Math.log(1.5) - 0.5625 + 1), PlasticRingKernel.pressure(1.5, 0.5, 300), 1e-12);
    assertEquals(2, PlasticRingKernel.plasticRatio(300 * Math.log(2), 0.5, 300), 1e-6);
    // In the elastic rest with ζ = 1.5, q = 1/2, k = 2: ζ²q² ± ζ²/x² at x = 1.8.
    assertEquals(0.5625 - 2.25 / 3.24, PlasticRingKernel.radialStress(1.8, 1.5, 0.5, 2), 1e-15);
    assertEquals(0.5625 + 2.25 / 3.24, PlasticRingKernel.hoopStress(1.8, 1.5, 0.5, 2), 1e-15);
    // In the zone: σr = -p + k ln x, hoop k above it.
    double p = PlasticRingKernel.pressure(1.5, 0.5, 2);
    assertEquals(-p + 2 * Math.log(1.2), PlasticRingKernel.radialStress(1.2, 1.5, 0.5, 2), 1e-15);
    assertEquals(-p + 2 * Math.log(1.2) + 2, PlasticRingKernel.hoopStress(1.2, 1.5, 0.5, 2), 1e-15);
    // A ring of outside ratio e is just flowed through when its bore yields most: both bounds meet.
    double e = Math.exp(-1);
    assertEquals(1, PlasticRingKernel.fullyPlasticPressure(e, 1), 1e-15);
    assertEquals(Math.E, PlasticRingKernel.greatestPlasticRatio(e), 1e-6);
    assertEquals(Math.E, PlasticRingKernel.greatestPlasticRatio(e * 1.000001), 1e-5);
  }

  @Test
  void rotation() {
    // Solid disc rim and ring, ρω² = 7800 · (100π)² · 1e-12 at 3000 rpm.
    double rim = 7800 * Math.pow(100 * Math.PI, 2) * 1e-12;
    assertEquals(rim * (3.25 * 900 + 0.75 * 225) / 4, RotationKernel.boreHoop(30, 60, 7800, 0.25, 3000), 1e-12);
    assertEquals(30 * rim * (3.25 * 900 + 0.75 * 225) / 4 / 200_000,
        RotationKernel.boreGrowth(30, 60, 7800, 200_000, 0.25, 3000), 1e-17);
    assertEquals(30 * rim * (3.25 * 25 + 0.75 * 225) / 4 / 200_000,
        RotationKernel.studGrowth(30, 10, 7800, 200_000, 0.25, 3000), 1e-17);
    assertEquals(30 * rim * 3.25 * 875 / 4 / 200_000,
        RotationKernel.interferenceLoss(30, 10, 60, 7800, 200_000, 0.25, 7800, 200_000, 0.25, 3000), 1e-17);
    refused("outside diameter of the housing", "over", () -> RotationKernel.boreHoop(30, 30, 7800, 0.25, 3000));
    refused("outside diameter of the housing", "finite", () -> RotationKernel.boreHoop(30, INF, 7800, 0.25, 3000));
    refused("Poisson's ratio (housing)", "from 0", () -> RotationKernel.boreHoop(30, 60, 7800, 0.6, 3000));
    refused("modulus of elasticity (housing)", "from 1", () -> RotationKernel.boreGrowth(30, 60, 7800, 0, 0.3, 3000));
    refused("hole of the stud", "from 0 mm", () -> RotationKernel.studGrowth(30, 30, 7800, 1, 0.3, 3000));
    refused("modulus of elasticity (stud)", "from 1", () -> RotationKernel.studGrowth(30, 10, 7800, 0, 0.3, 3000));
    refused("density", "over 0 kg/m³", () -> RotationKernel.boreHoop(30, 60, 0, 0.25, 3000));
    refused("speed", "from -1000000 rpm", () -> RotationKernel.boreHoop(30, 60, 7800, 0.25, 1.1e6));
    refused("interference", "from 0 mm", () -> RotationKernel.lossSpeed(-0.01, 1));
    assertEquals(INF, RotationKernel.lossSpeed(0.01, -1));
    assertEquals(10, RotationKernel.lossSpeed(1, 0.01), 1e-14);
    assertEquals(1e15, RotationKernel.lossSpeed(1, 1e-30), 1);
  }

  @Test
  void temperatures() {
    // 0.05 mm over 10e-6/K of 50 mm: 100 K; a stud 40 K below the room saves half of that at half the expansion.
    assertEquals(100, ThermalSeatKernel.riseToOpen(0.03, 0.02, 50, 10e-6), 1e-12);
    assertEquals(105, ThermalSeatKernel.housingTemperature(0.03, 0.02, 50, 10e-6, 5e-6, 25, -15), 1e-12);
    assertEquals(-75, ThermalSeatKernel.studTemperature(0.03, 0.02, 50, 10e-6, 25), 1e-12);
    assertEquals(0.03 + 50 * (10e-6 * 80 - 20e-6 * -40),
        ThermalSeatKernel.interferenceAt(0.03, 50, 10e-6, 100, 20e-6, -20), 1e-15);
    assertEquals(INF, ThermalSeatKernel.lossTemperature(0.03, 50, 10e-6, 10e-6));
    assertEquals(20 - 60, ThermalSeatKernel.lossTemperature(0.03, 50, 20e-6, 10e-6), 1e-9);
    refused("interference", "from 0 mm", () -> ThermalSeatKernel.riseToOpen(-0.01, 0, 50, 1e-5));
    refused("assembly clearance", "from 0 mm", () -> ThermalSeatKernel.riseToOpen(0, -0.01, 50, 1e-5));
    refused("joint diameter", "from", () -> ThermalSeatKernel.riseToOpen(0, 0, 0, 1e-5));
    refused("expansion of the part", "from", () -> ThermalSeatKernel.riseToOpen(0, 0, 50, 0));
    refused("expansion of the stud", "from 0", () -> ThermalSeatKernel.housingTemperature(0, 0, 50, 1e-5, -1e-6, 20, 20));
    double cold = -273.16;
    refused("room temperature", "from -273.15 °C", () -> ThermalSeatKernel.housingTemperature(0, 0, 50, 1e-5, 1e-5, cold, 20));
    refused("temperature of the stud", "from -273.15 °C",
        () -> ThermalSeatKernel.housingTemperature(0, 0, 50, 1e-5, 1e-5, 20, cold));
    refused("room temperature", "from -273.15 °C", () -> ThermalSeatKernel.studTemperature(0, 0, 50, 1e-5, 1.1e6));
    refused("temperature of the stud", "from -273.15 °C", () -> ThermalSeatKernel.interferenceAt(0, 50, 1e-5, cold, 1e-5, 20));
    refused("temperature of the housing", "from -273.15 °C",
        () -> ThermalSeatKernel.interferenceAt(0, 50, 1e-5, 20, 1e-5, cold));
    assertEquals(-273.15, ThermalSeatKernel.studTemperature(0, 0, 50, 1e-5, -273.15));
    assertEquals(1e6, ThermalSeatKernel.studTemperature(0, 0, 50, 1e-5, 1e6));
    refused("interference", "from -10000000 mm", () -> ThermalSeatKernel.interferenceAt(-1.1e7, 50, 1e-5, 20, 1e-5, 20));
    refused("expansion of the housing", "from 0", () -> ThermalSeatKernel.lossTemperature(0.01, 50, 1e-5, -1e-5));
    refused("interference", "from 0 mm", () -> ThermalSeatKernel.lossTemperature(-0.01, 50, 1e-5, 2e-5));
  }

  @Test
  void forces() {
    // 0.1 · 50 · π · 20 · 30 = 3000π N.
    assertEquals(3000 * Math.PI, PressForceKernel.axialForce(50, 20, 30, 0.1), 1e-9);
    assertEquals(30_000 * Math.PI, PressForceKernel.torque(50, 20, 30, 0.1), 1e-9);
    assertEquals(5, PressForceKernel.resultant(3, 40, 20), 1e-15);
    assertEquals(100, PressForceKernel.pressureToHold(3000 * Math.PI, 20, 30, 0.1, 2), 1e-12);
    assertEquals(150, PressForceKernel.pressWork(10, 30));
    refused("joint pressure", "0 MPa or more", () -> PressForceKernel.axialForce(-1, 20, 30, 0.1));
    refused("joint length", "from", () -> PressForceKernel.axialForce(1, 20, 0, 0.1));
    refused("coefficient of friction", "0 or more", () -> PressForceKernel.axialForce(1, 20, 30, -0.1));
    refused("axial force", "a finite", () -> PressForceKernel.resultant(Double.NaN, 0, 20));
    refused("torque", "a finite", () -> PressForceKernel.resultant(0, Double.NaN, 20));
    refused("joint diameter", "from", () -> PressForceKernel.resultant(0, 0, 0));
    refused("force to be held", "0 N or more", () -> PressForceKernel.pressureToHold(-1, 20, 30, 0.1, 1));
    refused("coefficient of friction", "over 0", () -> PressForceKernel.pressureToHold(1, 20, 30, 0, 1));
    refused("safety against slipping", "over 0", () -> PressForceKernel.pressureToHold(1, 20, 30, 0.1, 0));
    refused("pressing force", "0 N or more", () -> PressForceKernel.pressWork(-1, 30));
  }

  @Test
  void geometryOfTheSeat() {
    refused("clearance", "from 0 mm", () -> SeatGeometryKernel.clearanceTilt(-0.01, 20, 30));
    refused("stud diameter", "from", () -> SeatGeometryKernel.clearanceTilt(0.01, 0, 30));
    refused("engaged length", "from", () -> SeatGeometryKernel.clearanceTilt(0.01, 20, 0));
    // The shortest seat that stops the stud: L² = (2d + s)s, 9 = (2·4 + 1)·1; then tan(φ/2) = s/L.
    assertEquals(2 * Math.atan(1 / 3.0), SeatGeometryKernel.clearanceTilt(1, 4, 3), 1e-15);
    refused("engaged length", "at least 3 mm", () -> SeatGeometryKernel.clearanceTilt(1, 4, 2.99));
    refused("run-out of the face", "0 mm or more", () -> SeatGeometryKernel.faceTilt(-0.01, 20));
    assertEquals(Math.PI / 4, SeatGeometryKernel.faceTilt(20, 20), 1e-15);
    assertEquals(20, SeatGeometryKernel.squareness(Math.PI / 2, 0.5, 20), 1e-14);
    refused("permitted misalignment", "from 0 rad", () -> SeatGeometryKernel.squareness(1.58, 0.5, 20));
    assertEquals(25, SeatGeometryKernel.shift(Math.PI / 6, 20, 30), 1e-14);
    assertEquals(50, SeatGeometryKernel.shift(Math.PI / 2, 20, 30), 1e-14);
    refused("tilt", "from 0 rad", () -> SeatGeometryKernel.shift(-0.1, 20, 30));
    refused("distance from the mouth", "from 0 mm", () -> SeatGeometryKernel.shift(0.1, -1, 30));
    refused("chamfers", "less than the joint length 30 mm", () -> SeatGeometryKernel.engagedLength(30, 15, 15));
    refused("chamfer of the stud", "from 0 mm", () -> SeatGeometryKernel.engagedLength(30, -1, 5));
    refused("chamfer of the bore", "from 0 mm", () -> SeatGeometryKernel.engagedLength(30, 5, -1));
    refused("raceway of the inner ring", "over 25 mm", () -> InternalClearanceKernel.innerRing(0.02, 25, 25, 0));
    refused("raceway of the inner ring", "over 25 mm", () -> InternalClearanceKernel.innerRing(0.02, 25, 1.1e30, 0));
    refused("hole of the stud", "from 0 mm", () -> InternalClearanceKernel.innerRing(0.02, 25, 32, 25));
    refused("outside diameter of the outer ring", "over 45 mm", () -> InternalClearanceKernel.outerRing(0.02, 45, 45, 90));
    refused("outside diameter of the housing", "over", () -> InternalClearanceKernel.outerRing(0.02, 52, 45, 52));
    refused("raceway of the outer ring", "over 32 mm", () -> InternalClearanceKernel.byTemperature(1e-5, 10, 32, 32));
    refused("temperature difference", "a finite", () -> InternalClearanceKernel.byTemperature(1e-5, Double.NaN, 32, 45));
  }

  @Test
  void shapesOfHousings() {
    for (double x : new double[] {0.7499, 1.1e6}) {
      refused("edge distance over bore diameter", "from 0.75", () -> HousingShapeKernel.edgeEquivalent(x));
      refused("edge distance over bore diameter", "from 0.75", () -> HousingShapeKernel.edgeHoop(x));
      refused("edge distance over bore diameter", "from 0.75", () -> HousingShapeKernel.edgeOutline(x));
      refused("half side over bore diameter", "from 0.75", () -> HousingShapeKernel.squareEquivalent(x));
      refused("half side over bore diameter", "from 0.75", () -> HousingShapeKernel.squareHoop(x));
      refused("half side over bore diameter", "from 0.75", () -> HousingShapeKernel.squareOutline(x));
    }
    // Jeffery: (4x² + 1)/(4x² - 1) at the bore, 4/(4x² - 1) at the edge; x = 1: 5/3 and 4/3.
    assertEquals(5.0 / 3, HousingShapeKernel.edgeHoop(1), 1e-15);
    assertEquals(4.0 / 3, HousingShapeKernel.edgeOutline(1), 1e-15);
    assertEquals(3.25 / 1.25, HousingShapeKernel.edgeHoop(0.75), 1e-15);
    // Far away both shapes are the endless plate: pressure as hoop stress at the bore.
    assertEquals(1, HousingShapeKernel.edgeHoop(1e6), 1e-11);
    assertTrue(HousingShapeKernel.edgeEquivalent(1e6) > 1e6);
  }

  private static void refused(String parameter, String permitted, org.junit.jupiter.api.function.Executable call) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.parameter().startsWith(parameter), e::getMessage);
    assertTrue(e.permitted().startsWith(permitted), e::getMessage);
  }
}
