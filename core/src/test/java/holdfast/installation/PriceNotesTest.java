// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.installation.SheetSectionsTest.entry;
import static holdfast.installation.SheetSectionsTest.section;
import static holdfast.installation.SeatPriceTest.INTERIOR;
import static holdfast.installation.SeatPriceTest.RATINGS;
import static holdfast.installation.SeatPriceTest.flat;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.reference.RingMotion;
import holdfast.bearings.reference.RollerProfile;
import holdfast.fits.Fit;
import holdfast.fits.FitAtTemperature;
import holdfast.quantity.Angle;
import holdfast.quantity.InputException;
import holdfast.quantity.Temperature;
import holdfast.quantity.ThermalExpansion;
import holdfast.trace.Derivation;
import holdfast.trace.Step;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How the price of a seat in life is derived, warned of and put into words. */
class PriceNotesTest {
  private static final InstallationPlan PLAN = InstallationPlan.example().withBore("S6");
  private static final SeatPrice SLIP = flat().fit(Fit.of(mm(18), "H7/h7")).build();
  private static final SeatPrice FACED = flat().face(um(8), mm(32)).fit(Fit.of(mm(18), "H7/h7")).build();
  private static final SeatPrice CROWNED = flat().ring(mm(40), mm(500)).clearance(um(36)).build();

  private static List<String> codes(SeatPrice price) {
    return price.warnings().stream().map(Warning::code).toList();
  }

  private static List<Step> steps(Derivation derivation, String meaning) {
    return derivation.steps().stream().filter(step -> step.meaning().contains(meaning)).toList();
  }

  @Test
  void thePairsAreDerivedFromTheTightestToTheLoosest() {
    Derivation derivation = SLIP.explain();
    List<Step> leans = steps(derivation, "greatest lean of the stud, ");
    assertEquals(List.of("tightest pair", "mean pair", "loosest pair"),
        leans.stream().map(step -> step.meaning().substring("greatest lean of the stud, ".length())).toList());
    for (int i = 0; i < 3; i++) {
      Angle lean = SLIP.pairs().get(2 - i).tilt().studTilt();
      assertEquals(lean.radian() * 1000, leans.get(i).value(), 1e-12, "in mrad");
    }
    List<Step> ratios = steps(derivation, "life ratio, ");
    assertEquals(List.of("life ratio, tightest pair", "life ratio, mean pair"),
        ratios.stream().map(Step::meaning).toList(), "that of the loosest is the result");
    assertEquals(SLIP.tightest().lifeRatio(), ratios.get(0).value());
    assertEquals(SLIP.mean().orElseThrow().lifeRatio(), ratios.get(1).value());
  }

  @Test
  void whatTheFitWarnsOfThePriceRepeats() {
    FitAtTemperature warm =
        FitAtTemperature.uniform(Fit.of(mm(18), "K7/h7"), new ThermalExpansion(23e-6), new ThermalExpansion(11e-6),
            new Temperature(110));
    SeatPrice price = flat().fit(warm).build();
    assertTrue(codes(price).contains("kind-changes"), codes(price)::toString);
    assertFalse(codes(SLIP).contains("kind-changes"));
  }

  @Test
  void anUnknownFaceIsWarnedOfOnceAndOnlyWithClearance() {
    assertTrue(codes(SLIP).contains("face-not-known"));
    assertFalse(codes(SLIP).contains("not-clamped"), "the face has a warning of its own");
    assertFalse(codes(FACED).contains("face-not-known"));
    assertFalse(codes(flat().clearance(um(0)).build()).contains("face-not-known"), "nothing can lean");
    assertFalse(codes(SLIP).contains("play-used-up"));
  }

  @Test
  void aFaceThatBendsTheStudIsPassedOn() {
    // 40 µm over 32 mm lean the flange by 1.25 mrad, and an interfering seat cannot follow.
    SeatPrice bent = flat().face(um(40), mm(32)).fit(Fit.of(mm(18), "S7/h7")).build();
    assertTrue(codes(bent).contains("faces-bend-the-stud"), codes(bent)::toString);
    assertFalse(codes(bent).contains("play-used-up"), "no play");
  }

  @Test
  void aLoadOfJustThePublishedShareIsStillCovered() {
    // 0.35 · 14.2 kN = 4.97 kN.
    assertFalse(codes(flat().duty(kN(4.97), rpm(180)).clearance(um(10)).build()).contains("no-limit-at-this-load"));
    assertTrue(codes(flat().duty(kN(4.98), rpm(180)).clearance(um(10)).build()).contains("no-limit-at-this-load"));
  }

  @Test
  void aPairSaysWhatTheTightNutSaves() {
    PricedPair loosest = FACED.loosest();
    assertTrue(loosest.toString().startsWith("loosest pair: lean " + loosest.tilt() + ", life ratio "), loosest::toString);
    assertTrue(loosest.toString().matches(".* \\(0\\.9\\d while the nut is tight\\)|.* \\(1 while the nut is tight\\)"),
        loosest::toString);
    assertFalse(SLIP.loosest().toString().contains("while the nut is tight"));
    // Million revolutions at 180 rpm.
    assertEquals(loosest.life().recalledLife() * 1e6 / (180 * 60), loosest.recalledHours(rpm(180)).hours(),
        1e-9 * loosest.recalledHours(rpm(180)).hours());
  }

  @Test
  void aPriceNeedsAPairAndTakesOtherMotionsOfTheRings() {
    assertThrows(InputException.class,
        () -> new SeatPrice(INTERIOR, SLIP.bearing(), SLIP.load(), SLIP.speed(), List.of(), null));
    SeatPrice turned = flat().rings(RingMotion.ROTATING, RingMotion.STATIONARY).clearance(um(36)).build();
    assertEquals(INTERIOR.bearing(RATINGS).rings(RingMotion.ROTATING, RingMotion.STATIONARY), turned.bearing());
  }

