// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.installation.SheetSectionsTest.entry;
import static holdfast.installation.SheetSectionsTest.labels;
import static holdfast.installation.SheetSectionsTest.section;
import static holdfast.installation.YokePlanTest.duty;
import static holdfast.installation.YokePlanTest.fork;
import static holdfast.installation.YokePlanTest.pin;
import static holdfast.installation.YokePlanTest.plan;
import static holdfast.installation.YokePlanTest.roller;
import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mm2PerS;
import static holdfast.quantity.Units.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.failures.Margin;
import holdfast.installation.LimitCheck.Bound;
import holdfast.installation.LimitCheck.Consequence;
import holdfast.lubrication.Port;
import holdfast.quantity.InputException;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Torque;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.tables.SourceRef;
import holdfast.trace.Step;
import holdfast.trace.Warning;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits at their ends, what governs, what is said about those that are exceeded, and what stops a job. */
class PlanLimitsTest {
  private static final InstallationPlan PRESS = InstallationPlan.example();
  private static final InstallationPlan IMPOSSIBLE = ExampleJobs.impossible();
  private static final YokePlan YOKE = ExampleJobs.yokeInFork();
  private static final SourceRef SOURCE = SourceRef.commonPractice("invented for this test");

  private static LimitCheck load(String name, double demand, Bound bound, double permitted, Consequence consequence) {
    return new LimitCheck(name, kN(demand), bound, kN(permitted), consequence, Margin.LIFE, List.of(SOURCE));
  }

  /** Margins 3, 0.5, 0.8 and 2. */
  private static final PlanLimits FOUR = new PlanLimits(
      List.of(load("wide", 1, Bound.AT_MOST, 3, Consequence.STOP), load("weak", 4, Bound.AT_MOST, 2, Consequence.WARNING),
          load("light", 0.8, Bound.AT_LEAST, 1, Consequence.WARNING), load("ample", 6, Bound.AT_LEAST, 3, Consequence.STOP)),
      List.of(new Warning("not-known", "something is not known", SOURCE)));

  @Test
  void theLeastMarginGoverns() {
    assertEquals("weak", FOUR.governing().name());
    assertEquals("governed by weak, margin 0.5", FOUR.toString());
    assertEquals(List.of("weak", "light"), FOUR.exceeded().stream().map(LimitCheck::name).toList());
    assertThrows(InputException.class, () -> new PlanLimits(List.of(), List.of()));
    // A limit without a margin, alone, governs nothing and could not be printed.
    LimitCheck noMargin = load("none", 4, Bound.AT_LEAST, 0, Consequence.STOP);
    assertTrue(noMargin.margin().isEmpty());
    assertThrows(InputException.class, () -> new PlanLimits(List.of(noMargin), List.of()));
    assertTrue(load("beyond", 4, Bound.AT_LEAST, Double.MIN_VALUE, Consequence.STOP).margin().isEmpty());
  }

  @Test
  void everyMarginIsDerivedAndTheLeastComesLast() {
    List<Step> steps = new ArrayList<>(FOUR.explain().steps());
    assertEquals(List.of(3.0, 0.5, 0.8, 2.0, 0.5), steps.stream().map(Step::value).toList());
    assertEquals(List.of("permitted / demanded", "permitted / demanded", "demanded / least", "demanded / least",
        "least of the margins"), steps.stream().map(Step::expression).toList());
  }

  @Test
  void aLimitThatOnlyWarnsIsNamedWithItsSide() {
    PlanLimits limits = new PlanLimits(List.of(load("stopper", 4, Bound.AT_MOST, 2, Consequence.STOP),
        FOUR.checks().get(1), FOUR.checks().get(2)), FOUR.notKnown());
    assertEquals(
        List.of("something is not known", "the limit 'weak' is exceeded: 4 kN, at most 2 kN",
            "the limit 'light' is exceeded: 800 N, at least 1 kN"),
        limits.warnings().stream().map(Warning::message).toList());
  }

  private static Consequence consequence(PlanLimits limits, String name) {
    return limits.checks().stream().filter(check -> check.name().equals(name)).findFirst().orElseThrow().consequence();
  }

  @Test
  void basicFatigueAndTheAdviceOfHalfOfCOnlyInform() {
    PlanLimits limits = PRESS.allLimits();
    assertEquals(Consequence.WARNING, consequence(limits, "fatigue"));
    assertEquals(Consequence.STOP, consequence(limits, "static"));
    assertEquals(Consequence.STOP, consequence(limits, "track"));
    limits.checks().stream().filter(check -> check.name().equals("half of C"))
        .forEach(check -> assertEquals(Consequence.WARNING, check.consequence()));
    assertEquals(PRESS.atWork().trackRoller(), PRESS.trackRoller());
    assertEquals(PRESS.atWork().limits(), PRESS.limits());
  }

  private static List<String> names(YokePlan plan) {
    return plan.allLimits().checks().stream().map(LimitCheck::name).toList();
  }

  private static List<String> unknown(MountingPlan plan) {
    return plan.allLimits().notKnown().stream().map(Warning::code).toList();
  }

