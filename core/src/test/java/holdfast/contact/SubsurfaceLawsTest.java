package holdfast.contact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class SubsurfaceLawsTest {
  @Property
  void surfaceStressesAreTheKnownOnes(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double k, @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.5) double nu) {
    assertEquals(-1, AxisStressKernel.normal(k, 0), 1e-15);
    assertEquals(-2 * nu - (1 - 2 * nu) * k / (1 + k), AxisStressKernel.alongMajor(k, nu, 0), 1e-14);
    assertEquals(-2 * nu - (1 - 2 * nu) / (1 + k), AxisStressKernel.alongMinor(k, nu, 0), 1e-14);
  }

  @Property
  void bothDirectionsAreEqualUnderACircle(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 10) double z, @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.5) double nu) {
    double expected = -(1 + nu) * (1 - (z == 0 ? 0 : z * Math.atan(1 / z))) + 0.5 / (1 + z * z);
    assertEquals(expected, AxisStressKernel.alongMajor(1, nu, z), 1e-13);
    assertEquals(expected, AxisStressKernel.alongMinor(1, nu, z), 1e-13);
    assertEquals(-1 / (1 + z * z), AxisStressKernel.normal(1, z), 1e-14);
  }

  @Property
  void lineIsTheLimitOfTheLongEllipseAndPlaneStrain(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 5) double z, @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.5) double nu) {
    double s = Math.sqrt(1 + z * z);
    double across = -((1 + 2 * z * z) / s - 2 * z);
    assertEquals(across, AxisStressKernel.alongMinor(0, nu, z), 1e-13);
    assertEquals(nu * (across - 1 / s), AxisStressKernel.alongMajor(0, nu, z), 1e-13);
    assertEquals(AxisStressKernel.alongMinor(0, nu, z), AxisStressKernel.alongMinor(1e-7, nu, z), 1e-6);
    assertEquals(AxisStressKernel.alongMajor(0, nu, z), AxisStressKernel.alongMajor(1e-7, nu, z), 1e-6);
  }

  @Property
  void slopesAreTheDerivativesOfTheStresses(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double k,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.5) double nu,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 4) double z) {
    double h = 1e-5;
    double major = AxisStressKernel.majorIntegral(k, z);
    double minor = AxisStressKernel.minorIntegral(k, z);
    assertEquals(difference(AxisStressKernel.x(k, nu, z + h), AxisStressKernel.x(k, nu, z - h), h),
        AxisStressKernel.slopeX(k, nu, z, major, minor), 1e-8);
    assertEquals(difference(AxisStressKernel.y(k, nu, z + h), AxisStressKernel.y(k, nu, z - h), h),
        AxisStressKernel.slopeY(k, nu, z, major, minor), 1e-8);
    assertEquals(difference(AxisStressKernel.z(k, z + h), AxisStressKernel.z(k, z - h), h),
        AxisStressKernel.slopeZ(k, z), 1e-8);
  }

  @Property
  void noDepthBeatsTheMaxima(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double k,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.5) double nu,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double z) {
    assertTrue(SubsurfaceKernel.shear(k, nu, z) <= SubsurfaceKernel.largestShear(k, nu) * (1 + 1e-14));
    assertTrue(SubsurfaceKernel.equivalent(k, nu, z) <= SubsurfaceKernel.largestEquivalent(k, nu) * (1 + 1e-14));
    // Equivalent stress lies between √3 and 2 times the largest shear.
    double ratio = SubsurfaceKernel.equivalent(k, nu, z) / SubsurfaceKernel.shear(k, nu, z);
    assertTrue(SubsurfaceKernel.shear(k, nu, z) < 1e-12 || (ratio > Math.sqrt(3) - 1e-9 && ratio < 2 + 1e-9));
  }

  @Property
  void orthogonalShearStaysBetweenCircleAndLine(@ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double k) {
    double tau = SubsurfaceKernel.orthogonalShear(k);
    assertTrue(tau <= 0.25 && tau >= 0.2138);
    assertTrue(SubsurfaceKernel.depthOfOrthogonalShear(k) <= 0.5);
    assertTrue(tau < SubsurfaceKernel.largestShear(k, 0.3));
  }

  @Test
  void knownValuesOfLineAndCircle() {
    double u = (Math.sqrt(5) - 1) / 2;
    assertEquals(Math.sqrt(u), SubsurfaceKernel.depthOfLargestShear(0, 0.3), 1e-14);
    assertEquals(Math.sqrt(u) * u * u, SubsurfaceKernel.largestShear(0, 0.3), 1e-15);
    assertEquals(0.5577, SubsurfaceKernel.largestEquivalent(0, 0.3), 5e-4);
    assertEquals(0.310, SubsurfaceKernel.largestShear(1, 0.3), 5e-4);
    assertEquals(0.481, SubsurfaceKernel.depthOfLargestShear(1, 0.3), 5e-4);
    assertEquals(0.25, SubsurfaceKernel.orthogonalShear(0), 1e-15);
    assertEquals(0.5, SubsurfaceKernel.depthOfOrthogonalShear(0), 1e-15);
  }

  @Test
  void stressAlongTheRollerGovernsIfPoissonsRatioIsSmall() {
    assertEquals(0, SubsurfaceKernel.depthOfLargestShear(0, 0));
    assertEquals(0.5, SubsurfaceKernel.largestShear(0, 0), 1e-15);
    double z = SubsurfaceKernel.depthOfLargestShear(0, 0.1);
    assertTrue(z > 0 && z < 0.3);
    assertEquals(0.5 * (AxisStressKernel.x(0, 0.1, z) - AxisStressKernel.z(0, z)), SubsurfaceKernel.largestShear(0, 0.1), 1e-15);
    assertTrue(SubsurfaceKernel.largestShear(0, 0.1) > 0.4);
    assertEquals(0.78615, SubsurfaceKernel.depthOfLargestShear(0, 0.25), 1e-5);
  }

  private static double difference(double after, double before, double h) {
    return (after - before) / (2 * h);
  }
}
