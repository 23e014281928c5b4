package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.bearings.RatingLife;
import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.quantity.Length;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceFit;
import holdfast.sheet.Sheet;
import holdfast.threads.PreloadBand;
import holdfast.threads.ScrewThread;
import holdfast.threads.Tightening;
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
   * Life of the roller under the duty.
   *
   * @return basic rating life with the wanted reliability
   */
  public BasicLife life() {
    return RatingLife.basic(roller.ratings(), duty.load(), duty.reliability());
  }

  /**
   * Greatest tilt that clearance alone allows the stud in its bore.
   *
   * @return the greatest clearance; zero if the fit has none
   */
  Length greatestClearance() {
    Length clearance = fit().maximumClearance();
    return clearance.mm() > 0 ? clearance : new Length(0);
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
