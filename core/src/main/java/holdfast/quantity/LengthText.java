// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

/** Lengths as the shop writes them: small ones in µm, sizes in mm without zeros that say nothing. */
final class LengthText {
  private LengthText() {}

  static String of(Length length) {
    double mm = length.mm();
    if (mm == 0) {
      return "0 mm";
    }
    // A hair below 0.1 mm is 0.1 mm: sums of decimal fractions are not exact in binary.
    return Math.abs(mm) < 0.1 * (1 - 1e-9)
        ? Numbers.significant(mm * 1000, Math.abs(mm) < 0.001 ? 2 : 4) + " µm"
        : Numbers.significant(mm, 8) + " mm";
  }
}
