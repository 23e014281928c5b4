// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** A suite with one comparison for each row of one case table. */
abstract class CaseSuite implements Suite {
  static final String HALF_DIGIT = "half a unit of the last printed digit";

  private final String table;
  private final List<String> calculations;

  CaseSuite(String table, String... calculations) {
    this.table = table;
    this.calculations = List.of(calculations);
  }

  /** Compares one row. */
  abstract Comparison compare(Table cases, int row);

  /** What kind of evidence a row is. */
  abstract Evidence evidence(Table cases, int row);

  @Override
  public String id() {
    return "threads/" + table;
  }

  @Override
  public String title() {
    return Cases.table(id()).descriptor().title();
  }

  @Override
  public List<String> calculations() {
    return calculations;
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table(id());
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      result.add(compare(cases, row));
    }
    return result;
  }

  Comparison.Builder builder(Table cases, int row) {
    return Cases.comparison(cases, row, evidence(cases, row));
  }

  /** The printed value against ours, within half a unit of the last printed digit. */
  Comparison halfDigit(Table cases, int row, double computed, String unit) {
    return builder(cases, row)
        .numbers(cases.number(row, "printed"), computed, Cases.halfLastDigit(cases.text(row, "printed")), unit, HALF_DIGIT);
  }

  /** The printed value against ours, within half a unit of the given significant digit. */
  Comparison halfSignificant(Table cases, int row, double computed, int digits, String unit) {
    double printed = cases.number(row, "printed");
    double half = 0.5 * Math.pow(10, Math.floor(Math.log10(printed)) - digits + 1);
    return builder(cases, row).numbers(printed, computed, half, unit, "half a unit of significant digit " + digits);
  }
}
