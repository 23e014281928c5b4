// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/**
 * Standard tolerances computed anew: IT5 to IT18 up to 500 mm, IT1 to IT18 over 500 mm. The finer grades up to 500 mm
 * have formulas without a known rounding rule and are left out.
 */
final class ToleranceFormulaSuite implements Suite {
  @Override
  public String id() {
    return "fits/tolerance-formulas";
  }

  @Override
  public String title() {
    return "Standard tolerances against the formulas of Annex A, edition 1988";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.ToleranceGrade#tolerance", "holdfast.fits.LimitDeviationsKernel");
  }

  @Override
  public List<Comparison> run() {
    Table table = TableSet.bundled().table("fits/iso-286-1/2010/standard-tolerances");
    SourceRef source = SourceRef.memory("ISO 286-1:1988", "Annex A, standard tolerances");
    Differences differences = new Differences(true);
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      String grade = table.text(row, "grade");
      int n = grade.startsWith("IT0") ? 0 : Integer.parseInt(grade.substring(2));
      double over = table.number(row, "over_mm");
      if (n >= (over < 500 ? 5 : 1)) {
        double formula = new AnnexAFormulas(over, Sizes.upTo(table, row)).tolerance(n);
        String reason = differences.reason(grade, table, row);
        result.add(
            Sizes.exact(table.address(row), source, Evidence.RECONSTRUCTION, reason, table.number(row, "value"), formula));
      }
    }
    differences.requireAllUsed();
    return result;
  }
}
