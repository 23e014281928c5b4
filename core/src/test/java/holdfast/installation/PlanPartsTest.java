// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.failures.Margin;
import holdfast.fleet.FleetPosition;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Openings;
import holdfast.lubrication.Port;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Torque;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerKind;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** The parts of a plan: what they refuse, what they keep, and limits and figures that follow from them by hand. */
class PlanPartsTest {
  private static final List<SourceRef> MADE_UP = List.of(SourceRef.derived("made up for this test"));
  private final InstallationPlan example = InstallationPlan.example().withBore("S6");

  private static void refused(String start, Executable call) {
    InputException error = assertThrows(InputException.class, call);
    assertTrue(error.getMessage().startsWith(start), error.getMessage());
  }

  private static StudRollerBuilder roller() {
    return StudRoller.named("roller")
        .ring(mm(40), mm(20), mm(500))
        .flange(mm(32), mm(0.8))
        .stud(mm(18), "h7")
        .thread("M18x1.5")
        .greaseBore(mm(3))
        .material(Material.of("16MnCr5"), um(2))
        .inside(RollerKind.CAGED_NEEDLE, false)
        .head(HeadForm.SLOT)
        .ratings(LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING))
        .temperatures(degC(-20), degC(110));
  }

  @Test
  void rollersNameWhatTheyRefuse() {
    refused("outside diameter D (0 mm)", () -> roller().ring(mm(0), mm(20), mm(500)).build());
    refused("ring width (0 mm)", () -> roller().ring(mm(40), mm(0), mm(500)).build());
    refused("crown radius (-1 mm)", () -> roller().ring(mm(40), mm(20), mm(-1)).build());
    refused("gap between clamped face and ring (-1 mm)", () -> roller().flange(mm(32), mm(-1)).build());
    refused("stud diameter d1 (0 mm)", () -> roller().stud(mm(0), "h7").build());
    refused("stud diameter d1 (40 mm) must be below D = 40 mm", () -> roller().stud(mm(40), "h7").flange(mm(41), mm(1)).build());
    refused("roughness Rz of the stud", () -> roller().material(Material.of("16MnCr5"), um(-1)).build());
    refused("grease bore (-1 mm)", () -> roller().greaseBore(mm(-1)).build());
    refused("grease bore (18 mm) must be below d1 = 18 mm", () -> roller().greaseBore(mm(18)).build());
    refused("flange diameter (18 mm) must be over d1 = 18 mm", () -> roller().flange(mm(18), mm(1)).build());
    refused("ratings", () -> roller().ratings(LoadRatings.radialRoller(kN(14), kN(17))).build());
    refused("fitting in the socket (present)", () -> roller().fittingInSocket().head(HeadForm.SLOT).build());
    refused("highest temperature (20 °C) must be above 20 °C", () -> roller().temperatures(degC(20), degC(20)).build());
    refused("greatest load of the turning ring (0 N)", () -> roller().ringLimits(N(0), kN(1)).build());
    refused("greatest load of the standing ring (0 N)", () -> roller().ringLimits(kN(1), N(0)).build());
    refused("greatest load of the stud (0 N)", () -> roller().studLimit(N(0)).build());
    refused("load on a track of 40 HRC (0 N)", () -> roller().trackCapacity(N(0)).build());
    refused("greatest speed (0 rpm)", () -> roller().speedLimit(rpm(0)).build());
    refused("greatest tightening torque (0 N·mm)", () -> roller().greatestTorque(new Torque(0)).build());
    // At the very ends nothing is refused: flat, solid, no gap, unknown roughness.
    StudRoller plain = roller().ring(mm(40), mm(20), mm(0)).flange(mm(32), mm(0)).greaseBore(mm(0))
        .material(Material.of("16MnCr5"), um(0)).build();
    assertFalse(plain.crowned());
    assertTrue(roller().build().crowned());
    assertEquals(mm(29), plain.meanDiameter());
    assertEquals(degC(-20), plain.coldest());
    assertEquals(degC(110), plain.hottest());
    assertEquals(Optional.empty(), plain.statedTorque());
    assertEquals(Optional.empty(), plain.knownInterior());
    assertEquals(Optional.empty(), plain.limits().statedSpeed());
    assertEquals(Optional.of(Nm(85)), roller().greatestTorque(Nm(85)).build().statedTorque());
    assertEquals(Optional.of(rpm(900)), roller().speedLimit(rpm(900)).build().limits().statedSpeed());
  }

  @Test
  void rollersKeepWhatIsStated() {
    StudRoller all = roller().head(HeadForm.HEXAGON_SOCKET).ringLimits(kN(8), kN(13)).studLimit(kN(9)).trackCapacity(kN(4)).system(MeasureSystem.INCH)
        .fittingInSocket().eccentricCollar().openings(Openings.none()).build();
    assertEquals(kN(8), all.limits().turning());
    assertEquals(kN(13), all.limits().standing());
    assertEquals(kN(9), all.limits().stud());
    assertEquals(kN(4), all.limits().trackAt40Hrc());
    assertEquals(MeasureSystem.INCH, all.build().system());
    assertEquals(HeadForm.HEXAGON_SOCKET, all.build().head());
    assertTrue(all.build().fittingInSocket() && all.build().eccentricCollar() && !all.build().sealed());
    assertEquals(Optional.of(Openings.none()), all.build().seenOpenings());
    assertTrue(all.build().toString().endsWith(", open, hexagon socket at the head with a built-in fitting, eccentric collar"));
    assertTrue(roller().inside(RollerKind.CAGED_NEEDLE, true).build().build().toString().endsWith(", sealed, slot at the head"));
    assertEquals(SheetUnits.INCH, PlanBuilder.unitsOf(all));
    assertEquals(SheetUnits.METRIC, PlanBuilder.unitsOf(roller().build()));
  }

  @Test
  void dutiesNameWhatTheyRefuse() {
    UnaryOperator<DutyBuilder> rest = d -> d.at(degC(60)).lubricant(example.duty().viscosity(), example.duty().contamination())
        .greaseThrough(Port.HEAD);
    DutyBuilder good = rest.apply(Duty.of(kN(1), rpm(100))).life(hours(100), Reliability.ofPercent(90)).staticSafety(1)
        .track(ContactSurface.flat(), 20);
    assertEquals(kN(1), good.build().load());
    assertTrue(good.build().constant());
    assertEquals(Optional.of(Port.HEAD), good.build().statedFeed());
    refused("wanted life (0 h)", () -> good.life(hours(0), Reliability.ofPercent(90)).build());
    good.life(hours(100), Reliability.ofPercent(90));
    refused("static safety S0 (0.99)", () -> good.staticSafety(0.99).build());
    good.staticSafety(10);
    refused("hardness of the track (58.1 HRC)", () -> good.track(ContactSurface.flat(), 58.1).build());
    refused("hardness of the track (19.9 HRC)", () -> good.track(ContactSurface.flat(), 19.9).build());
    good.track(ContactSurface.flat(), 58);
    refused("misalignment of the track", () -> good.trackMisalignment(mrad(-1)).build());
    assertEquals(Optional.of(mrad(0)), good.trackMisalignment(mrad(0)).build().statedTrackMisalignment());
    refused("load spectrum (no step with load and speed)", () -> rest.apply(Duty.of(kN(1), rpm(0)))
        .life(hours(100), Reliability.ofPercent(90)).staticSafety(1).track(ContactSurface.flat(), 40).build());
    refused("load spectrum (no step with load and speed)", () -> rest.apply(Duty.of(kN(0), rpm(100)))
        .life(hours(100), Reliability.ofPercent(90)).staticSafety(1).track(ContactSurface.flat(), 40).build());
    // A step at standstill loads the parts, and does not count as the least load for rolling.
    Duty stands = rest.apply(Duty.of(LoadSpectrum.builder().step(N(100), rpm(0), 0.5).step(kN(2), rpm(50), 0.5).build()))
        .life(hours(100), Reliability.ofPercent(90)).staticSafety(1).track(ContactSurface.flat(), 40).build();
    assertEquals(kN(2), stands.leastLoad());
    assertEquals(rpm(50), stands.greatestSpeed());
    assertFalse(stands.constant());
  }

  @Test
  void nutsAndMembersNameWhatTheyRefuse() {
    refused("tightening torque (0 N·mm)", () -> nut().wrench(new Torque(0), 0.04).build());
    refused("wrench error (0.51)", () -> nut().wrench(Nm(10), 0.51).build());
    refused("reserve (0.9)", () -> nut().reserve(0.9).build());
    refused("engaged length (0 mm)", () -> nut().engaged(mm(0), MPa(200)).build());
    refused("shear strength of the nut (0 MPa)", () -> nut().engaged(mm(10), MPa(0)).build());
    assertThrows(InputException.class, () -> Nut.onFace(mm(19), mm(19)).friction(ThreadCondition.OILED, 0.1, 0.2).wrench(Nm(10), 0).reserve(1).build());
    assertThrows(InputException.class, () -> nut().friction(ThreadCondition.OILED, 0.2, 0.1).build());
    assertEquals(Nm(7.5), nut().wrench(Nm(10), 0.25).build().leastTorque());
    assertEquals(Nm(12.5), nut().wrench(Nm(10), 0.25).build().greatestTorque());
    assertEquals(Optional.of(mm(10)), nut().engaged(mm(10), MPa(200)).build().statedEngagement());
    assertEquals(Optional.empty(), nut().build().statedEngagement());
    MachineMember.Builder member =
        MachineMember.named("lever").body(example.member().body()).pressingFriction(FrictionBand.general()).bore("H7", mm(16));
    assertEquals(Optional.empty(), member.build().statedRunOut());
    assertFalse(member.build().feedHole());
    assertTrue(member.feedHole().build().feedHole());
    assertEquals("K7", member.build().withBore("K7").boreTolerance());
    refused("run-out of the face (-0.001 mm)", () -> member.faceRunOut(um(-1)).build());
    assertEquals(Optional.of(mm(0)), member.faceRunOut(mm(0)).build().statedRunOut());
    refused("seat length (0 mm)", () -> member.bore("H7", mm(0)).build());
    InputException nothing = assertThrows(InputException.class, () -> Nut.onFace(mm(24.8), mm(19)).build());
    assertTrue(nothing.value().startsWith("without friction, wrench, reserve"), nothing.value());
  }

  private static Nut.Builder nut() {
    return Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.1, 0.16).wrench(Nm(10), 0.04).reserve(1);
  }

  @Test
  void fleetsNameWhatTheyRefuse() {
    List<FleetPosition> one = List.of(new FleetPosition("place", 1000, hours(0)));
    refused("positions (none)", () -> new FleetDuty(List.of(), 0.5, 1, 0.9));
    refused("wanted reliability of the group (0.0)", () -> new FleetDuty(one, 0, 1, 0.9));
    refused("wanted reliability of the group (1.0)", () -> new FleetDuty(one, 1, 1, 0.9));
    refused("service level (1.0)", () -> new FleetDuty(one, 0.5, 1, 1));
    refused("service level (0.0)", () -> new FleetDuty(one, 0.5, 1, 0));
    refused("lead time (0 years)", () -> new FleetDuty(one, 0.5, 0, 0.5));
    assertEquals(1, new FleetDuty(one, 0.5, 1, 0.5).positions().size());
  }

  @Test
  void limitsHoldUpToTheirEnds() {
    LimitCheck most = check(kN(2), LimitCheck.Bound.AT_MOST, kN(2));
    assertTrue(most.holds());
    assertTrue(check(kN(2), LimitCheck.Bound.AT_LEAST, kN(2)).holds());
    assertFalse(check(kN(2.1), LimitCheck.Bound.AT_MOST, kN(2)).holds());
    assertFalse(check(kN(1.9), LimitCheck.Bound.AT_LEAST, kN(2)).holds());
    assertEquals(1.5, check(kN(2), LimitCheck.Bound.AT_MOST, kN(3)).margin().orElseThrow(), 1e-15);
    assertEquals(4, check(kN(2), LimitCheck.Bound.AT_LEAST, N(500)).margin().orElseThrow(), 1e-15);
    assertTrue(check(kN(0), LimitCheck.Bound.AT_MOST, kN(3)).margin().isEmpty());
    assertTrue(new LimitCheck("t", degC(10), LimitCheck.Bound.AT_MOST, degC(20), LimitCheck.Consequence.STOP,
        Margin.TEMPERATURE, MADE_UP).margin().isEmpty());
    assertEquals("x: 2 kN, at most 2 kN", most.toString());
    assertEquals("x: 2 kN, at least 3 kN", check(kN(2), LimitCheck.Bound.AT_LEAST, kN(3)).toString());
    refused("sources of limit 'x' (none)", () -> new LimitCheck("x", kN(1), LimitCheck.Bound.AT_MOST, kN(1),
        LimitCheck.Consequence.STOP, Margin.LIFE, List.of()));
    refused("permitted value of limit 'x'", () -> new LimitCheck("x", kN(1), LimitCheck.Bound.AT_MOST, rpm(1),
        LimitCheck.Consequence.STOP, Margin.SPEED, MADE_UP));
  }

  private static LimitCheck check(Force demand, LimitCheck.Bound bound, Force permitted) {
    return new LimitCheck("x", demand, bound, permitted, LimitCheck.Consequence.STOP, Margin.LIFE, MADE_UP);
  }

  @Test
  void planLimitsFollowFromRollerAndDuty() {
    PlanLimits limits = example.allLimits();
    assertEquals("fatigue", limits.governing().name());
    assertTrue(limits.exceeded().isEmpty());
    assertEquals(limits.governing().margin().getAsDouble(), limits.explain().result().value());
    assertFalse(limits.sources().isEmpty());
    LimitCheck fatigue = named(limits, "fatigue");
    assertEquals(LimitCheck.Consequence.WARNING, fatigue.consequence());
    assertEquals(LimitCheck.Consequence.WARNING, named(limits, "half of C").consequence());
    assertEquals(LimitCheck.Consequence.STOP, named(limits, "static").consequence());
    assertEquals(Margin.STATIC_LOAD, named(limits, "static").reading());
    assertEquals(Margin.RING_LOAD, named(limits, "outer ring, turning").reading());
    assertEquals(Margin.STUD_BENDING, named(limits, "stud").reading());
    assertEquals(Margin.TRACK_LOAD, named(limits, "track").reading());
    assertEquals(Margin.LIFE, fatigue.reading());
    assertEquals(rpm(180), named(limits, "speed").demand());
    assertTrue(named(limits, "temperature, cold").holds());
    assertEquals(List.of("track", "press fit, member, half of its fracture", "temperature, hot"),
        ExampleJobs.impossible().allLimits().exceeded().stream()
            .filter(limit -> limit.consequence() == LimitCheck.Consequence.STOP).map(LimitCheck::name).toList());
    // The flat ring of the inch job: 1 mrad at most, run-out 0.0004 in over 0.89 in, and the track not stated.
    PlanLimits flat = ExampleJobs.inchSlipFit().allLimits();
    assertEquals(mrad(1), named(flat, "tilt of the roller").permitted());
    assertTrue(flat.warnings().stream().anyMatch(warning -> warning.code().equals("track-misalignment-not-stated")));
    assertFalse(flat.warnings().stream().anyMatch(warning -> warning.code().equals("face-not-stated")));
    assertTrue(limits.warnings().stream().anyMatch(warning -> warning.code().equals("crowned-ring-tilt")));
  }

  @Test
  void aFlatRingCountsTheTiltOfItsTrack() {
    InstallationPlan slip = ExampleJobs.inchSlipFit();
    Duty duty = slip.duty();
    Duty leaning = new Duty(duty.spectrum(), duty.wantedLife(), duty.reliability(), duty.staticSafety(),
        duty.workingTemperature(), duty.viscosity(), duty.contamination(), duty.track(), duty.trackHardness(), mrad(0.25),
        Port.HEAD, false, duty.surroundings(), duty.loadChange());
    InstallationPlan plan = new InstallationPlan(slip.job(), slip.roller(), slip.member(), slip.nut(), leaning);
    double alone = slip.tilt().total().radian();
    assertEquals(alone + 0.25e-3, named(plan.allLimits(), "tilt of the roller").demand().base(), 1e-15);
    assertEquals(alone, named(slip.allLimits(), "tilt of the roller").demand().base(), 1e-15);
    assertFalse(plan.allLimits().warnings().stream().anyMatch(w -> w.code().equals("track-misalignment-not-stated")));
    // Without a stated face a loose seat may lean by all of its clearance, and that is said, not stopped.
    MachineMember open = new MachineMember("bracket", slip.member().body(), slip.member().boreTolerance(),
        slip.member().seatLength(), slip.member().pressingFriction());
    PlanLimits unknown = new InstallationPlan(slip.job(), slip.roller(), open, slip.nut(), duty).allLimits();
    assertEquals(LimitCheck.Consequence.WARNING, named(unknown, "tilt of the roller").consequence());
    assertEquals(LimitCheck.Consequence.STOP, named(plan.allLimits(), "tilt of the roller").consequence());
    assertTrue(unknown.warnings().stream().anyMatch(warning -> warning.code().equals("face-not-stated")));
  }

  private static LimitCheck named(PlanLimits limits, String name) {
    return limits.checks().stream().filter(check -> check.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void aRingMayBeAsHotAndAsColdAsItsMakerSays() {
    assertTrue(stopsAt(110).stream().noneMatch(stop -> stop.contains("temperature")));
    assertTrue(stopsAt(110.1).stream().anyMatch(stop -> stop.contains("'temperature, hot' is exceeded: the duty asks 110.1 °C and"
        + " at most 110 °C")));
    assertTrue(stopsAt(-20).stream().noneMatch(stop -> stop.contains("temperature")));
    assertTrue(stopsAt(-20.1).stream().anyMatch(stop -> stop.contains("'temperature, cold' is exceeded: the duty asks -20.1 °C and"
        + " at least -20 °C")));
  }

  private List<String> stopsAt(double celsius) {
    Duty duty = Duty.of(kN(1), rpm(180)).life(hours(100), Reliability.ofPercent(90)).staticSafety(1).at(degC(celsius))
        .lubricant(example.duty().viscosity(), example.duty().contamination()).track(ContactSurface.flat(), 45)
        .lubricatedForLife().build();
    return new InstallationPlan("job", example.roller(), example.member(), example.nut(), duty).stops();
  }

  @Test
  void theWrenchStaysInItsWindow() {
    assertEquals(List.of(), stops(Nm(75), 0.04));
    // The maker's 85 N·m: 85/1.04 = 81.73 may be set and no more.
    assertTrue(stops(Nm(81.7), 0.04).isEmpty());
    List<String> above = stops(Nm(81.8), 0.04);
    assertTrue(above.stream().anyMatch(stop -> stop.startsWith("the wrench is set to 81.8 N·m, outside the window of ")));
    assertTrue(above.stream().anyMatch(stop -> stop.startsWith("the wrench may give 85.07 N·m, more than the 85 N·m")));
    assertTrue(stops(Nm(15), 0.04).stream().anyMatch(stop -> stop.startsWith("the wrench is set to 15 N·m, outside the window")));
    assertEquals(1, stops(Nm(15), 0.04).size());
    // At exactly the maker's torque nothing is said about it.
    assertTrue(stops(Nm(85), 0).stream().noneMatch(stop -> stop.contains("permits")));
  }

  private List<String> stops(Torque torque, double error) {
    Nut nut = Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(torque, error).reserve(1.5).build();
    return new InstallationPlan("job", example.roller(), example.member(), nut, example.duty()).stops();
  }

  @Test
  void theFlangeAloneClosesTheJointFromSomeTorque() {
    // Twice the reserve asks for twice the clamp, less what warmth takes in either case.
    double single = closedFrom(1);
    double twice = closedFrom(2);
    double four = closedFrom(4);
    assertEquals(2 * (twice - single), four - twice, 1e-6 * four);
    assertTrue(twice > single);
  }

  private double closedFrom(double reserve) {
    Nut nut = Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(Nm(75), 0).reserve(reserve).build();
    return new InstallationPlan("job", example.roller(), example.member(), nut, example.duty()).faceClosedFrom()
        .newtonMillimetre();
  }

  @Test
  void whatPassesThroughTheStudIsTheTorqueOfItsThread() {
    // T = F (p/(2π) + μ d2/(2 cos 30°)), F = M/(p/(2π) + μ d2/(2 cos 30°) + μk Dk/2): greatest for rough threads and smooth faces.
    double pitch = 1.5;
    double d2 = 18 - 0.6495190528383290 * pitch;
    double thread = pitch / (2 * Math.PI) + 0.16 * d2 / (2 * Math.cos(Math.PI / 6));
    double face = 0.10 * 0.25 * (24.8 + 19);
    double through = 78_000 * thread / (thread + face);
    assertEquals(through, example.torqueThroughStud().newtonMillimetre(), 0.01 * through);
    // A loose seat holds nothing of it.
    InstallationPlan loose = example.withBore("H7");
    assertEquals(loose.torqueThroughStud(), loose.torqueToBeHeld());
    assertTrue(example.torqueToBeHeld().newtonMillimetre() < through);
  }

  @Test
  void speedsAreTheMakersOrThoseOfTheTable() {
    RotationalSpeed stated = rpm(1234);
    StudRoller fast = roller().speedLimit(stated).build();
    assertEquals(stated, plan(fast).greatestSpeed());
    assertEquals("as stated by the maker of the roller", named(plan(fast).allLimits(), "speed").sources().get(0).locator());
    RotationalSpeed open = plan(roller().build()).greatestSpeed();
    RotationalSpeed sealed = plan(roller().inside(RollerKind.CAGED_NEEDLE, true).build()).greatestSpeed();
    assertTrue(sealed.rpm() < open.rpm());
    // Linear motion and cam follower catalogue: d1·n up to 84 000 mm·rpm with grease.
    assertEquals(84_000.0 / 18, open.rpm(), 1e-9);
    assertFalse(named(plan(roller().build()).allLimits(), "speed").sources().isEmpty());
  }

  private InstallationPlan plan(StudRoller roller) {
    return new InstallationPlan("job", roller, example.member(), example.nut(), example.duty());
  }

  @Test
  void theSummaryHoldsTheFigures() {
    PlanSummary summary = example.summary();
    assertEquals(17.964, value(summary, "bore.lower-limit"), 1e-9);
    assertEquals(17.975, value(summary, "bore.upper-limit"), 1e-9);
    assertEquals(17.982, value(summary, "stud.lower-limit"), 1e-9);
    assertEquals(18, value(summary, "stud.upper-limit"), 1e-9);
    assertEquals(-36, value(summary, "fit.clearance.least"), 1e-9);
    assertEquals(-7, value(summary, "fit.clearance.greatest"), 1e-9);
    assertEquals(75, value(summary, "tighten.setting"), 1e-12);
    assertEquals(85 / 1.04, value(summary, "tighten.window.highest"), 1e-9);
    assertEquals(54134.36871919212, value(summary, "life.basic-l10"), 0.01);
    assertEquals(1.6, value(summary, "grease.quantity"), 1e-9);
    for (String id : List.of("press.pressure.least", "press.pressure.greatest", "press.force.least", "press.force.greatest",
        "tighten.window.lowest", "tighten.preload.least", "tighten.preload.greatest", "tighten.hold-at-head", "tilt.stud",
        "life.replace-after", "grease.interval")) {
      assertTrue(value(summary, id) > 0, id);
    }
    assertTrue(value(summary, "press.force.least") < value(summary, "press.force.greatest"));
    assertTrue(value(summary, "tighten.preload.least") < value(summary, "tighten.preload.greatest"));
    PlanSummary.Limit cold = summary.limits().stream().filter(l -> l.name().equals("temperature, cold")).findFirst().orElseThrow();
    assertEquals(new PlanSummary.Limit("temperature, cold", 60, false, -20, "°C", true), cold);
    PlanSummary.Limit stud = summary.limits().stream().filter(l -> l.name().equals("stud")).findFirst().orElseThrow();
    assertEquals(new PlanSummary.Limit("stud", 2100, true, 9000, "N", true), stud);
    assertEquals("MPa", unit(summary, "stud at the mouth of the seat"));
    assertEquals("rpm", unit(summary, "speed"));
    assertEquals("rad", unit(ExampleJobs.inchSlipFit().summary(), "tilt of the roller"));
    assertTrue(summary.warnings().stream().anyMatch(warning -> warning.contains("crowned ring")));
    assertTrue(summary.warnings().stream().anyMatch(warning -> warning.contains("Cu")));
    assertTrue(summary.stops().isEmpty());
    assertTrue(example.withBore("H7").summary().values().stream().noneMatch(v -> v.id().startsWith("press")));
    assertEquals(ExampleJobs.impossible().stops(), ExampleJobs.impossible().summary().stops());
  }

  private static double value(PlanSummary summary, String id) {
    return summary.values().stream().filter(v -> v.id().equals(id)).findFirst().orElseThrow().value();
  }

  private static String unit(PlanSummary summary, String limit) {
    return summary.limits().stream().filter(l -> l.name().equals(limit)).findFirst().orElseThrow().unit();
  }

  record Sample(String text, List<Boolean> flags, double number) {}

  @Test
  void jsonIsEscaped() {
    assertEquals("{\"text\":\"a\\\"b\\\\c\\u000a\\u001fé \",\"flags\":[true,false],\"number\":1.5}",
        Json.write(new Sample("a\"b\\c\n\u001fé ", List.of(true, false), 1.5)));
    assertEquals("[]", Json.write(List.of()));
  }

  @Test
  void aCrownLeansByTheMomentOverTheLoad() {
    // A ball of radius R on a plane moves its point of contact by R ψ; the moment of the load about the middle is F R ψ.
    assertEquals(0.5, CrownKernel.shift(500, 1e-3), 1e-6);
    assertEquals(1e-3, CrownKernel.ringTilt(960, 2000, 500, 40), 1e-18);
    assertEquals(-1e-3, CrownKernel.ringTilt(-960, 2000, 500, 40), 1e-18);
    refused("arm R - D/2 of the load", () -> CrownKernel.ringTilt(1, 1, 20, 40));
    refused("outside diameter D", () -> CrownKernel.ringTilt(1, 1, 20, 0));
    refused("crown radius less half the outside diameter", () -> roller().ring(mm(40), mm(20), mm(20)).build());
    refused("crown radius R (0 mm)", () -> CrownKernel.shift(0, 1e-3));
    refused("crown radius R (0 mm)", () -> CrownKernel.ringTilt(1, 1, 0, 40));
    refused("load F (0 N)", () -> CrownKernel.ringTilt(1, 0, 50, 40));
    refused("moment between the raceways", () -> CrownKernel.ringTilt(Double.NaN, 1, 50, 40));
  }

  @Test
  void lengthsOfAMeasurementAreWrittenInwards() {
    MeasuredText metric = new MeasuredText(SheetUnits.METRIC);
    assertEquals("17.9821 mm … 17.9998 mm", metric.zone(new holdfast.fits.LimitsOfSize(mm(17.98203), mm(17.99989))));
    assertEquals("17.9820 mm … 18.0000 mm", metric.zone(new holdfast.fits.LimitsOfSize(mm(17.982), mm(18))));
    assertEquals("7.0 µm", metric.amount(new Length(-0.007)));
    assertTrue(metric.clearance(um(-7)).endsWith(" interference"));
    assertTrue(metric.clearance(um(0)).endsWith(" clearance"));
    assertTrue(new MeasuredText(SheetUnits.INCH).size(inch(1)).contains("1.00000 in"));
    assertEquals("25.4000 mm (1.00000 in)", new MeasuredText(SheetUnits.METRIC_AND_INCH).size(inch(1)));
    assertEquals("1.00000 in (25.4000 mm)", new MeasuredText(SheetUnits.INCH_AND_METRIC).size(inch(1)));
  }
}
