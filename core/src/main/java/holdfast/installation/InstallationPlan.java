// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.fits.FitAtTemperature;
import holdfast.fits.FitKind;
import holdfast.fits.MeasuredPart;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.Angle;
import holdfast.quantity.InputException;
import holdfast.quantity.PlainText;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import holdfast.quantity.Temperature;
import holdfast.quantity.Torque;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.SeatSlope;
import holdfast.seats.SeatTilt;
import holdfast.seats.ServiceState;
import holdfast.seats.ShankSection;
import holdfast.seats.StudBendingKernel;
import holdfast.seats.StudDeflection;
import holdfast.seats.StudFatigue;
import holdfast.seats.StudFatigueCriterion;
import holdfast.seats.StudLoad;
import holdfast.seats.StudNotchKernel;
import holdfast.seats.StudStrength;
import holdfast.sheet.Sheet;
import holdfast.sheet.SheetUnits;
import holdfast.threads.Friction;
import holdfast.threads.PreloadBand;
import holdfast.threads.ScrewThread;
import holdfast.threads.Tightening;
import holdfast.threads.TorqueWindow;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A roller, its seat, its nut and its duty, joined. The plan only joins: every number comes from the calculation of its
 * subject.
 *
 * @param job what the job is called on the sheet
 * @param roller the roller
 * @param member the machine member that takes the stud
 * @param nut the nut and its tightening
 * @param duty what the roller has to do
 * @param fleet the places that run it; null if the job is a single one
 * @param units units in which the sheet prints
 */
