// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import java.util.Objects;

/** Collects a yoke plan from descriptions; one error names everything that the whole job lacks. Not thread-safe. */
public final class YokePlanBuilder extends JobBuilder<YokePlanBuilder> {
  private final YokeRollerBuilder roller;
  private Pin.Builder pin;
  private Fork.Builder fork;

  YokePlanBuilder(YokeRollerBuilder roller) {
    this.roller = Objects.requireNonNull(roller, "roller");
  }

  @Override
  YokePlanBuilder self() {
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
    return new YokePlan(job, theRoller, thePin, theFork, theDuty, fleet, unitsFor(theRoller));
  }
}
