// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.InputException;
import holdfast.tables.Source;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.List;

/** Friction classes of thread and bearing face. */
@Source(document = "VDI 2230-1:2015", locator = "Table A5, as reprinted")
public enum FrictionClass {
  /** Solid lubricants and waxes: 0.04 to 0.10. */
  A,
  /** Greased, oiled or delivered lubricated: 0.08 to 0.16. */
  B,
  /** As delivered, lightly oiled; zinc without lubricant: 0.14 to 0.24. */
  C,
  /** Stainless with oil; zinc, hot-dip galvanised without: 0.20 to 0.35. */
  D,
  /** Stainless, aluminium without lubricant: 0.30 and more, without an upper end. */
  E;


  /**
   * The friction band of the class.
   *
   * @return the band for thread and face
   * @throws InputException for class E, which has no upper end: state one with {@link #friction(double)}
   */
  public Friction friction() {
    int row = table().find("class", name());
    if (!table().has(row, "greatest")) {
      throw new InputException(
          "friction class", name(), "one with an upper end", "class " + name() + " starts at " + table().text(row, "least")
              + " and is open; state the upper end");
    }
    return Friction.of(table().number(row, "least"), table().number(row, "greatest"));
  }

  /**
   * The friction band of the class with an upper end of your own.
   *
   * @param greatest greatest coefficient, at least the lower end of the class
   * @return the band for thread and face
   * @throws InputException if the upper end is below the lower
   */
  public Friction friction(double greatest) {
    return Friction.of(table().number(table().find("class", name()), "least"), greatest);
  }

  /**
   * Surfaces and lubrications of the class.
   *
   * @return one line each
   */
  public List<String> conditions() {
    List<String> lines = new ArrayList<>();
    for (int row = 0; row < table().size(); row++) {
      if (table().text(row, "class").equals(name())) {
        lines.add(table().text(row, "surface") + ": " + table().text(row, "lubrication"));
      }
    }
    return lines;
  }

  private static Table table() {
    return TableSet.bundled().table("threads/vdi-2230/2015/friction-classes");
  }
}
