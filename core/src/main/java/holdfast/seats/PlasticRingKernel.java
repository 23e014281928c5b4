// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * A housing that yields round its bore: elastic, perfectly plastic, plane stress, greatest-shear flow. In the plastic
 * zone {@code σ_θ - σ_r = k}, with k = R_e (Tresca) or 2·R_e/√3 (modified shear stress). ζ is the ratio of the radius of
 * the plastic zone to the joint radius, Q the ratio of joint to outside diameter (0 for a wide plate). The stud stays
 * elastic.
 *
 * <p>Because plastic strain keeps the in-plane area, {@code u = (1-ν)/E·r·σ_r + k·c²/(E·r)} holds in both zones (c: radius
 * of the plastic zone), which gives the interference for any two materials; for like materials and a solid stud it is the
 * recalled {@code U = k/E·ζ²·D}.
 */
@Source(document = "DIN 7190-1:2017", locator = "elastic-plastic interference fits", provenance = Provenance.MEMORY)
@Source(
    document = "derivation", locator = "equilibrium, greatest-shear flow, plastic area constant", provenance = Provenance.DERIVED)
public final class PlasticRingKernel {
  private static final double SQRT3 = Math.sqrt(3);

  private PlasticRingKernel() {}

  /**
   * Difference of hoop and radial stress at yield.
   *
   * @param rule Tresca or modified shear stress
   * @param yield yield strength R_e of the housing in MPa, over 0
   * @return k in MPa
   * @throws InputException for von Mises, which has no closed solution here, or a strength out of range
   */
  public static double yieldDifference(YieldRule rule, double yield) {
    Objects.requireNonNull(rule, "rule");
    Check.positive(yield, "yield strength of the housing", "MPa", "a strength");
    return switch (rule) {
      case TRESCA -> yield;
      case MODIFIED_SHEAR -> 2 * yield / SQRT3;
      case VON_MISES ->
          throw new InputException(
              "theory of yield", rule.toString(), "Tresca or modified shear stress", "the closed solution rests on greatest "
                  + "shear");
    };
  }

  /**
   * Joint pressure that drives the plastic zone to a radius, {@code k/2·(2·ln ζ - Q²ζ² + 1)}.
   *
   * @param plasticRatio ζ (dimensionless), from 1 to {@link #greatestPlasticRatio}
   * @param ratio Q (dimensionless), 0 to less than 1
   * @param yieldDifference k in MPa, over 0
   * @return p in MPa
   * @throws InputException if a value is out of range
   */
  public static double pressure(double plasticRatio, double ratio, double yieldDifference) {
    check(ratio, yieldDifference);
    double greatest = greatestPlasticRatio(ratio);
    Check.within(plasticRatio, 1, greatest, "plastic radius over joint radius", "", "the ring carries no more beyond");
    return pressureOf(plasticRatio, ratio, yieldDifference);
  }

  /**
   * Greatest pressure that the housing carries: fully plastic {@code k·ln(1/Q)}, but not over k, beyond which the bore
   * flows axially.
   *
   * @param ratio Q (dimensionless), 0 to less than 1
   * @param yieldDifference k in MPa, over 0
   * @return p in MPa
   * @throws InputException if a value is out of range
   */
  public static double fullyPlasticPressure(double ratio, double yieldDifference) {
    check(ratio, yieldDifference);
    return yieldDifference * Math.min(1, -Math.log(ratio));
  }

  /**
   * Ratio ζ at the greatest pressure: 1/Q for housings thinner than {@code 1/Q = e}, else where the pressure reaches k.
   *
   * @param ratio Q (dimensionless), 0 to less than 1
   * @return ζ, over 1
   * @throws InputException if the ratio is out of range
   */
  public static double greatestPlasticRatio(double ratio) {
    check(ratio, 1);
    return ratio > Math.exp(-1) ? 1 / ratio : solve(1, ratio);
  }

  /**
   * Ratio ζ of the plastic zone under a pressure.
   *
   * @param pressure p in MPa, from 0 to {@link #fullyPlasticPressure}
   * @param ratio Q (dimensionless), 0 to less than 1
   * @param yieldDifference k in MPa, over 0
   * @return ζ; 1 while the ring is elastic
   * @throws InputException if a value is out of range
   */
  public static double plasticRatio(double pressure, double ratio, double yieldDifference) {
    double greatest = fullyPlasticPressure(ratio, yieldDifference);
    Check.within(pressure, 0, greatest, "joint pressure", "MPa", "the housing carries no more: it is fully plastic");
    return Math.min(solve(pressure / yieldDifference, ratio), greatestPlasticRatio(ratio));
  }

  /**
   * Share of the housing's cross-section that is plastic, {@code (ζ²-1)·Q²/(1-Q²)}. A usual limit is 0.3.
   *
   * @param plasticRatio ζ (dimensionless), 1 or more
   * @param ratio Q (dimensionless), 0 to less than 1
   * @return share, 0 to 1
   * @throws InputException if a value is out of range
   */
  public static double plasticShare(double plasticRatio, double ratio) {
    Check.within(plasticRatio, 1, greatestPlasticRatio(ratio), "plastic radius over joint radius", "", "it lies in the ring");
    double q2 = ratio * ratio;
    return Math.min(1, (plasticRatio - 1) * (plasticRatio + 1) * q2 / ((1 - ratio) * (1 + ratio)));
  }

