// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.AnsiGrade;
import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/**
 * Standard tolerances of inch sizes: every cell and its mark of the American-British-Canadian agreement through the
 * public API, and the cells that other prints were found to hold. All of it re-adds our own table.
 */
final class InchStandardToleranceSuite implements Suite {
  @Override
  public String id() {
    return "fits/inch-standard-tolerances";
  }

  @Override
  public String title() {
    return "Standard tolerances of inch sizes, in table 1 and in tables of fits";
  }

  @Override
  public List<String> calculations() {
    return List.of(InchCases.GRADE, InchCases.KERNEL, "holdfast.fits.AnsiGrade#isAgreed");
  }

  @Override
  public List<Comparison> run() {
    List<Comparison> result = new ArrayList<>();
    Table cases = Cases.table(id());
    for (int row = 0; row < cases.size(); row++) {
      result.add(tolerance(cases, row));
      boolean agreed = grade(cases, row).isAgreed(InchCases.upTo(cases, row));
      result.add(
          Comparison.of(
                  cases.address(row) + ", American-British-Canadian agreement",
                  Cases.source(cases, row),
                  Evidence.RECOMBINED)
              .disclosed(cases.text(row, "disclosed"))
              .words(cases.text(row, "abc_agreement"), agreed ? "yes" : "no"));
    }
    Table prints = Cases.table("fits/inch-grades-in-print");
    for (int row = 0; row < prints.size(); row++) {
      result.add(tolerance(prints, row));
    }
    return result;
  }

  private static Comparison tolerance(Table cases, int row) {
    Length computed = grade(cases, row).tolerance(InchCases.upTo(cases, row));
    return InchCases.exact(
        cases.address(row),
        Cases.source(cases, row),
        Evidence.RECOMBINED,
        cases.text(row, "disclosed"),
        cases.number(row, "tolerance"),
        computed);
  }

  private static AnsiGrade grade(Table cases, int row) {
    return AnsiGrade.of(Integer.parseInt(cases.text(row, "grade")));
  }
}
