// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.reference.RollerProfile;
import holdfast.quantity.InputException;
import holdfast.seats.Material;
import holdfast.seats.StudDuty;
import holdfast.seats.StudFatigue;
import holdfast.seats.StudMaterial;
import holdfast.trace.Warning;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a lean of the roller on its pin costs, and whether the pin endures a changing load. */
class YokePriceTest {
  private static final YokePlan EXAMPLE = ExampleJobs.yokeInFork();
  private static final StudMaterial PIN = new StudMaterial(MPa(180), MPa(780), MPa(590));

  private static YokePlan with(Pin pin, Duty duty) {
    return new YokePlan(EXAMPLE.job(), EXAMPLE.roller(), pin, EXAMPLE.fork(), duty, null, EXAMPLE.units());
  }

  private static Pin pin(double notchFactor) {
    return Pin.of("h6", Material.of("16MnCr5")).drilled(mm(4), mm(3), false).hardness(60).endurance(PIN, notchFactor)
        .securedBy(PinSecuring.KEEPER_PLATE).build();
  }

  private static Duty duty(StudDuty change) {
    Duty duty = EXAMPLE.duty();
    return new Duty(duty.spectrum(), duty.wantedLife(), duty.reliability(), duty.staticSafety(), duty.workingTemperature(),
        duty.viscosity(), duty.contamination(), duty.track(), duty.trackHardness(), duty.trackMisalignment(),
        duty.feed(), duty.uprightAxis(), duty.surroundings(), change);
  }

  private static List<String> names(YokePlan plan) {
    return plan.allLimits().checks().stream().map(LimitCheck::name).toList();
  }

  private static List<String> codes(List<Warning> warnings) {
    return warnings.stream().map(Warning::code).toList();
  }

  @Test
  void aRepeatedLoadTiresThePinByHalfItsBending() {
    double bending = EXAMPLE.strength().bending().megapascal();
    StudFatigue fatigue = with(pin(1.5), duty(StudDuty.REPEATED)).pinFatigue().orElseThrow();
    assertEquals(1.5 * bending / 2, fatigue.amplitude().megapascal(), 1e-12);
    assertEquals(bending / 2, fatigue.mean().megapascal(), 1e-12);
    assertEquals(1 / (1.5 * bending / 2 / 180 + bending / 2 / 780), fatigue.haighMargin(), 1e-12);
    // A pin has no nut: a load that turns round leaves no mean stress.
    assertEquals(0, with(pin(1), duty(StudDuty.REVERSED)).pinFatigue().orElseThrow().mean().megapascal());
    assertEquals(180 / bending, with(pin(1), duty(StudDuty.REVERSED)).pinFatigue().orElseThrow().margin(), 1e-12);
  }

  @Test
  void whatThePinEnduresForbidsAndWhatIsNotKnownIsSaid() {
    YokePlan known = with(pin(1.5), duty(StudDuty.REVERSED));
    assertTrue(names(known).contains("pin, fatigue (Goodman)"));
    assertEquals(List.of(), known.stops());
    assertTrue(with(pin(9), duty(StudDuty.REVERSED)).stops().stream().anyMatch(stop -> stop.contains("pin, fatigue")));

    List<Warning> noStrength = with(EXAMPLE.pin(), duty(StudDuty.REPEATED)).allLimits().warnings();
    assertTrue(noStrength.toString().contains("the strength of the finished pin is not stated"), noStrength.toString());
    List<Warning> noChange = with(pin(1), duty(null)).allLimits().warnings();
    assertTrue(noChange.toString().contains("how the load changes is not stated"), noChange.toString());
    YokePlan resting = with(EXAMPLE.pin(), duty(StudDuty.STATIC));
    assertTrue(!codes(resting.allLimits().warnings()).contains("pin-fatigue"));
    assertTrue(!names(resting).contains("pin, fatigue (Goodman)"));
    assertThrows(InputException.class, () -> pin(0.9));
  }

