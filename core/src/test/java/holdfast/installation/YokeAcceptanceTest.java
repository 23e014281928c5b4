// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Conformity;
import holdfast.fits.DecisionRule;
import holdfast.fits.Gauge;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.MeasuredPart;
import holdfast.fits.MeasuringScheme;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.seats.Band;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.sheet.Sheet;
import holdfast.trace.Warning;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Parts are stated by where they lie in the tolerances of the plan: 0 lower limit, 1 upper limit. */
class YokeAcceptanceTest {
  private static final YokePlan PLAN = ExampleJobs.yokeInFork();
  private static final Length U = um(1);
  private static final Length MIDDLE_PIN =
      PLAN.earFit().shaft().limits().lower().plus(PLAN.earFit().shaft().tolerance().times(0.5));

  private static MeasuredPart even(Length size) {
    return MeasuredPart.by(Gauge.of("gauge", U)).station(size, size).station(size, size).station(size, size);
  }

  private static MeasuredPart even(TolerancedSize drawing, double share) {
    return even(drawing.limits().lower().plus(drawing.tolerance().times(share)));
  }

  private static YokeAcceptance judged(YokePlan plan, double first, double second, double pin, double roller) {
    return YokeAcceptance.of(plan, even(plan.earFit().hole(), first), even(plan.earFit().hole(), second),
        even(plan.earFit().shaft(), pin), even(plan.rollerFit().hole(), roller), degC(20));
  }

  /** Clearance in which a pin of 20 mm leans so: its corners touch over the length. */
  private static double play(double lean, double length) {
    return 20 * Math.cos(lean) + length * Math.sin(lean) - 20;
  }

  private static String text(YokeAcceptance parts) {
    return new Sheet("t", "j", List.of(parts.section()), List.of()).text();
  }

  @Test
  void goodPartsAreAccepted() {
    YokeAcceptance parts = judged(PLAN, 0.5, 0.4, 0.5, 0.5);
    assertTrue(parts.accepted(), parts.toString());
    assertEquals(List.of(), parts.remedies());
    assertEquals(List.of(), parts.stops());
    // N7 mean -17.5 µm, h6 mean -6.5 µm; the second ear is 2.1 µm smaller.
    assertEquals(-11e-3, parts.ears().get(0).fit().clearance().mm(), 1e-9);
    assertEquals(-13.1e-3, parts.ears().get(1).fit().clearance().mm(), 1e-9);
    assertEquals(1.5e-3, parts.ring().fit().clearance().mm(), 1e-9);
    String text = text(parts);
    assertTrue(text.contains("conforming: accepted for joining") && text.contains("Pin in the second ear, verdict"), text);
    assertTrue(text.contains("Press force at the end of the stroke, all seats") && text.contains("Life ratio of that lean"), text);
    assertFalse(text.contains("not accepted"), text);
    assertEquals(parts.ring().fit().clearance().mm(), parts.explain().result().value() / 1000, 1e-9);
    assertFalse(parts.sources().isEmpty());
  }

  @Test
  void bothEarsAreEveryPressedEarTogether() {
    YokeAcceptance parts = judged(PLAN, 0.5, 0.1, 0.5, 0.5);
    List<Band<Force>> each =
        parts.presses().stream().map(press -> press.orElseThrow().pressing(PLAN.fork().pressingFriction()).pressIn()).toList();
    assertTrue(each.get(1).greatest().newton() > each.get(0).greatest().newton(), "the smaller ear presses harder");
    assertEquals(each.get(0).greatest().newton() + each.get(1).greatest().newton(),
        parts.pressForce().orElseThrow().greatest().newton(), 1e-9);
    assertEquals(each.get(0).least().newton() + each.get(1).least().newton(),
        parts.pressForce().orElseThrow().least().newton(), 1e-9);

    YokePlan slip = PLAN.withEars("H7");
    YokeAcceptance loose = judged(slip, 0.5, 0.9, 0.5, 0.5);
    assertEquals(List.of(Optional.empty(), Optional.empty()), loose.presses());
    assertEquals(Optional.empty(), loose.pressForce());
    // The looser ear: upper limit less a tenth of 21 µm, pin at -6.5 µm, both 25 K warmer by 11.5·10⁻⁶ /K, the uncertainty of
    // both, over 50 mm.
    assertEquals((18.9e-3 + 6.5e-3) * (1 + 11.5e-6 * 25) + Math.sqrt(2) * 1e-3, play(loose.tilt().radian(), 50), 1e-9);
    assertTrue(loose.price().orElseThrow().lifeRatio() < 1);
    assertFalse(text(loose).contains("Press force"));
  }

