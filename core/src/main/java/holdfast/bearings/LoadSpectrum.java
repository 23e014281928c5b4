// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A duty in steps of constant load and speed.
 *
 * @param steps the steps; their shares of time add up to 1, each within half a unit of the third decimal, and are kept as shares
 *     of their sum
 */
public record LoadSpectrum(List<Step> steps) implements Serializable {
  /** Shares are written with three decimals or more. */
  private static final double THIRD_DECIMAL = 5e-4;
  private static final double SUM_SLACK = 1e-9;

  /**
   * One step.
   *
   * @param load dynamic equivalent load P, 0 or more
   * @param speed speed n, 0 or more
   * @param share share of time, over 0 up to 1
   */
  public record Step(Force load, RotationalSpeed speed, double share) implements Serializable {
    // Refuses negative sizes; a step without load or speed does no damage but takes its time.
    public Step {
      Objects.requireNonNull(load, "load");
      Objects.requireNonNull(speed, "speed");
      Check.notNegative(load.newton(), "load P of a step", "N", "its size, without direction");
      Check.notNegative(speed.rpm(), "speed n of a step", "rpm", "its size, without direction");
      Check.overUpTo(share, 0, 1, "share of time of a step", "", "leave out steps that do not occur");
    }
  }

  // Refuses an empty duty and shares that do not add up.
  public LoadSpectrum {
    Objects.requireNonNull(steps, "steps");
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw Refusal.of("load spectrum", "no steps", "at least one step", "a duty has a load");
    }
    double sum = steps.stream().mapToDouble(Step::share).sum();
    if (Math.abs(sum - 1) > SUM_SLACK + THIRD_DECIMAL * steps.size()) {
      throw Refusal.of("sum of the shares of time", sum, "", "1",
          "a step is missing or counted twice; give times instead of shares if the sum is not known");
    }
    if (Math.abs(sum - 1) > SUM_SLACK) {
      // Three steps of 0.333 mean three thirds.
      steps = steps.stream().map(step -> new Step(step.load(), step.speed(), Math.min(1, step.share() / sum))).toList();
    }
  }

  /**
   * Starts a duty.
   *
   * @return a builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * A duty of one step.
   *
   * @param load dynamic equivalent load P
   * @param speed speed n
   * @return the duty
   * @throws holdfast.quantity.InputException if load or speed is negative
   */
  public static LoadSpectrum constant(Force load, RotationalSpeed speed) {
    return new LoadSpectrum(List.of(new Step(load, speed, 1)));
  }

  /**
   * Mean speed over the whole time.
   *
   * @return nm
   * @throws holdfast.quantity.InputException if no step turns
   */
  public RotationalSpeed meanSpeed() {
    return new RotationalSpeed(DutyKernel.meanSpeed(speeds(), shares()));
  }

  /**
   * Constant load with the same basic life.
   *
   * @param family family of the bearing
   * @return Pm
   * @throws holdfast.quantity.InputException if no step turns
   */
  public Force meanLoad(BearingFamily family) {
    Objects.requireNonNull(family, "family");
    return new Force(DutyKernel.meanLoad(family.lifeExponent(), loads(), speeds(), shares()));
  }

  double[] loads() {
    return steps.stream().mapToDouble(step -> step.load().newton()).toArray();
  }

  double[] speeds() {
    return steps.stream().mapToDouble(step -> step.speed().rpm()).toArray();
  }

  double[] shares() {
    return steps.stream().mapToDouble(Step::share).toArray();
  }

  /** Collects steps, either all with shares or all with times. Not thread-safe. */
  public static final class Builder {
    private final List<Force> loads = new ArrayList<>();
    private final List<RotationalSpeed> speeds = new ArrayList<>();
    private final List<Double> weights = new ArrayList<>();
    private boolean times;

    private Builder() {}

    /**
     * Adds a step by its share of time.
     *
     * @param load dynamic equivalent load P, 0 or more
     * @param speed speed n, 0 or more
     * @param share share of time, over 0 up to 1
     * @return this builder
     * @throws holdfast.quantity.InputException if a value is outside its range or steps with times were added
     */
    public Builder step(Force load, RotationalSpeed speed, double share) {
      return add(load, speed, new Step(load, speed, share).share(), false);
    }

    /**
     * Adds a step by its time.
     *
     * @param load dynamic equivalent load P, 0 or more
     * @param speed speed n, 0 or more
     * @param time time in the step, over 0
     * @return this builder
     * @throws holdfast.quantity.InputException if a value is outside its range or steps with shares were added
     */
    public Builder step(Force load, RotationalSpeed speed, OperatingTime time) {
      Objects.requireNonNull(time, "time");
      new Step(load, speed, 1);
      return add(load, speed, Check.positive(time.hours(), "time of a step", "h", "leave out steps that do not occur"), true);
    }

    private Builder add(Force load, RotationalSpeed speed, double weight, boolean time) {
      if (!weights.isEmpty() && time != times) {
        throw Refusal.of("step", time ? "a time" : "a share", times ? "a time" : "a share", "the steps before it have one");
      }
      times = time;
      loads.add(load);
      speeds.add(speed);
      weights.add(weight);
      return this;
    }

    /**
     * Ends the duty.
     *
     * @return the duty
     * @throws holdfast.quantity.InputException if there are no steps or shares do not add up to 1
     */
    public LoadSpectrum build() {
      double total = times ? weights.stream().mapToDouble(Double::doubleValue).sum() : 1;
      List<Step> steps = new ArrayList<>();
      for (int i = 0; i < weights.size(); i++) {
        steps.add(new Step(loads.get(i), speeds.get(i), Math.min(1, weights.get(i) / total)));
      }
      return new LoadSpectrum(steps);
    }
  }
}
