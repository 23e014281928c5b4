package holdfast.installation;

import holdfast.quantity.Check;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import java.io.Serializable;

/**
 * The nut and how it is tightened.
 *
 * @param faceOuter outer diameter of the face on which the nut turns, greater than the inner
 * @param faceInner inner diameter of that face: bore, chamfer or washer bore, the largest; over 0
 * @param leastFriction least coefficient of friction in thread and face, over 0
 * @param greatestFriction greatest coefficient of friction, not below the least
 * @param torque torque to which the wrench is set, over 0
 * @param wrenchError greatest error of the wrench as a share of its setting, 0 to 0.5; for example 0.04
 * @param reserve factor on the preload that keeps the joint closed, for vibration and shock, 1 or more
 */
public record Nut(
    Length faceOuter,
    Length faceInner,
    double leastFriction,
    double greatestFriction,
    Torque torque,
    double wrenchError,
    double reserve)
    implements Serializable {

  // Refuses a torque or an error that no wrench has; the tightening checks face and friction.
  public Nut {
    Check.positive(torque.newtonMillimetre(), "tightening torque", "N·mm", "a nut that is not tightened holds nothing");
    Check.within(wrenchError, 0, 0.5, "wrench error", "", "a share of the setting; ISO 6789 tools have 0.04 or 0.06");
    Check.within(reserve, 1, 10, "reserve", "", "1 keeps the joint just closed");
  }

  /**
   * Least torque that the wrench gives at its setting.
   *
   * @return torque · (1 - error)
   */
  public Torque leastTorque() {
    return torque.times(1 - wrenchError);
  }

  /**
   * Greatest torque that the wrench gives at its setting.
   *
   * @return torque · (1 + error)
   */
  public Torque greatestTorque() {
    return torque.times(1 + wrenchError);
  }
}
