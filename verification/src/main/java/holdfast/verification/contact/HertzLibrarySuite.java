package holdfast.verification.contact;

import holdfast.contact.EllipticIntegralKernel;
import holdfast.contact.EllipticalContactKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Values at the curvatures of the printed tables, computed apart from this project. */
final class HertzLibrarySuite implements Suite {
  @Override
  public String id() {
    return "contact/hertz-library-values";
  }

  @Override
  public String title() {
    return "Contact ellipse against values of a general-purpose library";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.contact.EllipticalContactKernel#axisRatio",
        "holdfast.contact.EllipticalContactKernel#coefficientMajor",
        "holdfast.contact.EllipticalContactKernel#coefficientMinor",
        "holdfast.contact.EllipticalContactKernel#coefficientApproach",
        "holdfast.contact.EllipticIntegralKernel#first",
        "holdfast.contact.EllipticIntegralKernel#second");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/hertz-library-values");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double k = EllipticalContactKernel.axisRatio(cases.number(row, "curvature_ratio"), 1);
      double computed =
          switch (cases.text(row, "quantity")) {
            case "m" -> EllipticalContactKernel.coefficientMajor(k);
            case "n" -> EllipticalContactKernel.coefficientMinor(k);
            case "lambda" -> EllipticalContactKernel.coefficientApproach(k);
            case "K" -> EllipticIntegralKernel.first(k);
            case "E" -> EllipticIntegralKernel.second(k);
            default -> k;
          };
      String printed = cases.text(row, "printed");
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(
                  Double.parseDouble(printed), computed, Cases.halfLastDigit(printed), "", "half a unit of the last digit"));
    }
    return result;
  }
}
