// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Bending of the outer ring of a track roller between two of its rollers: a first, high estimate. */
public final class OuterRingKernel {
  private OuterRingKernel() {}

  /**
   * Bending stress of the ring under a load in the middle between two rollers. It is the stress of a straight beam of
   * the ring's section, supported on the two rollers: M = F π Di/(4z), W = b t²/6, t = (D - Di)/2.
   *
   * @param force radial load F in N
   * @param outside outer diameter D in mm
   * @param inside raceway diameter Di in mm, below D
   * @param rollers number of rollers z, 2 or more
   * @param width ring width b in mm
   * @return σ = 6 F Di π/(z b (D - Di)²) in MPa
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Cam followers catalogue 2008", locator = "technical section, stress of the outer ring")
  @Source(
      document = "derivation",
      locator = "straight beam on two supports, load in the middle",
      provenance = Provenance.DERIVED)
  public static double bendingStress(double force, double outside, double inside, int rollers, double width) {
    Check.notNegative(force, "radial load F", "N", "its size, without direction");
    Check.positive(inside, "raceway diameter Di", "mm", "size of the ring");
    Check.positive(outside - inside, "ring wall D - Di", "mm", "the ring has a wall");
    Check.within(rollers, 2, 10000, "number of rollers z", "", "the ring rests on two of them");
    Check.positive(width, "ring width b", "mm", "size of the ring");
    double wall = outside - inside;
    return 6 * force * inside * Math.PI / (rollers * width * wall * wall);
  }
}
