// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Angle;
import holdfast.quantity.Area;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A screw thread with the 60° profile: ISO metric (M) or unified inch (UN).
 *
 * @param designation as it stands on a drawing, without tolerance class, for example {@code "M18x1.5"}
 * @param system metric or unified
 * @param majorDiameter major diameter d
 * @param pitch pitch P
 * @param lead lead Ph, a whole multiple of the pitch
 * @param series coarse, fine, UNC, UNF, UNEF, a constant-pitch series from 4-UN to 20-UN, UNS, or custom
 * @param toleranceClass for example {@code "6g"}, {@code "2B"}; empty if not stated
 * @param leftHand whether the thread is left-hand; it changes no number
 * @param provenance how the combination of diameter and pitch reached us
 */
public record ScrewThread(
    String designation,
    ThreadSystem system,
    Length majorDiameter,
    Length pitch,
    Length lead,
    String series,
    String toleranceClass,
    boolean leftHand,
    Provenance provenance)
    implements Traced, Serializable {

  // Refuses a thread without a core and a lead below the pitch.
  public ScrewThread {
    Objects.requireNonNull(designation, "designation");
    Objects.requireNonNull(system, "system");
    Objects.requireNonNull(majorDiameter, "majorDiameter");
    Objects.requireNonNull(pitch, "pitch");
    Objects.requireNonNull(lead, "lead");
    Objects.requireNonNull(series, "series");
    Objects.requireNonNull(toleranceClass, "toleranceClass");
    Objects.requireNonNull(provenance, "provenance");
    if (!toleranceClass.isEmpty() && !ThreadText.isClass(system, toleranceClass)) {
      throw new InputException(
          "tolerance class", "'" + toleranceClass + "'", ThreadText.classes(system), "the thread " + designation + " is "
              + (system == ThreadSystem.METRIC ? "metric" : "an inch thread"));
    }
    double d3 = root(system, majorDiameter.mm(), pitch.mm());
    Check.positive(d3, "root diameter d3", "mm", "a thread has a core");
    if (!(lead.mm() >= pitch.mm() * (1 - 1e-12))) {
      throw new InputException("lead Ph", lead.toString(), "at least the pitch, " + pitch, "lead = starts · pitch");
    }
  }

  /**
   * Reads a designation of a standard thread.
   *
   * @param designation such as {@code "M18x1.5"}, {@code "M10"} (coarse), {@code "M10x1.25-6g"}, {@code "5/8-18 UNF"},
   *     {@code "1/4-20 UNC-2A"}, {@code "2-12 UN 2A"}, {@code "#10-32"}; {@code LH} marks a left-hand thread
   * @return the thread
   * @throws InputException if the text is no designation, or the standards do not have the thread: the message says
   *     which ones they have
   */
  public static ScrewThread of(String designation) {
    Objects.requireNonNull(designation, "designation");
    return ThreadText.read(designation);
  }

  /**
   * A thread with the metric profile outside the series.
   *
   * @param majorDiameter d, large enough for the pitch to leave a core
   * @param pitch P, over 0
   * @return the thread
   * @throws InputException if the pitch leaves no core
   */
  public static ScrewThread custom(Length majorDiameter, Length pitch) {
    Objects.requireNonNull(majorDiameter, "majorDiameter");
    Objects.requireNonNull(pitch, "pitch");
    String name = "M" + Numbers.shortest(majorDiameter.mm()) + "x" + Numbers.shortest(pitch.mm());
    return new ScrewThread(
        name, ThreadSystem.METRIC, majorDiameter, pitch, pitch, "custom", "", false, Provenance.DERIVED);
  }

  /**
   * A unified thread outside the series (UNS).
   *
   * @param majorDiameter D, large enough for the pitch to leave a core
   * @param threadsPerInch number n of threads in an inch, over 0
   * @return the thread
   * @throws InputException if the pitch leaves no core
   */
  public static ScrewThread customUnified(Length majorDiameter, double threadsPerInch) {
    Objects.requireNonNull(majorDiameter, "majorDiameter");
    Check.positive(threadsPerInch, "threads per inch", "", "a thread has a pitch");
    Length pitch = new Length(25.4 / threadsPerInch);
    String name = Numbers.shortest(majorDiameter.mm() / 25.4) + "-" + Numbers.shortest(threadsPerInch) + " UNS";
    return new ScrewThread(
        name, ThreadSystem.UNIFIED, majorDiameter, pitch, pitch, "custom", "", false, Provenance.DERIVED);
  }

  static ScrewThread standard(ThreadSeries.Entry entry, double lead, String toleranceClass, boolean leftHand) {
    String name = entry.designation();
    if (lead > entry.pitch()) {
      name = "M" + Numbers.shortest(entry.d()) + "xPh" + Numbers.shortest(lead) + "P" + Numbers.shortest(entry.pitch());
    }
    return new ScrewThread(
        name,
        entry.system(),
        new Length(entry.d()),
        new Length(entry.pitch()),
        new Length(lead),
        entry.series(),
        toleranceClass,
        leftHand,
        entry.provenance());
  }

  /**
   * The same thread with a tolerance class.
   *
   * @param newClass for example {@code "6g"}, {@code "6H"}, {@code "2A"}; empty for none
   * @return the thread
   * @throws InputException if it is no class of this system of threads
   */
  public ScrewThread withToleranceClass(String newClass) {
    Objects.requireNonNull(newClass, "newClass");
    return new ScrewThread(designation, system, majorDiameter, pitch, lead, series, newClass, leftHand, provenance);
  }

  /**
   * Pitch diameter d2. Of standard metric threads it is the tabulated size, rounded to 0.001 mm.
   *
   * @return d − 0.649519·P
   */
  public Length pitchDiameter() {
    return size(ThreadGeometryKernel.pitchDiameter(majorDiameter.mm(), pitch.mm()));
  }

  /**
   * Minor diameter of the internal thread, D1. Of standard metric threads it is the tabulated size, rounded to 0.001 mm.
   *
   * @return d − 1.082532·P
   */
  public Length internalMinorDiameter() {
    return size(ThreadGeometryKernel.internalMinorDiameter(majorDiameter.mm(), pitch.mm()));
  }

  /**
   * Root diameter of the external thread, for sections: metric d3 (of standard threads rounded to 0.001 mm as tabulated),
   * unified the diameter of the section at minor diameter.
   *
   * @return metric d − 1.226869·P, unified D − 1.299038·p
   */
  public Length rootDiameter() {
    return size(root(system, majorDiameter.mm(), pitch.mm()));
  }

  /**
   * Diameter dS of the section that carries the preload. Of standard metric threads it is the mean of the tabulated
   * diameters: the printed assembly tables rest on these.
   *
   * @return metric (d2 + d3)/2, unified D − 0.9743·p
   */
  public Length stressDiameter() {
    return system == ThreadSystem.METRIC
        ? pitchDiameter().plus(rootDiameter()).times(0.5)
        : new Length(exactStressDiameter());
  }

  /**
   * Stress area of the solid thread from sizes that are not rounded: the printed stress areas follow these. It differs
   * from the area of {@link #stressDiameter()} by less than 0.1 %.
   *
   * @return AS = (π/4)·dS²
   */
  public Area stressArea() {
    return new Area(ThreadGeometryKernel.ringArea(exactStressDiameter(), 0));
  }

  /**
   * Stress area rounded to three significant figures, as the standards print it and use it for loads.
   *
   * @return the nominal stress area
   */
  public Area nominalStressArea() {
    boolean metric = system == ThreadSystem.METRIC;
    double unit = metric ? 1 : 645.16;
    return new Area(Double.parseDouble(Numbers.significant(stressArea().mm2() / unit, 3)) * unit);
  }

  /**
   * Helix angle at the pitch diameter.
   *
   * @return φ = atan(Ph/(π·d2))
   */
  public Angle helixAngle() {
    return new Angle(ThreadGeometryKernel.helixAngle(pitchDiameter().mm(), lead.mm()));
  }

  /**
   * Threads per inch.
   *
   * @return 25.4 mm divided by the pitch
   */
  public double threadsPerInch() {
    return 25.4 / pitch.mm();
  }

  /** How the stress area was computed. */
  @Override
  public Derivation explain() {
    boolean metric = system == ThreadSystem.METRIC;
    String dText = "d = " + majorDiameter;
    String pText = "P = " + Numbers.significant(pitch.mm(), 8) + " mm";
    Derivation.Builder b = Derivation.of("Stress area of " + this);
    if (metric) {
      SourceRef basic = SourceRef.published("ISO 724:1993", "basic dimensions, as reprinted with DIN 13-1");
      double d = majorDiameter.mm();
      b.step("d2", "pitch diameter, not rounded", "d − 0.649519·P", ThreadGeometryKernel.pitchDiameter(d, pitch.mm()), "mm",
          basic, dText, pText);
      b.step("d3", "root diameter, not rounded", "d − 1.226869·P", root(system, d, pitch.mm()), "mm",
          SourceRef.published("DIN 13-1:1986", "formulas"), dText, pText);
    }
    b.step(
        "dS",
        "diameter of the stress area, not rounded",
        metric ? "(d2 + d3)/2" : "d − 0.9743·P",
        exactStressDiameter(),
        "mm",
        metric
            ? SourceRef.published("ISO 898-1:2013", "9.1.6.1, nominal stress area")
            : SourceRef.published("NASA TM-106943", "eq. (4)"),
        dText,
        pText);
    return b.step("AS", "stress area", "(π/4)·dS²", stressArea().mm2(), "mm²", SourceRef.derived("area of a circle")).build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (provenance == Provenance.MEMORY || provenance == Provenance.LISTING) {
      boolean listed = provenance == Provenance.LISTING;
      warnings.add(
          new Warning(
              listed ? "thread-combination-listed" : "thread-combination-recalled",
              designation + ": this combination of diameter and pitch is " + (listed ? "held by a data listing" : "recalled")
                  + ", not found in print",
              new SourceRef(
                  system == ThreadSystem.METRIC ? "ISO 261:1998" : "ASME B1.1-2003", "standard series", provenance)));
    }
    if (provenance == Provenance.DERIVED && !series.equals("custom")) {
      warnings.add(
          new Warning(
              "thread-combination-derived",
              designation + ": this combination follows from the rule of the series " + series
                  + " and was not found in print: see that nut and gauge exist",
              new SourceRef("ASME B1.1-2003", "constant-pitch series", Provenance.DERIVED)));
    }
    if (series.equals("custom")) {
      warnings.add(
          new Warning(
              "thread-outside-series",
              designation + " is not in the standard series; standard nuts and gauges may not exist",
              SourceRef.published("ISO 261:1998", "Table 2")));
    }
    return List.copyOf(warnings);
  }

  /** The designation with tolerance class, as on a drawing. */
  @Override
  public String toString() {
    return designation + (toleranceClass.isEmpty() ? "" : "-" + toleranceClass) + (leftHand ? "-LH" : "");
  }

  private static double root(ThreadSystem system, double d, double p) {
    return system == ThreadSystem.METRIC
        ? ThreadGeometryKernel.metricRootDiameter(d, p)
        : ThreadGeometryKernel.unifiedRootDiameter(d, p);
  }

  private double exactStressDiameter() {
    return system == ThreadSystem.METRIC
        ? ThreadGeometryKernel.metricStressDiameter(majorDiameter.mm(), pitch.mm())
        : ThreadGeometryKernel.unifiedStressDiameter(majorDiameter.mm(), pitch.mm());
  }

  /** The tables of the standard round the basic sizes to 0.001 mm, and the printed assembly tables rest on those. */
  private Length size(double exact) {
    boolean tabulated = system == ThreadSystem.METRIC && !series.equals("custom");
    return new Length(tabulated ? Math.rint(exact * 1000) / 1000 : exact);
  }
}