  @Test
  void widerEarsCostLifeAndTightOnesCostNone() {
    LeanPrice none = EXAMPLE.withEars("P7").leanPrice().orElseThrow();
    assertEquals(0, none.tilt().studTilt().radian());
    assertEquals(1, none.lifeRatio(), 1e-9);
    assertTrue(!codes(none.warnings()).contains("lean-at-most"));
    LeanPrice planned = EXAMPLE.leanPrice().orElseThrow();
    LeanPrice wide = EXAMPLE.withEars("H7").leanPrice().orElseThrow();
    assertTrue(none.lifeRatio() > planned.lifeRatio() && planned.lifeRatio() > wide.lifeRatio(), planned + ", " + wide);
    assertTrue(codes(planned.warnings()).containsAll(List.of("lean-at-most", "flat-ring-held", "no-printed-life-factor")));
    assertEquals(planned.lifeRatio(), planned.explain().result().value(), 1e-12);
    // The same bearing under the same load and tilt, asked without the plan.
    assertEquals(
        EXAMPLE.roller().knownInterior().orElseThrow().bearing(EXAMPLE.roller().ratings())
            .life(kN(4.5), EXAMPLE.tilt()).lifeRatio(),
        planned.lifeRatio(), 1e-12);
  }

  @Test
  void theSheetComparesTheEars() {
    String text = EXAMPLE.sheet().text();
    for (String bore : List.of("N7", "H7", "K7", "P7")) {
      assertTrue(text.contains("With ears " + bore), text);
    }
    assertTrue(text.contains("Life ratio, loosest pairs"), text);
    YokePlan drawn = with(
        Pin.of("0/-0.013 mm", Material.of("16MnCr5")).drilled(mm(4), mm(3), false).securedBy(PinSecuring.KEEPER_PLATE).build(),
        EXAMPLE.duty());
    assertTrue(drawn.sheet().text().contains("With ears H7"), "these are the limits of h6 at 20 mm");
    YokePlan other = with(
        Pin.of("0/-0.012 mm", Material.of("16MnCr5")).drilled(mm(4), mm(3), false).securedBy(PinSecuring.KEEPER_PLATE).build(),
        EXAMPLE.duty());
    assertTrue(!other.sheet().text().contains("With ears H7"), "no list is kept for other deviations");
  }

  @Test
  void withoutTheInsideThereIsNoPrice() {
    YokeRoller unknown =
        YokeRoller.named("unknown inside").ring(mm(52), mm(24), mm(0)).bore(mm(20), "0/-0.010 mm", mm(25)).greaseHoleInRing()
            .inside(EXAMPLE.roller().kind(), false).ratings(EXAMPLE.roller().ratings())
            .temperatures(EXAMPLE.roller().coldest(), EXAMPLE.roller().hottest()).build();
    YokePlan plan =
        new YokePlan("unknown inside", unknown, EXAMPLE.pin(), EXAMPLE.fork(), EXAMPLE.duty(), null, EXAMPLE.units());
    assertEquals(Optional.empty(), plan.leanPrice());
    String text = plan.sheet().text();
    assertTrue(text.contains("With ears H7") && !text.contains("life ratio"), text);
  }

  @Test
  void aCrownTakesPartOfTheLean() {
    RollerInterior inside =
        RollerInterior.describe().rollers(29, mm(3), mm(17), ValueOrigin.STATED).pitchDiameter(mm(28), ValueOrigin.STATED)
            .clearance(um(30), ValueOrigin.STATED).profile(RollerProfile.logarithmic(), ValueOrigin.STATED).build();
    LeanPrice flat = LeanPrice.of(inside, EXAMPLE.roller().ratings(), kN(4.5), EXAMPLE.withEars("H7").tilt(), mm(0), mm(52));
    LeanPrice crowned = LeanPrice.of(inside, EXAMPLE.roller().ratings(), kN(4.5), EXAMPLE.withEars("H7").tilt(), mm(500), mm(52));
    assertTrue(crowned.lifeRatio() > flat.lifeRatio(), crowned + ", " + flat);
    assertTrue(crowned.toString().contains("of which the rollers see"), crowned.toString());
  }
}
