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

/** Values and depths against the textbook solution with incomplete elliptic integrals. */
final class AxisMaximaSuite {
  private AxisMaximaSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/axis-maxima",
        "Largest stresses on the axis against arbitrary-precision arithmetic",
        AxisMaximaSuite::row,
        "holdfast.contact.SubsurfaceKernel#largestShear",
        "holdfast.contact.SubsurfaceKernel#depthOfLargestShear",
        "holdfast.contact.SubsurfaceKernel#largestEquivalent",
        "holdfast.contact.SubsurfaceKernel#depthOfLargestEquivalent");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double k = cases.number(row, "axis_ratio");
    double nu = cases.number(row, "poisson");
    boolean shear = cases.text(row, "criterion").equals("shear");
    boolean depth = cases.text(row, "quantity").equals("depth/b");
    double computed;
    if (depth) {
      computed = shear ? SubsurfaceKernel.depthOfLargestShear(k, nu) : SubsurfaceKernel.depthOfLargestEquivalent(k, nu);
    } else {
      computed = shear ? SubsurfaceKernel.largestShear(k, nu) : SubsurfaceKernel.largestEquivalent(k, nu);
    }
    double tolerance = depth ? 1e-13 : 1e-14;
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(cases.number(row, "value"), computed, tolerance, "", "roundings of a double"));
  }
}
