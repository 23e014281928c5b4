// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** The series of stud-type track rollers whose boundary dimensions are tabulated. */
public enum RollerSeries {
  /** Metric series with caged or full-complement needle rollers, outside diameters 10 mm to 90 mm. */
  METRIC("metric", MeasureSystem.METRIC),
  /** Inch series, full complement of needle rollers, standard stud, outside diameters 1/2 in to 7 in. */
  INCH_STANDARD_STUD("inch, standard stud", MeasureSystem.INCH),
  /** Inch series, full complement of needle rollers, heavy stud, outside diameters 1/2 in to 7 in. */
  INCH_HEAVY_STUD("inch, heavy stud", MeasureSystem.INCH);

  /** Two sizes closer than this are the same: tables round inches to 1 µm. */
  private static final double SAME = 0.0015;

  private final String label;
  private final MeasureSystem system;

  RollerSeries(String label, MeasureSystem system) {
    this.label = label;
    this.system = system;
  }

  /**
   * The system of measures.
   *
   * @return metric or inch
   */
  public MeasureSystem system() {
    return system;
  }

  /**
   * All sizes of the series.
   *
   * @return the sizes in the order of their outside diameter
   */
  public List<RollerSize> sizes() {
    return RollerTable.of(this);
  }

  /**
   * The size with an outside diameter.
   *
   * @param outsideDiameter nominal D
   * @return the size
   * @throws InputException if the series does not have it; the message names the neighbours
   */
  public RollerSize size(Length outsideDiameter) {
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    for (RollerSize size : sizes()) {
      if (Math.abs(size.outsideDiameter().mm() - outsideDiameter.mm()) <= SAME) {
        return size;
      }
    }
    throw new InputException("outside diameter D", outsideDiameter.toString(), "one of "
        + sizes().stream().map(s -> s.outsideDiameter().toString()).collect(Collectors.joining(", ")),
        "the series (" + label + ") has these sizes");
  }

  /**
   * The sizes with a stud diameter.
   *
   * @param diameter nominal d1
   * @return the sizes; empty if the series has no such stud
   */
  public List<RollerSize> withStud(Length diameter) {
    Objects.requireNonNull(diameter, "diameter");
    return sizes().stream().filter(s -> Math.abs(s.stud().diameter().mm() - diameter.mm()) <= SAME).toList();
  }

  /**
   * Recommended holes in the machine member for a stud of this series, each with its source.
   *
   * @return metric: H7; inch: both practices
   */
  public List<SeatPractice> seatPractices() {
    return system == MeasureSystem.METRIC ? SeatPractice.METRIC : SeatPractice.INCH;
  }

  /**
   * Where the dimensions of the series come from.
   *
   * @return document, locator and provenance of the table
   */
  public SourceRef source() {
    return sizes().get(0).source();
  }

  /**
   * The sizes of every series.
   *
   * @return all sizes, series by series
   */
  public static List<RollerSize> all() {
    List<RollerSize> all = new ArrayList<>();
    for (RollerSeries series : values()) {
      all.addAll(series.sizes());
    }
    return List.copyOf(all);
  }

  /**
   * The sizes of one system with an outside diameter.
   *
   * @param outsideDiameter nominal D
   * @param system metric or inch
   * @return the sizes; empty if no series of the system has it. An inch diameter comes with both studs.
   */
  public static List<RollerSize> byOutsideDiameter(Length outsideDiameter, MeasureSystem system) {
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(system, "system");
    return all().stream()
        .filter(s -> s.series().system == system)
        .filter(s -> Math.abs(s.outsideDiameter().mm() - outsideDiameter.mm()) <= SAME)
        .toList();
  }

  /**
   * The sizes of one system with a stud diameter.
   *
   * @param diameter nominal d1
   * @param system metric or inch
   * @return the sizes; empty if no series of the system has such a stud
   */
  public static List<RollerSize> byStud(Length diameter, MeasureSystem system) {
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(system, "system");
    return all().stream()
        .filter(s -> s.series().system == system)
        .filter(s -> Math.abs(s.stud().diameter().mm() - diameter.mm()) <= SAME)
        .toList();
  }

  /** The name used in the tables, for example {@code "inch, heavy stud"}. */
  @Override
  public String toString() {
    return label;
  }
}
