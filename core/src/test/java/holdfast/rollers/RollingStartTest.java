// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import static holdfast.quantity.Units.g;
import static holdfast.quantity.Units.mPerS;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RollingStartTest {
  @Property
  void theWorkAtTheRimIsTheEnergyOfTheTurningRing(
      @ForAll @DoubleRange(min = 1, max = 5000) double grams,
      @ForAll @DoubleRange(min = 10, max = 200) double outside,
      @ForAll @DoubleRange(min = 0, max = 0.95) double bore,
      @ForAll @DoubleRange(min = 0, max = 10_000) double speed,
      @ForAll @DoubleRange(min = 1, max = 1000) double distance) {
    double force = RingAccelerationKernel.rimForce(grams, outside, bore * outside, speed, distance);
    // J ω²/2 with J = m (D² + d²)/8 and ω = 2 v/D, in N·mm: g·mm²/s² is 1e-6 N·mm.
    double inertia = grams * (outside * outside + bore * outside * bore * outside) / 8;
    double turning = 2 * speed / outside;
    double energy = 0.5e-6 * inertia * turning * turning;
    assertEquals(energy, force * distance, 1e-12 * energy);
  }

  @Test
  void aThinRingNeedsTwiceADisc() {
    double disc = RingAccelerationKernel.rimForce(1000, 100, 0, 1000, 500);
    assertEquals(0.5, disc, 1e-15);
    assertEquals(2 * disc, RingAccelerationKernel.rimForce(1000, 100, 99.9999999, 1000, 500), 1e-8);
  }

  @Test
  void leastLoadFallsWithFriction() {
    RollingStart start = RollingStart.of(mm(35), mm(25), g(60), mPerS(2), mm(10));
    assertEquals(start.rimForce().newton(), start.leastLoad(0.1).newton() * 0.1, 1e-12);
    assertTrue(start.leastLoad(0.05).compareTo(start.leastLoad(0.1)) > 0);
    assertEquals(start.rimForce().newton(), start.explain().result().value());
    assertEquals("drag-left-out", start.warnings().get(0).code());
    assertTrue(start.toString().endsWith(" N at the rim"), start.toString());
    assertThrows(InputException.class, () -> start.leastLoad(0));
  }

  @Test
  void refusesRingsThatCannotBe() {
    assertThrows(InputException.class, () -> RollingStart.of(mm(35), mm(35), g(60), mPerS(2), mm(10)));
    assertThrows(InputException.class, () -> RollingStart.of(mm(35), mm(25), g(0), mPerS(2), mm(10)));
    assertThrows(InputException.class, () -> RollingStart.of(mm(35), mm(25), g(60), mPerS(2), mm(0)));
    assertThrows(InputException.class, () -> RingAccelerationKernel.leastLoad(Double.NaN, 0.1));
  }

  @Test
  void greaseHolesReadAsWords() {
    assertEquals("axial 6 mm, radial 3 mm at 8 mm from the face", RollerSeries.METRIC.size(mm(35)).holes().toString());
    assertEquals("no hole", RollerSeries.METRIC.size(mm(10)).holes().toString());
    assertEquals("axial for a fitting 3/16 in, radial 3.175 mm at 12.7 mm from the face",
        RollerSeries.INCH_STANDARD_STUD.size(mm(50.8)).holes().toString());
  }
}
