package holdfast.verification.contact;

import holdfast.seats.StudSeatKernel;
import holdfast.seats.StudSectionKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Deflection and slope at the seat mouth, from short stiff studs to long seats. */
final class StudSeatSuite implements Suite {
  @Override
  public String id() {
    return "contact/stud-seat";
  }

  @Override
  public String title() {
    return "Stud in an elastic seat against a solution of the beam equation";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.seats.StudSeatKernel#mouthDeflection",
        "holdfast.seats.StudSeatKernel#mouthSlope",
        "holdfast.seats.StudSectionKernel#inertia");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/stud-seat");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double stiffness = cases.number(row, "modulus") * StudSectionKernel.inertia(cases.number(row, "diameter"), 0);
      double force = cases.number(row, "force");
      double arm = cases.number(row, "arm");
      double foundation = cases.number(row, "foundation_modulus");
      double engaged = cases.number(row, "engaged_length");
      double computed =
          cases.text(row, "quantity").startsWith("slope")
              ? StudSeatKernel.mouthSlope(force, arm, foundation, stiffness, engaged)
              : StudSeatKernel.mouthDeflection(force, arm, foundation, stiffness, engaged);
      double value = cases.number(row, "value");
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(value, computed, 1e-13 * value, "", "roundings of a double"));
    }
    return result;
  }
}
