// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.trace.Traced;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ends of the permitted ranges, and what the results say about themselves. */
class ContactLimitsTest {
  private final ContactPair flat = ContactPair.ofSteel(ContactSurface.cylinder(mm(35)), ContactSurface.flat());
  private final ContactPair crowned = ContactPair.ofSteel(ContactSurface.crowned(mm(35), mm(500)), ContactSurface.flat());

  @Test
  void lineContactNamesWhatItRefuses() {
    refused("normal force F", "0 N or more", () -> LineContactKernel.halfWidth(-1, 1, 1, 1));
    refused("contact length L", "over 0 mm", () -> LineContactKernel.halfWidth(1, 0, 1, 1));
    refused("relative radius R", "over 0 mm", () -> LineContactKernel.halfWidth(1, 1, 0, 1));
    refused("combined modulus E*", "over 0 MPa", () -> LineContactKernel.halfWidth(1, 1, 1, 0));
    refused("normal force F", "0 N or more", () -> LineContactKernel.peakPressure(-1, 1, 1, 1));
    refused("relative radius R", "over 0 mm", () -> LineContactKernel.peakPressure(1, 1, 0, 1));
    refused("permitted pressure", "0 MPa or more", () -> LineContactKernel.forceAtPressure(-1, 1, 1, 1));
    refused("combined modulus E*", "over 0 MPa", () -> LineContactKernel.forceAtPressure(1, 1, 1, 0));
    refused("length of the result array", "from 2", () ->
        LineContactKernel.peakPressures(new double[2], 1, 1, 1, new double[1]));
    refused("peak pressure p0", "0 MPa or more", () -> LineContactKernel.compressionToDepth(-1, 1, 1, 0.3, 1));
    refused("half width b", "over 0 mm", () -> LineContactKernel.compressionToDepth(1, 0, 1, 0.3, 1));
    refused("modulus of elasticity E", "over 0 MPa", () -> LineContactKernel.compressionToDepth(1, 1, 0, 0.3, 1));
    refused("Poisson's ratio", "from 0 to 0.5", () -> LineContactKernel.compressionToDepth(1, 1, 1, 0.51, 1));
    refused("depth d", "0 mm or more", () -> LineContactKernel.compressionToDepth(1, 1, 1, 0.3, -0.1));
    refused("peak pressure p0", "0 MPa or more", () -> LineContactKernel.compressionToAxis(-1, 1, 1, 0.3, 1));
    refused("radius R", "from 1 mm", () -> LineContactKernel.compressionToAxis(1, 1, 1, 0.3, 0.999));
    assertEquals(0, LineContactKernel.halfWidth(0, 1, 1, 1));
    assertEquals(0, LineContactKernel.compressionToDepth(1, 1, 1, 0.3, 0));
  }

  @Test
  void compressionIsTheIntegralOfTheAxialStrain() {
    // Plane strain: ε = (σz - ν(σx + σy))/E. Quadrature with mpmath 1.3.0 (reference computation), ν = 0.3 and 0.25.
    assertEquals(0.31738613299800966, LineContactKernel.compressionToDepth(1, 1, 1, 0.3, 0.5), 1e-15);
    assertEquals(1.552658249122207, LineContactKernel.compressionToDepth(1, 1, 1, 0.25, 3), 2e-15);
    // Cylinder: to the half-space come the line force on the opposite side, ∫ 2P/(πr) dr = p0 b ln 2 from R to 2R,
    // and the tension P/(πR) both ways that frees the rim.
    for (double radius : new double[] {1, 4, 300}) {
      double extra = (1 - 0.09) * (Math.log(2) - 0.5) + 0.5 * 0.3 * 1.3;
      assertEquals(
          LineContactKernel.compressionToDepth(2, 1, 5, 0.3, radius) + 2.0 / 5 * extra,
          LineContactKernel.compressionToAxis(2, 1, 5, 0.3, radius),
          1e-14);
    }
  }

