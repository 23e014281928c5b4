// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.RotationalSpeed;
import java.io.Serializable;
import java.util.Objects;

/**
 * Lubrication of a bearing: the viscosity ratio κ and what it was computed from.
 *
 * @param kappa viscosity ratio κ, over 0
 * @param pitchDiameter pitch diameter Dpw
 * @param provenAdditives whether the lubricant has extreme-pressure additives proven by test
 * @param viscosity viscosity ν at operating temperature; null if κ was given
 * @param speed speed n; null if κ was given
 */
public record Lubrication(
    double kappa, Length pitchDiameter, boolean provenAdditives, KinematicViscosity viscosity, RotationalSpeed speed)
    implements Serializable {

  // Refuses what is not a film, and a κ that does not follow from the viscosity and the speed beside it.
  public Lubrication {
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    holdfast.quantity.Check.positive(kappa, "viscosity ratio κ", "", "a film carries the load");
    FatigueLimitKernel.checkPitch(pitchDiameter.mm());
    if (viscosity != null) {
      Objects.requireNonNull(speed, "speed");
      double follows = LubricationKernel.kappa(viscosity.mm2PerS(), speed.rpm(), pitchDiameter.mm());
      holdfast.quantity.Check.within(kappa, follows * (1 - 1e-9), follows * (1 + 1e-9), "viscosity ratio κ", "",
          "it follows from viscosity, speed and pitch diameter");
    }
  }

  /**
   * Lubrication from viscosity, speed and size.
   *
   * @param viscosity viscosity ν at operating temperature (of a grease, that of its base oil), over 0
   * @param speed speed n, over 0
   * @param pitchDiameter pitch diameter Dpw, over 0; the mean diameter (d + D)/2 serves if it is not known
   * @return the lubrication
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public static Lubrication of(KinematicViscosity viscosity, RotationalSpeed speed, Length pitchDiameter) {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    Objects.requireNonNull(viscosity, "viscosity");
    double kappa = LubricationKernel.kappa(viscosity.mm2PerS(), speed.rpm(), pitchDiameter.mm());
    return new Lubrication(kappa, pitchDiameter, false, viscosity, speed);
  }

  /**
   * Lubrication with a known viscosity ratio.
   *
   * @param kappa viscosity ratio κ, over 0
   * @param pitchDiameter pitch diameter Dpw, over 0
   * @return the lubrication
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public static Lubrication ofKappa(double kappa, Length pitchDiameter) {
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    return new Lubrication(kappa, pitchDiameter, false, null, null);
  }

  /**
   * The same with extreme-pressure additives proven by test, so that the rule for additives applies.
   *
   * @return the lubrication
   */
  public Lubrication withProvenAdditives() {
    return new Lubrication(kappa, pitchDiameter, true, viscosity, speed);
  }

  /** For example {@code "κ = 1.82 (36 mm²/s at 1000 rpm, Dpw = 50 mm)"}. */
  @Override
  public String toString() {
    String origin = viscosity == null ? "given" : viscosity + " at " + speed + ", Dpw = " + pitchDiameter;
    return "κ = " + Numbers.significant(kappa, 3) + " (" + origin + ")";
  }
}
