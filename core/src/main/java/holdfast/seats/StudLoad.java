// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import java.io.Serializable;
import java.util.Objects;

/**
 * What a stud carries.
 *
 * @param radial radial load on the roller
 * @param width width over which it is spread: the outer ring
 * @param gap distance from the seat mouth to the near edge of the outer ring
 * @param preload preload of the nut
 * @param heldTorque torque still held in the shank after tightening, 0 if it has relaxed
 */
public record StudLoad(Force radial, Length width, Length gap, Force preload, Torque heldTorque) implements Serializable {
  // Refuses negative sizes.
  public StudLoad {
    Objects.requireNonNull(radial, "radial");
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(gap, "gap");
    Objects.requireNonNull(preload, "preload");
    Objects.requireNonNull(heldTorque, "heldTorque");
    StudBendingKernel.moment(radial.base(), width.mm(), gap.mm());
    Check.notNegative(preload.base(), "preload FV", "N", "a nut only pulls");
    Check.notNegative(heldTorque.base(), "torque T", "N·mm", "its size, without direction");
  }

  /**
   * A radial load without preload.
   *
   * @param radial radial load on the roller
   * @param width width of the outer ring
   * @param gap distance from the seat mouth to the outer ring
   * @return the load
   * @throws holdfast.quantity.InputException if a value is negative
   */
  public static StudLoad radial(Force radial, Length width, Length gap) {
    return new StudLoad(radial, width, gap, new Force(0), new Torque(0));
  }

  /**
   * The same with a tightened nut.
   *
   * @param force preload of the nut
   * @param torque torque still held in the shank
   * @return the load
   * @throws holdfast.quantity.InputException if a value is negative
   */
  public StudLoad tightened(Force force, Torque torque) {
    Objects.requireNonNull(force, "force");
    Objects.requireNonNull(torque, "torque");
    return new StudLoad(radial, width, gap, force, torque);
  }
}