  @Test
  void approachOfALineAddsBothBodies() {
    ContactPair pair =
        ContactPair.of(
            ContactSurface.cylinder(mm(40)), ContactMaterial.of(GPa(206), 0.3),
            ContactSurface.concave(mm(100)), ContactMaterial.of(GPa(70), 0.33));
    LineContact line = pair.line(kN(2), mm(10));
    double p = line.peakPressure().megapascal();
    double b = line.halfWidth().mm();
    // 1/R = 1/20 - 1/100.
    assertEquals(2000, Math.PI * 10 * 25 * p * p * ((1 - 0.09) / 206000 + (1 - 0.1089) / 70000), 1e-9 * 2000);
    double t = Math.log(20 / b + Math.sqrt(1 + 400 / (b * b)));
    double roller = p * b / 206000 * (0.91 * (t + Math.log(2) - 0.5) + 0.39 / 2 * Math.exp(-2 * t));
    double s = Math.log(15 / b + Math.sqrt(1 + 225 / (b * b)));
    double track = p * b / 70000 * (0.8911 * s - 0.33 * 1.33 / 2 * (1 - Math.exp(-2 * s)));
    assertEquals(roller + track, line.approach(mm(15)).mm(), 1e-14);
  }

  @Test
  void ellipticalContactNamesWhatItRefuses() {
    double[] five = new double[5];
    refused("greater curvature B", "over 0 1/mm", () -> EllipticalContactKernel.axisRatio(0, 0));
    refused("lesser curvature A", "over 0 1/mm up to 1 1/mm", () -> EllipticalContactKernel.axisRatio(1, 1.1));
    refused("lesser curvature A", "over 0 1/mm", () -> EllipticalContactKernel.axisRatio(1, 0));
    refused("normal force F", "0 N or more", () -> EllipticalContactKernel.majorSemiAxis(-1, 1, 1, 1));
    refused("combined modulus E*", "over 0 MPa", () -> EllipticalContactKernel.majorSemiAxis(1, 0, 1, 1));
    refused("curvature sum A + B", "over 0 1/mm", () -> EllipticalContactKernel.majorSemiAxis(1, 1, 0, 1));
    refused("normal force F", "0 N or more", () -> EllipticalContactKernel.peakPressure(-1, 1, 1));
    refused("major semi-axis a", "over 0 mm", () -> EllipticalContactKernel.peakPressure(1, 0, 1));
    refused("minor semi-axis b", "over 0 mm", () -> EllipticalContactKernel.peakPressure(1, 1, 0));
    refused("major semi-axis a", "over 0 mm", () -> EllipticalContactKernel.approach(1, 1, 0, 1));
    refused("complementary modulus k'", "from", () -> EllipticalContactKernel.coefficientMajor(1.1));
    refused("normal force F", "over 0 N", () -> EllipticalContactKernel.solve(0, 1, 1, 1, five));
    refused("combined modulus E*", "over 0 MPa", () -> EllipticalContactKernel.solve(1, 0, 1, 1, five));
    refused("length of the result array", "from 1 to 1",
        () -> EllipticalContactKernel.peakPressures(new double[1], 1, 1, 1, five));
    refused("permitted pressure", "0 MPa or more", () -> EllipticalContactKernel.forceAtPressure(-1, 1, 1, 1));
    refused("complementary modulus k'", "from", () -> EllipticIntegralKernel.second(0));
    refused("complementary modulus k'", "from", () -> EllipticIntegralKernel.second(1.001));
    refused("complementary modulus k'", "from", () -> EllipticIntegralKernel.first(1.001));
    assertEquals(Math.PI / 2, EllipticIntegralKernel.first(1), 1e-15);
    assertEquals(Math.PI / 2, EllipticIntegralKernel.second(1), 1e-15);
    refused("first argument of R_D", "0 or more", () -> EllipticIntegralKernel.symmetricSecondKind(-1, 2, 1));
    refused("second argument of R_D", "0 or more", () -> EllipticIntegralKernel.symmetricSecondKind(2, -1, 1));
    refused("sum of the first two", "over 0", () -> EllipticIntegralKernel.symmetricSecondKind(0, 0, 1));
    refused("third argument of R_D", "over 0", () -> EllipticIntegralKernel.symmetricSecondKind(1, 1, 0));
  }

