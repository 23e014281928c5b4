// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * A ring with a crowned outside on a track that is flat across. Lengths in mm, forces in N, moments in N·mm, angles in rad.
 * A ring that leans by ψ rolls its point of contact along the arc of its crown by R·ψ. The load stays under the centre of
 * that arc, which lies R - D/2 beyond the axis of the ring, and so turns the ring back with the arm (R - D/2)·ψ: a ball
 * (R = D/2) is never turned back. Contact patch, sliding friction along the axis and flanges of the track are left out.
 */
@Source(
    document = "derivation",
    locator = "moment of the load about the middle of a leaning ring",
    provenance = Provenance.DERIVED)
public final class CrownKernel {
  private CrownKernel() {}

  /**
   * How far the point of contact moves from the middle of the ring, {@code R·ψ}.
   *
   * @param crownRadius radius R of the crown, over 0
   * @param ringTilt tilt ψ of the ring against the track
   * @return shift along the axis in mm
   * @throws holdfast.quantity.InputException if a value is out of range
   */
  public static double shift(double crownRadius, double ringTilt) {
    return Check.positive(crownRadius, "crown radius R", "mm", "a flat ring has no crown")
        * Check.finite(ringTilt, "tilt of the ring", "rad");
  }

  /**
   * Tilt of the ring against the track at which the load balances the moment between the raceways,
   * {@code M/(F·(R - D/2))}.
   *
   * @param moment moment M between the raceways
   * @param load load F, over 0
   * @param crownRadius radius R of the crown, over D/2
   * @param outside outside diameter D of the ring in mm, over 0
   * @return tilt of the ring in rad
   * @throws holdfast.quantity.InputException if a value is out of range
   */
  public static double ringTilt(double moment, double load, double crownRadius, double outside) {
    Check.finite(moment, "moment between the raceways", "N·mm");
    Check.positive(load, "load F", "N", "without load nothing presses the ring on the track");
    Check.positive(crownRadius, "crown radius R", "mm", "a flat ring has no crown");
    Check.positive(outside, "outside diameter D", "mm", "size of the ring");
    double arm = Check.positive(crownRadius - outside / 2, "arm R - D/2 of the load", "mm", "a ball has none and never rights");
    return moment / (load * arm);
  }
}
