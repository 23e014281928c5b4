// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A stud's thread engaged in a nut or a tapped part: the loads that strip it.
 *
 * @param thread the thread
 * @param externalClass tolerance class of the stud, empty for basic sizes
 * @param internalClass tolerance class of the nut, empty for basic sizes
 * @param engaged effective engaged length: nut height without countersinks
 * @param studShear shear strength of the stud τB,B
 * @param nutShear shear strength of the nut or part τB,M
 * @param widthOverDiameter width across flats over d (dimensionless), 1.4 or more; 1.9 and more for a block
 */
public record ThreadEngagement(
    ScrewThread thread,
    String externalClass,
    String internalClass,
    Length engaged,
    Stress studShear,
    Stress nutShear,
    double widthOverDiameter)
    implements Traced, Serializable {
  /** Below this height over the diameter a nut is a thin one. */
  public static final double THIN = 0.8;

  private static final SourceRef RULE = new SourceRef("ISO/TR 16224:2012", "thread stripping", Provenance.MEMORY);

  // Refuses at once what the kernels refuse.
  public ThreadEngagement {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(externalClass, "externalClass");
    Objects.requireNonNull(internalClass, "internalClass");
    Objects.requireNonNull(engaged, "engaged");
    Objects.requireNonNull(studShear, "studShear");
    Objects.requireNonNull(nutShear, "nutShear");
    Check.positive(engaged.mm(), "engaged length m", "mm", "threads engage");
    Check.positive(studShear.megapascal(), "shear strength of the stud τB,B", "MPa", "a strength");
    Check.positive(nutShear.megapascal(), "shear strength of the nut τB,M", "MPa", "a strength");
    StrippingKernel.dilation(widthOverDiameter);
    requireClass(thread, externalClass, true);
    requireClass(thread, internalClass, false);
  }

  /**
   * A standard hexagon nut on a stud, with limits 6g and 6H or 2A and 2B.
   *
   * @param thread the thread
   * @param engaged effective engaged length
   * @param studShear shear strength of the stud
   * @param nutShear shear strength of the nut
   * @return the engagement
   * @throws InputException if the tables have no hexagon or no limits for the thread
   */
  public static ThreadEngagement ofNut(ScrewThread thread, Length engaged, Stress studShear, Stress nutShear) {
    Objects.requireNonNull(thread, "thread");
    double s = Hexagon.widthAcrossFlats(thread).ratio(thread.majorDiameter());
    return of(thread, engaged, studShear, nutShear, s);
  }

  /**
   * A stud in a block, with limits 6g and 6H or 2A and 2B.
   *
   * @param thread the thread
   * @param engaged effective engaged length
   * @param studShear shear strength of the stud
   * @param blockShear shear strength of the block
   * @return the engagement
   * @throws InputException if the tables have no limits for the thread
   */
  public static ThreadEngagement ofBlock(ScrewThread thread, Length engaged, Stress studShear, Stress blockShear) {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(blockShear, "blockShear");
    return of(thread, engaged, studShear, blockShear, 1.9);
  }

  private static ThreadEngagement of(
      ScrewThread thread, Length engaged, Stress studShear, Stress nutShear, double widthOverDiameter) {
    boolean metric = thread.system() == ThreadSystem.METRIC;
    ThreadEngagement made = new ThreadEngagement(
        thread, metric ? "6g" : "2A", metric ? "6H" : "2B", engaged, studShear, nutShear, widthOverDiameter);
    // Refuses at once threads that do not overlap.
    Check.positive(made.studArea() + made.nutArea(), "shear area", "mm²", "threads overlap");
    return made;
  }

  /**
   * Shear area of the stud's thread at limits of size.
   *
   * @return ASG,B in mm²
   */
  public double studArea() {
    return StrippingKernel.externalShearArea(minorInternal(), pitchExternal(), thread.pitch().mm(), engaged.mm());
  }

  /**
   * Shear area of the nut's thread at limits of size.
   *
   * @return ASG,M in mm²
   */
  public double nutArea() {
    return StrippingKernel.internalShearArea(majorExternal(), pitchInternal(), thread.pitch().mm(), engaged.mm());
  }

  /**
   * Strength ratio RS of nut to stud.
   *
   * @return below 1 the nut's thread is the weaker
   */
  public double strengthRatio() {
    return StrippingKernel.strengthRatio(nutShear.megapascal(), nutArea(), studShear.megapascal(), studArea());
  }

  /**
   * Load that strips the stud's thread.
   *
   * @return C1·C2·ASG,B·τB,B
   */
  public Force studLoad() {
    double c2 = StrippingKernel.externalBending(strengthRatio());
    return new Force(StrippingKernel.load(studShear.megapascal(), studArea(), dilation() * c2));
  }

  /**
   * Load that strips the nut's thread.
   *
   * @return C1·C3·ASG,M·τB,M
   */
  public Force nutLoad() {
    double c3 = StrippingKernel.internalBending(strengthRatio());
    return new Force(StrippingKernel.load(nutShear.megapascal(), nutArea(), dilation() * c3));
  }

  /**
   * Load at which the first of the two threads strips.
   *
   * @return the lesser load
   */
  public Force strippingLoad() {
    return studLoad().compareTo(nutLoad()) <= 0 ? studLoad() : nutLoad();
  }

  /**
   * Engaged length at which the thread just bears a load; the loads are proportional to the length.
   *
   * @param load a load, over 0
   * @return the effective length, without countersinks and without safety
   * @throws InputException if a value is outside its range
   */
  public Length lengthFor(Force load) {
    Objects.requireNonNull(load, "load");
    Check.positive(load.newton(), "load", "N", "something must be borne");
    return engaged.times(load.ratio(strippingLoad()));
  }

  /**
   * Engaged length at which the free thread breaks before either thread strips.
   *
   * @param studClass strength class of the stud
   * @return the effective length, without countersinks
   */
  public Length lengthForFullStrength(PropertyClass studClass) {
    Objects.requireNonNull(studClass, "studClass");
    return lengthFor(studClass.tensileStrength(thread).times(thread.stressArea()));
  }

  /** How the stripping load follows; the last step is the stripping load. */
  @Override
  public Derivation explain() {
    return Derivation.of("Stripping of " + thread + " over " + engaged)
        .step("ASG,B", "shear area of the stud's thread", "π·D1·(m/P)·[P/2 + (d2 − D1)·tan 30°]", studArea(), "mm²", RULE,
            "D1,max = " + Numbers.significant(minorInternal(), 7) + " mm",
            "d2,min = " + Numbers.significant(pitchExternal(), 7) + " mm")
        .step("ASG,M", "shear area of the nut's thread", "π·d·(m/P)·[P/2 + (d − D2)·tan 30°]", nutArea(), "mm²", RULE,
            "d,min = " + Numbers.significant(majorExternal(), 7) + " mm",
            "D2,max = " + Numbers.significant(pitchInternal(), 7) + " mm")
        .step("RS", "strength ratio", "(τB,M·ASG,M)/(τB,B·ASG,B)", strengthRatio(), "", RULE)
        .step("C1", "widening of the nut", "3.8·(s/d) − (s/d)² − 2.61, 1 from s/d = 1.9", dilation(), "", RULE,
            "s/d = " + Numbers.significant(widthOverDiameter, 4))
        .step("FB", "load that strips the stud", "C1·C2·ASG,B·τB,B", studLoad().newton(), "N", RULE)
        .step("FM", "load that strips the nut", "C1·C3·ASG,M·τB,M", nutLoad().newton(), "N", RULE)
        .step("F", "stripping load", "the lesser", strippingLoad().newton(), "N", RULE)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    double r = strengthRatio();
    if (r < 0.4 || r > 2.2) {
      warnings.add(
          new Warning(
              "strength-ratio-outside",
              "strength ratio " + Numbers.significant(r, 3)
                  + " is outside 0.4 to 2.2, where the corrections for bending are fitted;"
                  + " their values at the ends were taken",
              RULE));
    }
    if (engaged.ratio(thread.majorDiameter()) < THIN) {
      warnings.add(
          new Warning(
              "thin-nut",
              Message.of("engaged length ", engaged, " is below ", THIN,
                  "·d: a thin nut strips before the stud breaks, without sign"),
              SourceRef.commonPractice("full-strength nuts are 0.8·d high and more")));
    }
    if (externalClass.isEmpty() || internalClass.isEmpty()) {
      warnings.add(
          new Warning("basic-sizes", "basic sizes instead of limits of size: the guaranteed strength is lower", RULE));
    }
    return List.copyOf(warnings);
  }

  private double dilation() {
    return StrippingKernel.dilation(widthOverDiameter);
  }

  private double minorInternal() {
    return internalClass.isEmpty()
        ? thread.internalMinorDiameter().mm()
        : ThreadLimits.of(thread, internalClass).crestGreatest().mm();
  }

  private double pitchInternal() {
    return internalClass.isEmpty() ? thread.pitchDiameter().mm() : ThreadLimits.of(thread, internalClass).pitchGreatest().mm();
  }

  private double majorExternal() {
    return externalClass.isEmpty() ? thread.majorDiameter().mm() : ThreadLimits.of(thread, externalClass).crestLeast().mm();
  }

  private double pitchExternal() {
    return externalClass.isEmpty() ? thread.pitchDiameter().mm() : ThreadLimits.of(thread, externalClass).pitchLeast().mm();
  }

  private static void requireClass(ScrewThread thread, String text, boolean external) {
    if (!text.isEmpty() && ThreadLimits.of(thread, text).external() != external) {
      throw new InputException(
          external ? "tolerance class of the stud" : "tolerance class of the nut",
          "'" + text + "'",
          external ? "one of an external thread" : "one of an internal thread",
          "small letters and A are external, capitals and B internal");
    }
  }

  /** Length and stripping load. */
  @Override
  public String toString() {
    return thread + " engaged over " + engaged + ": strips at " + strippingLoad();
  }
}
