package holdfast.verification.contact;

import holdfast.contact.SubsurfaceKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Values and depths against the textbook solution with incomplete elliptic integrals. */
final class AxisMaximaSuite implements Suite {
  @Override
  public String id() {
    return "contact/axis-maxima";
  }

  @Override
  public String title() {
    return "Largest stresses on the axis against arbitrary-precision arithmetic";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.contact.SubsurfaceKernel#largestShear",
        "holdfast.contact.SubsurfaceKernel#depthOfLargestShear",
        "holdfast.contact.SubsurfaceKernel#largestEquivalent",
        "holdfast.contact.SubsurfaceKernel#depthOfLargestEquivalent");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/axis-maxima");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
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
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(cases.number(row, "value"), computed, tolerance, "", "roundings of a double"));
    }
    return result;
  }
}
