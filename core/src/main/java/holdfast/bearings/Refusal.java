// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;

/** Refusals that are not about a single interval. */
final class Refusal {
  private Refusal() {}

  static InputException of(String parameter, Object value, String permitted, String reason) {
    return new InputException(parameter, String.valueOf(value), permitted, reason);
  }

  static InputException of(String parameter, double value, String unit, String permitted, String reason) {
    return new InputException(parameter, Numbers.shortest(value) + (unit.isEmpty() ? "" : " " + unit), permitted, reason);
  }

  /** Refuses parallel arrays of different length. */
  static void sameLength(int expected, int actual, String parameter) {
    if (expected != actual) {
      throw new InputException(parameter, actual + " entries", expected + " entries", "parallel arrays have one entry per item");
    }
  }
}
