// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.fits.SizeDistribution;
import holdfast.fits.SizeDistribution.Shape;
import holdfast.fits.StatisticalFit;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Locale;

/** Closed forms of the statistical fit against numerical integration. */
final class StatisticalFitSuite {
  private StatisticalFitSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "fits/statistical-fits",
        "Probabilities and quantiles of the clearance against numerical integration",
        StatisticalFitSuite::row,
        "holdfast.fits.StatisticalFit#probabilityBelow",
        "holdfast.fits.StatisticalFit#quantile",
        "holdfast.fits.ClearanceDistributionKernel");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    Length size = new Length(cases.number(row, "nominal"));
    StatisticalFit fit =
        new StatisticalFit(
            Fit.of(size, cases.text(row, "fit")), process(cases, row, size, "hole"), process(cases, row, size, "shaft"));
    double argument = cases.number(row, "argument");
    double value = cases.number(row, "value");
    Comparison.Builder comparison =
        Cases.comparison(cases, row, Evidence.REFERENCE);
    if (cases.text(row, "quantity").equals("quantile")) {
      double computed = fit.quantile(argument).in(KnownUnits.UM);
      result.add(comparison.numbers(value, computed, 1e-7, "µm", "nine digits, and noise of sizes in mm"));
    } else {
      double computed = fit.probabilityBelow(KnownUnits.UM.of(argument));
      result.add(comparison.numbers(value, computed, 1e-10, "", "accuracy of the integration, and noise of sizes in mm"));
    }
  }

  private static SizeDistribution process(Table cases, int row, Length size, String part) {
    Shape shape = Shape.valueOf(cases.text(row, part + "_shape").toUpperCase(Locale.ROOT));
    Length mean = size.plus(KnownUnits.UM.of(cases.number(row, part + "_mean")));
    return new SizeDistribution(shape, mean, KnownUnits.UM.of(cases.number(row, part + "_sd")));
  }
}
