// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import org.junit.jupiter.api.Test;

/** Stud of 18 mm with a bore of 3 mm, seat 16 mm, eye 50 mm, load 2.1 kN at 10.8 mm; and the limits of the solids. */
class SeatSlopeTest {
  private static final Material STEEL = Material.of("steel");
  private static final double[] LENGTHS = {0.3, 0.35, 0.5, 0.8, 1.1, 1.6, 2.2, 2.8, 4, 10};
  private static final double[] MODULI = {0.1, 0.5, 0.7, 1, 1.4, 2, 2.9, 4, 6, 50};
  private static final double[] BORES = {0, 0.1, 0.2, 0.35, 0.45, 0.55, 0.65};

  private static SeatSlope slope(Length bore, Length seat, Length eye) {
    StudLoad load = StudLoad.radial(kN(2.1), mm(20), mm(0.8));
    StudDeflection beam = StudDeflection.of(ShankSection.drilled(mm(18), bore), load, STEEL, seat);
    return SeatSlope.of(beam, OuterPart.ring(STEEL, eye)).orElseThrow();
  }

  /** Another solid model gave 0.275 to 0.313 mrad with the nut tight and 0.30 to 0.61 mrad loose. */
  @Test
  void slopeOfTheExample() {
    SeatSlope slope = slope(mm(3), mm(16), mm(50));
    assertEquals(0.275e-3, slope.flangeClosed().least().radian(), 0.1 * 0.275e-3);
    assertEquals(0.313e-3, slope.flangeClosed().greatest().radian(), 0.1 * 0.313e-3);
    assertEquals(0.30e-3, slope.boreAlone().least().radian(), 0.1 * 0.30e-3);
    assertEquals(0.61e-3, slope.boreAlone().greatest().radian(), 0.1 * 0.61e-3);
    assertEquals(slope.boreAlone().greatest().radian() * 1000, slope.explain().result().value(), 1e-12);
  }

  @Test
  void theRigidSeatKeepsItsNumbers() {
    SeatSlope slope = slope(mm(3), mm(16), mm(50));
    assertEquals(0.132e-3, slope.beam().tilt().radian(), 0.0005e-3);
    assertTrue(slope.at(SeatHold.BONDED_CLAMPED).compareTo(slope.beam().tilt()) > 0);
  }

  @Test
  void theClampedFlangeRelievesTheMouth() {
    SeatSlope slope = slope(mm(3), mm(16), mm(50));
    double alone = StudBendingKernel.mouthPressure(2100, 10.8, 18, 16);
    assertEquals(58.7, alone, 0.05);
    assertTrue(slope.mouthPressureFlangeClosed().megapascal() < 0.5 * alone);
  }

  /** A long bonded stud in a wide member of its own modulus: near a rigid disc on a half space, 3(1-ν²)·8/4 = 5.46. */
  @Test
  void aLongSeatKeepsItsRoot() {
    double root = SeatSlopeKernel.momentCompliance(SeatHold.BONDED_FREE, 2.8, 5, 1, 0);
    assertEquals(5.46, root, 0.1 * 5.46);
    assertEquals(root, SeatSlopeKernel.momentCompliance(SeatHold.BONDED_FREE, 20, 50, 1, 0), 1e-12);
  }

  @Test
  void complianceFallsWithLengthAndGrowsWithSoftnessAndBore() {
    for (SeatHold hold : SeatHold.values()) {
      for (double bore : BORES) {
        for (int i = 1; i < LENGTHS.length; i++) {
          double shorter = SeatSlopeKernel.momentCompliance(hold, LENGTHS[i - 1], 2.5, 1, bore);
          double longer = SeatSlopeKernel.momentCompliance(hold, LENGTHS[i], 2.5, 1, bore);
          assertTrue(longer <= shorter * 1.002, hold + " " + LENGTHS[i] + " " + bore + ": " + shorter + " " + longer);
          double stiffer = SeatSlopeKernel.momentCompliance(hold, 0.8, 2.5, MODULI[i - 1], bore);
          double softer = SeatSlopeKernel.momentCompliance(hold, 0.8, 2.5, MODULI[i], bore);
          assertTrue(softer >= stiffer, hold + " " + MODULI[i] + ": " + stiffer + " " + softer);
        }
      }
      for (int i = 1; i < BORES.length; i++) {
        assertTrue(whole(hold, BORES[i]) >= whole(hold, BORES[i - 1]), hold + " " + BORES[i]);
      }
    }
  }

  /** Seat and 1.5 d of the stud: what the solid yields before the beam is taken out of it. */
  private static double whole(SeatHold hold, double bore) {
    return SeatSlopeKernel.momentCompliance(hold, 0.8, 2.5, 1, bore) + 1.5 / StudSectionKernel.inertia(1, bore);
  }

  @Test
  void whatWasNotComputedIsRefused() {
    assertThrows(InputException.class, () -> SeatSlopeKernel.momentCompliance(SeatHold.BONDED_FREE, 0.9, 3, 1, 0.99));
    assertThrows(InputException.class, () -> SeatSlopeKernel.momentCompliance(SeatHold.BONDED_FREE, 0.2, 3, 1, 0));
    assertThrows(InputException.class, () -> SeatSlopeKernel.momentCompliance(SeatHold.BONDED_FREE, 0.9, 1.2, 1, 0));
    StudLoad load = StudLoad.radial(kN(2.1), mm(20), mm(0.8));
    StudDeflection tube = StudDeflection.of(ShankSection.drilled(mm(18), mm(13)), load, STEEL, mm(16));
    assertTrue(SeatSlope.of(tube, OuterPart.ring(STEEL, mm(50))).isEmpty());
  }
}
