// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mrad;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SeatTiltTest {
  @Property
  void theTiltedStudTouchesBothMouths(
      @ForAll @DoubleRange(min = 0, max = 1) double s,
      @ForAll @DoubleRange(min = 5, max = 60) double d,
      @ForAll @DoubleRange(min = 15, max = 100) double length) {
    double phi = SeatGeometryKernel.clearanceTilt(s, d, length);
    assertEquals(d + s, length * Math.sin(phi) + d * Math.cos(phi), 1e-12 * (d + length));
    assertTrue(SeatGeometryKernel.clearanceTilt(s + 0.01, d, length) > phi);
  }

  @Test
  void toFirstOrderItIsClearanceOverEngagement() {
    assertEquals(0.021 / 30, SeatGeometryKernel.clearanceTilt(0.021, 25, 30), 1e-6);
    InputException shortSeat = assertThrows(InputException.class, () -> SeatGeometryKernel.clearanceTilt(1, 25, 5));
    assertEquals("engaged length", shortSeat.parameter());
  }

  @Test
  void withoutAClampedFaceTheClearanceGoverns() {
    SeatTilt tilt = SeatTilt.of(um(21), mm(25), mm(30)).bending(mrad(0.3)).build();
    assertEquals(0.7 + 0.3, tilt.total().base() * 1000, 1e-3);
    assertEquals("not-clamped", tilt.warnings().get(0).code());
    assertEquals(tilt.total(), tilt.totalIfLoose());
    assertEquals((10 + 30) * 0.7e-3, tilt.shiftAt(mm(10)).mm(), 1e-4);
  }

  @Test
  void clampedFacesGovernWhileTheNutIsTight() {
    SeatTilt tilt =
        SeatTilt.of(um(21), mm(25), mm(30)).clampedFace(um(5), mm(40)).clampedFace(um(10), mm(40)).build();
    assertEquals(15e-3 / 40, tilt.total().base(), 1e-9);
    assertTrue(tilt.totalIfLoose().compareTo(tilt.total()) > 0);
    assertEquals(tilt.total().base() * 1000, tilt.explain().result().value(), 0);
    assertTrue(tilt.warnings().isEmpty());
  }

  @Test
  void facesThatLeanMoreThanTheFitAllowsBendTheStud() {
    SeatTilt tilt = SeatTilt.of(um(-10), mm(25), mm(30)).clampedFace(um(20), mm(40)).build();
    assertEquals(0, tilt.byClearance().base(), 0);
    assertEquals("faces-bend-the-stud", tilt.warnings().get(0).code());
    assertThrows(InputException.class, () -> SeatTilt.of(um(1), mm(25), mm(30)).clampedFace(um(-1), mm(40)));
    assertThrows(InputException.class, () -> SeatTilt.of(um(1), mm(25), mm(30)).bending(mrad(-1)));
  }

  @Property
  void aFaceSquareEnoughLeansByItsShareOfTheLimit(
      @ForAll @DoubleRange(min = 0.01, max = 1) double limit,
      @ForAll @DoubleRange(min = 0.01, max = 1) double share,
      @ForAll @DoubleRange(min = 5, max = 200) double diameter) {
    double runout = SeatGeometryKernel.squareness(limit, share, diameter);
    assertEquals(share * limit, SeatGeometryKernel.faceTilt(runout, diameter), 1e-14);
  }

  @Test
  void squarenessOfAFace() {
    assertEquals(0.0135, SeatGeometryKernel.squareness(1e-3, 0.5, 27), 1e-8);
    assertThrows(InputException.class, () -> SeatGeometryKernel.squareness(1e-3, 1.1, 27));
    assertThrows(InputException.class, () -> SeatGeometryKernel.squareness(1.6, 1, 27));
    assertThrows(InputException.class, () -> SeatGeometryKernel.squareness(0, 1, 27));
  }

  @Test
  void aFaceAsSquareAsPermittedUsesItsShareOfTheTilt() {
    Length runout = SeatTilt.squareness(mrad(1), 0.5, mm(30));
    assertEquals(0.5e-3, SeatTilt.of(um(0), mm(16), mm(20)).clampedFace(runout, mm(30)).build().total().radian(), 1e-15);
    assertThrows(InputException.class, () -> SeatTilt.squareness(mrad(1), 0, mm(30)));
  }

  @Test
  void chamfersShortenTheEngagement() {
    assertEquals(25, SeatGeometryKernel.engagedLength(30, 3, 2), 0);
    assertEquals(3, SeatGeometryKernel.chamferLength(27), 1e-12);
    InputException error = assertThrows(InputException.class, () -> SeatGeometryKernel.engagedLength(5, 3, 2));
    assertEquals("chamfers", error.parameter());
  }
}
