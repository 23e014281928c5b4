// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;

/** Checks that several kernels share. */
final class Inputs {
  static final int MOST = 1000;
  /** Least size of a rolling element or of the place of a lamina in mm: a nanometre. */
  static final double LEAST_SIZE = 1e-6;

  static final int MOST_LAMINAE = 4000;

  private Inputs() {}

  static int elements(int z) {
    Check.within(z, 3, MOST, "number of rolling elements Z", "", "fewer than three do not hold a ring; more are not foreseen");
    return z;
  }

  static int laminae(int n) {
    Check.within(n, 2, MOST_LAMINAE, "number of laminae", "", "one lamina knows no tilt; more than 4000 gain nothing");
    return n;
  }

  static double load(double load) {
    return Check.positive(load, "radial load Fr", "N", "without radial load no element is loaded and no life is consumed");
  }

  static double clearance(double clearance, double size) {
    return Check.within(clearance, -0.05 * size, size, "radial clearance s", "mm",
        "a clearance above the size of the rolling elements, or a preload above a twentieth of it, is no bearing");
  }

  static void pitch(double dpw, double d, int z) {
    Check.positive(dpw, "pitch diameter Dpw", "mm", "a pitch circle has a diameter");
    Check.within(d, 0, dpw * Math.sin(Math.PI / z) * (1 + 1e-9), "diameter of the rolling elements", "mm",
        "neighbours on the pitch circle do not overlap");
  }

  static double tilt(double tilt) {
    return Check.within(tilt, -0.2, 0.2, "tilt", "rad", "the geometry is that of small angles");
  }

  static double rating(double c) {
    return Check.positive(c, "basic dynamic load rating Cr", "N", "a rating is a force above zero");
  }

  /** What the contacts consume per million revolutions, to the Weibull slope: the life is its inverse power. */
  static double consumed(double sum) {
    return Check.positive(sum, "consumption of life", "", "under so small a load against the rating no life is consumed");
  }

  static InputException refused(String parameter, Object value, String permitted, String reason) {
    return new InputException(parameter, String.valueOf(value), permitted, reason);
  }
}
