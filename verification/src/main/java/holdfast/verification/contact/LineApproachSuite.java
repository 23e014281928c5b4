// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.contact.LineContactKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** The closed forms against a quadrature of the axial strain. */
final class LineApproachSuite {
  private LineApproachSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/line-approach",
        "Compression under line contact against quadrature",
        LineApproachSuite::row,
        "holdfast.contact.LineContactKernel#compressionToDepth",
        "holdfast.contact.LineContactKernel#compressionToAxis");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double reach = cases.number(row, "reach_over_b");
    double nu = cases.number(row, "poisson");
    double computed =
        cases.text(row, "body").equals("cylinder")
            ? LineContactKernel.compressionToAxis(1, 1, 1, nu, reach)
            : LineContactKernel.compressionToDepth(1, 1, 1, nu, reach);
    double value = cases.number(row, "value");
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(value, computed, 1e-14 * value, "", "roundings of a double"));
  }
}
