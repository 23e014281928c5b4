// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import java.util.Objects;

/**
 * Collects a plan. Its parts may be given complete or as descriptions that are not ended yet; in the latter case one error
 * names everything that the whole job lacks or contradicts. Not thread-safe.
 */
public final class PlanBuilder extends JobBuilder<PlanBuilder> {
  private final Description<StudRoller> roller;
  private Description<MachineMember> member;
  private Description<Nut> nut;

  PlanBuilder(StudRoller roller) {
    this.roller = given(Objects.requireNonNull(roller, "roller"));
  }

  PlanBuilder(StudRollerBuilder roller) {
    this.roller = Objects.requireNonNull(roller, "roller");
  }

  @Override
  PlanBuilder self() {
    return this;
  }

  /**
   * States the machine member.
   *
   * @param machineMember the lever, arm or block
   * @return this builder
   */
  public PlanBuilder member(MachineMember machineMember) {
    this.member = given(Objects.requireNonNull(machineMember, "machineMember"));
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
    this.nut = given(Objects.requireNonNull(theNut, "theNut"));
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
    return new InstallationPlan(job, theRoller, theMember, theNut, theDuty, fleet, unitsFor(theRoller));
  }
}
