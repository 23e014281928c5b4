package holdfast.verification.fits;

import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Limit deviations printed in reprints: two comparisons a row, each at both ends of the size range. */
final class LimitDeviationSuite implements Suite {
  @Override
  public String id() {
    return "fits/limit-deviations";
  }

  @Override
  public String title() {
    return "Limit deviations of tolerance classes against reprints";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.fits.ToleranceClass#limitDeviations",
        "holdfast.fits.ToleranceClass#of",
        "holdfast.fits.LimitDeviationsKernel");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("fits/limit-deviations");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      for (String limit : List.of("upper", "lower")) {
        if (cases.has(row, limit)) {
          result.add(
              Sizes.exact(
                  cases.address(row) + ", " + limit + " limit deviation",
                  Cases.source(cases, row),
                  Evidence.RECOMBINED,
                  cases.text(row, "disclosed"),
                  cases.number(row, limit),
                  Sizes.deviation(cases, row, limit.equals("upper"))));
        }
      }
    }
    return result;
  }
}
