// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import static holdfast.bearings.PointContactKernel.STEEL_MODULUS;
import static holdfast.bearings.PointContactKernel.STEEL_POISSON;

/** Elastic constants of bearing steel, printed with the f0 table of ISO 76:2006 (Table 1), which they reproduce. */
final class Steel {
  /** E/(1-ν²). */
  static final double PLANE_MODULUS = STEEL_MODULUS / (1 - STEEL_POISSON * STEEL_POISSON);
  /** Contact modulus of steel on steel, E/[2 (1-ν²)]. */
  static final double REDUCED_MODULUS = 0.5 * PLANE_MODULUS;

  private Steel() {}
}
