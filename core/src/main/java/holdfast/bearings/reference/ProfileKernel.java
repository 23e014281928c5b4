// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Roller profiles: how far the radius at x falls short of the radius in the middle. Symbols: x position from the middle of
 * the roller, Lwe effective length, Dwe diameter (mm).
 */
public final class ProfileKernel {
  private ProfileKernel() {}

  /**
   * Logarithmic profile, {@code P = 0.00035 Dwe ln{1/[1-(2x/Lwe)²]}} up to Lwe = 2.5 Dwe. Longer rollers are flat for
   * {@code |x| <= (Lwe-2.5Dwe)/2} and have {@code P = 0.0005 Dwe ln{1/[1-((2|x|-(Lwe-2.5Dwe))/(2.5Dwe))²]}} outside.
   *
   * @param x from over -Lwe/2 to under Lwe/2 in mm
   * @param lwe Lwe in mm, over 0
   * @param dwe Dwe in mm, over 0
   * @return P in mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO/TS 16281:2008", locator = "profile function of rollers", provenance = Provenance.MEMORY)
  public static double logarithmic(double x, double lwe, double dwe) {
    inside(x, lwe);
    diameter(dwe);
    if (Math.abs(x) == 0.5 * lwe) {
      throw Inputs.refused("position x", x, "off the very end of the roller", "the logarithmic profile has no end there");
    }
    double u;
    double factor;
    if (lwe <= 2.5 * dwe) {
      u = 2 * x / lwe;
      factor = 0.00035;
    } else {
      u = Math.max((2 * Math.abs(x) - (lwe - 2.5 * dwe)) / (2.5 * dwe), 0);
      factor = 0.0005;
    }
    return 0.0 - factor * dwe * Math.log1p(-u * u);
  }

  /**
   * Crowned roller whose generatrix is an arc, {@code P = r - sqrt(r² - x²)}.
   *
   * @param x from -Lwe/2 to Lwe/2 in mm
   * @param lwe Lwe in mm, over 0
   * @param radius crown radius r in mm, at least Lwe/2
   * @return P in mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "sagitta of an arc", provenance = Provenance.DERIVED)
  public static double crowned(double x, double lwe, double radius) {
    inside(x, lwe);
    Check.within(radius, 0.5 * lwe, 1e9, "crown radius r", "mm", "the arc spans the roller");
    return x * x / (radius + Math.sqrt(radius * radius - x * x));
  }

  /**
   * Given profile, by linear interpolation between stations.
   *
   * @param x from -Lwe/2 to Lwe/2 in mm
   * @param lwe Lwe in mm, over 0
   * @param stations P in mm at two or more stations evenly spaced from one end of Lwe to the other
   * @return P in mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "linear interpolation", provenance = Provenance.DERIVED)
  public static double given(double x, double lwe, double[] stations) {
    Objects.requireNonNull(stations, "stations");
    inside(x, lwe);
    Check.within(stations.length, 2, 100_000, "stations of the profile", "", "a profile has two ends");
    double at = (x / lwe + 0.5) * (stations.length - 1);
    int below = (int) Math.min(Math.floor(at), stations.length - 2.0);
    double share = at - below;
    return (1 - share) * drop(stations[below]) + share * drop(stations[below + 1]);
  }

  static double drop(double p) {
    return Check.within(p, 0, 10, "drop of the profile P", "mm", "it is measured down from the highest place");
  }

  private static void inside(double x, double lwe) {
    LaminaKernel.length(lwe);
    Check.within(x, -0.5 * lwe, 0.5 * lwe, "position x", "mm", "positions lie on the roller");
  }

  static double diameter(double dwe) {
    return Check.within(dwe, Inputs.LEAST_SIZE, 10_000, "roller diameter Dwe", "mm", "a roller has a diameter");
  }
}
