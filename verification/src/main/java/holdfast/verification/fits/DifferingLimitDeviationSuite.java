// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.ToleranceClass;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Printed limit deviations that differ from ISO 286-1, each with its reason: misprints, other editions, roundings. */
final class DifferingLimitDeviationSuite implements Suite {
  static final String CASES = "fits/limit-deviations-differing";

  @Override
  public String id() {
    return CASES;
  }

  @Override
  public String title() {
    return "Printed limit deviations that differ from ISO 286-1";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.ToleranceClass#limitDeviations", "holdfast.fits.LimitDeviationsKernel");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table(CASES);
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      String differs = cases.text(row, "differs");
      if (differs.equals("undefined")) {
        result.add(undefined(cases, row));
        continue;
      }
      for (String limit : List.of("upper", "lower")) {
        boolean disagrees = differs.equals(limit) || differs.equals("both");
        result.add(
            Sizes.exact(
                cases.address(row) + ", " + limit + " limit deviation",
                Cases.source(cases, row),
                Evidence.RECOMBINED,
                disagrees ? cases.text(row, "disclosed") : "",
                cases.number(row, limit),
                Sizes.deviation(cases, row, limit.equals("upper"))));
      }
    }
    return result;
  }

  private static Comparison undefined(Table cases, int row) {
    ToleranceClass toleranceClass = ToleranceClass.of(cases.text(row, "tolerance_class"));
    Length size = new Length(Sizes.upTo(cases, row));
    String computed =
        toleranceClass.isDefinedFor(size) ? toleranceClass.limitDeviations(size).toString() : "not defined";
    String printed =
        Numbers.shortest(cases.number(row, "upper")) + " / " + Numbers.shortest(cases.number(row, "lower")) + " µm";
    return Cases.comparison(cases, row, Evidence.RECOMBINED)
        .words(printed, computed);
  }
}
