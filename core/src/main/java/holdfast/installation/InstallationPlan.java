package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.bearings.Contamination;
import holdfast.bearings.Lubrication;
import holdfast.bearings.ModifiedLife;
import holdfast.bearings.PermissibleLoad;
import holdfast.bearings.RatingLife;
import holdfast.bearings.TrackRoller;
import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import holdfast.quantity.Temperature;
import holdfast.quantity.TemperatureDifference;
import holdfast.quantity.Torque;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.SeatTilt;
import holdfast.seats.ServiceState;
import holdfast.seats.ShankSection;
import holdfast.seats.StudDeflection;
import holdfast.seats.StudLoad;
import holdfast.seats.StudStrength;
import holdfast.sheet.Sheet;
import holdfast.threads.Embedding;
import holdfast.threads.Friction;
import holdfast.threads.Joint;
import holdfast.threads.JointDemand;
import holdfast.threads.PreloadBand;
import holdfast.threads.PropertyClass;
import holdfast.threads.Scatter;
import holdfast.threads.StudSection;
import holdfast.threads.ScrewThread;
import holdfast.threads.Tightening;
import holdfast.threads.TorqueWindow;
import holdfast.threads.WindowRules;
import java.io.Serializable;
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
 */
public record InstallationPlan(String job, StudRoller roller, MachineMember member, Nut nut, Duty duty)
    implements Serializable {
  /** Parts are joined and tightened at the reference temperature of ISO 1. */
  private static final Temperature SHOP = new Temperature(20);

  // Refuses a plan with a part left out.
  public InstallationPlan {
    new Missing("installation plan")
        .need(job, "job")
        .need(roller, "roller")
        .need(member, "member")
        .need(nut, "nut")
        .need(duty, "duty")
        .refuse();
  }

  /**
   * The bundled example: an invented job in an invented works.
   *
   * @return the plan
   */
  public static InstallationPlan example() {
    return ExampleJob.plan();
  }

  /**
   * Starts a plan.
   *
   * @param roller the roller
   * @return a builder
   */
  public static Builder of(StudRoller roller) {
    return new Builder(roller);
  }

  /**
   * Fit of the stud in the bore.
   *
   * @return the fit by its tolerance classes
   */
  public Fit fit() {
    return Fit.of(roller.studDiameter(), member.boreTolerance() + "/" + roller.studTolerance());
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
    InnerPart stud = InnerPart.hollow(roller.material(), roller.greaseBore()).withRoughness(roller.seatRoughness());
    return Optional.of(InterferenceFit.of(stud, member.body(), fit, member.seatLength()));
  }

  /**
   * The drilled stud and its nut.
   *
   * @return the tightening
   */
  public Tightening tightening() {
    return Tightening.of(ScrewThread.of(roller.thread()))
        .bore(roller.greaseBore())
        .bearingFace(nut.faceOuter(), nut.faceInner())
        .friction(nut.leastFriction(), nut.greatestFriction());
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
   * Torques that keep the joint of flange and member closed under the load and overload nothing.
   *
   * @return the window, open or empty
   */
  public TorqueWindow torqueWindow() {
    double arm = roller.ringWidth().mm() / 2 + roller.ringGap().mm();
    JointDemand demand =
        JointDemand.ofClamp(new Force(0))
            .moment(duty.load().times(new Length(arm)), roller.flangeDiameter(), roller.studDiameter())
            .reserve(nut.reserve())
            .changes(embeddingLoss(), thermalChange());
    WindowRules rules = WindowRules.usual();
    if (roller.greatestTorque() != null) {
      rules = rules.makersMaximum(roller.greatestTorque());
    }
    return tightening().window(demand, strengthClass(), Scatter.of(nut.wrenchError()), rules);
  }

  /** The flange, the member and the nut as a joint: the shank over the seat length carries the preload. */
  private Joint joint() {
    StudSection shank = new StudSection("shank", roller.studDiameter(), roller.greaseBore(), new Length(0));
    // Material beyond the pressure cone carries nothing, so an endless member counts as far as the cone can reach.
    double reach = nut.faceOuter().mm() + 2 * member.seatLength().mm();
    double outside = Math.min(member.body().shape().equivalentDiameter(roller.studDiameter()), reach);
    return Joint.of(tightening(), member.seatLength(), new Length(outside), roller.studDiameter())
        .pieces(new Joint.Piece(shank, member.seatLength()))
        .moduli(roller.material().elasticModulus(), member.body().material().elasticModulus());
  }

  /** Thread, flange face and nut face settle. */
  private Force embeddingLoss() {
    return joint().embeddingLoss(Embedding.amount(member.body().roughness(), false, 2, 0));
  }

  private Force thermalChange() {
    TemperatureDifference rise = duty.workingTemperature().minus(SHOP);
    return joint()
        .thermalChange(
            roller.material().thermalExpansion(), rise, member.body().material().thermalExpansion(), rise);
  }

  /** The stud as a strength class of its own: its material states yield and tensile strength. */
  private PropertyClass strengthClass() {
    Material material = roller.material();
    Stress yield =
        material
            .yieldStrength()
            .orElseThrow(
                () ->
                    new InputException(
                        "material of the stud", material.name(), "one with a stated yield strength", "it limits the torque"));
    return PropertyClass.ofMaterial(material.name(), yield, material.tensileStrength().orElse(yield));
  }

  /**
   * The stud under load, preload and the torque still in it.
   *
   * @return bending, tension and equivalent stress at the mouth of the seat
   */
  public StudStrength stud() {
    StudLoad load =
        StudLoad.radial(duty.load(), roller.ringWidth(), roller.ringGap())
            .tightened(tightest().greatestPreload(), torqueThroughStud());
    Stress pressure = seat().map(seat -> seat.pressure().greatest()).orElse(new Stress(0));
    return new StudStrength(shank(), load, pressure);
  }

  /**
   * Slope of the stud at the roller under the load, in a rigid seat.
   *
   * @return the deflection with its slope
   */
  public StudDeflection deflection() {
    StudLoad load = StudLoad.radial(duty.load(), roller.ringWidth(), roller.ringGap());
    return StudDeflection.ofSteel(shank(), load, member.seatLength());
  }

  private ShankSection shank() {
    return ShankSection.drilled(roller.studDiameter(), roller.greaseBore());
  }

  /**
   * How far the stud can lean: the clearance of the loosest pair, and bending under the load.
   *
   * @return the tilt; face run-out is not known to the plan
   */
  public SeatTilt tilt() {
    return SeatTilt.of(fit().maximumClearance(), roller.studDiameter(), member.seatLength())
        .bending(deflection().tilt())
        .build();
  }

  /**
   * The roller with the limits that its ratings and the track set.
   *
   * @return all limits and the one that governs
   */
  public PermissibleLoad limits() {
    TrackRoller trackRoller = TrackRoller.of(roller.ratings(), roller.outsideDiameter(), roller.crownRadius().mm() > 0);
    return PermissibleLoad.of(
        trackRoller, duty.wantedLife(), duty.reliability(), duty.speed(), duty.staticSafety(), duty.trackHardness());
  }

  /**
   * Modified rating life: lubrication and contamination counted.
   *
   * @return the life with the wanted reliability
   */
  public ModifiedLife modifiedLife() {
    Lubrication lubrication = Lubrication.of(duty.viscosity(), duty.speed(), roller.meanDiameter());
    return RatingLife.modified(
        roller.ratings(), duty.load(), duty.reliability(), lubrication, Contamination.of(duty.contamination()));
  }

  /**
   * Life of the roller under the duty.
   *
   * @return basic rating life with the wanted reliability
   */
  public BasicLife life() {
    return RatingLife.basic(roller.ratings(), duty.load(), duty.reliability());
  }

  /**
   * The sheet for the bench.
   *
   * @return the sheet; the same plan gives the same sheet
   */
  public Sheet sheet() {
    return InstallationSheet.of(this);
  }

  /** Collects a plan. Not thread-safe. */
  public static final class Builder {
    private final StudRoller roller;
    private String job;
    private MachineMember member;
    private Nut nut;
    private Duty duty;

    private Builder(StudRoller roller) {
      this.roller = Objects.requireNonNull(roller, "roller");
    }

    /**
     * Names the job.
     *
     * @param name what the sheet calls it
     * @return this builder
     */
    public Builder job(String name) {
      this.job = name;
      return this;
    }

    /**
     * States the machine member.
     *
     * @param machineMember the lever, arm or block
     * @return this builder
     */
    public Builder member(MachineMember machineMember) {
      this.member = machineMember;
      return this;
    }

    /**
     * States the nut and its tightening.
     *
     * @param theNut the nut
     * @return this builder
     */
    public Builder nut(Nut theNut) {
      this.nut = theNut;
      return this;
    }

    /**
     * States the duty.
     *
     * @param theDuty what the roller has to do
     * @return this builder
     */
    public Builder duty(Duty theDuty) {
      this.duty = theDuty;
      return this;
    }

    /**
     * Ends the plan.
     *
     * @return the plan
     * @throws holdfast.quantity.InputException if something is missing; one error names all of it
     */
    public InstallationPlan build() {
      return new InstallationPlan(job, roller, member, nut, duty);
    }
  }
}
