// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Rollers with an eccentric collar: adjusting torque, the load it makes, and the stroke. C basic dynamic load rating,
 * e eccentricity; any consistent units (N and mm give N·mm, lbf and in give lbf·in).
 */
public final class EccentricKernel {
  /** Share of C to which adjusting may load the roller. */
  public static final double GREATEST_SHARE = 0.1;
  /** Greatest angle from the middle of the stroke, in rad: 45 degrees. */
  public static final double GREATEST_ANGLE = Math.PI / 4;

  private EccentricKernel() {}

  /**
   * Torque at which the roller is loaded with a tenth of C against its track, {@code T = 0.1 · C · e · cos 45°}.
   *
   * @param c basic dynamic load rating C in N, over 0
   * @param e eccentricity in mm, over 0
   * @return torque, in the unit of C times the unit of e
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "Cam followers catalogue 2008", locator = "technical section, pages 40 to 45, eccentric rollers")
  public static double adjustingTorque(double c, double e) {
    return GREATEST_SHARE * checkRating(c) * checkEccentricity(e) * Math.cos(GREATEST_ANGLE);
  }

  /**
   * Load of the roller on its track that a torque on the stud makes, without friction, {@code F = T / (e · cos α)} with
   * α the angle of the eccentricity from the track.
   *
   * @param torque torque T in N·mm, 0 or more
   * @param e eccentricity in mm, over 0
   * @param angle α in rad, from -45° to 45°
   * @return load
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "moment of the track's force about the axis of the collar",
      provenance = Provenance.DERIVED)
  public static double load(double torque, double e, double angle) {
    Check.notNegative(torque, "torque", "", "it turns the roller towards the track");
    return torque / (checkEccentricity(e) * Math.cos(checkAngle(angle)));
  }

  /**
   * Change of height from the middle of the stroke, {@code h = e · sin α}.
   *
   * @param e eccentricity in mm, over 0
   * @param angle angle α from the middle in rad, from -45° to 45°
   * @return height, in the unit of e
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "height of a point on a circle of radius e", provenance = Provenance.DERIVED)
  public static double height(double e, double angle) {
    return checkEccentricity(e) * Math.sin(checkAngle(angle));
  }

  private static double checkRating(double c) {
    return Check.positive(c, "basic dynamic load rating C", "", "a rating is a force above zero");
  }

  private static double checkEccentricity(double e) {
    return Check.positive(e, "eccentricity e", "", "a collar without eccentricity adjusts nothing");
  }

  private static double checkAngle(double angle) {
    return Check.within(angle, -GREATEST_ANGLE, GREATEST_ANGLE, "angle of the eccentricity", "rad",
        "Cam followers catalogue 2008: adjust within 45 degrees to either side");
  }
}