public record InstallationPlan(
    String job, StudRoller roller, MachineMember member, Nut nut, Duty duty, FleetDuty fleet, SheetUnits units)
    implements MountingPlan {
  /** Parts are joined and tightened at the reference temperature of ISO 1. */
  static final Temperature SHOP = new Temperature(20);

  /**
   * Refuses a plan with a part left out and one whose parts cannot be joined: later nothing throws.
   *
   * @param job what the job is called on the sheet
   * @param roller the roller
   * @param member the machine member that takes the stud
   * @param nut the nut and its tightening
   * @param duty what the roller has to do
   * @param fleet the places that run it; null if the job is a single one
   * @param units units in which the sheet prints
   * @throws InputException if a part is missing, or the parts do not go together
   */
  public InstallationPlan(
      String job, StudRoller roller, MachineMember member, Nut nut, Duty duty, FleetDuty fleet, SheetUnits units) {
    new Missing("installation plan")
        .need(job, "job")
        .need(roller, "roller")
        .need(member, "member")
        .need(nut, "nut")
        .need(duty, "duty")
        .refuse();
    PlainText.name(job, "name of the job");
    Objects.requireNonNull(units, "units");
    if (roller.lengths() != null && member.seatLength().compareTo(roller.lengths().shank()) > 0) {
      throw new InputException("seat length", member.seatLength().toString(),
          "up to the plain shank of the stud, " + roller.lengths().shank(), "stud and bore touch along the plain shank only");
    }
    roller.statedTorque().filter(limit -> nut.prevailing().compareTo(limit) >= 0).ifPresent(limit -> {
      throw new InputException("prevailing torque", nut.prevailing().toString(), "below " + limit + " of the roller's maker",
          "nothing is left to pull the stud");
    });
    this.job = job;
    this.roller = roller;
    this.member = member;
    this.nut = nut;
    this.duty = duty;
    this.fleet = fleet;
    this.units = units;
    // Thread, grease bore, bore class, thickness of the ring and strength meet here for the first time.
    seatAtWork();
    torqueWindow();
    stud();
    tilt();
  }

  /**
   * A plan for a single roller, its sheet in the units of the roller.
   *
   * @param job what the job is called on the sheet
   * @param roller the roller
   * @param member the machine member that takes the stud
   * @param nut the nut and its tightening
   * @param duty what the roller has to do
   */
  public InstallationPlan(String job, StudRoller roller, MachineMember member, Nut nut, Duty duty) {
    this(job, roller, member, nut, duty, null, JobBuilder.unitsOf(roller));
  }

  /**
   * The bundled example: an invented job in an invented works.
   *
   * @return the plan
   */
  public static InstallationPlan example() {
    return ExampleJobs.metricLever();
  }

  /**
   * Starts a plan.
   *
   * @param roller the roller
   * @return a builder
   */
  public static PlanBuilder of(StudRoller roller) {
    return new PlanBuilder(roller);
  }

  /**
   * Starts a plan with a roller that is still being described, so that one error can name all that the job lacks.
   *
   * @param roller the description of the roller
   * @return a builder
   */
  public static PlanBuilder of(StudRollerBuilder roller) {
    return new PlanBuilder(roller);
  }

  /**
   * The same job with another bore.
   *
   * @param tolerance tolerance class of the bore, or its limit deviations
   * @return the plan
   */
  public InstallationPlan withBore(String tolerance) {
    Objects.requireNonNull(tolerance, "tolerance");
    return new InstallationPlan(job, roller, member.withBore(tolerance), nut, duty, fleet, units);
  }

  @Override
  public InstallationPlan withUnits(SheetUnits sheetUnits) {
    Objects.requireNonNull(sheetUnits, "sheetUnits");
    return new InstallationPlan(job, roller, member, nut, duty, fleet, sheetUnits);
  }

  /**
   * Fit of the stud in the bore.
   *
   * @return the fit by the tolerances of bore and stud
   * @throws InputException if a tolerance cannot be read or is not defined for the size
   */
  public Fit fit() {
    TolerancedSize hole = TolerancedSize.of(roller.studDiameter(), member.boreTolerance());
    return Fit.of(hole, TolerancedSize.of(roller.studDiameter(), roller.studTolerance()));
  }

  /**
   * The seat as a press fit.
   *
   * @return the interference fit; empty if the fit is a clearance fit
   */
  public Optional<InterferenceFit> seat() {
    Fit fit = fit();
    if (fit.kind() == FitKind.CLEARANCE) {
      return Optional.empty();
    }
    return Optional.of(InterferenceFit.of(inner(), member.body(), fit, member.seatLength()));
  }

  /**
   * The drilled stud and its nut.
   *
   * @return the tightening
   */
  public Tightening tightening() {
    return tightening(roller, nut);
  }

  private static Tightening tightening(StudRoller roller, Nut nut) {
    Tightening plain = Tightening.of(ScrewThread.of(roller.thread()))
        .bore(roller.greaseBore())
        .bearingFace(nut.faceOuter(), nut.faceInner())
        .friction(nut.leastFriction(), nut.greatestFriction())
        .prevailing(nut.prevailing());
    return roller.crossHole().mm() == 0 ? plain : plain.crossHole(roller.studDiameter(), roller.crossHole());
  }

  /**
   * Preload when the wrench gives its least torque.
   *
   * @return the band over friction
   */
  public PreloadBand loosest() {
    return tightening().preload(nut.leastTorque());
  }

  /**
   * Preload when the wrench gives its greatest torque.
   *
   * @return the band over friction
   */
  public PreloadBand tightest() {
    return tightening().preload(nut.greatestTorque());
  }

  /**
   * The press fit at the temperature of the work.
   *
   * @return interference and pressure at work; empty if the fit is a clearance fit
   */
  public Optional<ServiceState> seatAtWork() {
    return seat().map(seat -> seat.atWork(duty.workingTemperature(), duty.workingTemperature()));
  }

  /**
   * Greatest torque that passes through the stud while the nut is tightened: pitch and thread friction, with high
   * friction in the thread and low friction under the face, at the greatest torque of the wrench.
   *
   * @return the torque
   */
  public Torque torqueThroughStud() {
    Friction worst =
        new Friction(nut.greatestFriction(), nut.greatestFriction(), nut.leastFriction(), nut.leastFriction());
    return tightening().friction(worst).preload(nut.greatestTorque()).greatest().threadTorque();
  }

  /**
   * Torque to be held at the head of the stud while the nut is tightened, so that the stud does not turn in its seat.
   *
   * @return what the loosest pair does not hold at the temperature of the shop; all of it in a clearance fit
   */
  public Torque torqueToBeHeld() {
    Torque through = torqueThroughStud();
    return seat()
        .map(seat -> seat.atWork(SHOP, SHOP).holding(member.pressingFriction()).torqueToBeHeld(through))
        .orElse(through);
  }

  /**
   * Torques whose preload outlasts settling and temperature and which overload nothing. The bore of the member carries load
   * and moment, so the flange need not: {@link #faceClosedFrom()} says from where it could.
   *
   * @return the window, open or empty
   */
  public TorqueWindow torqueWindow() {
    return NutJoint.window(this);
  }

  /**
   * Least torque at which the flange alone would carry the moment of the load and stay closed all round, at the greatest
   * friction and the least torque of the wrench, settling made good by the second tightening. Below it the bore must carry.
   *
   * @return the set torque
   */
  public Torque faceClosedFrom() {
    return NutJoint.faceClosedFrom(this);
  }

  /**
   * Whether the flange stays closed all round at the torque of the nut.
   *
   * @return false if the bore must carry the moment
   */
  public boolean faceStaysClosed() {
    return nut.torque().compareTo(faceClosedFrom()) >= 0;
  }

  /**
   * The stud under load, preload, the torque still in it, the faces that bend it and the pressure of the tightest pair, in
   * the shop or at work, whichever presses more.
   *
   * @return bending, tension and equivalent stress at the mouth of the seat
   */
  public StudStrength stud() {
    StudLoad load =
        StudLoad.radial(duty.load(), roller.ringWidth(), roller.ringGap())
            .tightened(tightest().greatestPreload(), torqueThroughStud());
    return StudStrength.of(shank(), load)
        .pressed(greatestPressure())
        .bentByFaces(forcedLean(), roller.material().elasticModulus(), member.seatLength());
  }

  private Stress greatestPressure() {
    Stress inShop = seat().map(seat -> seat.attainedPressure().greatest()).orElse(new Stress(0));
    Stress atWork = seatAtWork().map(work -> work.pressure().greatest()).orElseGet(this::pressureOfWarmStud);
    return inShop.compareTo(atWork) >= 0 ? inShop : atWork;
  }

  /** A stud that grows more than its bore can press at work though it slips in. */
  private Stress pressureOfWarmStud() {
    Length tightest = fitAtWork().minimumClearance().negated();
    if (tightest.mm() <= 0) {
      return new Stress(0);
    }
    InterferenceBand band =
        InterferenceBand.of(roller.studDiameter(), fitAtWork().maximumClearance().negated(), tightest);
    return InterferenceFit.of(inner(), member.body(), band, member.seatLength()).attainedPressure().greatest();
  }

  private InnerPart inner() {
    return InnerPart.hollow(roller.material(), roller.greaseBore()).withRoughness(roller.seatRoughness());
  }

  /**
   * Fit of the stud in the bore at the temperature of the work, both parts free to grow.
   *
   * @return the fit at work
   */
  public FitAtTemperature fitAtWork() {
    return FitAtTemperature.uniform(
        fit(), member.body().material().thermalExpansion(), roller.material().thermalExpansion(),
        duty.workingTemperature());
  }

  /** Clearance of the loosest pair in the shop or at work, whichever is greater: a machine starts cold. */
  Length greatestClearance() {
    Length inShop = fit().maximumClearance();
    Length atWork = fitAtWork().maximumClearance();
    return inShop.compareTo(atWork) >= 0 ? inShop : atWork;
  }

  /** The tightest pair leaves the faces the least play. */
  private Angle forcedLean() {
    SeatTilt.Builder tightest = SeatTilt.of(fit().minimumClearance(), roller.studDiameter(), member.seatLength());
    return member.statedRunOut()
        .map(runOut -> tightest.clampedFace(runOut, roller.flangeDiameter()).build())
        .map(tilt -> new Angle(Math.max(0, tilt.byFaces().radian() - tilt.byClearance().radian())))
        .orElse(new Angle(0));
  }

  /**
   * Slope of the stud at the roller under the load, in a rigid seat.
   *
   * @return the deflection with its slope
   */
  public StudDeflection deflection() {
    StudLoad load = StudLoad.radial(duty.load(), roller.ringWidth(), roller.ringGap());
    return StudDeflection.of(shank(), load, roller.material(), member.seatLength());
  }

  /**
   * Slope of the stud at the roller under the load, in the elastic seat. The tilt and the verdict count that of a rigid seat.
   *
   * @return the slope; empty if no solid was computed for such a seat
   */
  public Optional<SeatSlope> slopeInSeat() {
    return SeatSlope.of(deflection(), member.body());
  }

  /**
   * Fatigue of the stud by the straight line of Goodman, if the duty states how the load changes and the roller what its
   * stud endures. In a seat that interferes the notch factor is at least that of a press fit.
   *
   * @return the margins; empty if one of them is not stated
   */
  public Optional<StudFatigue> studFatigue() {
    return duty.statedLoadChange()
        .flatMap(change -> roller.knownEndurance().map(known ->
            stud().fatigue(change, notchFactor(known), known.material(), StudFatigueCriterion.GOODMAN)));
  }

  private double notchFactor(StudEndurance known) {
    return seat().isEmpty()
        ? known.notchFactor()
        : Math.max(known.notchFactor(), StudNotchKernel.pressFit(known.material().tensile().megapascal()));
  }

  /**
   * Pressure at the mouth of the seat if the bore alone carried load and moment: the stud rigid, the pressure linear along the
   * seat.
   *
   * @return the pressure under the greatest load, on the projected area
   */
  public Stress mouthPressure() {
    double arm = roller.ringWidth().mm() / 2 + roller.ringGap().mm();
    return new Stress(StudBendingKernel.mouthPressure(
        duty.load().newton(), arm, roller.studDiameter().mm(), member.seatLength().mm()));
  }

  private ShankSection shank() {
    return new ShankSection(roller.studDiameter(), roller.greaseBore(), roller.crossHole());
  }

  /**
   * How far the stud can lean: the clamped face if its run-out is stated and the nut keeps it closed, else the clearance of
   * the loosest pair, in the shop or at work; and bending under the load.
   *
   * @return the tilt of the stud in its seat
   */
  public SeatTilt tilt() {
    return tilt(greatestClearance());
  }

  private SeatTilt tilt(Length clearance) {
    SeatTilt.Builder tilt =
        SeatTilt.of(clearance, roller.studDiameter(), member.seatLength()).bending(deflection().tilt());
    member.statedRunOut().filter(stated -> faceStaysClosed())
        .ifPresent(runOut -> tilt.clampedFace(runOut, roller.flangeDiameter()));
    return tilt.build();
  }

  @Override
  public CountedLean countedLean() {
    return CountedLean.of(this, tilt().total());
  }

  /**
   * What the seat costs in life, at the loosest, mean and tightest pair of the fit.
   *
   * @return life ratios against the aligned roller; empty if the inside of the roller is not known
   */
  public Optional<SeatPrice> seatPrice() {
    return roller.knownInterior().map(interior -> SeatPrice.of(this, interior).build());
  }

  /**
   * Judges measured parts against this plan.
   *
   * @param bore readings of the bore
   * @param stud readings of the stud
   * @param room temperature of parts and gauges
   * @return verdict, fit as measured, and what follows from it
   * @throws InputException if readings are missing; one error names all of it
   */
  public Acceptance accept(MeasuredPart bore, MeasuredPart stud, Temperature room) {
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(room, "room");
    return Acceptance.of(this, bore, stud, room);
  }

  @Override
  public PlanLimits allLimits() {
    return StudLimits.of(this);
  }

  /**
   * Ports, grease and interval.
   *
   * @return how the roller is greased; empty for a roller lubricated for life
   */
  public Optional<GreasePlan> greasing() {
    return duty.statedFeed().map(feed -> GreasePlan.of(this, feed));
  }

  @Override
  public List<String> stops() {
    return Verdict.stops(this).stream().map(Stop::text).toList();
  }

  @Override
  public PlanSummary summary() {
    return PlanSummary.of(this);
  }

  @Override
  public Sheet sheet() {
    return InstallationSheet.of(this);
  }
}
