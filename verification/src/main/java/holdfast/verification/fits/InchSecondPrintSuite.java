package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.quantity.Length;
import holdfast.quantity.Units;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Inch fits in prints and questions from which our tables were not made. */
final class InchSecondPrintSuite implements Suite {
  @Override
  public String id() {
    return "fits/inch-second-prints";
  }

  @Override
  public String title() {
    return "Inch fits in second prints and worked questions";
  }

  @Override
  public List<String> calculations() {
    return List.of(InchCases.FIT, InchCases.CLASS, InchCases.KERNEL, "holdfast.fits.Fit#minimumClearance",
        "holdfast.fits.Fit#maximumClearance");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table(id());
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      Fit fit = Fit.of(Units.inch(cases.number(row, "size_in")), cases.text(row, "class"));
      Map<String, Length> computed =
          Map.of(
              "hole_upper", fit.hole().upper(),
              "shaft_lower", fit.shaft().lower(),
              "shaft_upper", fit.shaft().upper(),
              "least_clearance", fit.minimumClearance(),
              "greatest_clearance", fit.maximumClearance());
      for (String column : List.of("hole_upper", "shaft_lower", "shaft_upper", "least_clearance", "greatest_clearance")) {
        if (cases.has(row, column)) {
          result.add(
              InchCases.exact(
                  cases.address(row) + ", " + column.replace('_', ' '),
                  Cases.source(cases, row),
                  Evidence.valueOf(cases.text(row, "evidence")),
                  cases.text(row, "disclosed"),
                  cases.number(row, column),
                  computed.get(column)));
        }
      }
    }
    return result;
  }
}
