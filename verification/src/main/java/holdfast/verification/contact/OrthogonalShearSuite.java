// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.contact.SubsurfaceKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** The parametric solution against a search over depth and distance. */
final class OrthogonalShearSuite {
  private OrthogonalShearSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/orthogonal-shear",
        "Orthogonal shear stress against a numerical search",
        OrthogonalShearSuite::row,
        "holdfast.contact.SubsurfaceKernel#orthogonalShear",
        "holdfast.contact.SubsurfaceKernel#depthOfOrthogonalShear");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double k = cases.number(row, "axis_ratio");
    boolean depth = cases.text(row, "quantity").equals("depth/b");
    double computed = depth ? SubsurfaceKernel.depthOfOrthogonalShear(k) : SubsurfaceKernel.orthogonalShear(k);
    double tolerance = depth ? 1e-6 : 1e-11;
    String reason = depth ? "a search finds the place of a flat maximum no closer" : "printed digits";
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(cases.number(row, "value"), computed, tolerance, "", reason));
  }
}
