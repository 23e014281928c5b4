package holdfast.verification.contact;

import holdfast.contact.SubsurfaceKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** The parametric solution against a search over depth and distance. */
final class OrthogonalShearSuite implements Suite {
  @Override
  public String id() {
    return "contact/orthogonal-shear";
  }

  @Override
  public String title() {
    return "Orthogonal shear stress against a numerical search";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.contact.SubsurfaceKernel#orthogonalShear",
        "holdfast.contact.SubsurfaceKernel#depthOfOrthogonalShear");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/orthogonal-shear");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double k = cases.number(row, "axis_ratio");
      boolean depth = cases.text(row, "quantity").equals("depth/b");
      double computed = depth ? SubsurfaceKernel.depthOfOrthogonalShear(k) : SubsurfaceKernel.orthogonalShear(k);
      double tolerance = depth ? 1e-6 : 1e-11;
      String reason = depth ? "a search finds the place of a flat maximum no closer" : "printed digits";
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(cases.number(row, "value"), computed, tolerance, "", reason));
    }
    return result;
  }
}
