// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.AnsiGrade;
import holdfast.fits.Fit;
import holdfast.fits.InchFitClass;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** The tolerance of each hole and shaft against the grade that its zone names: two tables printed apart must agree. */
final class InchGradeSuite implements Suite {
  private static final SourceRef RULE = SourceRef.published("ANSI B4.1-1967", "table 1, grade of the tolerance zone");

  @Override
  public String id() {
    return "fits/inch-zones-and-grades";
  }

  @Override
  public String title() {
    return "Tolerances of inch fits against the grade of their zone";
  }

  @Override
  public List<String> calculations() {
    return List.of(InchCases.FIT, InchCases.CLASS, InchCases.KERNEL, InchCases.GRADE);
  }

  @Override
  public List<Comparison> run() {
    ListedDifferences differences = new ListedDifferences("fits/inch-grade-differences");
    List<Comparison> result = new ArrayList<>();
    for (Table table : InchCases.fits()) {
      for (int row = 0; row < table.size(); row++) {
        InchFitClass fitClass = InchCases.fitClass(table, row);
        Fit fit = InchCases.fit(table, row);
        add(result, table, row, differences, "hole", fitClass.holeZone(), fit.hole());
        if (!fitClass.shaftZone().isEmpty()) {
          add(result, table, row, differences, "shaft", fitClass.shaftZone(), fit.shaft());
        }
      }
    }
    differences.requireAllUsed();
    return result;
  }

  private static void add(
      List<Comparison> result,
      Table table,
      int row,
      ListedDifferences differences,
      String part,
      String zone,
      TolerancedSize size) {
    String reason =
        differences.reason(
            "class", table.text(row, "class"), "part", part, "over_in", table.text(row, "over_in"),
            "up_to_in", table.text(row, "up_to_in"));
    Length grade = AnsiGrade.of(Integer.parseInt(zone.replaceAll("\\D", ""))).tolerance(InchCases.upTo(table, row));
    result.add(
        InchCases.exact(
            "tolerance of the " + part + " " + zone + ": " + table.address(row),
            RULE,
            Evidence.RECONSTRUCTION,
            reason,
            InchCases.toleranceThou(size),
            grade));
  }
}
