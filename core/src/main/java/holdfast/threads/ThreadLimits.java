// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Limits of size of a thread in a tolerance class.
 *
 * @param thread the thread
 * @param toleranceClass for example {@code "6g"}, {@code "5g6g"}, {@code "6H"}, {@code "2A"}
 * @param external whether the thread is external (stud)
 * @param crestLeast least crest diameter: major of the external, minor of the internal thread
 * @param crestGreatest greatest crest diameter
 * @param pitchLeast least pitch diameter
 * @param pitchGreatest greatest pitch diameter
 */
public record ThreadLimits(
    ScrewThread thread,
    String toleranceClass,
    boolean external,
    Length crestLeast,
    Length crestGreatest,
    Length pitchLeast,
    Length pitchGreatest)
    implements Traced, Serializable {
  private static final Pattern METRIC = Pattern.compile("(\\d)([efghGH])(?:(\\d)([efghGH]))?");
  private static final Pattern UNIFIED = Pattern.compile("([123])([AB])");

  public ThreadLimits {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(toleranceClass, "toleranceClass");
    Objects.requireNonNull(crestLeast, "crestLeast");
    Objects.requireNonNull(crestGreatest, "crestGreatest");
    Objects.requireNonNull(pitchLeast, "pitchLeast");
    Objects.requireNonNull(pitchGreatest, "pitchGreatest");
  }

  /**
   * The limits of a thread in its own tolerance class.
   *
   * @param thread a thread with a tolerance class
   * @return the limits
   * @throws InputException if it states no class or the standard does not have the class for the size
   */
  public static ThreadLimits of(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return of(thread, thread.toleranceClass());
  }

  /**
   * The limits of a thread in a tolerance class.
   *
   * @param thread the thread
   * @param toleranceClass metric: grade and position of pitch and crest diameter ({@code "5g6g"}), or one for both
   *     ({@code "6g"}, {@code "6H"}); unified: {@code "1A"} to {@code "3B"}
   * @return the limits, rounded as the standard rounds them
   * @throws InputException if the text is no class or the standard does not have the class for the size
   */
  public static ThreadLimits of(ScrewThread thread, String toleranceClass) {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(toleranceClass, "toleranceClass");
    Matcher m = (thread.system() == ThreadSystem.METRIC ? METRIC : UNIFIED).matcher(toleranceClass);
    if (!m.matches()) {
      throw new InputException(
          "tolerance class",
          "'" + toleranceClass + "'",
          thread.system() == ThreadSystem.METRIC ? "such as 6g, 5g6g, 6H or 6G" : "1A, 2A, 3A, 1B, 2B or 3B",
          thread.toString());
    }
    return thread.system() == ThreadSystem.METRIC ? metric(thread, toleranceClass, m) : unified(thread, toleranceClass, m);
  }

  private static ThreadLimits metric(ScrewThread thread, String text, Matcher m) {
    int pitchGrade = Integer.parseInt(m.group(1));
    char pitchPosition = m.group(2).charAt(0);
    int crestGrade = m.group(3) == null ? pitchGrade : Integer.parseInt(m.group(3));
    char crestPosition = m.group(4) == null ? pitchPosition : m.group(4).charAt(0);
    boolean external = Character.isLowerCase(pitchPosition);
    if (external != Character.isLowerCase(crestPosition)) {
      throw new InputException(
          "tolerance class", "'" + text + "'", "of one kind", "small letters are external threads, capitals internal ones");
    }
    double d = thread.majorDiameter().mm();
    double p = thread.pitch().mm();
    double d2 = rounded(thread.pitchDiameter().mm(), 3);
    double pitchDeviation = MetricToleranceKernel.fundamentalDeviation(pitchPosition, p) / 1000;
    double crestDeviation = MetricToleranceKernel.fundamentalDeviation(crestPosition, p) / 1000;
    if (external) {
      double top = d + crestDeviation;
      double top2 = d2 + pitchDeviation;
      return new ThreadLimits(
          thread,
          text,
          true,
          mm(top - MetricToleranceKernel.externalCrest(crestGrade, p) / 1000),
          mm(top),
          mm(top2 - MetricToleranceKernel.externalPitch(pitchGrade, d, p) / 1000),
          mm(top2));
    }
    double bottom = rounded(thread.internalMinorDiameter().mm(), 3) + crestDeviation;
    double bottom2 = d2 + pitchDeviation;
    return new ThreadLimits(
        thread,
        text,
        false,
        mm(bottom),
        mm(bottom + MetricToleranceKernel.internalCrest(crestGrade, p) / 1000),
        mm(bottom2),
        mm(bottom2 + MetricToleranceKernel.internalPitch(pitchGrade, d, p) / 1000));
  }

  private static ThreadLimits unified(ScrewThread thread, String text, Matcher m) {
    int number = Integer.parseInt(m.group(1));
    boolean external = m.group(2).equals("A");
    double d = thread.majorDiameter().mm() / 25.4;
    double p = thread.pitch().mm() / 25.4;
    boolean byDiameter = List.of("UNC", "UNF", "4-UN", "6-UN", "8-UN").contains(thread.series());
    double base = rounded(UnifiedToleranceKernel.basePitchTolerance(d, p, byDiameter ? d : 9 * p), 6);
    double pitchTolerance = rounded(UnifiedToleranceKernel.pitchFactor(number, external) * base, 4);
    double e = rounded(thread.pitchDiameter().mm() / 25.4, 4);
    if (external) {
      double allowance = rounded(UnifiedToleranceKernel.allowance(number, base), 4);
      double top = rounded(d, 4) - allowance;
      double top2 = e - allowance;
      return new ThreadLimits(
          thread,
          text,
          true,
          inch(top - rounded(UnifiedToleranceKernel.externalCrest(number, p), 4)),
          inch(top),
          inch(top2 - pitchTolerance),
          inch(top2));
    }
    // Each term is rounded to 0.0001 in first; from size 0.138 in on the limits then to 0.001 in, of 3B only the least.
    double minor = rounded(thread.internalMinorDiameter().mm() / 25.4, 4);
    double minorTop = minor + rounded(UnifiedToleranceKernel.internalCrest(number, d, p), 4);
    boolean large = d >= 0.138 - 1e-9;
    return new ThreadLimits(
        thread,
        text,
        false,
        inch(rounded(minor, large ? 3 : 4)),
        inch(rounded(minorTop, large && number < 3 ? 3 : 4)),
        inch(e),
        inch(e + pitchTolerance));
  }

  private static double rounded(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    // The slack lets 0.66245 held as 0.662449999… round up as on paper.
    return Math.floor(value * scale + 0.5 + 1e-7) / scale;
  }

  private static Length mm(double value) {
    return new Length(rounded(value, 4));
  }

  private static Length inch(double value) {
    return KnownUnits.INCH.of(rounded(value, 5));
  }

  /** How the limits follow; the last step is the least pitch diameter. */
  @Override
  public Derivation explain() {
    boolean metric = thread.system() == ThreadSystem.METRIC;
    SourceRef source =
        metric
            ? SourceRef.memory("ISO 965-1:2013", "Tables 1 to 5")
            : SourceRef.memory("ASME B1.1-2003", "tolerance formulas");
    String crest = external ? "d" : "D1";
    String pitch = external ? "d2" : "D2";
    String how = "basic size with deviation and tolerance";
    return Derivation.of("Limits of " + thread.designation() + "-" + toleranceClass)
        .step(crest + ",max", "greatest crest diameter", how, crestGreatest.mm(), "mm", source)
        .step(crest + ",min", "least crest diameter", how, crestLeast.mm(), "mm", source)
        .step(pitch + ",max", "greatest pitch diameter", how, pitchGreatest.mm(), "mm", source)
        .step(pitch + ",min", "least pitch diameter", how, pitchLeast.mm(), "mm", source)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    boolean recalled = thread.system() == ThreadSystem.UNIFIED && !toleranceClass.startsWith("2");
    return recalled
        ? List.of(
            new Warning(
                "thread-class-recalled",
                "the formulas of class " + toleranceClass + " are recalled; only classes 2A and 2B were checked in print",
                SourceRef.memory("ASME B1.1-2003", "tolerance formulas")))
        : List.of();
  }

  /** The limits as they stand on a drawing: crest diameter, then pitch diameter. */
  @Override
  public String toString() {
    boolean metric = thread.system() == ThreadSystem.METRIC;
    double unit = metric ? 1 : 25.4;
    int digits = metric ? 3 : 4;
    return thread.designation()
        + "-"
        + toleranceClass
        + ": "
        + (external ? "d " : "D1 ")
        + Numbers.fixed(crestLeast.mm() / unit, digits)
        + " … "
        + Numbers.fixed(crestGreatest.mm() / unit, digits)
        + (external ? ", d2 " : ", D2 ")
        + Numbers.fixed(pitchLeast.mm() / unit, digits)
        + " … "
        + Numbers.fixed(pitchGreatest.mm() / unit, digits)
        + (metric ? " mm" : " in");
  }
}
