package holdfast.verification.contact;

import holdfast.contact.EllipticalContactKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Coefficients m, n and lambda of two old printed tables, recalled. */
final class HertzCoefficientSuite implements Suite {
  @Override
  public String id() {
    return "contact/hertz-coefficients";
  }

  @Override
  public String title() {
    return "Contact ellipse against recalled printed tables of coefficients";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.contact.EllipticalContactKernel#axisRatio",
        "holdfast.contact.EllipticalContactKernel#coefficientMajor",
        "holdfast.contact.EllipticalContactKernel#coefficientMinor",
        "holdfast.contact.EllipticalContactKernel#coefficientApproach");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/hertz-coefficients");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double cos = cases.number(row, "cos_theta");
      double k = EllipticalContactKernel.axisRatio(1 + cos, 1 - cos);
      double computed =
          switch (cases.text(row, "quantity")) {
            case "m" -> EllipticalContactKernel.coefficientMajor(k);
            case "n" -> EllipticalContactKernel.coefficientMinor(k);
            case "lambda" -> EllipticalContactKernel.coefficientApproach(k);
            default -> k;
          };
      String printed = cases.text(row, "printed");
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.RECALLED)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(
                  Double.parseDouble(printed), computed, Cases.halfLastDigit(printed), "",
                  "half a unit of the last printed digit"));
    }
    return result;
  }
}
