// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Viscosity ratio κ. Symbols: n speed (rpm), Dpw pitch diameter (mm), ν and ν1 kinematic viscosities (mm²/s). */
public final class LubricationKernel {
  /** Greatest viscosity ratio that the life modification factor uses. */
  public static final double GREATEST_KAPPA = 4;
  /** Least viscosity ratio for which the life modification factor is defined. */
  public static final double LEAST_KAPPA = 0.1;

  private LubricationKernel() {}

  /**
   * Reference viscosity for sufficient lubrication: {@code ν1 = 45000 n^-0.83 Dpw^-0.5} below 1000 rpm,
   * {@code ν1 = 4500 n^-0.5 Dpw^-0.5} from 1000 rpm on.
   *
   * @param rpm speed in rpm, over 0
   * @param dpw pitch diameter in mm, over 0; the mean diameter of the bearing serves if it is not known
   * @return ν1 in mm²/s
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3.2, Figure 2, equations for ν1")
  public static double referenceViscosity(double rpm, double dpw) {
    BasicLifeKernel.checkSpeed(rpm);
    FatigueLimitKernel.checkPitch(dpw);
    return rpm < 1000 ? 45000 * Math.pow(rpm, -0.83) / Math.sqrt(dpw) : 4500 / Math.sqrt(rpm * dpw);
  }

  /**
   * Viscosity ratio {@code κ = ν/ν1}.
   *
   * @param viscosity viscosity ν at operating temperature in mm²/s, over 0
   * @param referenceViscosity ν1 in mm²/s, over 0
   * @return κ
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3.1")
  public static double kappa(double viscosity, double referenceViscosity) {
    checkViscosity(viscosity);
    Check.positive(referenceViscosity, "reference viscosity ν1", "mm²/s", "a viscosity above zero");
    return viscosity / referenceViscosity;
  }

  /**
   * Viscosity ratio from speed and size.
   *
   * @param viscosity viscosity ν at operating temperature in mm²/s, over 0
   * @param rpm speed in rpm, over 0
   * @param dpw pitch diameter in mm, over 0
   * @return κ
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3")
  public static double kappa(double viscosity, double rpm, double dpw) {
    return checkViscosity(viscosity) / referenceViscosity(rpm, dpw);
  }

  /**
   * Viscosity ratio from the film parameter, {@code κ ≈ Λ^1.3}.
   *
   * @param filmParameter Λ (dimensionless), film thickness over composite roughness, over 0
   * @return κ
   * @throws holdfast.quantity.InputException if Λ is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "9.3.3.1, relation to Λ, exponent recalled", provenance = Provenance.MEMORY)
  public static double kappaFromFilm(double filmParameter) {
    return Math.pow(Check.positive(filmParameter, "film parameter Λ", "", "a film has a thickness"), 1.3);
  }

  static double checkViscosity(double viscosity) {
    return Check.positive(viscosity, "viscosity ν", "mm²/s", "a lubricant has a viscosity");
  }
}
