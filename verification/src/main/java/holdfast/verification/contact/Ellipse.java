// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.contact.EllipticIntegralKernel;
import holdfast.contact.EllipticalContactKernel;

/** Quantities of the contact ellipse by the names of the case tables. */
final class Ellipse {
  private Ellipse() {}

  /** The named quantity at an axis ratio k. */
  static double quantity(String name, double k) {
    return switch (name) {
      case "m" -> EllipticalContactKernel.coefficientMajor(k);
      case "n" -> EllipticalContactKernel.coefficientMinor(k);
      case "lambda" -> EllipticalContactKernel.coefficientApproach(k);
      case "K" -> EllipticIntegralKernel.first(k);
      case "E" -> EllipticIntegralKernel.second(k);
      case "b/a" -> k;
      default -> throw new IllegalStateException("no such quantity: " + name);
    };
  }
}
