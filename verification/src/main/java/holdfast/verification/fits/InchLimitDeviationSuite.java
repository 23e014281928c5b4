// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Every row of the inch fits through the public API: guards against slips, because our tables come from these rows. */
final class InchLimitDeviationSuite {
  private InchLimitDeviationSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "fits/inch-limit-deviations",
        "Limit deviations of every inch fit",
        InchLimitDeviationSuite::row,
        InchCases.FIT, InchCases.CLASS, InchCases.KERNEL);
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    Fit fit = InchCases.fit(cases, row);
    add(result, cases, row, "hole_lower", fit.hole().lower());
    add(result, cases, row, "hole_upper", fit.hole().upper());
    add(result, cases, row, "shaft_lower", fit.shaft().lower());
    add(result, cases, row, "shaft_upper", fit.shaft().upper());
  }

  private static void add(List<Comparison> result, Table cases, int row, String column, Length computed) {
    SourceRef source = Cases.source(cases, row);
    Evidence evidence = source.provenance() == Provenance.MEMORY ? Evidence.RECALLED : Evidence.RECOMBINED;
    String name = cases.address(row) + ", " + column.replace('_', ' ') + " limit deviation";
    result.add(
        InchCases.exact(name, source, evidence, cases.text(row, "disclosed"), cases.number(row, column), computed));
  }
}
