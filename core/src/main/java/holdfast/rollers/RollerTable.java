// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Length;
import holdfast.tables.FromTables;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The bundled tables of boundary dimensions, read once. */
final class RollerTable {
  private static final FromTables<Map<RollerSeries, List<RollerSize>>> SIZES = FromTables.of(RollerTable::read);

  private RollerTable() {}

  static List<RollerSize> of(RollerSeries series) {
    return SIZES.get().get(series);
  }

  private static Map<RollerSeries, List<RollerSize>> read(TableSet tables) {
    Map<RollerSeries, List<RollerSize>> sizes = new EnumMap<>(RollerSeries.class);
    for (RollerSeries series : RollerSeries.values()) {
      Table table =
          tables.table(
              series.system() == MeasureSystem.METRIC
                  ? "installation/iso-7063/2003/stud-rollers-metric"
                  : "installation/cam-followers-catalogue/2008/stud-rollers-inch");
      List<RollerSize> rows = new ArrayList<>();
      for (int row = 0; row < table.size(); row++) {
        if (table.text(row, "series").equals(series.toString())) {
          rows.add(size(series, table, row));
        }
      }
      sizes.put(series, List.copyOf(rows));
    }
    return sizes;
  }

  private static RollerSize size(RollerSeries series, Table t, int row) {
    List<String> threads = new ArrayList<>(List.of(t.text(row, "thread")));
    if (t.has(row, "other_thread")) {
      threads.add(t.text(row, "other_thread"));
    }
    StudSize stud =
        new StudSize(
            length(t, row, "stud"),
            length(t, row, "stud_length"),
            length(t, row, "thread_length"),
            length(t, row, "overhang"),
            threads,
            t.text(row, "socket_in"));
    GreaseHoles holes =
        new GreaseHoles(
            length(t, row, "axial_hole"),
            t.text(row, "fitting"),
            length(t, row, "radial_hole"),
            length(t, row, "radial_hole_offset"));
    RollerTolerances tolerances =
        new RollerTolerances(
            Deviations.ofMicrometres(t.number(row, "crowned_lower"), 0),
            Deviations.ofMicrometres(t.number(row, "cylindrical_lower"), 0),
            Deviations.ofMicrometres(t.number(row, "width_lower"), 0),
            Deviations.ofMicrometres(t.number(row, "stud_lower"), t.number(row, "stud_upper")));
    SourceRef place = t.descriptor().source();
    return new RollerSize(
        series,
        length(t, row, "outside_diameter"),
        length(t, row, "ring_width"),
        length(t, row, "overall_length"),
        stud,
        holes,
        length(t, row, "face_diameter"),
        length(t, row, "other_face_diameter"),
        length(t, row, "inner_raceway"),
        tolerances,
        new SourceRef(place.document(), place.locator(), t.provenance(row)),
        t.confirmedBy(row),
        t.text(row, "note"));
  }

  /** Null where the cell is empty. */
  private static Length length(Table table, int row, String column) {
    return table.has(row, column) ? new Length(table.number(row, column)) : null;
  }
}
