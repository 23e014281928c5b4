// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Torque;
import java.io.Serializable;
import java.util.Objects;

/**
 * What acts between the rings: a radial load, and a tilt or a moment. A tilt is in the plane of the load (along) if one
 * raceway is turned against the other in the plane of load and axis, so that the roller under the load sees all of it.
 * Tilt and moment keep their direction against the load.
 *
 * @param radial radial load Fr, over 0
 * @param axial axial load Fa of ball bearings, of either sign; 0 for roller bearings
 * @param byMoment whether the moments are given and the tilt follows; otherwise the tilt is given
 * @param tiltAlong given tilt in the plane of the load
 * @param tiltAcross given tilt across it
 * @param momentAlong given moment in the plane of the load
 * @param momentAcross given moment across it
 */
public record Loading(
    Force radial, Force axial, boolean byMoment, Angle tiltAlong, Angle tiltAcross, Torque momentAlong, Torque momentAcross)
    implements Serializable {

  // Refuses what cannot be solved.
  public Loading {
    Objects.requireNonNull(radial, "radial");
    Objects.requireNonNull(axial, "axial");
    Objects.requireNonNull(tiltAlong, "tiltAlong");
    Objects.requireNonNull(tiltAcross, "tiltAcross");
    Objects.requireNonNull(momentAlong, "momentAlong");
    Objects.requireNonNull(momentAcross, "momentAcross");
    Inputs.load(radial.newton());
    Inputs.tilt(tiltAlong.radian());
    Inputs.tilt(tiltAcross.radian());
  }

  /**
   * A radial load on a bearing without tilt.
   *
   * @param load Fr, over 0
   * @return the loading
   * @throws holdfast.quantity.InputException if the load is not above zero
   */
  public static Loading radial(Force load) {
    Objects.requireNonNull(load, "load");
    Angle none = new Angle(0);
    return new Loading(load, new Force(0), false, none, none, new Torque(0), new Torque(0));
  }

  /**
   * The same load with a tilt in its plane.
   *
   * @param tilt -0.2 rad to 0.2 rad
   * @return the loading
   * @throws holdfast.quantity.InputException if the tilt is outside its range
   */
  public Loading tilted(Angle tilt) {
    Objects.requireNonNull(tilt, "tilt");
    return tilted(tilt, new Angle(0));
  }

  /**
   * The same load with a tilt in any direction.
   *
   * @param along part in the plane of the load, -0.2 rad to 0.2 rad
   * @param across part across it, -0.2 rad to 0.2 rad
   * @return the loading
   * @throws holdfast.quantity.InputException if a part is outside its range
   */
  public Loading tilted(Angle along, Angle across) {
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(across, "across");
    return new Loading(radial, axial, false, along, across, new Torque(0), new Torque(0));
  }

  /**
   * The same load with a moment in its plane.
   *
   * @param moment moment that turns one ring against the other
   * @return the loading
   */
  public Loading moment(Torque moment) {
    Objects.requireNonNull(moment, "moment");
    return moment(moment, new Torque(0));
  }

  /**
   * The same load with a moment in any direction.
   *
   * @param along part in the plane of the load
   * @param across part across it
   * @return the loading
   */
  public Loading moment(Torque along, Torque across) {
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(across, "across");
    return new Loading(radial, axial, true, new Angle(0), new Angle(0), along, across);
  }

  /**
   * The same with an axial load; ball bearings only.
   *
   * @param load Fa, of either sign
   * @return the loading
   */
  public Loading axial(Force load) {
    Objects.requireNonNull(load, "load");
    return new Loading(radial, load, byMoment, tiltAlong, tiltAcross, momentAlong, momentAcross);
  }

  /**
   * The same loads on a bearing without tilt: what a life is compared with.
   *
   * @return the loading
   */
  public Loading aligned() {
    return radial(radial).axial(axial);
  }

  /** For example {@code "Fr = 2 kN, tilt 1 mrad"}. */
  @Override
  public String toString() {
    String text = "Fr = " + radial + (axial.newton() == 0 ? "" : ", Fa = " + axial);
    if (byMoment) {
      return text + ", moment " + momentAlong + (momentAcross.newtonMillimetre() == 0 ? "" : " and " + momentAcross + " across");
    }
    return text + ", tilt " + tiltAlong + (tiltAcross.radian() == 0 ? "" : " and " + tiltAcross + " across");
  }
}