  @Test
  void subsurfaceAndGeometryNameWhatTheyRefuse() {
    for (double k : new double[] {-0.01, 1.01}) {
      refused("axis ratio b/a", "from 0 to 1", () -> AxisStressKernel.alongMajor(k, 0.3, 1));
      refused("axis ratio b/a", "from 0 to 1", () -> AxisStressKernel.alongMinor(k, 0.3, 1));
      refused("axis ratio b/a", "from 0 to 1", () -> AxisStressKernel.normal(k, 1));
      refused("axis ratio b/a", "from 0 to 1", () -> SubsurfaceKernel.depthOfLargestShear(k, 0.3));
      refused("axis ratio b/a", "from 0 to 1", () -> SubsurfaceKernel.depthOfLargestEquivalent(k, 0.3));
      refused("axis ratio b/a", "from 0 to 1", () -> SubsurfaceKernel.orthogonalShear(k));
      refused("axis ratio b/a", "from 0 to 1", () -> SubsurfaceKernel.depthOfOrthogonalShear(k));
    }
    refused("Poisson's ratio", "from 0 to 0.5", () -> SubsurfaceKernel.largestShear(0.5, 0.51));
    refused("Poisson's ratio", "from 0 to 0.5", () -> SubsurfaceKernel.largestEquivalent(0.5, -0.01));
    refused("Poisson's ratio", "from 0 to 0.5", () -> AxisStressKernel.alongMinor(0.5, 0.51, 1));
    refused("depth z/b", "from 0 to 1000000", () -> AxisStressKernel.alongMajor(0.5, 0.3, 1.1e6));
    assertEquals(0, AxisStressKernel.normal(0.5, 1e6), 1e-11);
    refused("curvature of body 1 in plane 1", "a finite", () -> ContactGeometryKernel.sum(Double.NaN, 0, 1, 1));
    refused("curvature of body 1 in plane 2", "a finite", () -> ContactGeometryKernel.sum(0, Double.NaN, 1, 1));
    refused("curvature of body 2 in plane 1", "a finite", () -> ContactGeometryKernel.sum(0, 0, Double.NaN, 1));
    refused("curvature of body 2 in plane 2", "a finite", () -> ContactGeometryKernel.sum(0, 1, 1, Double.NaN));
    refused("angle between the planes", "a finite", () -> ContactGeometryKernel.lesser(0, 1, 1, 1, Double.NaN));
    refused("modulus of elasticity E1", "over 0 MPa", () -> ContactGeometryKernel.combinedModulus(0, 0.3, 1, 0.3));
    refused("modulus of elasticity E2", "over 0 MPa", () -> ContactGeometryKernel.combinedModulus(1, 0.3, 0, 0.3));
    refused("Poisson's ratio of body 1", "from 0 to 0.5", () -> ContactGeometryKernel.combinedModulus(1, 0.51, 1, 0.3));
    refused("Poisson's ratio of body 2", "from 0 to 0.5", () -> ContactGeometryKernel.combinedModulus(1, 0.3, 1, -0.1));
    // 1/E* = (1 - 0.25)/3 + (1 - 0)/2 = 0.75.
    assertEquals(4.0 / 3, ContactGeometryKernel.combinedModulus(3, 0.5, 2, 0), 1e-15);
    refused("curvature along", "a finite", () -> new ContactSurface(Double.NaN, 0));
    refused("size of the profile radius", "over 0 mm", () -> ContactSurface.flat().profiled(mm(0)));
    refused("crown radius", "over 0 mm", () -> ContactSurface.crowned(mm(35), mm(0)));
    refused("cam radius", "over 0 mm", () -> ContactSurface.cam(mm(-5)));
    refused("yield strength", "0 MPa or more", () -> ContactMaterial.steel().yieldingAt(MPa(-1)));
  }

