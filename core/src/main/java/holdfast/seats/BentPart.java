// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Stress;
import holdfast.trace.Traced;

/** A stud or pin that the load on its roller bends, as its fatigue sees it. */
public sealed interface BentPart extends Traced permits StudStrength, PinStrength {
  /**
   * The section that bends.
   *
   * @return diameter, bore and cross hole
   */
  ShankSection section();

  /**
   * Nominal bending stress under the load.
   *
   * @return σb, 0 or more
   */
  Stress bending();

  /**
   * Stress along the axis that rests while the load changes.
   *
   * @return tension by the preload of a nut; 0 without
   */
  Stress axial();

  /**
   * All stress along the surface that rests while the load changes.
   *
   * @return tension by the preload, and the bending that leaning faces force on a stud
   */
  default Stress resting() {
    return axial();
  }

  /**
   * Pressure of a press fit at the section.
   *
   * @return 0 if nothing is pressed on there
   */
  Stress fitPressure();

  /**
   * Greatest tension.
   *
   * @return resting stress and bending stress together
   */
  default Stress tension() {
    return resting().plus(bending());
  }
}