  @Test
  void pinAndEarsAreBothJudgedByTheirYield() {
    assertTrue(names(YOKE).containsAll(List.of("pin, bending and shear", "pressure of the pin in the ears")));
    Fork.Builder iron = fork().ears(OuterPart.ring(Material.of("EN-GJL-250"), mm(46)), mm(12), mm(26));
    YokePlan brittle = plan(roller(), pin(), iron, duty());
    assertTrue(names(brittle).contains("pin, bending and shear"));
    assertFalse(names(brittle).contains("pressure of the pin in the ears"), "grey iron has no yield strength");
    assertTrue(unknown(brittle).contains("no-yield"));
  }

  @Test
  void onlyAPressedInnerRingTakesInternalClearance() {
    String taken = "internal clearance taken by the press fit";
    assertTrue(names(YOKE).contains(taken), "10 µm of interference");
    assertTrue(unknown(plan(roller(), pin(), fork(), duty())).contains("clearance-taken"), "its inside is not known");
    YokePlan touching = plan(roller().bore(mm(20), "0.010/0 mm", mm(25)), pin(), fork(), duty());
    assertEquals(0, touching.rollerFit().minimumClearance().mm(), 1e-12);
    assertFalse(unknown(touching).contains("clearance-taken"), "ring and pin just touch");
    YokeRollerBuilder known = roller().interior(YOKE.roller().interior());
    YokePlan loose = plan(known.bore(mm(20), "0.020/0.010 mm", mm(25)), pin(), fork(), duty());
    assertFalse(names(loose).contains(taken));
  }

  @Test
  void theTiltOfAFlatRingIsJudgedAndThatOfACrownedOneNot() {
    assertTrue(names(YOKE).contains("tilt of the roller"));
    YokePlan crowned = plan(roller().ring(mm(52), mm(24), mm(500)), pin(), fork(), duty());
    assertFalse(names(crowned).contains("tilt of the roller"));
    assertTrue(unknown(crowned).contains("crowned-ring-tilt"));
  }

  private static InstallationPlan flat(String bore, boolean face) {
    MachineMember.Builder member = MachineMember.named("lever").body(PRESS.member().body()).bore(bore, mm(16))
        .pressingFriction(FrictionBand.of(0.08, 0.2));
    StudRoller inch = ExampleJobs.inchSlipFit().roller();
    MachineMember made = (face ? member.faceRunOut(mm(0.01)) : member).build();
    return new InstallationPlan("job", inch, made, ExampleJobs.inchSlipFit().nut(), ExampleJobs.inchSlipFit().duty());
  }

  @Test
  void theFaceMattersOnlyToALooseSeat() {
    assertTrue(unknown(flat("+0.0020/+0.0012 in", false)).contains("face-not-stated"));
    assertFalse(unknown(flat("+0.0020/+0.0012 in", true)).contains("face-not-stated"));
    assertFalse(unknown(flat("-0.0020/-0.0030 in", false)).contains("face-not-stated"));
  }

  @Test
  void slimMarginsAreWatchedAndWideOnesNot() {
    YokePlan easy = plan(roller().trackCapacity(kN(14)), pin(), fork().bore("M7").ringClamped(), Duty.of(kN(1), rpm(90))
        .life(hours(1000), Reliability.ofPercent(90)).staticSafety(2).at(degC(45))
        .lubricant(mm2PerS(900), ContaminationLevel.HIGH_CLEANLINESS).track(ContactSurface.flat(), 55).greaseThrough(Port.HEAD));
    assertTrue(easy.lubrication().kappa() > 1);
    assertTrue(easy.allLimits().governing().margin().getAsDouble() > 1.5, easy.allLimits()::toString);
    assertTrue(easy.sheet().sections().stream().noneMatch(found -> found.title().equals("Watch for")));
    YokePlan thin = plan(roller().trackCapacity(kN(14)), pin(), fork().bore("M7").ringClamped(), Duty.of(kN(1), rpm(90))
        .life(hours(1000), Reliability.ofPercent(90)).staticSafety(2).at(degC(45))
        .lubricant(mm2PerS(20), ContaminationLevel.HIGH_CLEANLINESS).track(ContactSurface.flat(), 55).greaseThrough(Port.HEAD));
    assertTrue(thin.lubrication().kappa() < 1);
    assertEquals(List.of("Slim film shows as"), labels(section(thin, "Watch for")));
    YokePlan loose = withDuty(roller().trackCapacity(kN(14)), pin(), fork().bore("0.010/0 mm").ringClamped(), easy.duty());
    assertEquals(List.of("Slim seat clearance shows as"), labels(section(loose, "Watch for")));
  }

  private static YokePlan withDuty(YokeRollerBuilder roller, Pin.Builder pin, Fork.Builder fork, Duty duty) {
    return YokePlan.of(roller).job("invented").pin(pin).fork(fork).duty(duty).build();
  }

