// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.ToleranceGrade;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** The correction Delta against the difference of two standard tolerances, over 3 mm. */
final class DeltaSuite implements Suite {
  @Override
  public String id() {
    return "fits/delta";
  }

  @Override
  public String title() {
    return "Correction Delta against ITn - IT(n-1)";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.LimitDeviationsKernel");
  }

  @Override
  public List<Comparison> run() {
    Table table = TableSet.bundled().table("fits/iso-286-1/2010/hole-delta");
    SourceRef source = SourceRef.memory("ISO 286-1:1988", "Annex A, special rule for holes");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      if (table.number(row, "over_mm") >= 3) {
        int grade = ToleranceGrade.of(table.text(row, "grade")).code();
        double size = Sizes.upTo(table, row);
        double difference =
            LimitDeviationsKernel.standardTolerance(size, grade) - LimitDeviationsKernel.standardTolerance(size, grade - 1);
        result.add(
            Sizes.exact(table.address(row), source, Evidence.RECONSTRUCTION, "", table.number(row, "value"), difference));
      }
    }
    return result;
  }
}
