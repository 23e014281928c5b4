// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Speed of a roller on its track and the limits of speed, and what keeps it turning. n in rpm, D and d1 in mm, v in
 * mm/s, forces in N, moments in N·mm.
 */
public final class RollerSpeedKernel {
  private RollerSpeedKernel() {}

  /**
   * Speed of a roller that rolls on a cam without slip, {@code n = n_cam · D_cam / D}.
   *
   * @param camRpm speed of the cam in rpm, 0 or more
   * @param camDiameter diameter of the cam at the contact in mm, over 0
   * @param rollerDiameter outside diameter D of the roller in mm, over 0
   * @return speed of the roller in rpm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "equal surface speeds in rolling", provenance = Provenance.DERIVED)
  public static double onCam(double camRpm, double camDiameter, double rollerDiameter) {
    Check.notNegative(camRpm, "speed of the cam", "rpm", "the sense does not matter");
    Check.positive(camDiameter, "diameter of the cam", "mm", "it is a diameter");
    return camRpm * camDiameter / checkDiameter(rollerDiameter);
  }

  /**
   * Speed of a roller that rolls along a track without slip, {@code n = 60 v / (π D)}.
   *
   * @param speed surface speed v in mm/s, 0 or more
   * @param rollerDiameter outside diameter D of the roller in mm, over 0
   * @return speed of the roller in rpm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "equal surface speeds in rolling", provenance = Provenance.DERIVED)
  public static double onTrack(double speed, double rollerDiameter) {
    Check.notNegative(speed, "speed along the track", "mm/s", "the sense does not matter");
    return 60 * speed / (Math.PI * checkDiameter(rollerDiameter));
  }

  /**
   * Speed for the life of a bearing both of whose rings may turn: the speed of one ring relative to the other.
   *
   * @param innerRpm speed of the inner ring in rpm, with sign
   * @param outerRpm speed of the outer ring in rpm, with sign
   * @return |ne - ni| in rpm
   * @throws holdfast.quantity.InputException if a speed is not finite
   */
  @Source(document = "derivation", locator = "elements roll by the relative motion", provenance = Provenance.DERIVED)
  public static double ofRings(double innerRpm, double outerRpm) {
    Check.finite(innerRpm, "speed of the inner ring", "rpm");
    Check.finite(outerRpm, "speed of the outer ring", "rpm");
    return Math.abs(outerRpm - innerRpm);
  }

  /**
   * Limit of speed from a speed factor, {@code n = (d1·n) / d1}.
   *
   * @param factor limit of d1·n in mm·rpm, over 0
   * @param studDiameter stud diameter d1 in mm, over 0
   * @param axialLoad whether an axial load acts; then one tenth of the factor holds
   * @return speed in rpm
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "Linear motion and cam follower catalogue", locator = "pages F-8 to F-71, limits of d1·n")
  public static double limit(double factor, double studDiameter, boolean axialLoad) {
    Check.positive(factor, "speed factor d1·n", "mm·rpm", "it is a limit");
    Check.positive(studDiameter, "stud diameter d1", "mm", "it is a diameter");
    return (axialLoad ? 0.1 : 1) * factor / studDiameter;
  }

  /**
   * Greatest moment with which friction of the track can accelerate a roller, {@code M = μ F D / 2}. Beyond it the ring
   * slides.
   *
   * @param friction coefficient of friction μ between track and ring, over 0
   * @param load load F on the track in N, 0 or more
   * @param rollerDiameter outside diameter D of the roller in mm, over 0
   * @return moment in N·mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Cam followers catalogue 2008", locator = "technical section, pages 40 to 45, acceleration")
  public static double drivingMoment(double friction, double load, double rollerDiameter) {
    Check.positive(friction, "coefficient of friction", "", "without friction nothing turns the roller");
    Check.notNegative(load, "load", "N", "the track pushes, it does not pull");
    return 0.5 * friction * load * checkDiameter(rollerDiameter);
  }

  private static double checkDiameter(double rollerDiameter) {
    return Check.positive(rollerDiameter, "outside diameter D", "mm", "it is a diameter");
  }
}