  private static InstallationPlan with(Nut.Builder nut) {
    return new InstallationPlan(PRESS.job(), PRESS.roller(), PRESS.member(), nut.build(), PRESS.duty());
  }

  private static boolean outside(Torque setting) {
    return with(nut(setting)).stops().stream().anyMatch(stop -> stop.contains("outside the window"));
  }

  private static Nut.Builder nut(Torque setting) {
    return Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(setting, 0.04).reserve(1.5)
        .stack(mm(9), mm(3));
  }

  @Test
  void theEndsOfTheTorqueWindowBelongToIt() {
    Torque lowest = PRESS.torqueWindow().lowest();
    Torque highest = PRESS.torqueWindow().highest();
    assertFalse(outside(lowest) || outside(highest));
    assertTrue(outside(lowest.times(0.999)) && outside(highest.times(1.001)));
  }

  @Test
  void aLifeOfExactlyTheHoursWantedIsEnough() {
    OperatingTime life = PRESS.replaceAfter();
    assertFalse(shortLife(life));
    assertTrue(shortLife(life.times(1.001)));
  }

  private static boolean shortLife(OperatingTime wanted) {
    Duty duty = Duty.of(kN(2.1), rpm(180)).life(wanted, Reliability.ofPercent(95)).staticSafety(2).at(degC(60))
        .lubricant(PRESS.duty().viscosity(), PRESS.duty().contamination()).track(ContactSurface.flat(), 45)
        .greaseThrough(Port.HEAD).build();
    return new InstallationPlan(PRESS.job(), PRESS.roller(), PRESS.member(), PRESS.nut(), duty).stops().stream()
        .anyMatch(stop -> stop.startsWith("the modified life with 95 % reliability"));
  }

  @Test
  void aWrenchThatOverstressesTheStudStops() {
    assertTrue(with(nut(Nm(400))).stops().stream().anyMatch(stop -> stop.startsWith("the drilled stud is stressed to ")
        && stop.endsWith(", above its yield strength of 590 MPa")), with(nut(Nm(400))).stops()::toString);
    assertTrue(PRESS.stops().stream().noneMatch(stop -> stop.contains("is stressed to")));
  }

  private static boolean cracks(String material, double outside, String bore) {
    MachineMember member = MachineMember.named("haul-off lever").body(OuterPart.ring(Material.of(material), mm(outside)))
        .bore(bore, mm(16)).pressingFriction(FrictionBand.of(0.08, 0.2)).build();
    return new InstallationPlan(PRESS.job(), PRESS.roller(), member, PRESS.nut(), PRESS.duty()).stops().stream()
        .anyMatch(stop -> stop.startsWith("the limit 'press fit, member, half of its fracture' is exceeded: "));
  }

  @Test
  void onlyABrittleMemberUnderTooMuchPressureCracks() {
    assertTrue(cracks("EN-GJL-250", 22, "X7"));
    assertFalse(cracks("EN-GJL-250", 60, "P7"), "little interference in a thick ring");
    assertFalse(cracks("C45+N", 22, "X7"), "steel yields and does not crack");
    assertFalse(cracks("EN-GJL-250", 22, "H7"), "nothing is pressed");
    assertEquals(IMPOSSIBLE.stops().size(), IMPOSSIBLE.stops().stream().distinct().count());
  }

  @Test
  void theStudIsPressedByItsTightestFitOrNotAtAll() {
    assertEquals(PRESS.seat().orElseThrow().pressure().greatest(), PRESS.stud().fitPressure());
    assertEquals(0, PRESS.withBore("H7").stud().fitPressure().megapascal());
  }

  @Test
  void aSeatThatHoldsTheTorqueIsNotWatchedForIt() {
    MachineMember rough = MachineMember.named("lever").body(PRESS.member().body()).bore("X7", mm(17))
        .pressingFriction(FrictionBand.of(0.6, 0.7)).build();
    InstallationPlan held = new InstallationPlan("job", PRESS.roller(), rough, PRESS.nut(), PRESS.duty());
    assertEquals(0, held.torqueToBeHeld().newtonMillimetre());
    assertTrue(held.sheet().sections().stream().filter(found -> found.title().equals("Watch for"))
        .noneMatch(found -> labels(found).contains("Slim holding torque shows as")));
    assertTrue(labels(section(PRESS, "Watch for")).contains("Slim holding torque shows as"));
  }

  @Test
  void eachPartOfAFleetIsReplacedAtTheReliabilityOfTheDuty() {
    InstallationPlan slip = ExampleJobs.inchSlipFit();
    InstallationPlan fleet = new InstallationPlan(PRESS.job(), PRESS.roller(), PRESS.member(), PRESS.nut(), PRESS.duty(),
        slip.fleet(), PRESS.units());
    // The life that 95 % reach is the age at which 5 % have failed; the places run 1500 h in a year.
    String each = entry(section(fleet, "Expected life and replacement"), "Replace each");
    double years = Double.parseDouble(each.replaceAll("after (\\S+) years.*", "$1"));
    assertEquals(PRESS.replaceAfter().hours() / 1500, years, 0.005 * years, each);
  }
}