  /**
   * Diametral interference that drives the plastic zone to a radius:
   * {@code D·(p·(K_I - (1-ν_A)/E_A) + k·ζ²/E_A)}.
   *
   * @param plasticRatio ζ (dimensionless), from 1 to {@link #greatestPlasticRatio}
   * @param ratio Q of the housing (dimensionless), 0 to less than 1
   * @param joint joint diameter D in mm, over 0
   * @param innerCompliance K_I of the stud in 1/MPa, over 0; see {@link ThickRingKernel#innerCompliance}
   * @param outerModulus E_A of the housing in MPa
   * @param outerPoisson ν_A of the housing (dimensionless)
   * @param yieldDifference k in MPa, over 0
   * @return U in mm
   * @throws InputException if a value is out of range
   */
  public static double interference(
      double plasticRatio,
      double ratio,
      double joint,
      double innerCompliance,
      double outerModulus,
      double outerPoisson,
      double yieldDifference) {
    ThickRingKernel.checkElastic(outerModulus, outerPoisson, "housing");
    SeatChecks.joint(joint);
    Check.positive(innerCompliance, "relative yield of the stud", "1/MPa", "a stud yields");
    double p = pressure(plasticRatio, ratio, yieldDifference);
    return joint
        * (p * (innerCompliance - (1 - outerPoisson) / outerModulus)
            + yieldDifference * plasticRatio * plasticRatio / outerModulus);
  }

  /**
   * Ratio ζ of the plastic zone of an interference, the inverse of {@link #interference}, by bisection.
   *
   * @param interference diametral interference U in mm, 0 or more
   * @param ratio Q of the housing (dimensionless), 0 to less than 1
   * @param joint joint diameter D in mm, over 0
   * @param innerCompliance K_I of the stud in 1/MPa, over 0
   * @param outerModulus E_A of the housing in MPa
   * @param outerPoisson ν_A of the housing (dimensionless)
   * @param yieldDifference k in MPa, over 0
   * @return ζ; 1 while the housing is elastic; {@link #greatestPlasticRatio} once it is fully plastic
   * @throws InputException if a value is out of range
   */
  public static double plasticRatioOfInterference(
      double interference,
      double ratio,
      double joint,
      double innerCompliance,
      double outerModulus,
      double outerPoisson,
      double yieldDifference) {
    SeatChecks.gap(interference, "interference", "a clearance makes no pressure");
    double low = 1;
    double high = greatestPlasticRatio(ratio);
    if (interference <= interference(low, ratio, joint, innerCompliance, outerModulus, outerPoisson, yieldDifference)) {
      return low;
    }
    if (interference >= interference(high, ratio, joint, innerCompliance, outerModulus, outerPoisson, yieldDifference)) {
      return high;
    }
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (interference(middle, ratio, joint, innerCompliance, outerModulus, outerPoisson, yieldDifference) < interference) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Radial stress in the housing: plastic {@code -p + k·ln(x)} for x up to ζ, elastic beyond.
   *
   * @param x radius over joint radius (dimensionless), from 1 to 1/Q
   * @param plasticRatio ζ (dimensionless), from 1 to {@link #greatestPlasticRatio}
   * @param ratio Q (dimensionless), 0 to less than 1
   * @param yieldDifference k in MPa, over 0
   * @return σ_r in MPa
   * @throws InputException if a value is out of range
   */
  public static double radialStress(double x, double plasticRatio, double ratio, double yieldDifference) {
    double p = pressure(plasticRatio, ratio, yieldDifference);
    Check.within(x, 1, 1 / ratio, "radius over joint radius", "", "it lies in the housing");
    if (x <= plasticRatio) {
      return -p + yieldDifference * Math.log(x);
    }
    double share = plasticRatio * ratio;
    return yieldDifference / 2 * (share * share - plasticRatio * plasticRatio / (x * x));
  }

  /**
   * Hoop stress in the housing: plastic {@code σ_r + k} for x up to ζ, elastic beyond.
   *
   * @param x radius over joint radius (dimensionless), from 1 to 1/Q
   * @param plasticRatio ζ (dimensionless), from 1 to {@link #greatestPlasticRatio}
   * @param ratio Q (dimensionless), 0 to less than 1
   * @param yieldDifference k in MPa, over 0
   * @return σ_θ in MPa
   * @throws InputException if a value is out of range
   */
  public static double hoopStress(double x, double plasticRatio, double ratio, double yieldDifference) {
    double radial = radialStress(x, plasticRatio, ratio, yieldDifference);
    if (x <= plasticRatio) {
      return radial + yieldDifference;
    }
    double share = plasticRatio * ratio;
    return yieldDifference / 2 * (share * share + plasticRatio * plasticRatio / (x * x));
  }

  private static double pressureOf(double zeta, double ratio, double k) {
    double s = ratio * zeta;
    return k / 2 * (2 * Math.log(zeta) - s * s + 1);
  }

  /**
   * Solves {@code ln y - Q²y = 2·p/k - 1} for y = ζ². The left side is concave and rises up to y = 1/Q², so Newton steps
   * from y = 1 climb to the root without passing it. Where the ring is still elastic there is nothing to climb, and y is 1.
   */
  private static double solve(double relativePressure, double ratio) {
    double q2 = ratio * ratio;
    double target = 2 * relativePressure - 1;
    double y = 1;
    for (int i = 0; i < 200; i++) {
      double slope = 1 / y - q2;
      double step = (target - (Math.log(y) - q2 * y)) / slope;
      if (!(step > 1e-15 * y)) {
        break;
      }
      y += step;
    }
    return Math.sqrt(y);
  }

  private static void check(double ratio, double yieldDifference) {
    if (!(ratio >= 0 && ratio < 1)) {
      throw new InputException(
          "joint over outside diameter", Numbers.shortest(ratio), "from 0 to less than 1", "the housing needs a wall");
    }
    Check.positive(yieldDifference, "yield stress difference", "MPa", "a strength");
  }
}