  @Test
  void aLimitIsComparedInWords() {
    MisalignmentCheck above = SLIP.comparison().get(0);
    assertEquals("loosest pair: " + above.tilt() + " is above " + above.limit(), above.toString());
    MisalignmentCheck within = SLIP.comparison().get(SLIP.comparison().size() - 1);
    assertEquals("tightest pair: " + within.tilt() + " is within " + within.limit(), within.toString());
  }

  @Test
  void aFlatRingPassesOnTheWholeLeanAndACrownedOneAShare() {
    RacewayTilt held = SLIP.loosest().tilt();
    assertEquals(held.studTilt().toString(), held.toString());
    assertEquals(0, held.contactShift().mm());
    assertEquals(1, held.explain().steps().size());
    assertEquals("φ_g", held.explain().result().expression());
    assertEquals(held.studTilt().radian() * 1000, held.explain().result().value(), 1e-12);
    assertTrue(held.explain().result().source().toString().contains("upper bound"));
    RacewayTilt rocks = CROWNED.loosest().tilt();
    assertEquals(rocks.studTilt() + ", of which the rollers see " + rocks.raceways(), rocks.toString());
    List<Step> steps = rocks.explain().steps();
    assertEquals(List.of("ψ_r", "ψ"), steps.stream().map(Step::symbol).toList());
    // The lean of the ring by the moment that the load balances, in mrad; raceways and ring make up the whole.
    assertEquals(rocks.moment().newtonMillimetre() / (2100 * 480) * 1000, steps.get(0).value(), 1e-6);
    assertEquals("φ_g - ψ_r", steps.get(1).expression());
    assertEquals(rocks.studTilt().radian() * 1000, steps.get(0).value() + steps.get(1).value(), 1e-9);
    assertTrue(steps.get(1).source().toString().contains("moment of the load"));
  }

  @Test
  void theInsideNamesEveryEstimate() {
    RollerInterior guessed =
        RollerInterior.describe()
            .rows(2, mm(8))
            .rollers(16, mm(3.5), mm(6), ValueOrigin.ESTIMATED)
            .pitchDiameter(mm(23), ValueOrigin.ESTIMATED)
            .clearance(um(20), ValueOrigin.ESTIMATED)
            .profile(RollerProfile.logarithmic(), ValueOrigin.ESTIMATED)
            .build();
    assertTrue(guessed.warnings().get(0).message().startsWith("estimated, not stated or measured: internal clearance, pitch"
        + " diameter, profile of the rollers, rollers; "), guessed.warnings()::toString);
    assertEquals(guessed.rollers() + ", clearance 20 µm (rollers " + ValueOrigin.ESTIMATED + ", pitch diameter "
        + ValueOrigin.ESTIMATED + ", clearance " + ValueOrigin.ESTIMATED + ", profile " + ValueOrigin.ESTIMATED + ")",
        guessed.toString());
    assertEquals(2, guessed.rollers().rows());
    RollerInterior known =
        RollerInterior.describe()
            .rollers(16, mm(3.5), mm(12), ValueOrigin.STATED)
            .pitchDiameter(mm(23), ValueOrigin.STATED)
            .clearance(um(20), ValueOrigin.MEASURED)
            .profile(RollerProfile.logarithmic(), ValueOrigin.STATED)
            .build();
    assertEquals(List.of(), known.warnings());
  }

  @Test
  void aChoiceOfSeatSaysHowItGoesInAndWhatItHolds() {
    List<SeatOption> options = SeatOptions.of(PLAN, List.of("H7", "S6"), INTERIOR).options();
    SeatOption slips = options.get(0);
    SeatOption pressed = options.get(1);
    // H7 0/+18 and h7 0/-18; S6 -25/-36.
    assertEquals(um(0), slips.leastClearance());
    assertEquals(-36e-3, pressed.leastClearance().mm(), 1e-9);
    assertTrue(slips.holdingTorque().isEmpty());
    assertEquals(PLAN.seat().orElseThrow().holding(PLAN.member().pressingFriction()).torque(),
        pressed.holdingTorque().orElseThrow());
    assertTrue(slips.toString().contains("; slips in; hold "), slips::toString);
    assertFalse(slips.toString().contains("; member "));
    assertTrue(pressed.toString().contains("; press in with " + pressed.pressForce().orElseThrow()), pressed::toString);
    assertTrue(pressed.toString().endsWith("; member " + pressed.housing().orElseThrow()), pressed::toString);
  }

  @Test
  void theSheetPricesEveryUsualBore() {
    var costs = section(PLAN, "What the seat costs");
    assertTrue(entry(costs, "Life ratio, loosest pair").matches(
        "\\S+ of the aligned life at \\S+ mrad of the stud, \\S+ with the nut tight on a face as stated"),
        entry(costs, "Life ratio, loosest pair"));
    assertTrue(entry(costs, "With bore S6").startsWith("7 µm … 36 µm interference; no play to lean in, life ratio "));
    assertTrue(entry(costs, "With bore S6").contains("; press ") && entry(costs, "With bore S6").contains(" (member, safety "));
    assertTrue(entry(costs, "With bore H7").startsWith("0 mm … 36 µm clearance; its play lets it lean up to 2.299 mrad, life ratio "),
        entry(costs, "With bore H7"));
    assertTrue(entry(costs, "With bore H7").contains("; slips in; hold "));
  }
}
