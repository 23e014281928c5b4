// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RollerKernelsTest {
  @Property
  void adjustingTorqueLoadsTheRollerWithATenthOfItsRatingAt45Degrees(
      @ForAll @DoubleRange(min = 1, max = 1e6) double c, @ForAll @DoubleRange(min = 0.01, max = 10) double e) {
    double torque = EccentricKernel.adjustingTorque(c, e);
    assertEquals(0.1 * c, EccentricKernel.load(torque, e, Math.PI / 4), 1e-12 * c);
    // Nearer to the middle of the stroke the same torque loads it less.
    assertTrue(EccentricKernel.load(torque, e, 0) < 0.1 * c);
  }

  @Property
  void heightIsOddAndBounded(
      @ForAll @DoubleRange(min = 0.01, max = 10) double e, @ForAll @DoubleRange(min = 0, max = 0.78) double angle) {
    double up = EccentricKernel.height(e, angle);
    assertEquals(up, -EccentricKernel.height(e, -angle), 1e-15 * e);
    assertTrue(up >= 0 && up <= e * Math.sqrt(0.5));
  }

  @Test
  void anglesBeyond45DegreesAreRefused() {
    InputException error = assertThrows(InputException.class, () -> EccentricKernel.height(1, 0.8));
    assertEquals("angle of the eccentricity", error.parameter());
    assertThrows(InputException.class, () -> EccentricKernel.adjustingTorque(1000, 0));
    assertThrows(InputException.class, () -> EccentricKernel.adjustingTorque(Double.NaN, 1));
    assertThrows(InputException.class, () -> EccentricKernel.load(-1, 1, 0));
  }

  @Property
  void rollingOnACamIsRollingAlongATrackAtItsSurfaceSpeed(
      @ForAll @DoubleRange(min = 0, max = 1e4) double cam,
      @ForAll @DoubleRange(min = 1, max = 1e3) double camDiameter,
      @ForAll @DoubleRange(min = 5, max = 200) double d) {
    double n = RollerSpeedKernel.onCam(cam, camDiameter, d);
    assertEquals(n, RollerSpeedKernel.onTrack(Math.PI * camDiameter * cam / 60, d), 1e-12 * (1 + n));
  }

  @Test
  void axialLoadLeavesATenthAndSealsSevenTenths() {
    SpeedLimit open = SpeedLimit.greased(RollerKind.CAGED_NEEDLE, mm(16));
    assertEquals(5250, open.limit().rpm());
    assertEquals(525, open.withAxialLoad().limit().rpm(), 1e-9);
    assertEquals(3675, open.withSeals().limit().rpm(), 1e-9);
    assertEquals(8750, open.withOil().limit().rpm());
    assertTrue(open.warnings().isEmpty());
    assertEquals("oil-factor-differs", open.withOil().warnings().get(0).code());
    assertEquals("factors-combined", open.withSeals().withAxialLoad().warnings().get(0).code());
    for (SpeedLimit limit : new SpeedLimit[] {open, open.withSeals(), open.withOil().withSeals().withAxialLoad()}) {
      assertEquals(limit.limit().rpm(), limit.explain().result().value());
    }
    assertThrows(InputException.class, () -> SpeedLimit.greased(RollerKind.CAGED_NEEDLE, mm(0)));
    assertTrue(RollerKind.FULL_COMPLEMENT_NEEDLE.fullComplement());
  }

  @Test
  void drivingMomentAndSpeedOfRings() {
    assertEquals(150, RollerSpeedKernel.ofRings(50, 200));
    assertEquals(250, RollerSpeedKernel.ofRings(200, -50));
    assertThrows(InputException.class, () -> RollerSpeedKernel.ofRings(Double.NaN, 1));
    assertEquals(0.5 * 0.1 * 1000 * 35, RollerSpeedKernel.drivingMoment(0.1, 1000, 35), 1e-12);
    assertThrows(InputException.class, () -> RollerSpeedKernel.drivingMoment(0, 1000, 35));
    assertThrows(InputException.class, () -> RollerSpeedKernel.onCam(-1, 100, 35));
  }

  @Test
  void lengthsThatCannotBeAreRefused() {
    InputException thread = assertThrows(InputException.class, () -> RollerGeometryKernel.shankLength(20, 20));
    assertEquals("thread length", thread.parameter());
    assertThrows(InputException.class, () -> RollerGeometryKernel.shankLength(20, Double.NaN));
    assertThrows(InputException.class, () -> RollerGeometryKernel.overallLength(10, -1, 10));
  }
}
