// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.bearings.TrackRoller;
import holdfast.bearings.reference.RingMotion;
import holdfast.bearings.reference.RollerProfile;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.contact.ContactSurface;
import holdfast.fits.Fit;
import holdfast.fits.Gauge;
import holdfast.fits.MeasuredPart;
import holdfast.installation.Duty;
import holdfast.installation.DutyBuilder;
import holdfast.installation.ExampleJobs;
import holdfast.installation.Fork;
import holdfast.installation.InstallationPlan;
import holdfast.installation.MachineMember;
import holdfast.installation.Nut;
import holdfast.installation.Pin;
import holdfast.installation.PinSecuring;
import holdfast.installation.PlanBuilder;
import holdfast.installation.RollerInterior;
import holdfast.installation.SeatPrice;
import holdfast.installation.SeatPriceBuilder;
import holdfast.installation.StudRoller;
import holdfast.installation.StudRollerBuilder;
import holdfast.installation.Surroundings;
import holdfast.installation.ValueOrigin;
import holdfast.installation.YokePlan;
import holdfast.installation.YokeRoller;
import holdfast.installation.YokeRollerBuilder;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortRequest;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.MeasuredRoller;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.SpeedLimit;
import holdfast.seats.FrictionBand;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.RequiredInterference;
import holdfast.seats.SeatTilt;
import holdfast.seats.StudDuty;
import holdfast.seats.ThermalAssembly;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import holdfast.threads.Joint;
import holdfast.threads.JointDemand;
import holdfast.threads.ScrewThread;
import holdfast.threads.Tightening;
import holdfast.threads.TorsionModel;
import holdfast.threads.WindowRules;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** What is described step by step does not depend on the order of the steps: every order, or 150 drawn ones. */
class OrderOfCallsTest {
  private static final Material STEEL = Material.of("16MnCr5");

  @SafeVarargs
  @SuppressWarnings("varargs")
  private static <T> void anyOrder(Supplier<T> start, Function<T, ?> result, UnaryOperator<T>... steps) {
    Object expected = result.apply(run(start, List.of(steps)));
    List<UnaryOperator<T>> order = new ArrayList<>(List.of(steps));
    Random random = new Random(7);
    int tries = Math.min(150, factorial(steps.length) * 3);
    for (int i = 0; i < tries; i++) {
      Collections.shuffle(order, random);
      Object now = result.apply(run(start, order));
      // Not every description ends in a type with equality; all that matters of those is what is written of them.
      if (!expected.equals(now)) {
        assertEquals(bytes(expected), bytes(now), expected + " against " + now);
      }
    }
  }

  private static <T> T run(Supplier<T> start, List<UnaryOperator<T>> steps) {
    T now = start.get();
    for (UnaryOperator<T> step : steps) {
      now = step.apply(now);
    }
    return now;
  }

  private static int factorial(int n) {
    return n < 2 ? 1 : n > 5 ? 150 : n * factorial(n - 1);
  }

