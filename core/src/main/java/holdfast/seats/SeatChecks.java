// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.ThermalExpansion;

/** Checks shared by the kernels of seats. Their ranges are far wider than any seat and keep results finite. */
final class SeatChecks {
  private static final double LEAST_SIZE = 1e-6;
  private static final double GREATEST_SIZE = 1e7;

  private SeatChecks() {}

  /** A diameter or length that cannot be zero, in mm. */
  static double size(double mm, String parameter, String reason) {
    return Check.within(mm, LEAST_SIZE, GREATEST_SIZE, parameter, "mm", reason);
  }

  /** The joint diameter in mm. */
  static double joint(double mm) {
    return size(mm, "joint diameter", "a joint has a size");
  }

  /** A distance, clearance or interference that may be zero, in mm. */
  static double gap(double mm, String parameter, String reason) {
    return Check.within(mm, 0, GREATEST_SIZE, parameter, "mm", reason);
  }

  /** A coefficient of thermal expansion that may be zero, in 1/K. */
  static double expansion(double perKelvin, String parameter) {
    return Check.within(
        perKelvin, 0, ThermalExpansion.GREATEST, parameter, "1/K", "parts grow when warmed, steel by 11.5e-6 1/K");
  }

  /** A coefficient of thermal expansion that must do something, in 1/K. */
  static double workingExpansion(double perKelvin, String parameter) {
    return Check.within(
        perKelvin, 1e-9, ThermalExpansion.GREATEST, parameter, "1/K",
        "without expansion heat opens nothing; steel has 11.5e-6 1/K");
  }
}
