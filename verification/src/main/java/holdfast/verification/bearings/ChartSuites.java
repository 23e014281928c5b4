// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.bearings;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.Cleanliness;
import holdfast.bearings.LifeModificationKernel;
import holdfast.bearings.LubricationKernel;
import holdfast.verification.Cases;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Readings of charts: weak evidence, since they were read near the formula. */
final class ChartSuites {
  private ChartSuites() {}

  static List<Suite> all() {
    return List.of(
        new RowSuite("bearings/modification-chart", "aISO against readings of Figures 3 to 6",
            List.of("holdfast.bearings.LifeModificationKernel#factor"), () -> Cases.table("bearings/modification-chart"),
            (t, row, result) -> {
              double chart = t.number(row, "chart");
              double computed = LifeModificationKernel.factor(
                  family(t.text(row, "family")), t.number(row, "kappa"), t.number(row, "argument"));
              result.add(Cases.comparison(t, row, Evidence.CHART)
                  .numbers(
                      chart, computed, t.number(row, "tolerance") * computed, "", "digitised chart, relative to the formula"));
            }),
        new ModificationChartArray(),
        new RowSuite("bearings/contamination-chart", "eC against readings of Figures A.1 to A.14",
            List.of("holdfast.bearings.Cleanliness#factor", "holdfast.bearings.ContaminationKernel#factor"),
            () -> Cases.table("bearings/contamination-chart"),
            (t, row, result) -> result.add(Cases.comparison(t, row, Evidence.CHART)
                .numbers(t.number(row, "chart"),
                    figure(t.text(row, "figure")).factor(t.number(row, "kappa"), t.number(row, "dpw")),
                    t.number(row, "tolerance"), "", "digitised chart"))),
        new RowSuite("bearings/reference-viscosity-chart", "ν1 against readings of charts",
            List.of("holdfast.bearings.LubricationKernel#referenceViscosity"),
            () -> Cases.table("bearings/reference-viscosity-chart"),
            (t, row, result) -> {
              double computed = LubricationKernel.referenceViscosity(t.number(row, "n"), t.number(row, "dpw"));
              result.add(Cases.comparison(t, row, Evidence.CHART)
                  .numbers(t.number(row, "chart"), computed, t.number(row, "tolerance") * computed, "mm²/s",
                      "digitised chart, relative to the formula"));
            }));
  }

  static BearingFamily family(String words) {
    for (BearingFamily family : BearingFamily.values()) {
      if (family.toString().equals(words)) {
        return family;
      }
    }
    throw new IllegalArgumentException("no family is called '" + words + "'");
  }

  private static Cleanliness figure(String name) {
    for (Cleanliness cleanliness : Cleanliness.values()) {
      if (cleanliness.figure().equals(name)) {
        return cleanliness;
      }
    }
    throw new IllegalArgumentException("no equation is shown in Figure " + name);
  }
}
