package holdfast.verification.contact;

import holdfast.contact.AxisStressKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** The closed form against a direct summation of the point-load solution. */
final class AxisStressSuite implements Suite {
  @Override
  public String id() {
    return "contact/axis-stress";
  }

  @Override
  public String title() {
    return "Stress on the axis against a summation of point loads";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.contact.AxisStressKernel#alongMajor",
        "holdfast.contact.AxisStressKernel#alongMinor",
        "holdfast.contact.AxisStressKernel#normal");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/axis-stress");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
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
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(cases.number(row, "value"), computed, 1e-12, "", "to which the summation has settled"));
    }
    return result;
  }
}
