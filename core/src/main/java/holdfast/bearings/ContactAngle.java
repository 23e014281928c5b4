// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;

/** Limits of the nominal contact angle. Angles in rad; the slack of 1e-9 rad lets converted whole degrees pass. */
final class ContactAngle {
  private static final double SLACK = 1e-9;
  private static final double RADIAL_END = Math.PI / 4;

  private ContactAngle() {}

  /** Refuses angles that are not those of radial bearings, 0 to 45°. */
  static double radial(double alpha) {
    if (!(alpha >= 0 && alpha <= RADIAL_END + SLACK)) {
      refuse(alpha, 0, 45, "radial bearings have a nominal contact angle of up to 45° (ISO 281:2007, clause 5)");
    }
    return alpha;
  }

  /** Refuses angles that are not those of radial bearings that can carry axial load by their angle, over 0 to 45°. */
  static double radialWithAngle(double alpha) {
    if (!(alpha >= Check.LEAST && alpha <= RADIAL_END + SLACK)) {
      throw Refusal.of("contact angle α", Math.toDegrees(alpha), "°", "over 0 ° up to 45 °",
          "this type carries axial load by its contact angle (ISO 281:2007, Tables 3 and 8)");
    }
    return alpha;
  }

  /** Refuses angles that are not those of thrust bearings, over 45° to 90°. */
  static double thrust(double alpha) {
    if (!(alpha > RADIAL_END - SLACK && alpha <= Math.PI / 2 + SLACK)) {
      refuse(alpha, 45, 90, "thrust bearings have a nominal contact angle over 45° (ISO 281:2007, clause 6)");
    }
    return alpha;
  }

  static boolean is90(double alpha) {
    return Math.abs(alpha - Math.PI / 2) < SLACK;
  }

  private static void refuse(double alpha, double from, double to, String reason) {
    Check.finite(alpha, "contact angle α", "rad");
    throw Refusal.of("contact angle α", Math.toDegrees(alpha), "°", "from " + (int) from + " ° to " + (int) to + " °", reason);
  }
}
