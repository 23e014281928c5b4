// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * What friction must bring to a ring that is started by its track: D outside diameter and d bore of the ring in mm, m its
 * mass in g, v in mm/s, s in mm, forces in N. The ring is taken as a hollow cylinder; grease, seals and the rollers
 * inside are left out.
 */
public final class RingAccelerationKernel {
  private RingAccelerationKernel() {}

  /**
   * Force at the rim of a ring whose surface goes from rest to a speed over a distance with constant acceleration
   * {@code a = v²/(2 s)}: {@code T = m/2 · (1 + (d/D)²) · a}, from the moment of inertia {@code m (D² + d²)/8}.
   *
   * @param mass mass m of the ring in g, over 0
   * @param outside outside diameter D in mm, over 0
   * @param bore bore d in mm, from 0 to below D
   * @param speed surface speed v that is reached in mm/s, 0 or more
   * @param distance distance s along the track in mm, over 0
   * @return force in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "moment of inertia of a hollow cylinder, constant acceleration",
      provenance = Provenance.DERIVED)
  public static double rimForce(double mass, double outside, double bore, double speed, double distance) {
    Check.positive(mass, "mass of the ring", "g", "a ring has a mass");
    Check.positive(outside, "outside diameter D", "mm", "it is a diameter");
    Check.notNegative(bore, "bore of the ring", "mm", "0 for a solid disc");
    Check.positive(outside - bore, "wall of the ring D - d", "mm", "the ring has a wall");
    Check.notNegative(speed, "speed that is reached", "mm/s", "the sense does not matter");
    Check.positive(distance, "distance of the start", "mm", "no roller starts at once");
    double ratio = bore / outside;
    double acceleration = speed / distance * speed / 2;
    return 1e-6 * (mass / 2 * (1 + ratio * ratio) * acceleration);
  }

  /**
   * Least load on the track under which friction brings a force, {@code F = T/μ}.
   *
   * @param rimForce force T at the rim in N, 0 or more
   * @param friction coefficient of friction μ between track and ring, over 0
   * @return load in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Cam followers catalogue 2008", locator = "technical section, pages 40 to 45, acceleration")
  public static double leastLoad(double rimForce, double friction) {
    Check.notNegative(rimForce, "force at the rim", "N", "the sense does not matter");
    return rimForce / Check.positive(friction, "coefficient of friction", "", "without friction nothing turns the roller");
  }
}
