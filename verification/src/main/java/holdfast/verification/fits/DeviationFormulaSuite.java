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

/** Fundamental deviations of shafts computed anew by the formulas of Annex A. */
final class DeviationFormulaSuite implements Suite {
  @Override
  public String id() {
    return "fits/deviation-formulas";
  }

  @Override
  public String title() {
    return "Fundamental deviations of shafts against the formulas of Annex A, edition 1988";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.ToleranceClass#limitDeviations", "holdfast.fits.LimitDeviationsKernel");
  }

  @Override
  public List<Comparison> run() {
    Differences differences = new Differences(false);
    List<Comparison> result = new ArrayList<>();
    for (String part : List.of("a-to-j", "k-to-zc")) {
      Table table = TableSet.bundled().table("fits/iso-286-1/2010/shaft-deviations-" + part);
      for (int row = 0; row < table.size(); row++) {
        String letter = table.text(row, "letter");
        double over = table.number(row, "over_mm");
        AnnexAFormulas formulas = new AnnexAFormulas(over, Sizes.upTo(table, row));
        boolean zero = letter.equals("k") && !table.text(row, "from_grade").equals("IT4");
        if (formulas.covers(letter) && !zero) {
          double amount = Math.abs(table.number(row, "value"));
          double formula = formulas.deviation(letter, amount);
          SourceRef source =
              over < 500
                  ? SourceRef.published("Machine Drawing", "table 15.4, formula of " + letter)
                  : SourceRef.memory("ISO 286-1:1988", "Annex A, formula of " + letter + " over 500 mm");
          String reason = differences.reason(letter, table, row);
          result.add(Sizes.exact(table.address(row), source, Evidence.RECONSTRUCTION, reason, amount, formula));
        }
      }
    }
    differences.requireAllUsed();
    return result;
  }
}
