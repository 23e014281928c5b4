// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class StudLawsTest {
  private static final double EI = 206000 * Math.PI * 65536 / 64;

  @Property
  void solidIsTheLimitOfHollow(@ForAll @Scale(6) @DoubleRange(min = 1, max = 100) double d) {
    double tiny = 1e-6 * d;
    assertEquals(Math.PI / 32 * d * d * d, StudSectionKernel.modulus(d, tiny), 1e-11 * d * d * d);
    assertEquals(4.0 / 3, StudSectionKernel.shearPeak(d, tiny), 1e-5);
    assertEquals(2, StudSectionKernel.shearPeak(d, d * (1 - 1e-9)), 1e-8);
    assertEquals(StudSectionKernel.modulus(d, 0), StudSectionKernel.netModulus(d, 0, 0), 1e-14 * d * d * d);
    assertEquals(7.8 / 8.8, StudSectionKernel.shearCoefficient(d, tiny, 0.3), 1e-10);
  }

  @Property
  void boresAndHolesWeaken(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 100) double d,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.7) double bore,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.1) double more) {
    assertTrue(StudSectionKernel.modulus(d, d * (bore + more)) < StudSectionKernel.modulus(d, d * bore));
    assertTrue(StudSectionKernel.netModulus(d, d * bore, d * more) < StudSectionKernel.modulus(d, d * bore));
    assertTrue(StudSectionKernel.shearPeak(d, d * (bore + more)) > StudSectionKernel.shearPeak(d, d * bore));
  }

  @Property
  void momentIsContinuousAndFallsOutwards(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1e5) double force,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 50) double width,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 5) double gap,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 60) double x) {
    double mouth = StudBendingKernel.moment(force, width, gap);
    assertEquals(mouth, StudBendingKernel.momentAt(force, width, gap, 0), 1e-13 * mouth);
    assertTrue(StudBendingKernel.momentAt(force, width, gap, x) <= mouth * (1 + 1e-14));
    assertEquals(0, StudBendingKernel.momentAt(force, width, gap, width + gap), 1e-9 * mouth);
    double after = StudBendingKernel.momentAt(force, width, gap, Math.nextUp(gap));
    assertEquals(force * width / 2, after, 1e-12 * force * width);
    double stress = StudBendingKernel.bendingStress(mouth, 16, 4);
    assertEquals(force, StudBendingKernel.loadAtStress(stress, width, gap, 16, 4), 1e-12 * force);
    assertEquals(32 / Math.PI / 10,
        StudBendingKernel.bendingStress(mouth, 16, 0) / StudBendingKernel.roundedBendingStress(mouth, 16), 1e-12);
  }

  @Property
  void deflectionsAreReciprocal(
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 100) double a, @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 100) double x) {
    double there = StudBeamKernel.deflectionOfForce(1000, a, x, EI);
    assertEquals(there, StudBeamKernel.deflectionOfForce(1000, x, a, EI), 1e-12 * there);
    assertEquals(StudBeamKernel.deflectionOfMoment(1000, a, x, EI), StudBeamKernel.slopeOfForce(1000, x, a, EI), 1e-12);
  }

  @Property
  void loadsAddAndNarrowLoadsAreForces(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double from,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 20) double length,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.99) double split,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 60) double x) {
    double to = from + length;
    double cut = from + split * length;
    double whole = StudBeamKernel.deflectionOfLoad(from, to, 10, 10, x, EI);
    double parts =
        StudBeamKernel.deflectionOfLoad(from, cut, 10, 10, x, EI) + StudBeamKernel.deflectionOfLoad(cut, to, 10, 10, x, EI);
    assertEquals(whole, parts, 1e-12 * whole);
    double slope = StudBeamKernel.slopeOfLoad(from, to, 10, 4, x, EI);
    double numeric =
        (StudBeamKernel.deflectionOfLoad(from, to, 10, 4, x + 1e-4, EI)
                - StudBeamKernel.deflectionOfLoad(from, to, 10, 4, x - 1e-4, EI))
            / 2e-4;
    assertEquals(slope, numeric, 1e-6 * slope + 1e-13);
    double narrow = StudBeamKernel.deflectionOfLoad(to, to + 1e-6, 1e9, 1e9, x, EI);
    assertEquals(StudBeamKernel.deflectionOfForce(1000, to, x, EI), narrow, 1e-5 * narrow);
  }

  @Property
  void seatRunsFromTheRigidPinToTheEndlessBeam(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30) double arm, @ForAll @Scale(6) @DoubleRange(min = 1, max = 1e5) double c) {
    double engaged = 10;
    double stiff = 1e16;
    double pin = 1000 / (c * engaged) * (4 + 6 * arm / engaged);
    assertEquals(pin, StudSeatKernel.mouthDeflection(1000, arm, c, stiff, engaged), 1e-4 * pin);
    assertEquals(pin * c / 16, StudBendingKernel.mouthPressure(1000, arm, 16, engaged), 1e-12 * pin * c);
    double tilt = 1000 / (c * engaged * engaged) * (6 + 12 * arm / engaged);
    assertEquals(tilt, StudSeatKernel.mouthSlope(1000, arm, c, stiff, engaged), 1e-4 * tilt);
    double lambda = StudSeatKernel.characteristic(c, EI);
    double endless = 2 * lambda / c * 1000 * (1 + lambda * arm);
    for (double length : new double[] {19 / lambda, 21 / lambda}) {
      assertEquals(endless, StudSeatKernel.mouthDeflection(1000, arm, c, EI, length), 1e-12 * endless);
      assertEquals(2 * lambda * lambda / c * 1000 * (1 + 2 * lambda * arm),
          StudSeatKernel.mouthSlope(1000, arm, c, EI, length), 1e-12 * endless);
    }
  }

  @Property
  void seatSoftensAsItShortens(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30) double arm,
      @ForAll @Scale(6) @DoubleRange(min = 2, max = 40) double engaged,
      @ForAll @Scale(6) @DoubleRange(min = 100, max = 2e5) double c) {
    assertTrue(
        StudSeatKernel.mouthSlope(1000, arm, c, EI, engaged) >= StudSeatKernel.mouthSlope(1000, arm, c, EI, 2 * engaged));
    assertTrue(StudSeatKernel.mouthDeflection(1000, arm, c, EI, engaged)
        > StudSeatKernel.mouthDeflection(1000, arm, 2 * c, EI, engaged));
    // Reciprocity: a moment F·a deflects the mouth as much as the force turns it.
    double turn = StudSeatKernel.mouthSlope(1000, 0, c, EI, engaged);
    double lift = StudSeatKernel.mouthDeflection(1000, 1, c, EI, engaged) - StudSeatKernel.mouthDeflection(1000, 0, c, EI, engaged);
    assertEquals(turn, lift, 1e-11 * StudSeatKernel.mouthDeflection(1000, 1, c, EI, engaged));
  }

  @Property
  void rigidPinIsInEquilibrium(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 50) double arm, @ForAll @Scale(6) @DoubleRange(min = 1, max = 60) double engaged) {
    double mouth = StudBendingKernel.mouthPressure(1000, arm, 16, engaged) * 16;
    double far = -StudBendingKernel.farEndPressure(1000, arm, 16, engaged) * 16;
    assertEquals(1000, (mouth + far) / 2 * engaged, 1e-8);
    // Moment about the mouth of a linear pressure: F·a = -(∫ q x dx).
    assertEquals(-1000 * arm, engaged * engaged * (mouth + 2 * far) / 6, 1e-6);
  }

  @Property
  void criteriaStandInTheirOrder(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 400) double amplitude,
      @ForAll @Scale(6) @DoubleRange(min = -300, max = 500) double mean,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 10) double scale) {
    if (amplitude + Math.max(0, mean) < 1) {
      return;
    }
    double goodman = StudFatigueKernel.goodman(amplitude, mean, 300, 900);
    double gerber = StudFatigueKernel.gerber(amplitude, mean, 300, 900);
    double soderberg = StudFatigueKernel.soderberg(amplitude, mean, 300, 700);
    assertTrue(soderberg <= goodman && goodman <= gerber * (1 + 1e-14));
    assertEquals(goodman / scale, StudFatigueKernel.goodman(amplitude * scale, mean * scale, 300, 900), 1e-11 * goodman / scale);
    assertEquals(gerber / scale, StudFatigueKernel.gerber(amplitude * scale, mean * scale, 300, 900), 1e-11 * gerber / scale);
    double pull = Math.max(0, mean) * gerber / 900;
    assertEquals(1, gerber * amplitude / 300 + pull * pull, 1e-12);
  }

  @Property
  void equivalentStressesAreConsistent(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 500) double bending,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 500) double axial,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 300) double torsion,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 200) double pressure) {
    double fibre = StudBendingKernel.atTensionFibre(bending, axial, 0);
    assertEquals(bending + axial, fibre, 1e-12 * (1 + fibre));
    assertTrue(StudBendingKernel.atTensionFibre(bending, axial, torsion) >= fibre * (1 - 1e-14));
    assertEquals(Math.sqrt(3) * torsion, StudBendingKernel.atNeutralAxis(0, 0, torsion), 1e-12 * (1 + torsion));
    // Solid stud: hydrostatic -p across, so the pressure simply adds to the tension.
    assertEquals(bending + pressure, StudBendingKernel.atPressedMouth(bending, 0, pressure, 16, 0), 1e-11 * (1 + bending + pressure));
  }
}
