// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.rollers.MeasureSystem;
import holdfast.sheet.SheetUnits;
import java.util.Objects;

/**
 * Collects a plan. Its parts may be given complete or as descriptions that are not ended yet; in the latter case one error
 * names everything that the whole job lacks or contradicts. Not thread-safe.
 */
public final class PlanBuilder {
  private final Description<StudRoller> roller;
  private String job;
  private Description<MachineMember> member;
  private Description<Nut> nut;
  private Description<Duty> duty;
  private FleetDuty fleet;
  private SheetUnits units;

  PlanBuilder(StudRoller roller) {
    this.roller = new Given<>(Objects.requireNonNull(roller, "roller"));
  }

  PlanBuilder(StudRollerBuilder roller) {
    this.roller = Objects.requireNonNull(roller, "roller");
  }

  /** A part that is complete already. */
  private static final class Given<T> extends Description<T> {
    private final T part;

    Given(T part) {
      this.part = part;
    }

    @Override
    void missing(Missing missing) {
      // Nothing can be missing.
    }

    @Override
    T make() {
      return part;
    }
  }

  /** Metric rollers are read in mm; inch rollers in both, because gauges and taps of both kinds lie about. */
  static SheetUnits unitsOf(MountedRoller roller) {
    return roller != null && roller.system() == MeasureSystem.INCH ? SheetUnits.INCH_AND_METRIC : SheetUnits.METRIC;
  }

  /**
   * Names the job.
   *
   * @param name what the sheet calls it
   * @return this builder
   */
  public PlanBuilder job(String name) {
    this.job = Objects.requireNonNull(name, "name");
    return this;
  }

  /**
   * States the machine member.
   *
   * @param machineMember the lever, arm or block
   * @return this builder
   */
  public PlanBuilder member(MachineMember machineMember) {
    this.member = new Given<>(Objects.requireNonNull(machineMember, "machineMember"));
    return this;
  }

  /**
   * States the machine member by a description.
   *
   * @param description description of the lever, arm or block
   * @return this builder
   */
  public PlanBuilder member(MachineMember.Builder description) {
    this.member = Objects.requireNonNull(description, "description");
    return this;
  }

  /**
   * States the nut and its tightening.
   *
   * @param theNut the nut
   * @return this builder
   */
  public PlanBuilder nut(Nut theNut) {
    this.nut = new Given<>(Objects.requireNonNull(theNut, "theNut"));
    return this;
  }

  /**
   * States the nut by a description.
   *
   * @param description description of the nut and its tightening
   * @return this builder
   */
  public PlanBuilder nut(Nut.Builder description) {
    this.nut = Objects.requireNonNull(description, "description");
    return this;
  }

  /**
   * States the duty.
   *
   * @param theDuty what the roller has to do
   * @return this builder
   */
  public PlanBuilder duty(Duty theDuty) {
    this.duty = new Given<>(Objects.requireNonNull(theDuty, "theDuty"));
    return this;
  }

  /**
   * States the duty by a description.
   *
   * @param description description of what the roller has to do
   * @return this builder
   */
  public PlanBuilder duty(DutyBuilder description) {
    this.duty = Objects.requireNonNull(description, "description");
    return this;
  }

  /**
   * States the places that run this roller. Optional.
   *
   * @param places places and what is wanted of them
   * @return this builder
   */
  public PlanBuilder fleet(FleetDuty places) {
    this.fleet = Objects.requireNonNull(places, "places");
    return this;
  }

  /**
   * States the units of the sheet. Optional: metric for metric rollers, inch with metric for inch rollers.
   *
   * @param sheetUnits the units
   * @return this builder
   */
  public PlanBuilder units(SheetUnits sheetUnits) {
    this.units = Objects.requireNonNull(sheetUnits, "sheetUnits");
    return this;
  }

  /**
   * Ends the plan.
   *
   * @return the plan
   * @throws holdfast.quantity.InputException if something is missing or contradicts itself; one error names all of it
   */
  public InstallationPlan build() {
    Missing missing = new Missing("installation plan").need(job, "job");
    StudRoller theRoller = missing.part("roller", roller);
    MachineMember theMember = missing.part("member", member);
    Nut theNut = missing.part("nut", nut);
    Duty theDuty = missing.part("duty", duty);
    missing.refuse();
    return new InstallationPlan(
        job, theRoller, theMember, theNut, theDuty, fleet, units == null ? unitsOf(theRoller) : units);
  }
}
