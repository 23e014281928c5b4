// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.ToleranceClass;

/** Tabulated fundamental deviations of shafts. */
final class Shafts {
  private Shafts() {}

  /** Amount of the fundamental deviation just over a size, µm; of k that of IT4 to IT7. */
  static double amount(String letter, double over) {
    return Math.abs(signed(letter, Math.max(1, over) + 1e-6));
  }

  /** es of a to h, ei of k to zc, at a size, µm; of k that of IT4 to IT7. */
  static double signed(String letter, double size) {
    int code = ToleranceClass.of(letter + "7").code();
    return letter.charAt(0) <= 'h' ? LimitDeviationsKernel.upper(size, code) : LimitDeviationsKernel.lower(size, code);
  }
}
