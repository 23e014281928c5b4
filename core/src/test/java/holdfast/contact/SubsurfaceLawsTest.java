// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  @ParameterizedTest
  @CsvSource({
    "0.9, 0.3, 0.31328553344895449, 0.50655149245734285, 0.61980253226366949, 0.50579439265519219",
    "0.6, 0.25, 0.33191213652204592, 0.58274564016953712, 0.6376912089855205, 0.570707593441084",
    "0.4, 0.3, 0.32515805806910932, 0.66690644816220172, 0.60502691613799191, 0.65250847309335066",
    "0.1, 0.25, 0.31800583055431758, 0.76869317405192833, 0.5920424935031437, 0.68334029740179",
    "0.01, 0.3, 0.30218609554379518, 0.78588545791738926, 0.55863430489411369, 0.70713509953788335"
  })
  void maximaAreThoseOfAnotherLibrary(double k, double nu, double shear, double atShear, double mises, double atMises) {
    // Reference computation, mpmath 1.3.0: the field from ellipf and ellipe, roots of its derivative.
    assertEquals(shear, SubsurfaceKernel.largestShear(k, nu), 1e-14);
    assertEquals(atShear, SubsurfaceKernel.depthOfLargestShear(k, nu), 1e-12);
    assertEquals(mises, SubsurfaceKernel.largestEquivalent(k, nu), 1e-14);
    assertEquals(atMises, SubsurfaceKernel.depthOfLargestEquivalent(k, nu), 1e-11);
  }

  @Test
  void orthogonalShearIsThatOfAnotherLibrary() {
    // Reference computation, SciPy 1.17.1: Nelder-Mead search of the shear stress parallel to the surface.
    assertEquals(0.213890902207, SubsurfaceKernel.orthogonalShear(1), 1e-11);
    assertEquals(0.3508641, SubsurfaceKernel.depthOfOrthogonalShear(1), 1e-6);
    assertEquals(0.237194970453, SubsurfaceKernel.orthogonalShear(0.5), 1e-11);
    assertEquals(0.4350733, SubsurfaceKernel.depthOfOrthogonalShear(0.5), 1e-6);
    // The defining equation (t² - 1)(2t - 1) = k² of the parameter, back from depth and stress: τ/ζ = (2t - 1)/(2t).
    for (double k : new double[] {0.05, 0.3, 0.7, 1}) {
      double share = SubsurfaceKernel.orthogonalShear(k) / SubsurfaceKernel.depthOfOrthogonalShear(k);
      double t = 0.5 / (1 - share);
      assertEquals(k * k, (t * t - 1) * (2 * t - 1), 1e-14);
    }
  }

  private static double difference(double after, double before, double h) {
    return (after - before) / (2 * h);
  }
}
