// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * A pin held in the two ears of a fork, with a roller between them. Symbols: F radial load (N), g gap between the ears, t
 * thickness of an ear, w width over which the load is spread, d pin diameter (mm). Ears and roller are taken to press evenly
 * over their width, and the ears not to hold the pin straight: the bending of a loose pin, safe for a pressed one.
 */
public final class PinKernel {
  private PinKernel() {}

  /**
   * Greatest bending moment, in the middle of the pin.
   *
   * @param force radial load F in N, 0 or more
   * @param gap gap g between the ears in mm, over 0
   * @param ear thickness t of an ear in mm, over 0
   * @param width width w of the load in mm, over 0 up to g
   * @return M = F/4 · (g + t - w/2) in N·mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "beam on two supports in the middle of the ears, load spread over w",
      provenance = Provenance.DERIVED)
  public static double moment(double force, double gap, double ear, double width) {
    Check.notNegative(force, "radial load F", "N", "its size, without direction");
    Check.positive(gap, "gap between the ears g", "mm", "the roller runs in it");
    Check.positive(ear, "thickness of an ear t", "mm", "it holds the pin");
    Check.overUpTo(width, 0, gap, "width of the load w", "mm", "the roller runs between the ears");
    return force / 4 * (gap + ear - width / 2);
  }

  /**
   * Pressure of the pin on a projected area.
   *
   * @param force load on the area in N, 0 or more: F/2 on an ear, F in the bore of the roller
   * @param diameter pin diameter d in mm, over 0
   * @param length length of the area in mm, over 0
   * @return p = F/(d l) in MPa
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "load over projected area", provenance = Provenance.DERIVED)
  public static double pressure(double force, double diameter, double length) {
    Check.notNegative(force, "load on the area", "N", "its size, without direction");
    Check.positive(diameter, "pin diameter d", "mm", "a pin has a size");
    Check.positive(length, "length of the area", "mm", "an area has a size");
    return force / (diameter * length);
  }
}
