// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Source;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Objects;
import java.util.Optional;

/** Standard hexagon sizes and through holes that belong to a thread diameter. Look-ups only. */
public final class Hexagon {
  private static final Table HEXAGON = TableSet.bundled().table("threads/iso-4014/2011/hexagon");
  private static final Table HOLES = TableSet.bundled().table("threads/iso-273/1979/clearance-holes");
  private static final Table NUTS = TableSet.bundled().table("threads/asme-b18-2-2/1987/nut-widths");

  /** Series of through holes. */
  public enum HoleSeries {
    /** Close fit. */
    FINE,
    /** Normal fit; the one behind the printed assembly tables. */
    MEDIUM,
    /** Loose fit. */
    COARSE
  }

  private Hexagon() {}

  /**
   * Width across flats of the hexagon.
   *
   * @param thread a thread
   * @return s; for inch threads that of the ordinary hex nut
   * @throws InputException if the table has none for this diameter
   */
  @Source(document = "ISO 4014:2011", locator = "Tables 1 and 2")
  @Source(document = "ASME B18.2.2", locator = "hex nuts")
  public static Length widthAcrossFlats(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    if (thread.system() == ThreadSystem.METRIC) {
      return hexagon(thread, "width across flats").orElseThrow(() -> missing(thread, "width across flats"));
    }
    double d = thread.majorDiameter().mm() / 25.4;
    for (int row = 0; row < NUTS.size(); row++) {
      if (!NUTS.text(row, "nut").startsWith("heavy") && ThreadSeries.same(NUTS.number(row, "d"), d)) {
        return new Length(25.4 * NUTS.number(row, "width"));
      }
    }
    throw missing(thread, "width across flats");
  }

  /**
   * Width across flats of the heavy hex nut of an inch thread.
   *
   * @param thread an inch thread
   * @return the width
   * @throws InputException if the table has none for this diameter, or the thread is metric
   */
  @Source(document = "ASME B18.2.2", locator = "heavy hex nuts")
  public static Length heavyWidthAcrossFlats(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    double d = thread.majorDiameter().mm() / 25.4;
    for (int row = 0; thread.system() == ThreadSystem.UNIFIED && row < NUTS.size(); row++) {
      if (NUTS.text(row, "nut").startsWith("heavy") && ThreadSeries.same(NUTS.number(row, "d"), d)) {
        return new Length(25.4 * NUTS.number(row, "width"));
      }
    }
    throw missing(thread, "heavy width across flats");
  }

  /**
   * Least diameter of the bearing face of the hexagon, product grade A.
   *
   * @param thread a metric thread
   * @return dw
   * @throws InputException if the table has none for this diameter
   */
  @Source(document = "ISO 4014:2011", locator = "Table 1, dw")
  public static Length bearingFaceDiameter(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return hexagon(thread, "bearing face diameter").orElseThrow(() -> missing(thread, "bearing face diameter"));
  }

  /**
   * Through hole of a diameter.
   *
   * @param thread a metric thread
   * @param series how loose
   * @return dh
   * @throws InputException if the table has none for this diameter
   */
  @Source(document = "ISO 273:1979", locator = "Table")
  public static Length clearanceHole(ScrewThread thread, HoleSeries series) {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(series, "series");
    return hole(thread, series).orElseThrow(() -> missing(thread, "clearance hole"));
  }

  /**
   * The bearing face of a standard hexagon on a medium through hole, as behind the printed assembly tables.
   *
   * @param thread a metric thread
   * @return dw,min and dh; empty if the tables do not have this diameter, and for inch threads
   */
  static Optional<BearingFace> standardFace(ScrewThread thread) {
    return hexagon(thread, "bearing face diameter")
        .flatMap(dw -> hole(thread, HoleSeries.MEDIUM).map(dh -> BearingFace.of(dw, dh)));
  }

  private static Optional<Length> hexagon(ScrewThread thread, String quantity) {
    for (int row = 0; thread.system() == ThreadSystem.METRIC && row < HEXAGON.size(); row++) {
      if (HEXAGON.text(row, "quantity").equals(quantity)
          && ThreadSeries.same(HEXAGON.number(row, "d"), thread.majorDiameter().mm())) {
        return Optional.of(new Length(HEXAGON.number(row, "value")));
      }
    }
    return Optional.empty();
  }

  private static Optional<Length> hole(ScrewThread thread, HoleSeries series) {
    String column =
        switch (series) {
          case FINE -> "fine";
          case MEDIUM -> "medium";
          case COARSE -> "coarse";
        };
    for (int row = 0; thread.system() == ThreadSystem.METRIC && row < HOLES.size(); row++) {
      if (ThreadSeries.same(HOLES.number(row, "d"), thread.majorDiameter().mm())) {
        return Optional.of(new Length(HOLES.number(row, column)));
      }
    }
    return Optional.empty();
  }

  private static InputException missing(ScrewThread thread, String what) {
    return new InputException(
        "thread for the " + what,
        thread.designation(),
        "of a diameter in the table",
        "the table has none for d = " + Numbers.significant(thread.majorDiameter().mm(), 6) + " mm; state the size yourself");
  }
}
