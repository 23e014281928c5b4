// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.bearings;

/**
 * Factor fc in closed form, from the contacts of rolling element and raceways (ISO/TR 1281-1, recalled; the products
 * are confirmed by the comparison with every cell, their split into factors is not). γ is the ratio of the tables.
 */
final class ClosedFormFactor {
  private static final double A1 = 98.0665;
  private static final double B1 = 551.13373;
  /** 2r/(2r - 1) to the power 0.41 for r = 0.535: the groove with which the printed thrust tables agree. */
  private static final double THRUST_GROOVE = Math.pow(1.07 / 0.07, 0.41);

  private ClosedFormFactor() {}

  /** Radial ball bearings; grooves as multiples of the ball diameter, infinite for a plane. */
  static double radialBall(double gamma, double inner, double outer, double reduction) {
    double grooves = Math.pow(curvature(inner) / curvature(outer), 0.41);
    double ratio = 1.04 * Math.pow((1 - gamma) / (1 + gamma), 1.72) * grooves;
    return 0.41 * A1 * reduction * ball(gamma) * Math.pow(curvature(inner), 0.41)
        * Math.pow(1 + Math.pow(ratio, 10.0 / 3), -0.3);
  }

  static double thrustBall(double gamma, double alphaDegrees) {
    if (alphaDegrees == 90) {
      return A1 * 0.9 * (2.0 / 3) * Math.pow(gamma, 0.3) * THRUST_GROOVE * Math.pow(2, -0.3);
    }
    double ratio = Math.pow((1 - gamma) / (1 + gamma), 1.72);
    return A1 * 0.9 * (1 - Math.sin(Math.toRadians(alphaDegrees)) / 3) * ball(gamma) * THRUST_GROOVE
        * Math.pow(1 + Math.pow(ratio, 10.0 / 3), -0.3);
  }

  static double radialRoller(double gamma) {
    double ratio = 1.04 * Math.pow((1 - gamma) / (1 + gamma), 143.0 / 108);
    return 207.9 * 0.83 * roller(gamma) * Math.pow(1 + Math.pow(ratio, 4.5), -2.0 / 9);
  }

  static double thrustRoller(double gamma, double alphaDegrees) {
    if (alphaDegrees == 90) {
      return B1 * 0.73 * 0.85 * Math.pow(gamma, 2.0 / 9) * Math.pow(2, -2.0 / 9);
    }
    double ratio = Math.pow((1 - gamma) / (1 + gamma), 143.0 / 108);
    return B1 * 0.73 * (1 - 0.15 * Math.sin(Math.toRadians(alphaDegrees))) * roller(gamma)
        * Math.pow(1 + Math.pow(ratio, 4.5), -2.0 / 9);
  }

  private static double ball(double gamma) {
    return Math.pow(gamma, 0.3) * Math.pow(1 - gamma, 1.39) / Math.cbrt(1 + gamma);
  }

  private static double roller(double gamma) {
    return Math.pow(gamma, 2.0 / 9) * Math.pow(1 - gamma, 29.0 / 27) / Math.pow(1 + gamma, 0.25);
  }

  /** 2r/(2r - 1), which tends to 1 for a plane. */
  private static double curvature(double groove) {
    return Double.isInfinite(groove) ? 1 : 2 * groove / (2 * groove - 1);
  }
}
