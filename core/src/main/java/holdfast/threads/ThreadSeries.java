// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.tables.FromTables;
import holdfast.tables.Provenance;
import holdfast.tables.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The standard combinations of diameter and pitch, read once. */
final class ThreadSeries {
  static final String METRIC_TABLE = "threads/iso-261/1998/metric-threads";
  static final String UNIFIED_TABLE = "threads/asme-b1-1/2003/unified-threads";

  /**
   * One standard thread: sizes in mm, for unified threads besides the diameter in inches and threads an inch.
   *
   * @param designation as the table writes it
   * @param system thread system
   * @param d major diameter in mm
   * @param pitch pitch in mm
   * @param size major diameter in the unit of the system
   * @param tpi threads an inch, 0 for metric
   * @param series coarse, fine, UNC, UNF, UNEF, 4-UN to 20-UN or UNS
   * @param provenance how the combination reached us
   */
  record Entry(
      String designation,
      ThreadSystem system,
      double d,
      double pitch,
      double size,
      double tpi,
      String series,
      Provenance provenance) {}

  static final FromTables<List<Entry>> METRIC = FromTables.of(tables -> metric(tables.table(METRIC_TABLE)));
  static final FromTables<List<Entry>> UNIFIED = FromTables.of(tables -> unified(tables.table(UNIFIED_TABLE)));

  private ThreadSeries() {}

  private static List<Entry> metric(Table table) {
    List<Entry> entries = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      double d = table.number(row, "d");
      entries.add(
          new Entry(
              table.text(row, "designation"),
              ThreadSystem.METRIC,
              d,
              table.number(row, "pitch"),
              d,
              0,
              table.text(row, "series"),
              table.provenance(row)));
    }
    return List.copyOf(entries);
  }

  private static List<Entry> unified(Table table) {
    List<Entry> entries = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      double inches = table.number(row, "d");
      double tpi = table.number(row, "tpi");
      entries.add(
          new Entry(
              table.text(row, "designation"),
              ThreadSystem.UNIFIED,
              25.4 * inches,
              25.4 / tpi,
              inches,
              tpi,
              table.text(row, "series"),
              table.provenance(row)));
    }
    return List.copyOf(entries);
  }

  /** The combination of this diameter and pitch (or threads an inch); null if the series has none. */
  static Entry find(List<Entry> series, double size, double pitchOrTpi) {
    for (Entry entry : series) {
      double second = entry.system() == ThreadSystem.METRIC ? entry.pitch() : entry.tpi();
      if (same(entry.size(), size) && same(second, pitchOrTpi)) {
        return entry;
      }
    }
    return null;
  }

  /** The coarse thread of a metric diameter; null if there is none. */
  static Entry coarse(double d) {
    for (Entry entry : METRIC.get()) {
      if (same(entry.size(), d) && entry.series().equals("coarse")) {
        return entry;
      }
    }
    return null;
  }

  /** All combinations of one diameter. */
  static List<Entry> ofSize(List<Entry> series, double size) {
    return series.stream().filter(entry -> same(entry.size(), size)).toList();
  }

  /** The diameters next to a diameter that the series does not have. */
  static List<Double> neighbours(List<Entry> series, double size) {
    TreeSet<Double> sizes = new TreeSet<>();
    series.forEach(entry -> sizes.add(entry.size()));
    List<Double> result = new ArrayList<>();
    if (sizes.lower(size) != null) {
      result.add(sizes.lower(size));
    }
    if (sizes.higher(size) != null) {
      result.add(sizes.higher(size));
    }
    return result;
  }

  static boolean same(double a, double b) {
    return Math.abs(a - b) < 1e-6;
  }
}
