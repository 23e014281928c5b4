package holdfast.verification.contact;

import holdfast.seats.StudBendingKernel;
import holdfast.seats.StudSectionKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Closed forms of round sections and of the pressed seat mouth. */
final class StudSectionSuite implements Suite {
  @Override
  public String id() {
    return "contact/stud-sections";
  }

  @Override
  public String title() {
    return "Sections and combined stresses of studs against quadrature";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.seats.StudSectionKernel#area",
        "holdfast.seats.StudSectionKernel#inertia",
        "holdfast.seats.StudSectionKernel#modulus",
        "holdfast.seats.StudSectionKernel#shearPeak",
        "holdfast.seats.StudBendingKernel#atPressedMouth");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/stud-sections");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double d = cases.number(row, "diameter");
      double bore = cases.number(row, "bore");
      double computed =
          switch (cases.text(row, "quantity")) {
            case "area" -> StudSectionKernel.area(d, bore);
            case "section modulus" -> StudSectionKernel.modulus(d, bore);
            case "shear peak" -> StudSectionKernel.shearPeak(d, bore);
            default -> StudBendingKernel.atPressedMouth(220, cases.number(row, "pressure"), d, bore);
          };
      double value = cases.number(row, "value");
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(value, computed, 2e-14 * value, "", "printed digits"));
    }
    return result;
  }
}
