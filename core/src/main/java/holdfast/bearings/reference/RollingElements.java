// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.bearings.BearingFamily;
import holdfast.quantity.Length;
import java.io.Serializable;

/** The rolling elements of a radial bearing: {@link RollerSet} or {@link BallSet}. */
public sealed interface RollingElements extends Serializable permits RollerSet, BallSet {
  /**
   * The family of the bearing.
   *
   * @return radial roller or radial ball
   */
  BearingFamily family();

  /**
   * Number of rolling elements of one row.
   *
   * @return Z
   */
  int count();

  /**
   * Diameter of the rolling elements.
   *
   * @return Dwe or Dw
   */
  Length diameter();

  /**
   * Diameter of the circle of the centres.
   *
   * @return Dpw
   */
  Length pitchDiameter();
}
