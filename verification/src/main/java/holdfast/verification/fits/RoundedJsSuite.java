// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.RoundedSymmetricClass;
import holdfast.fits.ToleranceClass;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** The rounding of js and JS that the edition of 1988 allows, against the prints that use it. */
final class RoundedJsSuite implements Suite {
  @Override
  public String id() {
    return "fits/rounded-js";
  }

  @Override
  public String title() {
    return "js and JS of grades 7 to 11 rounded as the edition of 1988 allows, against prints";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.RoundedSymmetricClass#limitDeviations");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table(DifferingLimitDeviationSuite.CASES);
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      ToleranceClass toleranceClass = ToleranceClass.of(cases.text(row, "tolerance_class"));
      if (RoundedSymmetricClass.isRounded(toleranceClass)) {
        Length size = new Length(Sizes.upTo(cases, row));
        double computed = RoundedSymmetricClass.of(toleranceClass).limitDeviations(size).upper().in(KnownUnits.UM);
        result.add(
            Sizes.exact(
                cases.address(row) + ", half tolerance",
                Cases.source(cases, row),
                Evidence.RECOMBINED,
                "",
                cases.number(row, "upper"),
                computed));
      }
    }
    return result;
  }
}
