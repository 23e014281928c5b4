// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

/** Hand-computed studs, and the errors that name what the kernels of studs refuse. */
class StudKernelLimitsTest {
  @Test
  void cantilever() {
    // F a³/3 under the load, F a² (3x - a)/6 beyond it; slope F a²/2; moment M a²/2, M a (x - a/2).
    assertEquals(16, StudBeamKernel.deflectionOfForce(6, 2, 2, 1), 1e-14);
    assertEquals(52, StudBeamKernel.deflectionOfForce(6, 2, 5, 1), 1e-13);
    assertEquals(12, StudBeamKernel.slopeOfForce(6, 2, 5, 1), 1e-14);
    assertEquals(21, StudBeamKernel.deflectionOfMoment(2, 3, 5, 1), 1e-14);
    refused("force F", "a finite", () -> StudBeamKernel.deflectionOfForce(Double.NaN, 2, 2, 1));
    refused("distance of the load", "0 mm or more", () -> StudBeamKernel.slopeOfForce(1, -1, 2, 1));
    refused("bending stiffness EI", "over 0", () -> StudBeamKernel.slopeOfForce(1, 1, 2, 0));
    refused("moment M", "a finite", () -> StudBeamKernel.deflectionOfMoment(Double.NaN, 2, 2, 1));
    refused("distance x", "0 mm or more", () -> StudBeamKernel.deflectionOfMoment(1, 2, -1, 1));
    refused("load per length at its start", "a finite", () -> StudBeamKernel.slopeOfLoad(1, 2, Double.NaN, 1, 2, 1));
    refused("length of the load", "over 0 mm", () -> StudBeamKernel.slopeOfLoad(2, 2, 1, 1, 2, 1));
    refused("bending stiffness EI", "over 0", () -> StudBeamKernel.deflectionOfLoad(1, 2, 1, 1, 2, 0));
    // Evenly loaded from 0 to 2, q = 3: q L⁴/8 and q L³/6 at the end.
    assertEquals(6, StudBeamKernel.deflectionOfLoad(0, 2, 3, 3, 2, 1), 1e-14);
    assertEquals(4, StudBeamKernel.slopeOfLoad(0, 2, 3, 3, 2, 1), 1e-14);
    // Rising from 0 to q at the end: 11 q L⁴/120.
    assertEquals(11 * 3 * 16 / 120.0, StudBeamKernel.deflectionOfLoad(0, 2, 0, 3, 2, 1), 1e-14);
    // From 1 to 3, rising from 0 to 3: ∫ 1.5(s-1) s²(9-s)/6 ds and ∫ 1.5(s-1) s²/2 ds.
    assertEquals(18.4, StudBeamKernel.deflectionOfLoad(1, 3, 0, 3, 3, 1), 1e-13);
    assertEquals(8.5, StudBeamKernel.slopeOfLoad(1, 3, 0, 3, 3, 1), 1e-13);
  }

  @Test
  void shearOfTheStud() {
    // Cowper (memory): κ = 6 (1 + ν)/(7 + 6 ν) for a solid section; G = 260/2.6 = 100.
    assertEquals(7.8 / 8.8, StudSectionKernel.shearCoefficient(10, 0, 0.3), 1e-15);
    assertEquals(
        7.8 * 1.5625 / (8.8 * 1.5625 + 23.6 * 0.25), StudSectionKernel.shearCoefficient(10, 5, 0.3), 1e-15);
    assertEquals(
        1000 * 4 / (7.8 / 8.8 * 100 * 25 * Math.PI), StudBeamKernel.shearDeflection(1000, 8, 1, 10, 0, 260, 0.3), 1e-14);
    refused("radial load F", "0 N or more", () -> StudBeamKernel.shearDeflection(-1, 8, 1, 10, 0, 260, 0.3));
    refused("modulus of elasticity E", "over 0 MPa", () -> StudBeamKernel.shearDeflection(1, 8, 1, 10, 0, 0, 0.3));
    // Solid 4/3; thin wall towards 2: bore half the diameter 4/3 · 7/5.
    assertEquals(4.0 / 3, StudSectionKernel.shearPeak(10, 0), 1e-15);
    assertEquals(28.0 / 15, StudSectionKernel.shearPeak(10, 5), 1e-15);
  }

  @Test
  void sections() {
    double inertia = Math.PI / 64 * (10_000 - 256);
    assertEquals(inertia, StudSectionKernel.inertia(10, 4), 1e-11);
    assertEquals(2 * (inertia - 2 * (1000 - 64) / 12.0) / 10, StudSectionKernel.netModulus(10, 4, 2), 1e-12);
    refused("stud bore di", "from 0 mm", () -> StudSectionKernel.area(10, 10));
    refused("stud bore di", "from 0 mm", () -> StudSectionKernel.area(10, -1));
    refused("stud diameter d", "over 0 mm", () -> StudSectionKernel.area(0, 0));
    refused("stud bore di", "from 0 mm", () -> StudSectionKernel.netModulus(10, 10, 1));
    refused("stud bore di", "from 0 mm", () -> StudSectionKernel.shearPeak(10, 10));
    refused("stud bore di", "from 0 mm", () -> StudSectionKernel.shearCoefficient(10, 10, 0.3));
  }

