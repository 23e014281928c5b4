package holdfast.verification.contact;

import holdfast.contact.ContactGeometryKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Curvatures of the gap against the eigenvalues of the summed curvature matrices. */
final class ContactGeometrySuite implements Suite {
  @Override
  public String id() {
    return "contact/contact-geometry";
  }

  @Override
  public String title() {
    return "Curvatures of the gap against eigenvalues";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.contact.ContactGeometryKernel#greater",
        "holdfast.contact.ContactGeometryKernel#lesser",
        "holdfast.contact.ContactGeometryKernel#sum");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/contact-geometry");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double c1 = cases.number(row, "c1");
      double c1t = cases.number(row, "c1t");
      double c2 = cases.number(row, "c2");
      double c2t = cases.number(row, "c2t");
      double angle = Math.toRadians(cases.number(row, "angle"));
      double computed =
          cases.text(row, "quantity").equals("greater")
              ? ContactGeometryKernel.greater(c1, c1t, c2, c2t, angle)
              : ContactGeometryKernel.lesser(c1, c1t, c2, c2t, angle);
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(cases.number(row, "value"), computed, 1e-16, "1/mm", "roundings of the eigenvalue routine"));
    }
    return result;
  }
}