  @Test
  void theLeanOfARingThatIsNotClampedAdds() {
    Fork free = Fork.named("fork").ears(PLAN.fork().ear(), PLAN.fork().thickness(), PLAN.fork().gap()).bore("H7")
        .pressingFriction(PLAN.fork().pressingFriction()).build();
    YokePlan plan = new YokePlan("free ring", PLAN.roller(), PLAN.pin(), free, PLAN.duty(), null, PLAN.units());
    double clamped = judged(PLAN.withEars("H7"), 0.5, 0.5, 0.5, 0.5).tilt().radian();
    double ring = judged(plan, 0.5, 0.5, 0.5, 0.5).tilt().radian() - clamped;
    // Roller bore at -5 µm, pin at -6.5 µm, 25 K warmer by 11.9 and 11.5·10⁻⁶ /K, over a ring of 25 mm.
    assertEquals(1.5e-3 + 25 * (19.995 * 11.9e-6 - 19.9935 * 11.5e-6) + Math.sqrt(2) * 1e-3, play(ring, 25), 1e-9);
  }

  @Test
  void oneBadEarIsEnough() {
    YokeAcceptance large = judged(PLAN, 0.5, 1.4, 0.5, 0.5);
    assertEquals(Conformity.DISPROVED, large.verdict());
    assertEquals(List.of("second-ear-large"), large.remedies().stream().map(Remedy::code).toList());
    assertTrue(text(large).contains("do not join"), text(large));
    assertTrue(large.restsOn().startsWith("first ear conforming, second ear not conforming, pin conforming"), large.restsOn());
    YokeAcceptance small = judged(PLAN, -0.4, 0.5, 0.5, 0.5);
    assertEquals("first-ear-small", small.remedies().get(0).code());
    assertEquals("pin-out", judged(PLAN, 0.5, 0.5, 2, 0.5).remedies().get(0).code());
    assertEquals("roller-bore-out", judged(PLAN, 0.5, 0.5, 0.5, -1).remedies().get(0).code());
    YokeAcceptance doubt = judged(PLAN, 0.5, 0.5, 0.5, 0.99);
    assertEquals(Conformity.UNDECIDED, doubt.verdict());
    assertEquals("roller-bore-doubt", doubt.remedies().get(0).code());
  }

  @Test
  void aMatchingPinSuitsAllBores() {
    YokeAcceptance parts = judged(PLAN, 0.2, 1.2, 0.5, 0.5);
    LimitsOfSize match = parts.matchingPin().orElseThrow();
    for (Length size : List.of(match.lower(), match.upper())) {
      YokeAcceptance again = YokeAcceptance.of(PLAN, even(PLAN.earFit().hole(), 0.2), even(PLAN.earFit().hole(), 1.2),
          even(size), even(PLAN.rollerFit().hole(), 0.5), degC(20));
      assertEquals(Conformity.PROVEN, again.fitConformity(), size.toString());
    }
    Length over = um(0.2);
    for (Length size : List.of(match.lower().minus(over), match.upper().plus(over))) {
      YokeAcceptance beyond = YokeAcceptance.of(PLAN, even(PLAN.earFit().hole(), 0.2), even(PLAN.earFit().hole(), 1.2),
          even(size), even(PLAN.rollerFit().hole(), 0.5), degC(20));
      assertFalse(beyond.fitConformity() == Conformity.PROVEN, size.toString());
    }
    assertTrue(parts.remedies().stream().anyMatch(remedy -> remedy.code().equals("concession")), parts.remedies().toString());
    // No pin is tight enough in a bore far too large and still fits one far too small.
    assertEquals(Optional.empty(), judged(PLAN, -4, 4, 0.5, 0.5).matchingPin());
  }

