// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Fit;
import holdfast.fits.LimitDeviations;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hand-computed results of the fit of a stud, the ends of their ranges, and what they say about themselves. */
class SeatResultsTest {
  private static final SourceRef INVENTED = SourceRef.derived("invented for a test");
  private static final Material STEEL = steel().build();

  private static Material.Builder steel() {
    return Material.named("test steel", INVENTED)
        .kind(MaterialGroup.STEEL, Ductility.DUCTILE)
        .elastic(MPa(210_000), 0.3)
        .expansion(umPerMK(11.5))
        .yieldStrength(MPa(400));
  }

  private static InterferenceFit fit(InnerPart stud, OuterPart housing, double least, double greatest) {
    return InterferenceFit.of(stud, housing, InterferenceBand.of(mm(30), um(least), um(greatest)), mm(30))
        .withSmoothing(RoughnessRule.NONE);
  }

  /** Like materials, solid stud, ring of 2 to 1: p = 2625 MPa/mm · U. */
  private static InterferenceFit plain(double least, double greatest) {
    return fit(InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(60)), least, greatest);
  }

  @Test
  void requiredInterferenceByHand() {
    RequiredInterference.Builder builder =
        RequiredInterference.of(
                InnerPart.solid(STEEL).withRoughness(um(4)), OuterPart.ring(STEEL, mm(60)).withRoughness(um(6)), mm(30), mm(30))
            .hold(N(300 * Math.PI), Nm(6 * Math.PI))
            .adhesion(FrictionBand.of(0.1, 0.2), 1.5)
            .limit(YieldRule.TRESCA, 1.25);
    RequiredInterference needed = builder.build();
    // √(300² + 400²) · π = 500π N; times 1.5 over 0.1 · π · 900 mm²; housing: 400/(1 + 5/3)/1.25 = 120 MPa.
    double hold = Math.hypot(300 * Math.PI, 2 * 6000 * Math.PI / 30);
    assertEquals(500 * Math.PI, hold, 1e-9);
    assertEquals(hold, needed.resultant().base(), 1e-9);
    assertEquals(1.5 * 500 / 90, needed.requiredPressure().base(), 1e-12);
    assertEquals(120, needed.allowedPressure().base(), 1e-12);
    assertEquals(1.5 * 500 / 90 / 2625 + 0.004, needed.least().mm(), 1e-14);
    assertEquals(120.0 / 2625 + 0.004, needed.greatest().mm(), 1e-14);
    List<Double> steps = needed.explain().steps().stream().map(step -> step.value()).toList();
    assertEquals(1.5 * 500 / 90, steps.get(0), 1e-12);
    assertEquals(1.5 * 500 / 90 / 2.625, steps.get(1), 1e-11);
    assertEquals("interference from " + needed.least() + " to " + needed.greatest(), needed.toString());
    // By the rule of 2001 twice as much is smoothed away, by none nothing.
    assertEquals(1.5 * 500 / 90 / 2625 + 0.008, builder.smoothing(RoughnessRule.DIN_7190_2001).build().least().mm(), 1e-14);
    assertEquals(1.5 * 500 / 90 / 2625, builder.smoothing(RoughnessRule.NONE).build().least().mm(), 1e-14);
    // A drilled stud is the weaker part: 200 · (1 - 0.25).
    RequiredInterference drilled =
        RequiredInterference.of(InnerPart.hollow(STEEL, mm(27)), OuterPart.wide(STEEL), mm(30), mm(30))
            .hold(N(1), Nm(0)).adhesion(FrictionBand.general(), 1).limit(YieldRule.TRESCA, 1).build();
    assertEquals(200 * 0.19, drilled.allowedPressure().base(), 1e-12);
    refused("coefficient of adhesion", "stated",
        () -> RequiredInterference.of(InnerPart.solid(STEEL), OuterPart.wide(STEEL), mm(30), mm(30)).build());
    refused("least coefficient of adhesion", "over 0", () -> builder.adhesion(FrictionBand.of(0, 0.1), 1));
    refused("safety against slipping", "over 0", () -> builder.adhesion(FrictionBand.general(), 0));
    refused("safety against the limit", "over 0", () -> builder.limit(YieldRule.TRESCA, 0));
  }

  @Test
  void aFitSuitsUpToTheEndsOfTheBand() {
    RequiredInterference needed =
        new RequiredInterference(
            InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(60)), mm(30), mm(30), RoughnessRule.NONE, N(1), 0.1, 1,
            MPa(26.25), MPa(52.5), um(10), um(20));
    assertTrue(needed.possible());
    assertTrue(needed.suits(iso(0, 0, 10, 20)));
    assertFalse(needed.suits(iso(0, 0, 9, 20)));
    assertFalse(needed.suits(iso(0, 0, 10, 21)));
    assertTrue(limits(um(10), um(10)).possible());
    RequiredInterference impossible = limits(um(11), um(10));
    assertFalse(impossible.possible());
    assertTrue(impossible.toString().endsWith(": no fit will do"));
    assertEquals(List.of("load-above-parts"), codes(impossible));
    refused("required interference", "at most", impossible::isoFits);
  }

  private static RequiredInterference limits(Length least, Length greatest) {
    return new RequiredInterference(
        InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(60)), mm(30), mm(30), RoughnessRule.NONE, N(1), 0.1, 1,
        MPa(1), MPa(1), least, greatest);
  }

  private static Fit iso(double ei, double es, double lower, double upper) {
    return new Fit(mm(30), "trial", new LimitDeviations(um(ei), um(es)), new LimitDeviations(um(lower), um(upper)));
  }

  @Test
  void bandsOfInterference() {
    InterferenceBand band = InterferenceBand.of(mm(30), um(-5), um(20));
    assertEquals("30 mm, interference " + um(-5) + " … " + um(20), band.toString());
    assertEquals(um(7), InterferenceBand.of(mm(30), um(7), um(7)).greatest());
    refused("greatest interference", "at least", () -> InterferenceBand.of(mm(30), um(8), um(7)));
    refused("greatest interference", "over 0 mm", () -> InterferenceBand.of(mm(30), um(-8), um(0)));
    refused("greatest interference", "over 0 mm", () -> InterferenceBand.of(mm(30), um(8), mm(30)));
    refused("joint diameter", "over 0 mm", () -> InterferenceBand.of(mm(0), um(1), um(2)));
    refused("uncertainty of the measurement", "0 mm or more", () -> InterferenceBand.ofMeasured(mm(30.02), mm(30), um(-1)));
    Band<Length> lengths = new Band<>(mm(1), mm(2));
    assertTrue(lengths.contains(mm(1)) && lengths.contains(mm(2)) && lengths.contains(mm(1.5)));
    assertFalse(lengths.contains(mm(0.99)) || lengths.contains(mm(2.01)));
    assertEquals("1 mm … 2 mm", lengths.toString());
    assertEquals(mm(1), new Band<>(mm(1), mm(1)).greatest());
    refused("greatest value of a band", "at least 1 mm", () -> new Band<>(mm(1), mm(0.5)));
    assertEquals("0.1 … 0.2", FrictionBand.of(0.1, 0.2).toString());
    assertEquals(0.1, FrictionBand.of(0.1, 0.1).greatest());
    assertEquals(0.05, FrictionBand.testScatter(true).least());
    refused("least coefficient of friction", "0 or more", () -> FrictionBand.of(-0.1, 0.1));
    refused("greatest coefficient of friction", "at least 0.2", () -> FrictionBand.of(0.2, 0.1));
    refused("greatest coefficient of friction", "at least 0.2", () -> FrictionBand.of(0.2, 1.1e30));
  }

  @Test
  void aFitDescribesItself() {
    InterferenceFit fit = plain(12, 20);
    assertEquals(
        "solid stud of test steel in housing (ring 60 mm) of test steel, 30 mm, interference " + um(12) + " … " + um(20)
            + ", pressure 31.5 … 52.5 MPa",
        fit.toString());
    assertEquals(52.5, fit.stresses().get(0).radial().base() * -1, 1e-12);
    assertEquals(CriticalStress.Place.STUD_AXIS, fit.stresses().get(0).place());
    assertEquals(
        CriticalStress.Place.HOLE_WALL,
        fit(InnerPart.hollow(STEEL, mm(6)), OuterPart.wide(STEEL), 1, 2).stresses().get(0).place());
    assertEquals(100 * 5.0 / 3, fit.stresses(MPa(100)).get(2).hoop().base(), 1e-12);
    assertEquals(100 * 2.0 / 3, fit.stresses(MPa(100)).get(3).hoop().base(), 1e-12);
    refused("joint pressure", "0 MPa or more", () -> fit.stresses(MPa(-1)));
    CriticalStress bore = fit.stresses(MPa(60)).get(2);
    assertEquals("bore of the housing: radial " + MPa(-60) + ", hoop " + bore.hoop() + ", von Mises 140 MPa", bore.toString());
    // Like materials: bore and stud move by 60 · 30 (5/3 + 0.3)/E and 60 · 30 · 0.7/E.
    FitDisplacements moved = FitDisplacements.at(fit, MPa(60));
    assertEquals(60 * 30 * (5.0 / 3 + 0.3) / 210_000, moved.bore().mm(), 1e-15);
    assertEquals(-60 * 30 * 0.7 / 210_000, moved.stud().mm(), 1e-15);
    assertEquals(60 * 60 * 2.0 / 3 / 210_000, moved.outside().mm(), 1e-15);
    assertEquals(0, moved.hole().mm());
    assertEquals(
        "hole " + moved.hole() + ", stud " + moved.stud() + ", bore " + moved.bore()
            + ", outside " + moved.outside() + " at 60 MPa",
        moved.toString());
    assertEquals(0, fit(InnerPart.solid(STEEL), OuterPart.wide(STEEL), 10, 20).displacements().outside().mm());
    assertEquals("stud with 6 mm hole of test steel", InnerPart.hollow(STEEL, mm(6)).toString());
    assertEquals("housing (wide plate) of test steel", OuterPart.wide(STEEL).toString());
    refused("roughness of the housing bore", "from 0 mm", () -> OuterPart.wide(STEEL).withRoughness(um(-1)));
    refused("hole of the stud", "from 0 mm", () -> InnerPart.hollow(STEEL, mm(-1)));
    refused("joint length", "from",
        () -> InterferenceFit.of(
            InnerPart.solid(STEEL), OuterPart.wide(STEEL), InterferenceBand.of(mm(30), um(1), um(2)), mm(0)));
  }

  @Test
  void gripIsWarnedOf() {
    InnerPart rough = InnerPart.solid(STEEL).withRoughness(um(10));
    OuterPart ring = OuterPart.ring(STEEL, mm(60)).withRoughness(um(15));
    // 0.4 · 25 = 10 µm are smoothed away.
    assertEquals(List.of("no-grip"), codes(real(rough, ring, 5, 10)));
    assertEquals(List.of("loosest-pair-without-grip"), codes(real(rough, ring, 10, 11)));
    assertEquals(List.of(), codes(real(rough, ring, 10.1, 11)));
    assertTrue(real(rough, ring, 5, 11).warnings().get(0).message().contains("an interference of " + um(5)));
    assertTrue(real(rough, ring, -5, 11).warnings().get(0).message().contains("a clearance of " + um(5)));
    assertEquals(List.of(), codes(real(rough, OuterPart.ring(STEEL, mm(60)), 10, 11)));
    assertEquals(List.of(), codes(real(InnerPart.solid(STEEL), ring, 10, 11)));
    assertEquals(List.of("roughness-unknown"), codes(real(InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(60)), 10, 11)));
    assertEquals(List.of(), codes(plain(10, 11)));
  }

  private static InterferenceFit real(InnerPart stud, OuterPart housing, double least, double greatest) {
    return InterferenceFit.of(stud, housing, InterferenceBand.of(mm(30), um(least), um(greatest)), mm(30));
  }

  private static FitLimits.PartLimit part(Stress stress, Stress strength) {
    return new FitLimits.PartLimit("x", "von Mises", CriticalStress.Place.HOUSING_BORE, stress, strength, strength, false);
  }

  @Test
  void limitsOfTheParts() {
    // Tresca, ring of 2 to 1: 400/(8/3) = 150 MPa, at 2625 MPa/mm 57.14 µm.
    FitLimits limits = plain(10, 20).limits(YieldRule.TRESCA);
    assertEquals(150, limits.housing().pressure().orElseThrow().megapascal(), 1e-12);
    assertEquals(150 / 52.5, limits.housing().safety().orElseThrow(), 1e-12);
    assertEquals(400 / 52.5, limits.stud().safety().orElseThrow(), 1e-12);
    assertFalse(limits.housing().brittle() || limits.stud().brittle());
    assertEquals("stud 52.5 MPa at the axis of the stud (Tresca), yield strength 400.0 MPa, safety 7.62;"
            + " housing 140.0 MPa at the bore of the housing (Tresca), yield strength 400.0 MPa, safety 2.86", limits.toString());
    // Wide plate: the outline carries nothing. A thick ring: its bore yields first, hoop factor 1.01/0.99.
    assertEquals(
        200,
        fit(InnerPart.solid(STEEL), OuterPart.wide(STEEL), 1, 2).limits(YieldRule.TRESCA).housing().limitPressure().megapascal(),
        1e-12);
    assertEquals(
        198,
        fit(InnerPart.solid(STEEL), OuterPart.ring(STEEL, mm(300)), 1, 2).limits(YieldRule.TRESCA).housing().limitPressure()
            .megapascal(),
        1e-11);
    // Brittle, 0.75 diameters from an edge: the outline breaks first, 320/(4/1.25).
    Material iron = Material.named("iron", INVENTED).kind(MaterialGroup.GREY_IRON, Ductility.BRITTLE)
        .elastic(MPa(110_000), 0.25).expansion(umPerMK(10)).tensileStrength(MPa(320)).build();
    InterferenceFit edge = fit(InnerPart.solid(STEEL), OuterPart.of(iron, HousingShape.nearEdge(mm(22.5))), 1, 2);
    assertEquals(100, edge.limits(YieldRule.TRESCA).housing().limitPressure().megapascal(), 1e-12);
    assertEquals("greatest principal stress", edge.limits(YieldRule.TRESCA).housing().criterion());
    assertEquals(List.of("thin-wall", "brittle-part"), codes(edge));
    FitLimits.PartLimit even = part(MPa(10), MPa(10));
    assertTrue(even.holds() && !even.exceeded());
    FitLimits.PartLimit over = part(MPa(10.01), MPa(10));
    assertTrue(!over.holds() && over.exceeded());
    FitLimits.PartLimit unknown = part(MPa(10), null);
    assertEquals("10.0 MPa at the bore of the housing (von Mises), yield strength of x unknown", unknown.toString());
    assertTrue(!unknown.holds() && !unknown.exceeded() && unknown.safety().isEmpty());
    FitLimits.PartLimit idle = part(MPa(0), MPa(10));
    assertEquals("0.0 MPa at the bore of the housing (von Mises), yield strength 10.0 MPa, nothing presses", idle.toString());
    assertTrue(idle.holds() && !idle.exceeded() && idle.safety().isEmpty());
    Material brittle = Material.named("hard", INVENTED).kind(MaterialGroup.HARDENED_STEEL, Ductility.BRITTLE)
        .elastic(MPa(210_000), 0.3).expansion(umPerMK(11.5)).build();
    InterferenceFit hard = fit(InnerPart.solid(brittle), OuterPart.ring(brittle, mm(60)), 10, 20);
    assertEquals(List.of("stud-strength-unknown", "housing-strength-unknown", "brittle-part"), codes(hard));
    assertEquals("tensile strength of hard unknown", hard.limits(YieldRule.TRESCA).housing().criterion());
    assertTrue(hard.limits(YieldRule.TRESCA).housing().brittle());
    assertEquals("yield strength of hard unknown", hard.limits(YieldRule.TRESCA).stud().criterion());
    Material soft = Material.named("soft", INVENTED)
        .elastic(MPa(210_000), 0.3).expansion(umPerMK(11.5)).yieldStrength(MPa(40)).build();
    assertEquals(List.of("stud-yields"), codes(fit(InnerPart.solid(soft), OuterPart.ring(STEEL, mm(60)), 10, 20)));
    assertEquals(List.of("housing-yields"), codes(fit(InnerPart.solid(STEEL), OuterPart.ring(soft, mm(60)), 10, 20)));
  }

  @Test
  void wallsAndOutlines() {
    assertEquals(0.5, HousingShape.ring(mm(60)).wallFactor(mm(30)));
    assertEquals(0.75, HousingShape.block(mm(75)).wallFactor(mm(30)));
    assertEquals(1, HousingShape.nearEdge(mm(45)).wallFactor(mm(30)));
    assertEquals(Double.POSITIVE_INFINITY, HousingShape.wide().wallFactor(mm(30)));
    assertEquals(60, HousingShape.leverEye(mm(60)).equivalentDiameter(mm(30)));
    // Plane-stress models, half size 1 diameter: ring of 2.6885 and 2.1053 diameters (reference computation).
    assertEquals(30 * 2.6885, HousingShape.nearEdge(mm(30)).equivalentDiameter(mm(30)), 1e-9);
    assertEquals(30 * 2.1053, HousingShape.block(mm(60)).equivalentDiameter(mm(30)), 1e-9);
    assertEquals(1.7472, HousingShape.block(mm(60)).hoopFactor(30), 1e-12);
    assertEquals(1.0207, HousingShape.block(mm(60)).outlineFactor(30), 1e-12);
    assertEquals(5.0 / 3, HousingShape.nearEdge(mm(30)).hoopFactor(30), 1e-14);
    assertEquals(4.0 / 3, HousingShape.nearEdge(mm(30)).outlineFactor(30), 1e-14);
    assertEquals(1, HousingShape.wide().hoopFactor(30));
    assertEquals(0, HousingShape.wide().outlineFactor(30));
    // Half way between two rows the ratio to the size is the mean of theirs.
    assertEquals(2 * 1.75 * 0.5 * (4.0429 / 3 + 5.344 / 4), HousingShapeKernel.edgeEquivalent(1.75), 1e-12);
    assertEquals(7.8897 / 6 * 8, HousingShapeKernel.edgeEquivalent(4), 1e-12);
    assertEquals(1.9675, HousingShapeKernel.edgeEquivalent(0.75), 1e-12);
    assertEquals(2.5603, HousingShapeKernel.squareOutline(0.75), 1e-12);
    assertEquals(0.087348, HousingShapeKernel.squareOutline(3), 1e-12);
    assertEquals(1.0535, HousingShapeKernel.squareHoop(3), 1e-12);
    assertEquals(45, HousingShape.nearEdge(mm(45)).outlineRadius());
    assertEquals(45, HousingShape.block(mm(90)).outlineRadius());
    assertEquals(List.of(), named(HousingShape.ring(mm(60))));
    assertEquals(List.of("thin-wall"), named(HousingShape.ring(mm(59.9))));
    assertEquals(List.of(), named(HousingShape.nearEdge(mm(90))));
    assertEquals(List.of("shape-beyond-results"), named(HousingShape.nearEdge(mm(90.1))));
    assertEquals(List.of("shape-beyond-results"), named(HousingShape.block(mm(181))));
    assertEquals(List.of(), named(HousingShape.ring(mm(600))));
    assertEquals("plate with an edge at 45 mm", HousingShape.nearEdge(mm(45)).toString());
    assertEquals("square block 60 mm", HousingShape.block(mm(60)).toString());
    refused("size of the housing", "over 0 mm", () -> HousingShape.block(mm(0)));
  }

  private static List<String> named(HousingShape shape) {
    return shape.warnings(mm(30)).stream().map(Warning::code).toList();
  }

  @Test
  void holdingByHand() {
    // 26.25 and 52.5 MPa, 900π mm²: 2362.5π and 9450π N; half the diameter 15 mm.
    Holding holding = plain(10, 20).holding(FrictionBand.of(0.1, 0.2));
    assertEquals(2362.5 * Math.PI, holding.axialForce().least().base(), 1e-8);
    assertEquals(9450 * Math.PI, holding.axialForce().greatest().base(), 1e-8);
    assertEquals(9450 * 15 * Math.PI, holding.torque().greatest().base(), 1e-7);
    assertFalse(holding.turnsWhileTightened(holding.torque().least()));
    assertEquals(0, holding.torqueToBeHeld(Nm(0)).base());
    assertEquals(List.of(), codes(holding));
    assertEquals("holds " + holding.axialForce() + " axially, " + holding.torque() + " in torsion", holding.toString());
    Holding loose = plain(-5, 20).holding(FrictionBand.of(0.1, 0.2));
    assertEquals(List.of("no-grip"), codes(loose));
    assertEquals(0, loose.safety(N(100), Nm(0)));
    Pressing pressing = plain(10, 20).pressing(FrictionBand.of(0.1, 0.2));
    assertEquals(2362.5 * Math.PI, pressing.pressIn().least().base(), 1e-8);
    assertEquals(0, pressing.at(mm(0)).greatest().base());
    assertEquals(pressing.pressIn(), pressing.at(mm(30)));
    assertEquals(2362.5 * Math.PI / 3, pressing.at(mm(10)).least().base(), 1e-8);
    assertEquals(50, pressing.greatestSpeed().base());
    assertEquals(24, pressing.restBeforeLoad().hours());
    assertEquals("press in with " + pressing.pressIn() + " at the end of the stroke (friction 0.1 … 0.2)", pressing.toString());
    assertEquals(List.of("loosest-pair-without-grip"), codes(plain(-5, 20).pressing(FrictionBand.general())));
  }

  @Test
  void materialsAreEqualInEveryPropertyOrNotAtAll() {
    Material one = full("m", "c", 210_000, 0.3, 11, 7800, 300, 500, "n");
    assertEquals(one, full("m", "c", 210_000, 0.3, 11, 7800, 300, 500, "n"));
    assertEquals(one.hashCode(), full("m", "c", 210_000, 0.3, 11, 7800, 300, 500, "n").hashCode());
    assertNotEquals(one, full("x", "c", 210_000, 0.3, 11, 7800, 300, 500, "n"));
    assertNotEquals(one, full("m", "x", 210_000, 0.3, 11, 7800, 300, 500, "n"));
    assertNotEquals(one, full("m", "c", 200_000, 0.3, 11, 7800, 300, 500, "n"));
    assertNotEquals(one, full("m", "c", 210_000, 0.2, 11, 7800, 300, 500, "n"));
    assertNotEquals(one, full("m", "c", 210_000, 0.3, 12, 7800, 300, 500, "n"));
    assertNotEquals(one, full("m", "c", 210_000, 0.3, 11, 7900, 300, 500, "n"));
    assertNotEquals(one, full("m", "c", 210_000, 0.3, 11, 7800, 310, 500, "n"));
    assertNotEquals(one, full("m", "c", 210_000, 0.3, 11, 7800, 300, 510, "n"));
    assertNotEquals(one, full("m", "c", 210_000, 0.3, 11, 7800, 300, 500, "x"));
    assertNotEquals(one, steel().build());
    assertNotEquals(steel().build(), steel().kind(MaterialGroup.BRASS, Ductility.DUCTILE).build());
    assertNotEquals(steel().build(), steel().kind(MaterialGroup.STEEL, Ductility.LIMITED).build());
    assertNotEquals(one.hashCode(), full("x", "c", 210_000, 0.3, 11, 7800, 300, 500, "n").hashCode());
    assertEquals("m (c): E 210 GPa, ν 0.3, α " + umPerMK(11), one.toString());
    assertTrue(STEEL.toString().startsWith("test steel: E 210 GPa"), STEEL.toString());
    assertEquals(7800, one.density().orElseThrow());
    assertEquals(500, one.tensileStrength().orElseThrow().base());
    assertEquals(300, one.yieldStrength().orElseThrow().base());
    assertTrue(STEEL.density().isEmpty() && STEEL.tensileStrength().isEmpty());
    assertEquals("n", one.note());
    assertEquals("c", one.condition());
    assertEquals(MaterialGroup.STEEL, one.group());
    assertEquals(Ductility.BRITTLE, one.ductility());
    assertTrue(one.brittle());
    assertEquals("brittle", one.ductility().toString());
    refused("name of the material", "not blank", () -> Material.named(" ", INVENTED));
    refused("density", "over 0 kg/m³", () -> steel().density(0));
    refused("yield strength", "over 0 MPa", () -> steel().yieldStrength(MPa(0)));
    refused("tensile strength", "over 0 MPa", () -> steel().tensileStrength(MPa(0)));
    refused("properties of m", "elastic constants", () -> Material.named("m", INVENTED).elastic(MPa(1), 0.3).build());
    refused("properties of m", "elastic constants", () -> Material.named("m", INVENTED).expansion(umPerMK(1)).build());
    assertEquals(0, steel().expansion(umPerMK(0)).build().thermalExpansion().base());
  }

  private static Material full(
      String name, String condition, double e, double nu, double alpha, double density, double yield, double tensile,
      String note) {
    return Material.named(name, INVENTED).condition(condition).kind(MaterialGroup.STEEL, Ductility.BRITTLE)
        .elastic(MPa(e), nu).expansion(umPerMK(alpha)).density(density).yieldStrength(MPa(yield))
        .tensileStrength(MPa(tensile)).note(note).build();
  }

  @Test
  void plasticFitByHand() {
    // Like materials and a solid stud: U = k ζ² D/E, k = Re = 400 by Tresca; ζ = 1.5: 128.57 µm, ζ = 2 (all): 228.57 µm.
    ElasticPlasticFit zone = plain(100, 400 * 2.25 * 30 / 210).elasticPlastic(YieldRule.TRESCA);
    assertTrue(zone.yields() && !zone.exhausted());
    assertEquals(1.5, zone.plasticRatio(), 1e-12);
    double p = 200 * (2 * Math.log(1.5) - 0.5625 + 1);
    assertEquals(p, zone.pressure().base(), 1e-9);
    assertEquals(400 * Math.log(2) / p, zone.safety(), 1e-12);
    assertEquals(1.25 / 3, zone.plasticShare(), 1e-12);
    assertEquals(22.5, zone.plasticRadius().mm(), 1e-11);
    assertEquals(List.of("plastic-share"), codes(zone));
    assertTrue(zone.warnings().get(0).message().contains(" 42 % "));
    assertTrue(zone.toString().contains("radius, 42 % of its section; pressure 249."), zone.toString());
    assertTrue(zone.explain().toString().contains("k/2·(2·ln ζ - Q²·ζ² + 1)"));
    ElasticPlasticFit all = plain(100, 230).elasticPlastic(YieldRule.TRESCA);
    assertTrue(all.exhausted());
    assertEquals(1, all.safety(), 1e-12);
    assertTrue(codes(all).contains("exhausted"));
    ElasticPlasticFit elastic = plain(10, 20).elasticPlastic(YieldRule.TRESCA);
    assertFalse(elastic.yields());
    assertEquals("housing stays elastic; pressure 52.5 MPa", elastic.toString());
    assertTrue(elastic.explain().toString().contains("elastic, as above"));
    Material limited = steel().kind(MaterialGroup.STEEL, Ductility.LIMITED).build();
    InterferenceFit few = fit(InnerPart.solid(STEEL), OuterPart.ring(limited, mm(60)), 10, 70);
    assertEquals(List.of("not-ductile-enough"), codes(few.elasticPlastic(YieldRule.TRESCA)));
    InterferenceFit slight = fit(InnerPart.solid(STEEL), OuterPart.ring(limited, mm(60)), 10, 20);
    assertEquals(List.of(), codes(slight.elasticPlastic(YieldRule.TRESCA)));
    InterferenceFit weak = fit(InnerPart.hollow(STEEL, mm(24)), OuterPart.ring(STEEL, mm(60)), 10, 300);
    assertTrue(codes(weak.elasticPlastic(YieldRule.TRESCA)).contains("stud-yields"));
    Material unknown = Material.named("x", INVENTED).elastic(MPa(210_000), 0.3).expansion(umPerMK(11.5)).build();
    refused("yield strength of x", "stated",
        () -> fit(InnerPart.solid(STEEL), OuterPart.ring(unknown, mm(60)), 1, 2).elasticPlastic(YieldRule.TRESCA));
  }

  private static List<String> codes(Traced result) {
    return result.warnings().stream().map(Warning::code).toList();
  }

  private static void refused(String parameter, String permitted, org.junit.jupiter.api.function.Executable call) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.parameter().startsWith(parameter), e::getMessage);
    assertTrue(e.permitted().startsWith(permitted), e::getMessage);
  }
}
