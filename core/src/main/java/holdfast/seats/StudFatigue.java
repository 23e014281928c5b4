// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Fatigue margin of a stud or pin: the lesser of the margin in the Haigh diagram and that against yielding in the first cycle.
 *
 * @param strength the stud or pin with its load
 * @param duty how the radial load changes; a preload rests
 * @param notchFactor fatigue notch factor Kf on the alternating bending stress, 1 or more
 * @param material strengths of the finished part
 * @param criterion how mean stress is weighed
 */
public record StudFatigue(
    BentPart strength, StudDuty duty, double notchFactor, StudMaterial material, StudFatigueCriterion criterion)
    implements Traced, Serializable {

  private static final SourceRef CYCLE = SourceRef.derived("amplitude and mean of the bending stress, preload at rest");

  private static final SourceRef PRESS_FIT =
      SourceRef.memory("DIN 743-2", "fatigue notch factors of press fits in bending, reference diameter 40 mm");

  // Refuses notches that lower the stress and studs without load.
  public StudFatigue {
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(duty, "duty");
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(criterion, "criterion");
    Check.atLeast(notchFactor, 1, "fatigue notch factor Kf", "", "a notch does not lower the stress");
    Check.positive(strength.tension().megapascal(), "bending plus preload stress", "MPa", "nothing loads the stud");
  }

  /**
   * Stress amplitude.
   *
   * @return 0 at rest, half the bending stress if repeated, the whole if reversed; times Kf
   */
  public Stress amplitude() {
    double share =
        switch (duty) {
          case STATIC -> 0;
          case REPEATED -> 0.5;
          case REVERSED -> 1;
        };
    return strength.bending().times(share * notchFactor);
  }

  /**
   * Mean stress.
   *
   * @return preload, what leaning faces force, and what of the bending stress does not alternate
   */
  public Stress mean() {
    double share =
        switch (duty) {
          case STATIC -> 1;
          case REPEATED -> 0.5;
          case REVERSED -> 0;
        };
    return strength.resting().plus(strength.bending().times(share));
  }

  /**
   * Margin in the Haigh diagram, if amplitude and mean grow together.
   *
   * @return the margin by the chosen criterion
   */
  public double haighMargin() {
    return criterion.margin(
        amplitude().megapascal(), mean().megapascal(), material.endurance().megapascal(),
        material.tensile().megapascal(), material.yield().megapascal());
  }

  /**
   * Margin against yielding in the first cycle.
   *
   * @return yield strength over the largest stress
   */
  public double yieldMargin() {
    return StudFatigueKernel.firstYield(
        amplitude().megapascal(), mean().megapascal(), material.yield().megapascal());
  }

  /**
   * Governing margin.
   *
   * @return the lesser of the two
   */
  public double margin() {
    return Math.min(haighMargin(), yieldMargin());
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Fatigue of the " + strength.section() + ", " + duty + " load");
    steps.steps(strength.explain());
    steps.step(
        "σA", "stress amplitude", "Kf times the alternating share of σb", amplitude().megapascal(), "MPa", CYCLE,
        "Kf = " + Numbers.shortest(notchFactor));
    steps.step("σm", "mean stress", "σa, what the faces force, and the resting share of σb", mean().megapascal(), "MPa", CYCLE);
    steps.step(
        "nH", "margin in the Haigh diagram", expression(), haighMargin(), "", source(),
        "σe = " + material.endurance(), "Rm = " + material.tensile(), "Re = " + material.yield());
    steps.step(
        "nY", "margin against first yield", "Re/(σA + |σm|)", yieldMargin(), "",
        SourceRef.derived("largest stress of the cycle"));
    steps.step("n", "governing margin", "min(nH, nY)", margin(), "", SourceRef.derived("the lesser margin governs"));
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(strength.warnings());
    if (duty != StudDuty.STATIC && strength.fitPressure().megapascal() > 0 && notchFactor < pressFit()) {
      warnings.add(
          new Warning(
              "fretting-at-mouth",
              "a press fit under alternating bending frets at its mouth: the notch factor there is about 2 to 4, "
                  + Numbers.shortest(notchFactor) + " was taken, " + Numbers.significant(pressFit(), 3)
                  + " is that of a press fit in this steel",
              PRESS_FIT));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code repeated load: margin 2.1 (Haigh 2.1, first yield 3)}. */
  @Override
  public String toString() {
    return duty + " load: margin " + Numbers.significant(margin(), 3) + " (Haigh " + Numbers.significant(haighMargin(), 3)
        + ", first yield " + Numbers.significant(yieldMargin(), 3) + ")";
  }

  /** For the warning alone, so the ends of the relation stand for what lies beyond. */
  private double pressFit() {
    return StudNotchKernel.pressFit(Math.min(2500, Math.max(300, material.tensile().megapascal())));
  }

  private String expression() {
    return switch (criterion) {
      case GOODMAN -> "1/(σA/σe + σm/Rm)";
      case GERBER -> "n σA/σe + (n σm/Rm)² = 1";
      case SODERBERG -> "1/(σA/σe + σm/Re)";
    };
  }

  private SourceRef source() {
    return switch (criterion) {
      case GOODMAN -> SourceRef.memory("Goodman 1899", "straight line, modified form");
      case GERBER -> SourceRef.memory("Gerber 1874", "parabola");
      case SODERBERG -> SourceRef.memory("Soderberg 1930", "straight line to the yield strength");
    };
  }
}
