// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.trace.Traced;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ContactTest {
  private final ContactPair flat = ContactPair.ofSteel(ContactSurface.cylinder(mm(35)), ContactSurface.flat());
  private final ContactPair crowned = ContactPair.ofSteel(ContactSurface.crowned(mm(35), mm(500)), ContactSurface.flat());

  @Test
  void lineContactOfARollerOnAFlatTrack() {
    LineContact line = flat.line(kN(5), mm(16));
    assertEquals(Math.sqrt(5000 * (206000 / 1.82) / (Math.PI * 16 * 17.5)), line.peakPressure().megapascal(), 1e-9);
    assertEquals(Math.PI / 4, line.meanPressure().ratio(line.peakPressure()), 1e-12);
    assertEquals(line.peakPressure().megapascal(), line.explain().result().value());
    assertEquals(0.78615 * line.halfWidth().mm(), line.largestShear().depth().mm(), 1e-5);
    assertEquals(5000, line.forceAt(line.peakPressure()).base(), 1e-8);
    assertEquals(-line.peakPressure().megapascal(), line.trackStress(mm(0)).normal().megapascal(), 1e-9);
    assertTrue(line.approach(mm(20)).mm() > line.approach(mm(5)).mm());
    assertEquals(0.25, line.orthogonalShear().stress().ratio(line.peakPressure()), 1e-12);
    assertTrue(line.largestEquivalent().stress().compareTo(line.largestShear().stress()) > 0);
    assertEquals(List.of("ends-not-included"), codes(line));
    assertEquals("line contact 16 mm under 5 kN: peak 802.1 MPa over a width of 0.4961 mm", line.toString());
  }

  /** An ellipse that hangs over its face cannot press less than the same load spread over the whole face. */
  @Test
  void aTruncatedEllipsePressesAtLeastAsTheLineOverItsFace() {
    for (double face : new double[] {0.5, 1, 2, 4, 8, 18, 100}) {
      EllipticalContact ellipse = crowned.ellipse(kN(5), mm(face));
      LineContact line = flat.line(kN(5), mm(face));
      double least = line.peakPressure().megapascal() * (1 - 1e-12);
      assertTrue(ellipse.peakPressure().megapascal() >= least, ellipse::toString);
      assertEquals(5000, ellipse.forceAt(ellipse.peakPressure()).base(), 1e-8, ellipse.toString());
      assertEquals(ellipse.peakPressure().megapascal(), ellipse.explain().result().value());
      assertEquals(-1, ellipse.trackStress(mm(0)).normal().ratio(ellipse.peakPressure()), 1e-12);
      if (ellipse.actsAsLine()) {
        assertEquals(line.largestShear().depth().mm(), ellipse.largestShear().depth().mm(), 1e-12);
        assertTrue(codes(ellipse).contains("ellipse-truncated"));
      }
    }
    assertTrue(crowned.ellipse(kN(5), mm(1)).actsAsLine());
    assertFalse(crowned.ellipse(kN(5), mm(18)).actsAsLine());
  }

  @Test
  void ellipticalContactOfACrownedRoller() {
    EllipticalContact ellipse = crowned.ellipse(kN(5), mm(18));
    assertEquals(ellipse.peakPressure().megapascal(), ellipse.explain().result().value());
    assertEquals(2.0 / 3, ellipse.meanPressure().ratio(ellipse.peakPressure()), 1e-12);
    assertEquals(ellipse.axisRatio(), ellipse.minorSemiAxis().ratio(ellipse.majorSemiAxis()), 1e-15);
    assertTrue(ellipse.warnings().isEmpty());
    assertTrue(ellipse.peakPressure().compareTo(flat.line(kN(5), mm(16)).peakPressure()) > 0);
    assertEquals(5000, ellipse.forceAt(ellipse.peakPressure()).base(), 1e-8);
    assertEquals(ellipse.peakPressure().megapascal(), -ellipse.trackStress(mm(0)).normal().megapascal(), 1e-9);
    assertTrue(ellipse.largestEquivalent().stress().compareTo(ellipse.largestShear().stress()) > 0);
    assertTrue(ellipse.orthogonalShear().depth().compareTo(ellipse.largestShear().depth()) < 0);
    assertTrue(ellipse.approach().mm() > 0);
    assertTrue(ellipse.toString().startsWith("elliptical contact "), ellipse::toString);
    assertEquals("R 17.5 mm along, R 500 mm across", crowned.roller().toString());
  }

  @Test
  void tracksOfAllShapes() {
    double onFlat = crowned.ellipse(kN(5), mm(18)).peakPressure().megapascal();
    ContactSurface roller = ContactSurface.crowned(mm(35), mm(500));
    double onCam = pressure(ContactPair.ofSteel(roller, ContactSurface.cam(mm(80))));
    double inside = pressure(ContactPair.ofSteel(roller, ContactSurface.concave(mm(80))));
    double onRail = pressure(ContactPair.ofSteel(roller, ContactSurface.rail(mm(300))));
    double inGroove = pressure(ContactPair.ofSteel(roller, ContactSurface.flat().profiled(mm(-600))));
    assertTrue(onCam > onFlat && inside < onFlat && onRail > onFlat && inGroove < onFlat);
    double crossed = pressure(ContactPair.ofSteel(roller, ContactSurface.cam(mm(80))).crossedAt(deg(90)));
    assertEquals(pressure(ContactPair.ofSteel(roller, ContactSurface.rail(mm(80)))), crossed, 1e-9);
  }

  @Test
  void truncatedYieldingAndLargeContactsAreReported() {
    assertTrue(codes(crowned.ellipse(kN(5), mm(2))).contains("ellipse-truncated"));
    ContactMaterial soft = ContactMaterial.steel().yieldingAt(MPa(300));
    ContactPair onSoft =
        ContactPair.of(ContactSurface.cylinder(mm(35)), ContactMaterial.steel(), ContactSurface.flat(), soft);
    // Yielding starts at p0 = Re/0.5577: 538 MPa.
    assertFalse(codes(onSoft.line(onSoft.line(N(1), mm(16)).forceAt(MPa(537)), mm(16))).contains("yields-below-surface"));
    assertTrue(codes(onSoft.line(onSoft.line(N(1), mm(16)).forceAt(MPa(539)), mm(16))).contains("yields-below-surface"));
    assertTrue(codes(flat.line(kN(500), mm(1))).contains("contact-not-small"));
  }

  @Test
  void trackCapacityFollowsHardness() {
    TrackCapacity at40 = new TrackCapacity(kN(10), 40, false);
    assertEquals(10, at40.capacity().base() / 1000, 1e-12);
    assertEquals(19.87, new TrackCapacity(kN(10), 50, false).capacity().base() / 1000, 1e-9);
    assertEquals(28.00, new TrackCapacity(kN(10), 50, true).capacity().base() / 1000, 1e-9);
    assertEquals(33.9, new TrackCapacity(kN(10), 58, false).capacity().base() / 1000, 1e-9);
    assertEquals(at40.capacity().base(), at40.explain().result().value());
    assertEquals(1245, at40.strength().megapascal(), 1e-9);
    assertTrue(codes(new TrackCapacity(kN(10), 50, false)).contains("tables-disagree"));
    assertEquals("track of 50 HRC, crowned ring: 28 kN", new TrackCapacity(kN(10), 50, true).toString());
    refused("track hardness", "from 20 HRC to 58 HRC", () -> new TrackCapacity(kN(10), 19.9, false));
    refused("track hardness", "from 20 HRC to 58 HRC", () -> new TrackCapacity(kN(10), Double.NaN, false));
  }

  @Test
  void shopFormulaAgreesWithTheTheory() {
    double psi = TrackCapacityKernel.shopPressurePsi(3000, 0.7, 2);
    double theory = flatInches(3000, 0.7, 2);
    assertEquals(1, theory / psi, 1e-3);
  }

  @Test
  void wrongInputIsNamed() {
    refused("pair", "straight across", () -> crowned.line(kN(1), mm(10)));
    refused("lesser curvature A", "over 0", () -> flat.ellipse(kN(1), mm(10)));
    refused("normal force F", "over 0 N", () -> flat.line(N(0), mm(10)));
    refused("contact length L", "over 0 mm", () -> flat.line(kN(1), mm(0)));
    refused("Poisson's ratio", "from 0 to 0.5", () -> ContactMaterial.of(GPa(200), 0.6));
    refused("modulus of elasticity E", "over 0 MPa", () -> ContactMaterial.of(MPa(0), 0.3));
    refused("roller diameter", "over 0 mm", () -> ContactSurface.cylinder(mm(-1)));
    refused("curvature sum A + B", "over 0 1/mm",
        () -> ContactPair.ofSteel(ContactSurface.cylinder(mm(35)), ContactSurface.concave(mm(17))));
    refused("complementary modulus k'", "from 1.0E-30 to 1", () -> EllipticIntegralKernel.first(0));
    refused("depth z/b", "from 0", () -> AxisStressKernel.normal(0.5, -1));
    refused("length of the result array", "from 5", () -> EllipticalContactKernel.solve(1, 1, 1, 1, new double[4]));
    refused("exponent", "from 2 to 3", () -> TrackCapacityKernel.strengthFactor(1000, 1245, 4));
    refused("axis ratio b/a", "from 0 to 1", () -> SubsurfaceKernel.largestShear(1.1, 0.3));
    refused("ring wall D - Di", "over 0 mm", () -> OuterRingKernel.bendingStress(1, 20, 20, 10, 10));
  }

  private static double flatInches(double lbf, double length, double diameter) {
    return ContactPair.of(
            ContactSurface.cylinder(inch(diameter)), ContactMaterial.of(psi(30e6), 0.3),
            ContactSurface.flat(), ContactMaterial.of(psi(30e6), 0.3))
        .line(lbf(lbf), inch(length))
        .peakPressure()
        .ratio(psi(1));
  }

  private static double pressure(ContactPair pair) {
    return pair.ellipse(kN(5), mm(18)).peakPressure().megapascal();
  }

  private static List<String> codes(Traced result) {
    return result.warnings().stream().map(warning -> warning.code()).collect(Collectors.toList());
  }

  private static void refused(String parameter, String permitted, org.junit.jupiter.api.function.Executable call) {
    InputException e = assertThrows(InputException.class, call);
    assertEquals(parameter, e.parameter());
    assertTrue(e.permitted().startsWith(permitted), e::getMessage);
  }
}
