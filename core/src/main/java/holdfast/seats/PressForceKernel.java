// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * What friction in the joint holds, and what pressing takes. Lengths in mm, pressures in MPa, forces in N, torques in
 * N·mm, work in N·mm.
 */
@Source(
    document = "derivation",
    locator = "force = friction factor × pressure × area of the seat",
    provenance = Provenance.DERIVED)
@Source(document = "derivation", locator = "friction on the cylinder of the joint", provenance = Provenance.DERIVED)
public final class PressForceKernel {
  private PressForceKernel() {}

  /**
   * Axial force at which the joint slips, {@code F = μ·p·π·D·l}; also the force at the end of the pressing stroke.
   *
   * @param pressure joint pressure p in MPa, 0 or more
   * @param joint joint diameter D in mm, over 0
   * @param length joint length l in mm, over 0
   * @param friction coefficient of friction or adhesion μ, 0 or more
   * @return F in N
   * @throws holdfast.quantity.InputException if a value is out of range
   */
  public static double axialForce(double pressure, double joint, double length, double friction) {
    Check.notNegative(pressure, "joint pressure", "MPa", "a joint cannot pull");
    SeatChecks.joint(joint);
    SeatChecks.size(length, "joint length", "a joint has a length");
    Check.notNegative(friction, "coefficient of friction", "", "friction resists");
    return friction * pressure * Math.PI * joint * length;
  }

  /**
   * Torque at which the joint slips, {@code T = μ·p·π·D²·l/2}.
   *
   * @param pressure joint pressure p in MPa, 0 or more
   * @param joint joint diameter D in mm, over 0
   * @param length joint length l in mm, over 0
   * @param friction coefficient of friction or adhesion μ, 0 or more
   * @return T in N·mm
   * @throws holdfast.quantity.InputException if a value is out of range
   */
  public static double torque(double pressure, double joint, double length, double friction) {
    return axialForce(pressure, joint, length, friction) * joint / 2;
  }

  /**
   * Resultant of an axial force and a torque on the joint face, {@code √(F² + (2T/D)²)}, to be held by friction.
   *
   * @param force axial force F in N
   * @param torque torque T in N·mm
   * @param joint joint diameter D in mm, over 0
   * @return resultant in N, 0 or more
   * @throws holdfast.quantity.InputException if a value is out of range
   */
  public static double resultant(double force, double torque, double joint) {
    Check.finite(force, "axial force", "N");
    Check.finite(torque, "torque", "N·mm");
    SeatChecks.joint(joint);
    return Math.hypot(force, 2 * torque / joint);
  }

  /**
   * Pressure that holds a resultant with a safety, {@code p = S·F/(μ·π·D·l)}; the inverse of {@link #axialForce}.
   *
   * @param resultant force F to be held in N, 0 or more
   * @param joint joint diameter D in mm, over 0
   * @param length joint length l in mm, over 0
   * @param friction coefficient of friction or adhesion μ, over 0
   * @param safety safety S against slipping, over 0
   * @return p in MPa
   * @throws holdfast.quantity.InputException if a value is out of range
   */
  public static double pressureToHold(double resultant, double joint, double length, double friction, double safety) {
    Check.notNegative(resultant, "force to be held", "N", "a resultant has no sign");
    SeatChecks.joint(joint);
    SeatChecks.size(length, "joint length", "a joint has a length");
    Check.positive(friction, "coefficient of friction", "", "without friction nothing holds");
    Check.positive(safety, "safety against slipping", "", "it multiplies the load");
    return safety * resultant / (friction * Math.PI * joint * length);
  }

  /**
   * Work of pressing over the joint length when the force grows in proportion to the stroke, {@code W = F·l/2}.
   *
   * @param force force at the end of the stroke in N, 0 or more
   * @param length joint length l in mm, over 0
   * @return W in N·mm
   * @throws holdfast.quantity.InputException if a value is out of range
   */
  @Source(document = "derivation", locator = "force in proportion to the length already joined", provenance = Provenance.DERIVED)
  public static double pressWork(double force, double length) {
    Check.notNegative(force, "pressing force", "N", "pressing takes force");
    SeatChecks.size(length, "joint length", "a joint has a length");
    return force * length / 2;
  }
}
