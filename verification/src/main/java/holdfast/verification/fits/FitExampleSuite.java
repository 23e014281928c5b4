// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.fits.LimitDeviations;
import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.ToleranceClass;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Printed fits: limits of both parts, greatest and least clearance, kind. */
final class FitExampleSuite {
  private static final Map<String, Function<Fit, Length>> VALUES =
      Map.of(
          "hole_upper", fit -> fit.hole().upper(),
          "hole_lower", fit -> fit.hole().lower(),
          "shaft_upper", fit -> fit.shaft().upper(),
          "shaft_lower", fit -> fit.shaft().lower(),
          "max_clearance", Fit::maximumClearance,
          "min_clearance", Fit::minimumClearance);

  private FitExampleSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "fits/fit-examples",
        "Fits: limits of both parts, clearances and kind against printed fits",
        FitExampleSuite::row,
        "holdfast.fits.Fit#of", "holdfast.fits.Fit", "holdfast.fits.LimitDeviationsKernel");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    SourceRef source = Cases.source(cases, row);
    Evidence evidence = Evidence.valueOf(cases.text(row, "evidence"));
    Length size = new Length(cases.number(row, cases.has(row, "nominal_mm") ? "nominal_mm" : "up_to_mm"));
    Fit fit = Fit.of(part(cases, row, size, "hole", source), part(cases, row, size, "shaft", source));
    String name = cases.text(row, "nominal_mm") + range(cases, row) + " " + fit.designation();
    for (String column : List.of("hole_upper", "hole_lower", "shaft_upper", "shaft_lower", "max_clearance", "min_clearance")) {
      boolean given = !column.contains("clearance") && !cases.has(row, column.substring(0, column.indexOf('_')) + "_class");
      if (cases.has(row, column) && !given) {
        // Rounded to a hundredth of a micrometre: the difference of two lengths in mm carries binary noise.
        double computed = alike(cases, row, size, column, Math.rint(VALUES.get(column).apply(fit).in(KnownUnits.UM) * 100) / 100);
        result.add(
            Sizes.exact(
                name + ", " + column.replace('_', ' '),
                source,
                evidence,
                cases.text(row, "disclosed"),
                cases.number(row, column),
                computed));
      }
    }
    if (cases.has(row, "max_clearance") && cases.has(row, "min_clearance")) {
      result.add(
          Comparison.of(name + ", kind", source, evidence)
              .disclosed(cases.text(row, "disclosed"))
              .words(cases.text(row, "kind") + " fit", fit.kind().toString()));
    }
  }

  /** NaN, which never agrees, if the kernel's value for the pair of classes is another. */
  private static double alike(Table cases, int row, Length size, String column, double computed) {
    if (!cases.has(row, "hole_class") || !cases.has(row, "shaft_class")) {
      return computed;
    }
    int hole = ToleranceClass.of(cases.text(row, "hole_class")).code();
    int shaft = ToleranceClass.of(cases.text(row, "shaft_class")).code();
    double[] deviations = new double[4];
    LimitDeviationsKernel.fit(size.mm(), hole, shaft, deviations);
    double ofKernel =
        switch (column) {
          case "hole_upper" -> deviations[0];
          case "hole_lower" -> deviations[1];
          case "shaft_upper" -> deviations[2];
          case "shaft_lower" -> deviations[3];
          case "max_clearance" -> LimitDeviationsKernel.maximumClearance(size.mm(), hole, shaft);
          default -> LimitDeviationsKernel.minimumClearance(size.mm(), hole, shaft);
        };
    return ofKernel == computed ? computed : Double.NaN;
  }

  private static String range(Table cases, int row) {
    return cases.has(row, "over_mm") ? "over " + cases.text(row, "over_mm") + " up to " + cases.text(row, "up_to_mm") : "";
  }

  private static TolerancedSize part(Table cases, int row, Length size, String part, SourceRef source) {
    if (cases.has(row, part + "_class")) {
      return TolerancedSize.of(size, cases.text(row, part + "_class"));
    }
    LimitDeviations printed =
        new LimitDeviations(
            KnownUnits.UM.of(cases.number(row, part + "_lower")), KnownUnits.UM.of(cases.number(row, part + "_upper")));
    return TolerancedSize.given(size, printed, part.equals("hole") ? "bearing bore" : "bearing outside diameter", source);
  }
}
