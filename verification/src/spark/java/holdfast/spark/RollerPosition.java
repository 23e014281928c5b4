// SPDX-License-Identifier: Apache-2.0
package holdfast.spark;

import holdfast.bearings.Contamination;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.Lubrication;
import holdfast.bearings.ModifiedLife;
import holdfast.bearings.RatingLife;
import holdfast.bearings.Reliability;
import holdfast.quantity.Force;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import java.io.Serializable;

/** One roller of a fleet, all of it values of the library. Spark serializes public classes only. */
public record RollerPosition(
    int number, LoadRatings ratings, Force load, RotationalSpeed speed, KinematicViscosity viscosity, Length pitchDiameter,
    double eC)
    implements Serializable {

  ModifiedLife life() {
    Lubrication film = Lubrication.of(viscosity, speed, pitchDiameter);
    return RatingLife.modified(ratings, load, Reliability.L10, film, Contamination.ofFactor(eC));
  }

  double hours() {
    return life().hours(speed).hours();
  }
}