  @Test
  void ringAndTrackNameWhatTheyRefuse() {
    refused("radial load F", "0 N or more", () -> OuterRingKernel.bendingStress(-1, 30, 20, 10, 10));
    refused("raceway diameter Di", "over 0 mm", () -> OuterRingKernel.bendingStress(1, 30, 0, 10, 10));
    refused("number of rollers z", "from 2", () -> OuterRingKernel.bendingStress(1, 30, 20, 1, 10));
    refused("ring width b", "over 0 mm", () -> OuterRingKernel.bendingStress(1, 30, 20, 10, 0));
    refused("tensile strength Rm", "over 0 MPa", () -> TrackCapacityKernel.strengthFactor(0, 1245, 2));
    refused("reference strength", "over 0 MPa", () -> TrackCapacityKernel.strengthFactor(1245, 0, 2));
    refused("exponent", "from 2 to 3", () -> TrackCapacityKernel.strengthFactor(1245, 1245, 1));
    assertEquals(2.25, TrackCapacityKernel.strengthFactor(1500, 1000, TrackCapacityKernel.LINE), 1e-15);
    assertEquals(3.375, TrackCapacityKernel.strengthFactor(1500, 1000, TrackCapacityKernel.ELLIPSE), 1e-15);
    refused("force F", "0 lbf or more", () -> TrackCapacityKernel.shopPressurePsi(-1, 1, 1));
    refused("effective contact length l", "over 0 in", () -> TrackCapacityKernel.shopPressurePsi(1, 0, 1));
    refused("roller diameter D", "over 0 in", () -> TrackCapacityKernel.shopPressurePsi(1, 1, 0));
    double[] hrc = {20, 30, 50};
    double[] factor = {1, 4, 16};
    // Geometric: the root of 1·4 half way, 4·(16/4)^(1/4) a quarter of the way.
    assertEquals(2, TrackCapacityKernel.interpolate(25, hrc, factor), 1e-15);
    assertEquals(4 * Math.sqrt(2), TrackCapacityKernel.interpolate(35, hrc, factor), 1e-14);
    assertEquals(1, TrackCapacityKernel.interpolate(20, hrc, factor));
    assertEquals(4, TrackCapacityKernel.interpolate(30, hrc, factor), 1e-15);
    assertEquals(16, TrackCapacityKernel.interpolate(50, hrc, factor), 1e-14);
    refused("track hardness", "from 20 HRC to 50 HRC", () -> TrackCapacityKernel.interpolate(50.1, hrc, factor));
    refused("rows of the table", "from 2", () -> TrackCapacityKernel.interpolate(20, new double[1], new double[1]));
    refused("values of the table", "from 3 to 3", () -> TrackCapacityKernel.interpolate(25, hrc, new double[] {1, 4}));
    refused("value of the table", "over 0", () -> TrackCapacityKernel.interpolate(25, hrc, new double[] {0, 4, 16}));
    refused("step of the hardnesses", "over 0 HRC",
        () -> TrackCapacityKernel.interpolate(25, new double[] {25, 25, 50}, factor));
    refused("track capacity at 40 HRC", "over 0 N", () -> new TrackCapacity(N(0), 40, false));
    refused("track hardness", "from 20 HRC to 58 HRC", () -> new TrackCapacity(N(1), 58.1, false));
  }

  @Test
  void trackFactorsAreThoseOfTheTableThatCoversThem() {
    // Needle catalogue up to 55 HRC: 0.368 and 2.787 (line), 4.652 (ellipse); beyond it the track roller catalogue.
    assertEquals(0.368, track(20, false).factor());
    assertEquals(2.787, track(55, false).factor(), 1e-14);
    assertEquals(4.652, track(55, true).factor(), 1e-14);
    assertEquals(2078, track(55, false).strength().megapascal(), 1e-11);
    assertEquals(2.97, track(56, false).factor(), 1e-14);
    assertEquals(2150, track(56, true).strength().megapascal(), 1e-11);
    assertEquals(6.26, track(58, true).factor(), 1e-14);
    assertFalse(track(55, false).source().equals(track(56, false).source()));
  }

  @Test
  void theMostCarefulTableIsKnown() {
    // Cam follower catalogue: from 26 HRC, cylindrical rings only; 0.45 there, 2.78 at 58.
    assertEquals(0.45, track(26, false).lowestPrintedFactor(), 1e-15);
    assertTrue(track(25.9, false).lowestPrintedFactor() > 0.47);
    assertEquals(2.78, track(58, false).lowestPrintedFactor(), 1e-14);
    assertEquals(6.26, track(58, true).lowestPrintedFactor(), 1e-14);
    assertEquals(0.22, track(20, true).lowestPrintedFactor(), 1e-15);
    assertEquals(List.of("tables-disagree"), codes(track(26, false)));
    assertEquals(List.of(), codes(track(26, true)));
    assertEquals(List.of(), codes(track(40, false)));
    String text = track(50, false).explain().toString();
    assertTrue(text.contains("cylindrical ring") && !text.contains("crowned ring"), text);
    assertTrue(track(50, true).explain().toString().contains("crowned ring"));
    assertTrue(track(50, false).toString().startsWith("track of 50 HRC, cylindrical ring: "));
  }

