// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.bearings;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.BulkLifeKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The readings of aISO once more, all of them through one call of the array form. */
final class ModificationChartArray implements Suite {
  /** Speed and pitch diameter with a reference viscosity of 10 mm²/s: 4500/sqrt(2025 · 100). */
  private static final double RPM = 2025;
  private static final double PITCH = 100;
  private static final double REFERENCE_VISCOSITY = 10;

  @Override
  public String id() {
    return "bearings/modification-chart-array";
  }

  @Override
  public String title() {
    return "aISO of many bearings at once against readings of Figures 3 to 6";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.bearings.BulkLifeKernel", "holdfast.bearings.LifeModificationKernel#life");
  }

  @Override
  public List<Comparison> run() {
    Table t = Cases.table("bearings/modification-chart");
    int n = t.size();
    BearingFamily[] families = new BearingFamily[n];
    double[] limit = new double[n];
    double[] viscosity = new double[n];
    for (int i = 0; i < n; i++) {
      families[i] = ChartSuites.family(t.text(i, "family"));
      limit[i] = t.number(i, "argument");
      viscosity[i] = t.number(i, "kappa") * REFERENCE_VISCOSITY;
    }
    double[] one = filled(n, 1);
    double[] hours = new double[n];
    BulkLifeKernel.hoursInParallel(
        families, one, limit, one, filled(n, RPM), viscosity, filled(n, PITCH), one, filled(n, 90), hours);
    List<Comparison> result = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      // With C = P and 90 % the life is aISO million revolutions.
      double computed = hours[i] * RPM * 60 / 1e6;
      result.add(
          Cases.comparison(t, i, Evidence.CHART)
              .numbers(t.number(i, "chart"), computed, t.number(i, "tolerance") * computed, "",
                  "digitised chart, relative to the formula"));
    }
    return result;
  }

  private static double[] filled(int length, double value) {
    double[] values = new double[length];
    Arrays.fill(values, value);
    return values;
  }
}
