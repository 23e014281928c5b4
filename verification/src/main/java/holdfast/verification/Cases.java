// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.FileNotFoundException;
import java.io.InputStream;

/**
 * The case tables: published values with their inputs. A case table carries the columns {@code source} (document id),
 * {@code locator}, {@code provenance} and {@code disclosed} (why a disagreement stands; empty when agreement is
 * expected) besides its inputs and published values.
 */
public final class Cases {
  private static final TableSet SET =
      TableSet.load(
          path -> {
            InputStream stream = Cases.class.getResourceAsStream("/holdfast/verification/cases/" + path);
            if (stream == null) {
              throw new FileNotFoundException(path);
            }
            return stream;
          },
          TableSet.bundled().sources());

  private Cases() {}

  /**
   * All case tables.
   *
   * @return the set
   */
  public static TableSet set() {
    return SET;
  }

  /**
   * A case table.
   *
   * @param id its id, for example {@code "fits/limit-deviations"}
   * @return the table
   */
  public static Table table(String id) {
    return SET.table(id);
  }

  /**
   * Where the published values of a row stand.
   *
   * @param cases a case table
   * @param row row index
   * @return document, locator and provenance
   */
  public static SourceRef source(Table cases, int row) {
    return new SourceRef(cases.text(row, "source"), cases.text(row, "locator"), cases.provenance(row));
  }

  /**
   * Begins the comparison of a row, with its address, source and disclosure.
   *
   * @param cases a case table
   * @param row row index
   * @param evidence kind of evidence
   * @return a builder that wants the values
   */
  public static Comparison.Builder comparison(Table cases, int row, Evidence evidence) {
    return Comparison.of(cases.address(row), source(cases, row), evidence).disclosed(cases.text(row, "disclosed"));
  }

  /**
   * Half a unit of the last digit of a number as it was printed.
   *
   * @param printed the number as printed
   * @return 0.05 for "12.3", 0.5 for "1200"
   */
  public static double halfLastDigit(String printed) {
    int point = printed.indexOf('.');
    int decimals = point < 0 ? 0 : printed.length() - point - 1;
    return 0.5 * Math.pow(10, -decimals);
  }
}
