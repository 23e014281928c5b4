// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.rollers.MeasureSystem;
import holdfast.sheet.SheetUnits;
import java.util.Objects;

/**
 * Collects what every plan needs, whatever holds the roller. Not thread-safe.
 *
 * @param <B> the builder itself
 */
public abstract sealed class JobBuilder<B extends JobBuilder<B>> permits PlanBuilder, YokePlanBuilder {
  String job;
  Description<Duty> duty;
  FleetDuty fleet;
  private SheetUnits units;

  JobBuilder() {}

  abstract B self();

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

  static <T> Description<T> given(T part) {
    return new Given<>(part);
  }

  /** Metric rollers are read in mm; inch rollers in both, because gauges and taps of both kinds lie about. */
  static SheetUnits unitsOf(MountedRoller roller) {
    return roller != null && roller.system() == MeasureSystem.INCH ? SheetUnits.INCH : SheetUnits.METRIC;
  }

  final SheetUnits unitsFor(MountedRoller roller) {
    return units == null ? unitsOf(roller) : units;
  }

  /**
   * Names the job.
   *
   * @param name what the sheet calls it
   * @return this builder
   */
  public B job(String name) {
    this.job = Objects.requireNonNull(name, "name");
    return self();
  }
  /**
   * States the duty.
   *
   * @param theDuty what the roller has to do
   * @return this builder
   */
  public B duty(Duty theDuty) {
    this.duty = given(Objects.requireNonNull(theDuty, "theDuty"));
    return self();
  }
  /**
   * States the duty by a description.
   *
   * @param description description of what the roller has to do
   * @return this builder
   */
  public B duty(DutyBuilder description) {
    this.duty = Objects.requireNonNull(description, "description");
    return self();
  }
  /**
   * States the places that run this roller. Optional.
   *
   * @param places places and what is wanted of them
   * @return this builder
   */
  public B fleet(FleetDuty places) {
    this.fleet = Objects.requireNonNull(places, "places");
    return self();
  }
  /**
   * States the units of the sheet. Optional: metric for metric rollers, inch with metric for inch rollers.
   *
   * @param sheetUnits the units
   * @return this builder
   */
  public B units(SheetUnits sheetUnits) {
    this.units = Objects.requireNonNull(sheetUnits, "sheetUnits");
    return self();
  }
}
