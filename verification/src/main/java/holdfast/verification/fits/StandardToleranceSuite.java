// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.ToleranceGrade;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/**
 * Standard tolerances against the reprints in which they were found. The case table names only reprints that agree, so
 * it guards against slips; how many documents confirm a cell stands in the table itself.
 */
final class StandardToleranceSuite {
  private StandardToleranceSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "fits/standard-tolerances",
        "Standard tolerances IT01 to IT18 against reprints",
        StandardToleranceSuite::row,
        "holdfast.fits.ToleranceGrade#tolerance", "holdfast.fits.LimitDeviationsKernel");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    int grade = ToleranceGrade.of(cases.text(row, "grade")).code();
    double atEnd = LimitDeviationsKernel.standardTolerance(Sizes.upTo(cases, row), grade);
    double atStart = LimitDeviationsKernel.standardTolerance(Sizes.justOver(cases, row), grade);
    SourceRef source = Cases.source(cases, row);
    Evidence evidence = source.provenance() == Provenance.MEMORY ? Evidence.RECALLED : Evidence.RECOMBINED;
    result.add(
        Sizes.exact(
            cases.address(row),
            source,
            evidence,
            cases.text(row, "disclosed"),
            cases.number(row, "value"),
            atEnd == atStart ? atEnd : Double.NaN));
  }
}
