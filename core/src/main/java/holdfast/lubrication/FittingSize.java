// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Length;
import holdfast.rollers.MeasureSystem;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Size of a grease fitting or plug by one catalogue.
 *
 * @param size size as printed, for example {@code "6 mm"} or {@code "1/4 NPT"}
 * @param threaded true for a threaded fitting, false for one that is driven in
 * @param source the catalogue
 */
public record FittingSize(String size, boolean threaded, SourceRef source) implements Serializable {
  public FittingSize {
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(source, "source");
  }

  /**
   * Sizes for a roller by all catalogues that state one.
   *
   * @param system metric or inch
   * @param outsideDiameter outside diameter D of the roller
   * @param studDiameter stud diameter d1
   * @return the sizes; empty if no catalogue covers the roller; more than one where practices differ
   */
  public static List<FittingSize> of(MeasureSystem system, Length outsideDiameter, Length studDiameter) {
    Objects.requireNonNull(system, "system");
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(studDiameter, "studDiameter");
    Table table = TableSet.bundled().table("installation/collected/2026/grease-fittings");
    List<FittingSize> sizes = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      double measure = table.text(row, "measure").equals("stud") ? studDiameter.mm() : outsideDiameter.mm();
      // Tables round inches to 1 µm.
      boolean covers = measure >= table.number(row, "from") - 0.0015 && measure <= table.number(row, "to") + 0.0015;
      if (table.text(row, "system").equals(system.toString()) && covers) {
        sizes.add(
            new FittingSize(
                table.text(row, "size"),
                table.text(row, "kind").equals("threaded"),
                SourceRef.published(table.confirmedBy(row).get(0),
                    "fittings by " + table.text(row, "measure") + ", " + table.text(row, "from") + " mm to "
                        + table.text(row, "to") + " mm")));
      }
    }
    return List.copyOf(sizes);
  }

  /** For example {@code "6 mm, drive-in"}. */
  @Override
  public String toString() {
    return size + (threaded ? ", threaded" : ", drive-in");
  }
}
