// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.sheet.SheetUnits;
import java.util.Objects;

/** Collects a yoke plan from descriptions; one error names everything that the whole job lacks. Not thread-safe. */
public final class YokePlanBuilder {
  private final YokeRollerBuilder roller;
  private String job;
  private Pin.Builder pin;
  private Fork.Builder fork;
  private DutyBuilder duty;
  private FleetDuty fleet;
  private SheetUnits units;

  YokePlanBuilder(YokeRollerBuilder roller) {
    this.roller = Objects.requireNonNull(roller, "roller");
  }

  /**
   * Names the job.
   *
   * @param name what the sheet calls it
   * @return this builder
   */
  public YokePlanBuilder job(String name) {
    this.job = Objects.requireNonNull(name, "name");
    return this;
  }

  /**
   * States the pin.
   *
   * @param description its description
   * @return this builder
   */
  public YokePlanBuilder pin(Pin.Builder description) {
    this.pin = Objects.requireNonNull(description, "description");
    return this;
  }

  /**
   * States the fork.
   *
   * @param description its description
   * @return this builder
   */
  public YokePlanBuilder fork(Fork.Builder description) {
    this.fork = Objects.requireNonNull(description, "description");
    return this;
  }

  /**
   * States the duty.
   *
   * @param description what the roller has to do
   * @return this builder
   */
  public YokePlanBuilder duty(DutyBuilder description) {
    this.duty = Objects.requireNonNull(description, "description");
    return this;
  }

  /**
   * States the places that run this roller. Optional.
   *
   * @param places places and what is wanted of them
   * @return this builder
   */
  public YokePlanBuilder fleet(FleetDuty places) {
    this.fleet = Objects.requireNonNull(places, "places");
    return this;
  }

  /**
   * States the units of the sheet. Optional: metric for metric rollers, inch with metric for inch rollers.
   *
   * @param sheetUnits the units
   * @return this builder
   */
  public YokePlanBuilder units(SheetUnits sheetUnits) {
    this.units = Objects.requireNonNull(sheetUnits, "sheetUnits");
    return this;
  }

  /**
   * Ends the plan.
   *
   * @return the plan
   * @throws holdfast.quantity.InputException if something is missing or contradicts itself; one error names all of it
   */
  public YokePlan build() {
    Missing missing = new Missing("yoke plan").need(job, "job");
    YokeRoller theRoller = missing.part("roller", roller);
    Pin thePin = missing.part("pin", pin);
    Fork theFork = missing.part("fork", fork);
    Duty theDuty = missing.part("duty", duty);
    missing.refuse();
    return new YokePlan(
        job, theRoller, thePin, theFork, theDuty, fleet, units == null ? PlanBuilder.unitsOf(theRoller) : units);
  }
}
