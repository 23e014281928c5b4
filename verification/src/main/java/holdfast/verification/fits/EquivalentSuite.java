// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/**
 * Equivalents on the other basis against the pairs of the preferred fits. Each fit of a pair was found in a reprint of
 * the list; that they are paired is recalled.
 */
final class EquivalentSuite {
  private EquivalentSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "fits/equivalents",
        "Hole-basis fits and their equivalents against the pairs of the preferred fits",
        EquivalentSuite::row,
        "holdfast.fits.BasisChange#of", "holdfast.fits.Fit#onOtherBasis");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    String computed = Fit.of(new Length(25), cases.text(row, "hole_basis")).onOtherBasis().to().designation();
    result.add(
        Comparison.of("equivalent of " + cases.text(row, "hole_basis"), Cases.source(cases, row), Evidence.RECALLED)
            .disclosed(cases.text(row, "disclosed"))
            .words(cases.text(row, "shaft_basis"), computed));
  }
}