  @Test
  void lineContactNeedsStraightAndUncrossedBodies() {
    ContactSurface roller = ContactSurface.cylinder(mm(35));
    refused("pair", "straight across", () -> crowned.line(kN(1), mm(10)));
    refused("pair", "straight across", () -> ContactPair.ofSteel(roller, ContactSurface.rail(mm(300))).line(kN(1), mm(10)));
    refused("pair", "straight across", () -> flat.crossedAt(deg(1)).line(kN(1), mm(10)));
    refused("face width", "over 0 mm", () -> crowned.ellipse(kN(1), mm(0)));
    refused("normal force F", "over 0 N", () -> crowned.ellipse(N(0), mm(10)));
  }

  @Test
  void crossedCylindersAreACircleOfTheirRadius() {
    // Two equal cylinders at right angles: A = B = 1/(2R), the circle of a sphere of radius R on a plane.
    ContactSurface cylinder = ContactSurface.cylinder(mm(40));
    EllipticalContact circle = ContactPair.ofSteel(cylinder, cylinder).crossedAt(deg(90)).ellipse(N(1000), mm(20));
    double a = Math.cbrt(0.75 * 1000 * 20 / (206000 / 1.82));
    assertEquals(1, circle.axisRatio(), 1e-12);
    assertEquals(a, circle.majorSemiAxis().mm(), 1e-12);
    assertEquals(a * a / 20, circle.approach().mm(), 1e-14);
    assertEquals(1000 / (Math.PI * a * a), circle.meanPressure().megapascal(), 1e-8);
    // Circle, ν = 0.3: 0.310 p0 at 0.481 a (Johnson 1985, memory).
    assertEquals(0.310, circle.largestShear().stress().ratio(circle.peakPressure()), 5e-4);
    assertEquals(0.481 * a, circle.largestShear().depth().mm(), 5e-4 * a);
    AxisStress stress = circle.trackStress(mm(a));
    assertEquals(-0.5, stress.normal().ratio(circle.peakPressure()), 1e-12);
    assertEquals(-1.3 * (1 - Math.PI / 4) + 0.25, stress.alongMajor().ratio(circle.peakPressure()), 1e-12);
    assertEquals(-1.3 * (1 - Math.PI / 4) + 0.25, stress.alongMinor().ratio(circle.peakPressure()), 1e-12);
  }

  @Test
  void aLineHasItsKnownStressesAtADepth() {
    LineContact line = flat.line(kN(5), mm(16));
    double p = line.peakPressure().megapascal();
    double b = line.halfWidth().mm();
    assertEquals(5000 / (2 * b * 16), line.meanPressure().megapascal(), 1e-9);
    // At z = b: σz = -p0/√2, σy = -p0 (3/√2 - 2), plane strain along the roller.
    AxisStress stress = line.trackStress(mm(b));
    assertEquals(-p / Math.sqrt(2), stress.normal().megapascal(), 1e-9);
    assertEquals(-p * (3 / Math.sqrt(2) - 2), stress.alongMinor().megapascal(), 1e-9);
    assertEquals(-p * 0.3 * (4 / Math.sqrt(2) - 2), stress.alongMajor().megapascal(), 1e-9);
    assertEquals(
        "at " + mm(b) + ": " + stress.alongMajor() + " along the major axis, " + stress.alongMinor() + " along the minor axis, "
            + stress.normal() + " normal",
        stress.toString());
    assertEquals(0.5 * b, line.orthogonalShear().depth().mm(), 1e-14);
    StressPeak peak = line.largestShear();
    assertEquals(peak.stress() + " at a depth of " + peak.depth(), peak.toString());
    assertTrue(line.largestEquivalent().depth().mm() < peak.depth().mm());
    assertEquals(0, line.forceAt(MPa(0)).base());
  }

  @Test
  void surfacesAreNamedByTheirRadii() {
    assertEquals("R 20 mm along, straight across", ContactSurface.cylinder(mm(40)).toString());
    assertEquals("straight along, straight across", ContactSurface.flat().toString());
    assertEquals("R -80 mm along, straight across", ContactSurface.concave(mm(80)).toString());
    assertEquals("straight along, R 300 mm across", ContactSurface.rail(mm(300)).toString());
    assertEquals("R 80 mm along, R -600 mm across", ContactSurface.cam(mm(80)).profiled(mm(-600)).toString());
  }