  @Test
  void brittleEarsAndBoundNeedlesStop() {
    Fork iron = Fork.named("iron fork").ears(OuterPart.ring(Material.of("EN-GJL-250"), mm(24)), mm(12), mm(26)).bore("X7")
        .pressingFriction(PLAN.fork().pressingFriction()).build();
    YokePlan brittle = new YokePlan("iron", PLAN.roller(), PLAN.pin(), iron, PLAN.duty(), null, PLAN.units());
    YokeAcceptance cracked = judged(brittle, 0.05, 0.05, 0.95, 0.5);
    assertEquals(1, cracked.stops().size(), cracked.stops().toString());
    assertTrue(cracked.stops().get(0).startsWith("this pin would crack an ear of the iron fork"), cracked.stops().toString());
    assertEquals(Conformity.DISPROVED, cracked.verdict());
    assertTrue(cracked.warnings().stream().map(Warning::code).toList().contains("must-not-be-joined"));
    assertTrue(cracked.remedies().stream().anyMatch(remedy -> remedy.code().equals("do-not-join")));

    YokeRoller bare = YokeRoller.named("bare").ring(mm(52), mm(24), mm(0)).withoutInnerRing(mm(20), "F6", mm(20))
        .inside(PLAN.roller().kind(), false).ratings(PLAN.roller().ratings())
        .temperatures(degC(-20), degC(120)).build();
    YokePlan needles = new YokePlan("bare", bare, PLAN.pin(), PLAN.fork(), PLAN.duty(), null, PLAN.units());
    assertEquals(List.of(), judged(needles, 0.5, 0.5, 0.5, 0.5).stops());
    assertTrue(judged(needles, 0.5, 0.5, 4, 0.5).stops().get(0).contains("the needles may bind"));
    assertTrue(text(judged(needles, 0.5, 0.5, 0.5, 0.5)).contains("Internal clearance as measured"));
  }

  @Test
  void nothingIsAssumedForWhatWasNotRecorded() {
    MeasuredPart none = MeasuredPart.by(Gauge.of("gauge", U));
    InputException error =
        assertThrows(InputException.class, () -> YokeAcceptance.of(PLAN, none, none, none, none, degC(20)));
    assertEquals("without first ear: readings, second ear: readings, pin: readings, roller bore: readings", error.value());
    YokeAcceptance parts = judged(PLAN, 0.5, 0.5, 0.5, 0.5);
    InputException other = assertThrows(InputException.class,
        () -> new YokeAcceptance(PLAN.withEars("H7"), parts.firstEar(), parts.secondEar(), parts.pin(), parts.rollerBore()));
    assertTrue(other.getMessage().contains("firstEar"), other.getMessage());
  }

  @Test
  void thePressFitIsThatOfThePlanWithTheMeasuredBand() {
    YokeAcceptance parts = judged(PLAN, 0, 0, 1, 0.5);
    InterferenceFit press = parts.presses().get(0).orElseThrow();
    // The tightest pair of the tolerances, widened by the uncertainty of this one.
    assertEquals(
        PLAN.ear().orElseThrow().interference().greatest().mm() + Math.sqrt(2) * 1e-3, press.interference().greatest().mm(), 1e-9);
  }

  /** Of a part 0.9 U inside its limit 1.645 standard uncertainties prove conformity, the whole U does not. */
  @Test
  void theRuleOfThePartsIsThatOfTheFit() {
    MeasuredPart ear = even(PLAN.earFit().hole(), 0.5);
    MeasuredPart pin = even(PLAN.earFit().shaft(), 0.5);
    // A roller bore as large, and a pin as small, as leaves 0.9 U of their fit to its greatest clearance.
    double u = Math.sqrt(2) * 1e-3;
    Length bore = PLAN.rollerFit().maximumClearance().plus(MIDDLE_PIN).minus(mm(0.9 * u));
    for (DecisionRule rule : DecisionRule.values()) {
      YokeAcceptance parts = YokeAcceptance.of(PLAN, ear.allAt(degC(20)), ear.allAt(degC(20)), pin.allAt(degC(20)),
          even(bore).allAt(degC(20)), MeasuringScheme.usual().by(rule));
      assertEquals(rule, parts.ring().rule());
      assertEquals(rule == DecisionRule.PROBABILITY_95 ? Conformity.PROVEN : Conformity.UNDECIDED, parts.ring().conformity());
      double guard = rule.guardBand(mm(u)).mm();
      LimitsOfSize match = parts.ring().matchingHole().orElseThrow();
      assertEquals(PLAN.rollerFit().maximumClearance().mm() - PLAN.rollerFit().minimumClearance().mm() - 2 * guard,
          match.upper().mm() - match.lower().mm(), 1e-9);
    }
    YokeAcceptance strict = judged(PLAN, 0.5, 0.5, 0.5, 0.5);
    YokeAcceptance lax = YokeAcceptance.of(PLAN, ear.allAt(degC(20)), ear.allAt(degC(20)), pin.allAt(degC(20)),
        even(bore).allAt(degC(20)), MeasuringScheme.usual().by(DecisionRule.PROBABILITY_95));
    assertEquals(DecisionRule.WHOLE_UNCERTAINTY, new PairAcceptance(PLAN.rollerFit(), lax.rollerBore(), strict.pin()).rule());
  }
}
