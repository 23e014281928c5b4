// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.PlainGauge;
import holdfast.fits.ToleranceClass;
import holdfast.fits.ToleranceGrade;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Tolerances of plain gauges are standard tolerances of ISO 286-1: two documents that confirm each other. */
final class GaugeGradeSuite implements Suite {
  private static final SourceRef RULE = SourceRef.published("ISO 286-1:2010", "Table 1; the grade is the finding of this check");
  private static final Map<String, ToleranceGrade> GRADES = Map.of(
      "6 H", ToleranceGrade.IT2, "6 Hs", ToleranceGrade.IT2, "6 H1", ToleranceGrade.IT3, "6 Hp", ToleranceGrade.IT1,
      "7 H", ToleranceGrade.IT3, "7 H1", ToleranceGrade.IT3, "7 Hs", ToleranceGrade.IT2, "7 Hp", ToleranceGrade.IT1);

  @Override
  public String id() {
    return "fits/gauge-grades";
  }

  @Override
  public String title() {
    return "Tolerances of plain gauges against standard tolerances";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.PlainGauge", "holdfast.fits.LimitDeviationsKernel#standardTolerance");
  }

  @Override
  public List<Comparison> run() {
    Table table = TableSet.bundled().table("fits/gost-24853/1981/plain-gauges");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      String quantity = table.text(row, "quantity");
      ToleranceGrade grade = GRADES.get(table.text(row, "grade") + " " + quantity);
      if (grade != null) {
        double standard = LimitDeviationsKernel.standardTolerance(table.number(row, "up_to_mm"), grade.code());
        result.add(Sizes.exact(table.address(row), RULE, Evidence.RECONSTRUCTION, "", ofGauge(table, row, quantity), standard));
      }
    }
    return result;
  }

  /** The width of the go side where a gauge of the type has it; else the cell. */
  private static double ofGauge(Table table, int row, String quantity) {
    if (!quantity.equals("H") && !quantity.equals("H1")) {
      return table.number(row, "value");
    }
    String work = (quantity.equals("H") ? "H" : "h") + table.text(row, "grade");
    var go = new PlainGauge(ToleranceClass.of(work), new Length(table.number(row, "up_to_mm"))).go();
    return Math.round(1000 * (go.upper().in(KnownUnits.UM) - go.lower().in(KnownUnits.UM))) / 1000.0;
  }
}
