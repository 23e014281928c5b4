// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/** Standard hexagon sizes and through holes that belong to a thread diameter. Look-ups only. */
public final class Hexagon {
  /** Least bearing circle of an inch nut over its least width across flats. */
  private static final double BEARING_CIRCLE = 0.95;

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
    for (int row = 0; row < nuts().size(); row++) {
      if (!nuts().text(row, "nut").startsWith("heavy") && ThreadSeries.same(nuts().number(row, "d"), d)) {
        return KnownUnits.INCH.of(nuts().number(row, "width"));
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
    for (int row = 0; thread.system() == ThreadSystem.UNIFIED && row < nuts().size(); row++) {
      if (nuts().text(row, "nut").startsWith("heavy") && ThreadSeries.same(nuts().number(row, "d"), d)) {
        return KnownUnits.INCH.of(nuts().number(row, "width"));
      }
    }
    throw missing(thread, "heavy width across flats");
  }

  /**
   * Least diameter of the bearing face of the hexagon: metric of product grade A; of an inch nut 95 % of its least width
   * across flats, rounded down to 0.001 in.
   *
   * @param thread a thread
   * @return dw
   * @throws InputException if the table has none for this diameter
   */
  @Source(document = "ISO 4014:2011", locator = "Table 1, dw")
  @Source(
      document = "ASME B18.2.2",
      locator = "bearing surface: at least 95 % of the least width",
      provenance = Provenance.MEMORY)
  public static Length bearingFaceDiameter(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return bearing(thread).orElseThrow(() -> missing(thread, "bearing face diameter"));
  }

  /**
   * Inside diameter of the narrow plain washer of an inch thread: type A, or type B where that has no narrow one.
   *
   * @param thread an inch thread
   * @return the diameter
   * @throws InputException if the table has none for this diameter, or the thread is metric
   */
  @Source(document = "ASME B18.21.1", locator = "Tables 1a and 2")
  public static Length washerBore(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return washer(thread).orElseThrow(() -> missing(thread, "plain washer"));
  }

  /**
   * Height of the inch nut: the hex nut, or the hex jam nut.
   *
   * @param thread an inch thread
   * @param jam whether the low nut is meant, which locks another
   * @return limits of the height, with countersinks
   * @throws InputException if the table has none for this diameter, or the thread is metric
   */
  @Source(document = "ASME B18.2.2", locator = "hex nuts and hex jam nuts, thickness")
  public static Height nutHeight(ScrewThread thread, boolean jam) {
    Objects.requireNonNull(thread, "thread");
    int row = limits(thread);
    if (row < 0 || !nutLimits().has(row, "height_min")) {
      throw missing(thread, "nut height");
    }
    String column = jam ? "jam_height_" : "height_";
    return new Height(
        KnownUnits.INCH.of(nutLimits().number(row, column + "min")), KnownUnits.INCH.of(nutLimits().number(row, column + "max")));
  }

  /**
   * Limits of the height of a nut.
   *
   * @param least least height
   * @param greatest greatest height, not below the least
   */
  public record Height(Length least, Length greatest) implements Serializable {
    // Refuses limits in the wrong order.
    public Height {
      Objects.requireNonNull(least, "least");
      Objects.requireNonNull(greatest, "greatest");
      Check.positive(least.mm(), "least height", "mm", "a nut has a height");
      Check.atLeast(greatest.mm(), least.mm(), "greatest height", "mm", "not below the least");
    }

    /** Both limits. */
    @Override
    public String toString() {
      return least + " … " + greatest;
    }
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
   * The bearing face of a standard nut: metric a hexagon on a medium through hole, as behind the printed assembly tables;
   * inch a hex nut on a narrow plain washer.
   *
   * @param thread a thread
   * @return least bearing circle over hole or washer bore; empty if the tables do not have this diameter
   */
  public static Optional<BearingFace> standardFace(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    Optional<Length> inner =
        thread.system() == ThreadSystem.METRIC ? hole(thread, HoleSeries.MEDIUM) : washer(thread);
    return bearing(thread).flatMap(outer -> inner.map(hole -> BearingFace.of(outer, hole)));
  }

  private static Optional<Length> bearing(ScrewThread thread) {
    if (thread.system() == ThreadSystem.METRIC) {
      return hexagon(thread, "bearing face diameter");
    }
    int row = limits(thread);
    return row < 0
        ? Optional.empty()
        : Optional.of(new Length(0.0254 * Math.floor(1000 * BEARING_CIRCLE * nutLimits().number(row, "width_min"))));
  }

  private static int limits(ScrewThread thread) {
    for (int row = 0; thread.system() == ThreadSystem.UNIFIED && row < nutLimits().size(); row++) {
      if (ThreadSeries.same(nutLimits().number(row, "d"), thread.majorDiameter().mm() / 25.4)) {
        return row;
      }
    }
    return -1;
  }

  private static Optional<Length> washer(ScrewThread thread) {
    for (int row = 0; thread.system() == ThreadSystem.UNIFIED && row < washers().size(); row++) {
      String series = washers().text(row, "series");
      if ((series.endsWith("narrow") || series.equals("type A plain"))
          && ThreadSeries.same(washers().number(row, "d"), thread.majorDiameter().mm() / 25.4)) {
        return Optional.of(KnownUnits.INCH.of(washers().number(row, "inside")));
      }
    }
    return Optional.empty();
  }

  private static Optional<Length> hexagon(ScrewThread thread, String quantity) {
    for (int row = 0; thread.system() == ThreadSystem.METRIC && row < hexagon().size(); row++) {
      if (hexagon().text(row, "quantity").equals(quantity)
          && ThreadSeries.same(hexagon().number(row, "d"), thread.majorDiameter().mm())) {
        return Optional.of(new Length(hexagon().number(row, "value")));
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
    for (int row = 0; thread.system() == ThreadSystem.METRIC && row < holes().size(); row++) {
      if (ThreadSeries.same(holes().number(row, "d"), thread.majorDiameter().mm())) {
        return Optional.of(new Length(holes().number(row, column)));
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

  private static Table hexagon() {
    return TableSet.bundled().table("threads/iso-4014/2011/hexagon");
  }

  private static Table holes() {
    return TableSet.bundled().table("threads/iso-273/1979/clearance-holes");
  }

  private static Table nuts() {
    return TableSet.bundled().table("threads/asme-b18-2-2/1987/nut-widths");
  }

  private static Table nutLimits() {
    return TableSet.bundled().table("threads/asme-b18-2-2/2015/nut-limits");
  }

  private static Table washers() {
    return TableSet.bundled().table("threads/asme-b18-21-1/2009/plain-washers");
  }
}
