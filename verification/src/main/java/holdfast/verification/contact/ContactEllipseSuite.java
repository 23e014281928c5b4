package holdfast.verification.contact;

import holdfast.contact.EllipticalContactKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Axis ratio and coefficients of the contact ellipse, from circle to nearly a line. */
final class ContactEllipseSuite implements Suite {
  @Override
  public String id() {
    return "contact/contact-ellipse";
  }

  @Override
  public String title() {
    return "Contact ellipse against arbitrary-precision arithmetic";
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
    Table cases = Cases.table("contact/contact-ellipse");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double k = EllipticalContactKernel.axisRatio(cases.number(row, "curvature_ratio"), 1);
      double computed =
          switch (cases.text(row, "quantity")) {
            case "m" -> EllipticalContactKernel.coefficientMajor(k);
            case "n" -> EllipticalContactKernel.coefficientMinor(k);
            case "lambda" -> EllipticalContactKernel.coefficientApproach(k);
            default -> k;
          };
      double value = cases.number(row, "value");
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(value, computed, 5e-15 * value, "", "rounding of the logarithm of the ratio in a double"));
    }
    return result;
  }
}
