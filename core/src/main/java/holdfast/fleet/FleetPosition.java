// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import holdfast.quantity.Check;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.PlainText;
import java.io.Serializable;
import java.util.Objects;

/**
 * A place in which a roller runs.
 *
 * @param name what the works calls it
 * @param hoursPerYear running hours in a year, over 0 up to 8784
 * @param age hours that the roller in place has run already, 0 for a new one
 */
public record FleetPosition(String name, double hoursPerYear, OperatingTime age) implements Serializable {
  // Refuses more hours than a year has.
  public FleetPosition {
    PlainText.name(name, "name of a place");
    Objects.requireNonNull(age, "age");
    Check.overUpTo(hoursPerYear, 0, 8784, "running hours per year", "h", "a leap year has 8784 hours");
    Check.notNegative(age.hours(), "age of the roller", "h", "0 stands for a new one");
  }

  /**
   * A place with a new roller.
   *
   * @param name what the works calls it
   * @param hoursPerYear running hours in a year, over 0 up to 8784
   * @return the place
   * @throws holdfast.quantity.InputException if the hours are outside the range
   */
  public static FleetPosition ofNew(String name, double hoursPerYear) {
    return new FleetPosition(name, hoursPerYear, new OperatingTime(0));
  }
}
