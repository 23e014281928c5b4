// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.quantity.KnownUnits;
import holdfast.tables.Table;
import holdfast.threads.Friction;
import holdfast.threads.FrictionClass;
import holdfast.threads.PrevailingTorques;
import holdfast.threads.ScatterKernel;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** What hands out rows of tables, and the scatter behind printed least and greatest preloads. */
final class LookUpSuites {
  private LookUpSuites() {}

  static List<Suite> all() {
    return List.of(
        RowSuite.of(
            "threads/prevailing-torques",
            Cases.table("threads/prevailing-torques").descriptor().title(),
            LookUpSuites::prevailing,
            "holdfast.threads.PrevailingTorques#of"),
        RowSuite.of(
            "threads/friction-classes",
            Cases.table("threads/friction-classes").descriptor().title(),
            LookUpSuites::friction,
            "holdfast.threads.FrictionClass#friction"),
        new RowSuite(
            "threads/space-scatter",
            "Scatter behind printed least and greatest preloads",
            List.of("holdfast.threads.ScatterKernel#tighteningFactor", "holdfast.threads.ScatterKernel#scatter"),
            () -> Cases.table("threads/space-preloads"),
            LookUpSuites::scatter));
  }

  private static void prevailing(Table cases, int row, List<Comparison> result) {
    String kind = cases.text(row, "kind");
    double ours =
        PrevailingTorques.of(CaseThreads.of(cases.text(row, "designation"))).stream()
            .filter(entry -> entry.kind().equals(kind))
            .mapToDouble(entry -> entry.least().in(KnownUnits.LBF_IN))
            .findFirst()
            .orElse(Double.NaN);
    boolean second = cases.text(row, "second").equals("yes");
    result.add(
        Cases.comparison(cases, row, second ? Evidence.PRINT : Evidence.RECOMBINED)
            .numbers(cases.number(row, "printed"), ours, 1e-9, "lbf·in", "exact but for the unit"));
  }

  private static void friction(Table cases, int row, List<Comparison> result) {
    FrictionClass ofRow = FrictionClass.valueOf(cases.text(row, "class"));
    // The last class has no upper end; one of our own leaves its lower end.
    Friction band = ofRow == FrictionClass.E ? ofRow.friction(0.5) : ofRow.friction();
    boolean least = cases.text(row, "end").equals("least");
    boolean alike = band.threadLow() == band.faceLow() && band.threadHigh() == band.faceHigh();
    double ours = least ? band.threadLow() : band.threadHigh();
    result.add(
        Cases.comparison(cases, row, Evidence.RECOMBINED)
            .numbers(cases.number(row, "printed"), alike ? ours : Double.NaN, 0, "", "table values are exact"));
  }

  /** The document takes 25 % either way off the nominal preload, and from the least one 5 % more by relaxation. */
  private static void scatter(Table cases, int row, List<Comparison> result) {
    if (!cases.text(row, "quantity").equals("nominal")) {
      return;
    }
    double least = printed(cases, row, "least");
    double greatest = printed(cases, row, "greatest");
    double ratio = greatest / least / 1.05;
    double open = ratio * (0.5 / least + 0.5 / greatest);
    String name = cases.text(row, "thread") + ", " + cases.text(row, "locator") + ", ";
    String rounding = "half a unit of both printed preloads";
    result.add(
        Comparison.of(name + "greatest over least", Cases.source(cases, row), Evidence.PRINT)
            .numbers(ratio, ScatterKernel.tighteningFactor(0.25), open, "", rounding));
    // From s = 1 - 2/(ratio + 1).
    result.add(
        Comparison.of(name + "scatter of 25 %", Cases.source(cases, row), Evidence.PRINT)
            .numbers(0.25, ScatterKernel.scatter(ratio), 2 * open / ((ratio + 1) * (ratio + 1)), "", rounding));
  }

  private static double printed(Table cases, int row, String quantity) {
    for (int i = 0; i < cases.size(); i++) {
      if (cases.text(i, "quantity").equals(quantity)
          && cases.text(i, "thread").equals(cases.text(row, "thread"))
          && cases.text(i, "locator").equals(cases.text(row, "locator"))) {
        return cases.number(i, "printed");
      }
    }
    throw new IllegalStateException("no " + quantity + " preload beside " + cases.address(row));
  }
}
