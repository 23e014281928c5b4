// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A way of tightening with its tightening factor αA, greatest over least preload.
 *
 * @param method how it is tightened
 * @param basis how the setting was found
 * @param leastFactor lower end of the factor αA
 * @param greatestFactor upper end of the factor αA
 * @param source edition and how it reached us
 */
public record TighteningMethod(String method, String basis, double leastFactor, double greatestFactor, SourceRef source)
    implements Serializable {
  public TighteningMethod {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(source, "source");
    Check.finite(leastFactor, "least tightening factor αA", "");
    Check.finite(greatestFactor, "greatest tightening factor αA", "");
  }

  /**
   * All methods of the table, with their editions side by side.
   *
   * @return the methods
   */
  public static List<TighteningMethod> all() {
    Table table = TableSet.bundled().table("threads/vdi-2230/2015/tightening-factors");
    List<TighteningMethod> methods = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      methods.add(
          new TighteningMethod(
              table.text(row, "method"),
              table.text(row, "basis"),
              table.number(row, "least"),
              table.number(row, "greatest"),
              new SourceRef(table.text(row, "edition"), "tightening factors", table.provenance(row))));
    }
    return methods;
  }

  /** Method, basis and factor. */
  @Override
  public String toString() {
    return method + " (" + basis + "): αA " + leastFactor + " … " + greatestFactor;
  }
}
