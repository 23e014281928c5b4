// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.contact.EllipticIntegralKernel;
import holdfast.contact.EllipticalContactKernel;
import holdfast.quantity.Check;
import holdfast.tables.Source;

/**
 * Contact of a ball with a raceway by Hertz, as far as load ratings need it: load for a given greatest contact stress.
 * The ellipse is solved by {@link EllipticalContactKernel}. Symbols: χ ratio of the axes of the contact ellipse, K and E
 * complete elliptic integrals of first and second kind with parameter 1 - 1/χ², γ = Dw cos α/Dpw, ρ curvatures (1/mm).
 */
public final class PointContactKernel {
  /** Modulus of elasticity of bearing steel in MPa (ISO 76:2006, note to Table 1). */
  public static final double STEEL_MODULUS = 207000;
  /** Poisson's ratio of bearing steel (ISO 76:2006, note to Table 1). */
  public static final double STEEL_POISSON = 0.3;

  private PointContactKernel() {}

  /**
   * Ratio χ of the axes, from {@code 1 - 2/(χ²-1) [K/E - 1] - F(ρ) = 0}.
   *
   * @param curvatureDifference F(ρ) (dimensionless), 0 (circle) or more, below 1
   * @return χ, 1 or more
   * @throws holdfast.quantity.InputException if F is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "B.3.2, equation for the ratio of the semi-axes")
  public static double axisRatio(double curvatureDifference) {
    if (!(curvatureDifference >= 0 && curvatureDifference <= 0.9999999)) {
      throw Refusal.of("curvature difference F(ρ)", curvatureDifference, "", "from 0 to 0.9999999",
          "a groove lies between a plane and the ball itself");
    }
    return 1 / EllipticalContactKernel.axisRatio(1 + curvatureDifference, 1 - curvatureDifference);
  }

  /**
   * Load at which the greatest contact stress has a given value,
   * {@code Q = σ³ (32 π χ/3) [(1-ν²)/E · E(χ)/Σρ]²}.
   *
   * @param stress greatest contact stress σ in MPa, over 0
   * @param curvatureSum Σρ in 1/mm, over 0
   * @param curvatureDifference F(ρ) (dimensionless), 0 or more, below 1
   * @return Q in N, for bearing steel
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "B.3.2, fatigue limit of the most heavily loaded contact")
  public static double loadAtStress(double stress, double curvatureSum, double curvatureDifference) {
    Check.positive(stress, "contact stress σH", "MPa", "a stress above zero is needed");
    Check.positive(curvatureSum, "curvature sum Σρ", "1/mm", "bodies that touch at a point are curved");
    double chi = axisRatio(curvatureDifference);
    double term = (1 - STEEL_POISSON * STEEL_POISSON) / STEEL_MODULUS * EllipticIntegralKernel.second(1 / chi) / curvatureSum;
    return stress * stress * stress * 32 * Math.PI * chi / 3 * term * term;
  }

  /**
   * Load on the contact of ball and inner ring at a given stress.
   *
   * @param stress greatest contact stress in MPa, over 0
   * @param dw ball diameter in mm, over 0
   * @param gamma Dw cos α/Dpw (dimensionless), 0 or more, below 1
   * @param groove groove radius of the inner ring over Dw (dimensionless), over 0.5
   * @return Q in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "B.3.2, curvatures of the inner ring")
  public static double innerLoadAtStress(double stress, double dw, double gamma, double groove) {
    checkRing(dw, gamma, groove);
    double ring = gamma / (1 - gamma);
    double conformity = 1 / (2 * groove);
    double sum = 2 + ring - conformity;
    return loadAtStress(stress, 2 / dw * sum, (ring + conformity) / sum);
  }

  /**
   * Load on the contact of ball and outer ring at a given stress.
   *
   * @param stress greatest contact stress in MPa, over 0
   * @param dw ball diameter in mm, over 0
   * @param gamma Dw cos α/Dpw (dimensionless), 0 or more, below 1
   * @param groove groove radius of the outer ring over Dw (dimensionless), over 0.5; (1 + 1/γ)/2 for a spherical raceway
   * @return Q in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "B.3.2, curvatures of the outer ring")
  public static double outerLoadAtStress(double stress, double dw, double gamma, double groove) {
    checkRing(dw, gamma, groove);
    double ring = gamma / (1 + gamma);
    double conformity = 1 / (2 * groove);
    double sum = 2 - ring - conformity;
    // The difference of a spherical raceway is 0 up to rounding.
    return loadAtStress(stress, 2 / dw * sum, Math.max(0, (conformity - ring) / sum));
  }

  private static void checkRing(double dw, double gamma, double groove) {
    Check.positive(dw, "ball diameter Dw", "mm", "a ball has a diameter");
    if (!(gamma >= 0 && gamma < 1)) {
      throw Refusal.of("ratio γ = Dw cos α/Dpw", gamma, "", "0 or more, below 1", "balls lie on a pitch circle wider than they");
    }
    if (!(groove > 0.5 && groove <= Check.GREATEST)) {
      throw Refusal.of("groove radius over Dw", groove, "", "over 0.5", "a groove is wider than its ball");
    }
  }
}
