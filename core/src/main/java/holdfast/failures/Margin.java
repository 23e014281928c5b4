// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

import holdfast.quantity.InputException;
import java.util.Locale;

/** Computed margins that speak for a cause when they are small. */
public enum Margin {
  /** Load against the least that keeps the roller turning. */
  MINIMUM_LOAD,
  /** Moment of acceleration against friction of the track. */
  ACCELERATION,
  /** Running hours against rating life. */
  LIFE,
  /** Tilt against the limit of misalignment: edge load. */
  TILT,
  /** Clearance of the seat. */
  SEAT_CLEARANCE,
  /** Lubricating film. */
  FILM,
  /** Temperature against the limits of roller, seal and grease. */
  TEMPERATURE,
  /** Torque that the seat holds against that of the nut: fretting. */
  HOLDING_TORQUE,
  /** Preload that is left. */
  PRELOAD,
  /** Static load against C0. */
  STATIC_LOAD,
  /** Tightening torque against the stud's greatest. */
  TIGHTENING_TORQUE,
  /** Bending of the stud. */
  STUD_BENDING,
  /** Load against the strength of the outer ring. */
  RING_LOAD,
  /** Load against the capacity of the track. */
  TRACK_LOAD,
  /** Speed against its limit. */
  SPEED,
  /** Port plan. */
  GREASE_PORT,
  /** Sharing of load among rollers. */
  LOAD_SHARING,
  /** Hoop stress of the machine member. */
  HOOP_STRESS;

  static Margin read(String label) {
    for (Margin candidate : values()) {
      if (candidate.toString().equals(label)) {
        return candidate;
      }
    }
    throw new InputException("margin", "'" + label + "'", "a margin of the table", "the table of failures links to margins");
  }

  /** For example {@code "holding torque"}. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
