// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.contact.AxisStressKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** The closed form against a direct summation of the point-load solution. */
final class AxisStressSuite {
  private AxisStressSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/axis-stress",
        "Stress on the axis against a summation of point loads",
        AxisStressSuite::row,
        "holdfast.contact.AxisStressKernel#alongMajor",
        "holdfast.contact.AxisStressKernel#alongMinor",
        "holdfast.contact.AxisStressKernel#normal");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double k = cases.number(row, "axis_ratio");
    double nu = cases.number(row, "poisson");
    double z = cases.number(row, "depth_over_b");
    double computed =
        switch (cases.text(row, "quantity")) {
          case "sigma_x/p0" -> AxisStressKernel.alongMajor(k, nu, z);
          case "sigma_y/p0" -> AxisStressKernel.alongMinor(k, nu, z);
          default -> AxisStressKernel.normal(k, z);
        };
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(cases.number(row, "value"), computed, 1e-12, "", "to which the summation has settled"));
  }
}
