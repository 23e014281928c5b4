// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.contact.EllipticIntegralKernel;
import holdfast.contact.EllipticalContactKernel;
import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Constants of a deep groove ball bearing: deflection law, load ratings of the rings, pressure. Symbols: Dw ball diameter,
 * Dpw pitch diameter, ri, re groove radii (mm), Z balls, γ = Dw/Dpw (nominal contact angle 0), Cr basic dynamic load
 * rating (N).
 */
public final class BallKernel {
  /** Radial load over Z and the ring load of a ring that rotates, at zero clearance: recalled; the integral is 0.4068. */
  public static final double INNER = 0.407;
  /** The same for a ring that stands still: recalled; the integral is 0.3895. */
  public static final double OUTER = 0.389;
  /** Ratio of the two: recalled; the integrals give 1.0443. */
  public static final double RING_RATIO = 1.044;

  private BallKernel() {}

  /**
   * Deflection constant of both contacts of a steel ball, Q = cP δ^(3/2), from Hertz:
   * {@code cP = 1.48 E/(1-ν²) [Σ K (Σρ/(χ² E))^(1/3)]^(-3/2)}, K and E the complete elliptic integrals, χ the axis ratio.
   * The constant 1.48 is π√2/3 = 1.481 when derived; the recalled 1.48 is kept.
   *
   * @param dw Dw in mm, over 0
   * @param dpw Dpw in mm, over Dw
   * @param ri ri in mm, over Dw/2
   * @param re re in mm, over Dw/2
   * @return cP in N/mm^1.5
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO/TS 16281:2008", locator = "spring constant of a ball between both rings",
      provenance = Provenance.MEMORY)
  public static double stiffness(double dw, double dpw, double ri, double re) {
    check(dw, dpw, ri, re);
    double sum = softness(dw, dpw, ri, true) + softness(dw, dpw, re, false);
    return 1.48 * Steel.PLANE_MODULUS / (sum * Math.sqrt(sum));
  }

  /**
   * Rating of the inner ring,
   * {@code Qci = Cr/(0.407 Z) {1+[1.044((1-γ)/(1+γ))^1.72 (ri(2re-Dw)/(re(2ri-Dw)))^0.41]^(10/3)}^(3/10)}.
   * As for rollers the factors are near load distribution integrals at zero clearance.
   *
   * @param cr Cr in N, over 0
   * @param z Z, 3 or more
   * @param dw Dw in mm, over 0
   * @param dpw Dpw in mm, over Dw
   * @param ri ri in mm, over Dw/2
   * @param re re in mm, over Dw/2
   * @return Qci in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO/TS 16281:2008", locator = "rolling element load for the basic dynamic load rating, inner ring",
      provenance = Provenance.MEMORY)
  public static double innerRating(double cr, int z, double dw, double dpw, double ri, double re) {
    return Inputs.rating(cr) / (INNER * Inputs.elements(z)) * Math.pow(1 + Math.pow(ratio(dw, dpw, ri, re), 10.0 / 3), 0.3);
  }

  /**
   * Rating of the outer ring: as {@link #innerRating} with 0.389 and the exponent -10/3 in the braces.
   *
   * @param cr Cr in N, over 0
   * @param z Z, 3 or more
   * @param dw Dw in mm, over 0
   * @param dpw Dpw in mm, over Dw
   * @param ri ri in mm, over Dw/2
   * @param re re in mm, over Dw/2
   * @return Qce in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO/TS 16281:2008", locator = "rolling element load for the basic dynamic load rating, outer ring",
      provenance = Provenance.MEMORY)
  public static double outerRating(double cr, int z, double dw, double dpw, double ri, double re) {
    return Inputs.rating(cr) / (OUTER * Inputs.elements(z)) * Math.pow(1 + Math.pow(ratio(dw, dpw, ri, re), -10.0 / 3), 0.3);
  }

  /**
   * Greatest Hertz pressure of a steel ball in a groove,
   * {@code p = {Q / [(32πχ/3) ((1-ν²)/E · E(χ)/Σρ)²]}^(1/3)}.
   *
   * @param q Q in N, 0 or more
   * @param dw Dw in mm, over 0
   * @param dpw Dpw in mm, over Dw
   * @param groove groove radius in mm, over Dw/2
   * @param inner whether the groove is in the inner ring
   * @return pressure in MPa
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "Annex B, contact load of a contact stress")
  public static double pressure(double q, double dw, double dpw, double groove, boolean inner) {
    Check.notNegative(q, "ball load Q", "N", "a contact does not pull");
    check(dw, dpw, groove, groove);
    double k = axisRatio(dw, dpw, groove, inner);
    double size = EllipticIntegralKernel.second(k) / (Steel.PLANE_MODULUS * curvature(dw, dpw, groove, inner));
    return Math.cbrt(q / (32 * Math.PI / (3 * k) * size * size));
  }

  /** K (Σρ/(χ² E))^(1/3) of one contact. */
  private static double softness(double dw, double dpw, double groove, boolean inner) {
    double k = axisRatio(dw, dpw, groove, inner);
    double shape = k * k / EllipticIntegralKernel.second(k);
    return EllipticIntegralKernel.first(k) * Math.cbrt(curvature(dw, dpw, groove, inner) * shape);
  }

  /** Σρ. */
  private static double curvature(double dw, double dpw, double groove, boolean inner) {
    return 2 / dw * (2 + raceway(dw, dpw, inner) - 0.5 * dw / groove);
  }

  /** 1/χ from the curvatures along and across the groove. */
  private static double axisRatio(double dw, double dpw, double groove, boolean inner) {
    return EllipticalContactKernel.axisRatio(1 + raceway(dw, dpw, inner), 1 - 0.5 * dw / groove);
  }

  private static double raceway(double dw, double dpw, boolean inner) {
    double gamma = dw / dpw;
    return inner ? gamma / (1 - gamma) : -gamma / (1 + gamma);
  }

  private static double ratio(double dw, double dpw, double ri, double re) {
    check(dw, dpw, ri, re);
    double gamma = dw / dpw;
    return RING_RATIO * Math.pow((1 - gamma) / (1 + gamma), 1.72) * Math.pow(ri * (2 * re - dw) / (re * (2 * ri - dw)), 0.41);
  }

  static void check(double dw, double dpw, double ri, double re) {
    Check.within(dw, Inputs.LEAST_SIZE, 10_000, "ball diameter Dw", "mm", "a ball has a diameter");
    if (!(dpw > dw && dpw <= Check.GREATEST)) {
      throw Inputs.refused("pitch diameter Dpw", dpw + " mm", "over Dw", "the balls lie inside the pitch circle");
    }
    Check.within(ri / dw, 0.501, 1, "inner groove radius over Dw", "", "a groove is a little wider than the ball");
    Check.within(re / dw, 0.501, 1, "outer groove radius over Dw", "", "a groove is a little wider than the ball");
  }
}