  @Test
  void aTenthOfTheRadiusIsStillSmall() {
    // Half width b = √(4FR/(π L E*)) = R/10 at F = π L E* R/400.
    double limit = Math.PI * 10 * (206000 / 1.82) * 17.5 / 400;
    assertFalse(codes(flat.line(N(limit * (1 - 1e-9)), mm(10))).contains("contact-not-small"));
    assertTrue(codes(flat.line(N(limit * (1 + 1e-9)), mm(10))).contains("contact-not-small"));
    assertTrue(flat.line(kN(500), mm(1)).warnings().get(0).message().contains("tenth of the relative radius 17.5 mm"));
    // Circle of a sphere R = 20 mm on a plane: a = R/10 = 2 mm at F = a³ E*/(0.75 R).
    ContactSurface cylinder = ContactSurface.cylinder(mm(40));
    ContactPair crossed = ContactPair.ofSteel(cylinder, cylinder).crossedAt(deg(90));
    double force = 8 * (206000 / 1.82) / 15;
    assertFalse(codes(crossed.ellipse(N(force * (1 - 1e-9)), mm(20))).contains("contact-not-small"));
    assertTrue(codes(crossed.ellipse(N(force * (1 + 1e-9)), mm(20))).contains("contact-not-small"));
  }

  @Test
  void anEllipseFitsAFaceOfItsOwnLength() {
    double length = 2 * crowned.ellipse(kN(5), mm(18)).majorSemiAxis().mm();
    assertEquals(List.of(), codes(crowned.ellipse(kN(5), mm(length))));
    EllipticalContact cut = crowned.ellipse(kN(5), mm(length * 0.999));
    assertEquals(List.of("ellipse-truncated"), codes(cut));
    assertTrue(cut.warnings().get(0).message().startsWith("the ellipse is " + Numbers.significant(length, 4) + " mm long"));
    assertEquals(
        "elliptical contact " + Numbers.significant(length, 4) + " mm × "
            + Numbers.significant(2 * cut.minorSemiAxis().mm(), 4) + " mm under 5 kN: peak " + cut.peakPressure(),
        cut.toString());
  }

  @Test
  void yieldingIsJudgedForBothBodies() {
    ContactMaterial soft = ContactMaterial.steel().yieldingAt(MPa(300));
    ContactSurface roller = ContactSurface.crowned(mm(35), mm(500));
    EllipticalContact softRoller =
        ContactPair.of(roller, soft, ContactSurface.flat(), ContactMaterial.steel()).ellipse(kN(5), mm(50));
    EllipticalContact softTrack =
        ContactPair.of(roller, ContactMaterial.steel(), ContactSurface.flat(), soft).ellipse(kN(5), mm(50));
    assertTrue(softRoller.warnings().get(0).message().startsWith("the roller yields below the surface"));
    assertTrue(softTrack.warnings().get(0).message().startsWith("the track yields below the surface"));
    assertEquals(1, softTrack.warnings().size());
  }

  @Test
  void derivationsHoldTheHandComputedSteps() {
    List<Double> line = flat.line(kN(5), mm(16)).explain().steps().stream().map(step -> step.value()).toList();
    assertEquals(17.5, line.get(0), 1e-12);
    assertEquals(206000 / 1.82, line.get(1), 1e-9);
    EllipticalContact contact = crowned.ellipse(kN(5), mm(18));
    List<Double> ellipse = contact.explain().steps().stream().map(step -> step.value()).toList();
    // A + B = (1/17.5 + 1/500)/2; aligned with a flat B/A = 500/17.5.
    assertEquals(0.5 * (1 / 17.5 + 1 / 500.0), ellipse.get(0), 1e-15);
    assertEquals(500 / 17.5, ellipse.get(1), 1e-12);
    assertEquals(contact.axisRatio(), ellipse.get(3));
  }

  private static TrackCapacity track(double hrc, boolean crowned) {
    return new TrackCapacity(kN(10), hrc, crowned);
  }

  private static List<String> codes(Traced result) {
    return result.warnings().stream().map(warning -> warning.code()).toList();
  }

  private static void refused(String parameter, String permitted, org.junit.jupiter.api.function.Executable call) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.parameter().startsWith(parameter), e::getMessage);
    assertTrue(e.permitted().startsWith(permitted), e::getMessage);
  }
}