  @Test
  void combinedStresses() {
    assertEquals(Math.sqrt(9 + 12), StudBendingKernel.atNeutralAxis(3, 1.5, 0.5), 1e-15);
    assertEquals(Math.sqrt(25 + 12), StudBendingKernel.atTensionFibre(3, 2, 2), 1e-15);
    // Solid, no tension: -1, -1, 0. Bore half the diameter: hoop -5/3, radial -1, tension 1.
    assertEquals(1, StudBendingKernel.atPressedMouth(0, 0, 1, 2, 0), 1e-15);
    assertEquals(Math.sqrt(52) / 3, StudBendingKernel.atPressedMouth(1, 0, 1, 2, 1), 1e-15);
    assertEquals(Math.sqrt(52) / 3, StudBendingKernel.atPressedMouth(1, 0, 1, 4, 2), 1e-15);
    refused("load width B beside the gap g", "over 0 mm", () -> StudBendingKernel.moment(1, 1e-14, 1000));
    refused("stud bore di", "from 0 mm", () -> StudBendingKernel.atPressedMouth(1, 0, 1, 2, 2));
    // Rigid pin: F/(dL) (4 + 6a/L) and F/(dL) (2 + 6a/L).
    assertEquals(3.5, StudBendingKernel.mouthPressure(100, 10, 10, 20), 1e-15);
    assertEquals(2.5, StudBendingKernel.farEndPressure(100, 10, 10, 20), 1e-15);
    refused("radial load F", "0 N or more", () -> StudBendingKernel.mouthPressure(-1, 10, 10, 20));
    refused("stud diameter d", "over 0 mm", () -> StudBendingKernel.mouthPressure(1, 10, 0, 20));
    refused("engaged length L", "over 0 mm", () -> StudBendingKernel.farEndPressure(1, 10, 10, 0));
    refused("radial load F", "0 N or more", () -> StudBendingKernel.momentAt(-1, 10, 1, 0));
    refused("load width B", "over 0 mm", () -> StudBendingKernel.momentAt(1, 0, 1, 0));
    refused("distance x", "0 mm or more", () -> StudBendingKernel.momentAt(1, 10, 1, -1));
  }

  @Test
  void elasticSeatBetweenARigidAndAnEndlessOne() {
    // λ = 1 for c = 4, EI = 1. Short: the rigid pin, c y = F/L (4 + 6a/L). Long: 2λF/c (1 + λa), 2λ²F/c (1 + 2λa).
    assertEquals(1, StudSeatKernel.characteristic(4, 1), 1e-15);
    assertEquals(1 / 0.04 * (4 + 6 * 0.03 / 0.01), StudSeatKernel.mouthDeflection(1, 0.03, 4, 1, 0.01), 1e-6);
    assertEquals(2, StudSeatKernel.mouthDeflection(1, 3, 4, 1, 25), 1e-14);
    assertEquals(3.5, StudSeatKernel.mouthSlope(1, 3, 4, 1, 25), 1e-14);
    assertEquals(2, StudSeatKernel.mouthDeflection(1, 3, 4, 1, 19.9), 1e-12);
    // The series for short seats and the hyperbolic functions meet.
    for (double length : new double[] {0.5, 1}) {
      assertEquals(
          StudSeatKernel.mouthDeflection(1, 3, 4, 1, length * (1 - 1e-13)),
          StudSeatKernel.mouthDeflection(1, 3, 4, 1, length * (1 + 1e-13)),
          1e-9);
    }
    assertTrue(StudSeatKernel.mouthDeflection(1, 3, 4, 1, 1) > StudSeatKernel.mouthDeflection(1, 3, 4, 1, 2));
    refused("radial load F", "0 N or more", () -> StudSeatKernel.mouthDeflection(-1, 1, 4, 1, 1));
    refused("engaged length L", "over 0 mm", () -> StudSeatKernel.mouthSlope(1, 1, 4, 1, 0));
    refused("foundation modulus c", "over 0", () -> StudSeatKernel.mouthSlope(1, 1, 0, 1, 1));
  }

  private static void refused(String parameter, String permitted, org.junit.jupiter.api.function.Executable call) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.parameter().startsWith(parameter), e::getMessage);
    assertTrue(e.permitted().startsWith(permitted), e::getMessage);
  }
}
