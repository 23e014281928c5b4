package holdfast.verification.contact;

import holdfast.contact.LineContactKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** The closed forms against a quadrature of the axial strain. */
final class LineApproachSuite implements Suite {
  @Override
  public String id() {
    return "contact/line-approach";
  }

  @Override
  public String title() {
    return "Compression under line contact against quadrature";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.contact.LineContactKernel#compressionToDepth",
        "holdfast.contact.LineContactKernel#compressionToAxis");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/line-approach");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double reach = cases.number(row, "reach_over_b");
      double nu = cases.number(row, "poisson");
      double computed =
          cases.text(row, "body").equals("cylinder")
              ? LineContactKernel.compressionToAxis(1, 1, 1, nu, reach)
              : LineContactKernel.compressionToDepth(1, 1, 1, nu, reach);
      double value = cases.number(row, "value");
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(value, computed, 1e-14 * value, "", "roundings of a double"));
    }
    return result;
  }
}