  private static List<Byte> bytes(Object value) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ObjectOutputStream stream = new ObjectOutputStream(out)) {
      stream.writeObject(value);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    List<Byte> list = new ArrayList<>();
    for (byte b : out.toByteArray()) {
      list.add(b);
    }
    return list;
  }

  /** A groove or cross hole stated before the bore once kept no bore: 24 % on the unsafe side. */
  @Test
  void tightening() {
    anyOrder(
        () -> Tightening.of(ScrewThread.of("M18x1.5")),
        t -> t.preload(Nm(75)).greatestStress() + " " + new HashSet<>(t.sections()).equals(sections()),
        t -> t.bore(mm(6)), t -> t.groove(mm(15)), t -> t.crossHole(mm(17), mm(3)), t -> t.bearingFace(mm(24.8), mm(19)),
        t -> t.friction(0.1, 0.16), t -> t.prevailing(Nm(5)), t -> t.torsion(TorsionModel.ELASTIC));
  }

  private static Set<Object> sections() {
    return new HashSet<>(
        Tightening.of(ScrewThread.of("M18x1.5")).bore(mm(6)).groove(mm(15)).crossHole(mm(17), mm(3)).sections());
  }

  @Test
  void jointDemandAndRules() {
    Tightening nut = Tightening.of(ScrewThread.of("M18x1.5")).friction(0.1, 0.16);
    anyOrder(
        () -> Joint.of(nut, mm(20), mm(40), mm(19)), j -> j,
        j -> j.head(mm(0)), j -> j.moduli(GPa(206), GPa(170)), Joint::tappedHole,
        j -> j.pieces(new Joint.Piece(nut.sections().get(0), mm(20))));
    anyOrder(
        () -> JointDemand.ofClamp(kN(2)), d -> d,
        d -> d.axialLoad(kN(10), 0.2), d -> d.moment(Nm(100), mm(30), mm(18)), d -> d.slip(kN(1), 0.1), d -> d.reserve(1.5),
        d -> d.changes(kN(3), kN(-2)));
    anyOrder(
        WindowRules::usual, r -> r,
        r -> r.utilisation(0.8), r -> r.facePressure(MPa(300)), r -> r.greatestPreload(kN(50)), r -> r.makersMaximum(Nm(85)));
  }

  @Test
  void seats() {
    InterferenceFit fit = InterferenceFit.of(
        InnerPart.solid(STEEL), OuterPart.ring(Material.of("C45+N"), mm(50)), Fit.of(mm(18), "S6/h7"), mm(16));
    anyOrder(
        () -> SeatTilt.of(um(20), mm(18), mm(16)), SeatTilt.Builder::build,
        b -> b.bending(mrad(0.3)), b -> b.clampedFace(um(12), mm(32)));
    anyOrder(
        fit::thermalAssembly, ThermalAssembly.Builder::build,
        b -> b.room(degC(25)), b -> b.studAt(degC(-20)), b -> b.studFloor(degC(-60)), b -> b.clearance(um(20)));
    anyOrder(
        () -> RequiredInterference.of(InnerPart.solid(STEEL), OuterPart.ring(Material.of("C45+N"), mm(50)), mm(18), mm(16)),
        RequiredInterference.Builder::build,
        b -> b.hold(kN(2), Nm(10)), b -> b.adhesion(FrictionBand.of(0.1, 0.2), 1.5));
    anyOrder(
        () -> Material.named("made up", SourceRef.derived("made up for this test")),
        b -> b.build().toString() + b.build().yieldStrength() + b.build().tensileStrength() + b.build().elasticModulus(),
        b -> b.elastic(GPa(206), 0.3), b -> b.expansion(umPerMK(11.5)), b -> b.yieldStrength(MPa(400)),
        b -> b.tensileStrength(MPa(700)), b -> b.density(7800), b -> b.condition("normalised"), b -> b.note("invented"));
  }

  @Test
  void bearings() {
    LoadRatings ratings = LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING);
    anyOrder(
        () -> TrackRoller.of(ratings, mm(40), true), r -> r,
        r -> r.withRingLimits(kN(8), kN(13)), r -> r.withStudLimit(kN(9)), r -> r.withTrackCapacity(kN(4)),
        r -> r.withSpeedLimit(rpm(900)));
    anyOrder(
        () -> LoadSpectrum.builder(), b -> Math.round(1e6 * b.build().meanLoad(BearingFamily.RADIAL_ROLLER).newton()),
        b -> b.step(lbf(380), rpm(220), 0.6), b -> b.step(lbf(450), rpm(180), 0.3), b -> b.step(lbf(520), rpm(60), 0.1));
    anyOrder(
        () -> interior().bearing(ratings), b -> b,
        b -> b.clearance(um(20)), b -> b.rings(RingMotion.STATIONARY, RingMotion.ROTATING), b -> b.laminae(40),
        TiltedBearing::withoutEdgeStress, b -> b.firstElementAt(rad(0.1)));
    anyOrder(
        () -> SpeedLimit.greased(RollerKind.CAGED_NEEDLE, mm(18)), s -> s,
        SpeedLimit::withSeals, SpeedLimit::withOil, SpeedLimit::withAxialLoad);
    anyOrder(
        () -> MeasuredRoller.outsideDiameter(mm(40)), MeasuredRoller::toString,
        m -> m.ringWidth(mm(20)), m -> m.stud(mm(18)), m -> m.studLength(mm(36)), m -> m.threadLength(mm(19)));
    anyOrder(
        () -> PortRequest.of(MeasureSystem.METRIC, mm(40), mm(18), Port.HEAD), p -> p,
        p -> p.withHead(HeadForm.HEXAGON_SOCKET), PortRequest::withEccentricCollar, PortRequest::withSeatFeedHole);
  }

  @Test
  void measuredParts() {
    anyOrder(
        () -> Gauge.of("G 1", um(1)), g -> g,
        g -> g.steelAt(degC(21)), g -> g.calibratedUntil(LocalDate.of(2030, 1, 1)));
    anyOrder(
        () -> MeasuredPart.by(Gauge.of("G 1", um(1))), m -> m.toString() + m.hashCode(),
        m -> m.at(degC(24)), m -> m.allAt(degC(21)), m -> m.on(LocalDate.of(2029, 1, 1)), m -> m.station(mm(18), mm(18.001)));
  }

  private static RollerInterior interior() {
    return RollerInterior.describe()
        .rollers(16, mm(3.5), mm(12), ValueOrigin.STATED)
        .pitchDiameter(mm(23), ValueOrigin.STATED)
        .clearance(um(20), ValueOrigin.ESTIMATED)
        .profile(RollerProfile.logarithmic(), ValueOrigin.ESTIMATED)
        .build();
  }

  @Test
  void partsOfAJob() {
    anyOrder(
        RollerInterior::describe, RollerInterior.Builder::build,
        b -> b.rollers(16, mm(3.5), mm(12), ValueOrigin.STATED), b -> b.pitchDiameter(mm(23), ValueOrigin.STATED),
        b -> b.clearance(um(20), ValueOrigin.ESTIMATED), b -> b.profile(RollerProfile.logarithmic(), ValueOrigin.ESTIMATED),
        b -> b.rows(2, mm(13)));
    anyOrder(
        () -> Nut.onFace(mm(24.8), mm(19)), Nut.Builder::build,
        b -> b.friction(holdfast.installation.ThreadCondition.OILED, 0.1, 0.16), b -> b.wrench(Nm(75), 0.04), b -> b.reserve(1.5), b -> b.engaged(mm(15), MPa(300)),
        b -> b.selfLocking(Nm(8)));
    anyOrder(
        () -> MachineMember.named("lever"), MachineMember.Builder::build,
        b -> b.body(OuterPart.ring(Material.of("C45+N"), mm(50))), b -> b.bore("S6", mm(16)),
        b -> b.pressingFriction(FrictionBand.of(0.08, 0.2)), b -> b.faceRunOut(um(12)), MachineMember.Builder::feedHole);
    anyOrder(
        () -> Fork.named("fork"), Fork.Builder::build,
        b -> b.ears(OuterPart.ring(Material.of("C45+N"), mm(46)), mm(12), mm(26)), b -> b.bore("N7"),
        b -> b.pressingFriction(FrictionBand.of(0.08, 0.2)), Fork.Builder::ringClamped, Fork.Builder::feedHole);
    anyOrder(
        () -> Pin.of("h6", STEEL), Pin.Builder::build,
        b -> b.drilled(mm(4), mm(3), false), b -> b.roughness(um(2)), b -> b.hardness(60),
        b -> b.securedBy(PinSecuring.KEEPER_PLATE));
    anyOrder(
        Surroundings::clean, s -> s,
        s -> s.dirt("severe, non-abrasive"), s -> s.moisture("occasional condensation"), s -> s.vibration(mmPerS(6)));
    anyOrder(
        () -> Duty.of(kN(2.1), rpm(180)), DutyBuilder::build,
        b -> b.life(hours(20000), Reliability.ofPercent(95)), b -> b.staticSafety(2), b -> b.at(degC(60)),
        b -> b.lubricant(mm2PerS(150), ContaminationLevel.SLIGHT_CONTAMINATION), b -> b.track(ContactSurface.flat(), 45),
        b -> b.trackMisalignment(mrad(1)), b -> b.greaseThrough(Port.HEAD), DutyBuilder::uprightAxis,
        b -> b.surroundings(Surroundings.clean()), b -> b.loadChange(StudDuty.REPEATED));
  }

  /** What is stated for itself goes before what the table of the series tells, whichever comes first. */
  @Test
  void rollers() {
    anyOrder(
        () -> StudRoller.named("roller"), StudRollerBuilder::build,
        b -> b.size(RollerSeries.INCH_STANDARD_STUD.size(inch("1-1/2")), mm(0)), b -> b.thread("5/8-11"),
        b -> b.stud(inch("5/8"), "h6"), b -> b.flange(mm(24), mm(1)), b -> b.ring(mm(38), mm(22), mm(500)),
        b -> b.system(MeasureSystem.METRIC), b -> b.greaseBore(mm(3)), b -> b.crossHole(mm(2)), b -> b.material(STEEL, um(2)),
        b -> b.inside(RollerKind.CAGED_NEEDLE, false), b -> b.head(HeadForm.HEXAGON_SOCKET), StudRollerBuilder::fittingInSocket,
        b -> b.ratings(LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING)),
        b -> b.temperatures(degC(-20), degC(110)), b -> b.greatestTorque(Nm(85)), b -> b.studLimit(kN(9)));
    anyOrder(
        () -> YokeRoller.named("roller"), YokeRollerBuilder::build,
        b -> b.ring(mm(52), mm(24), mm(0)), b -> b.bore(mm(20), "0/-0.010 mm", mm(25)), YokeRollerBuilder::greaseHoleInRing,
        b -> b.inside(RollerKind.CAGED_NEEDLE, false), b -> b.system(MeasureSystem.METRIC),
        b -> b.ratings(LoadRatings.trackRoller(kN(21), kN(34), OuterRing.RIGID)),
        b -> b.temperatures(degC(-20), degC(120)), b -> b.trackCapacity(kN(14)), b -> b.pinLimit(kN(20)));
  }

  @Test
  void plans() {
    InstallationPlan e = ExampleJobs.metricLever();
    anyOrder(
        () -> InstallationPlan.of(e.roller()), PlanBuilder::build,
        b -> b.job("made up"), b -> b.member(e.member()), b -> b.nut(e.nut()), b -> b.duty(e.duty()),
        b -> b.units(SheetUnits.INCH));
    YokePlan y = ExampleJobs.yokeInFork();
    assertEquals(y.withUnits(SheetUnits.INCH).withUnits(y.units()), y);
    anyOrder(
        () -> SeatPrice.of(interior(), LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING)),
        b -> b.build().toString(),
        b -> b.duty(kN(2), rpm(180)), b -> b.seat(mm(18), mm(16)), b -> b.ring(mm(40), mm(500)), b -> b.bending(mrad(0.3)),
        b -> b.face(um(12), mm(32)), b -> b.fit(Fit.of(mm(18), "H7/h7")));
  }
}
