// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a torque from a chart is right for a stud, with its bore, its strength and the face of its nut: what the torque
 * uses of the yield stress over the usual friction, and which friction it implies.
 *
 * @param chart the torque with stud, nut and face
 * @param strength strength class of the stud
 */
public record ChartVerdict(ChartTorque chart, PropertyClass strength) implements Traced, Serializable {
  /** Part of the yield stress that tightening usually may use. */
  public static final double USUAL = 0.9;
  /** A torque that uses less than this of the yield stress, however slippery the thread, hardly tightens. */
  public static final double LOW = 0.1;

  private static final SourceRef RULE = SourceRef.memory("VDI 2230-1:2015", "assembly preload at ν of the yield stress");
  private static final SourceRef SLIP = SourceRef.commonPractice("a chart is in lbf·ft or in lbf·in: read its heading");
  private static final double INCHES_IN_A_FOOT = 12;

  /** How a torque suits a stud. */
  public enum Judgement {
    /** However slippery thread and face are, next to nothing of the stud is used. */
    TOO_LOW("too low: even oiled it hardly tightens the stud"),
    /** Over the usual friction the stud is never used beyond 90 % of its yield stress. */
    SUITS("suits the stud: oiled or as delivered it stays below " + Math.round(100 * USUAL) + " % of the yield stress"),
    /** Oiled, the stud comes near its yield stress. */
    ONLY_UNOILED("close: oiled at its slipperiest it uses more than " + Math.round(100 * USUAL) + " % of the yield stress"),
    /** Oiled, the stud yields. */
    YIELDS_OILED("too high for an oiled thread: the stud yields"),
    /** The stud yields whatever the usual friction is. */
    TOO_HIGH("too high: the stud yields, oiled or not");

    private final String words;

    Judgement(String words) {
      this.words = words;
    }

    /** The words for a text. */
    @Override
    public String toString() {
      return words;
    }
  }

  // Refuses a class that does not cover the size.
  public ChartVerdict {
    Objects.requireNonNull(chart, "chart");
    Objects.requireNonNull(strength, "strength");
    Check.positive(strength.yieldStress(chart.nut().thread()).megapascal(), "yield stress", "MPa", "a strength");
  }

  /**
   * Greatest part of the yield stress that the torque uses: oiled, at the slippery end.
   *
   * @return equivalent stress over yield stress, in the section where it is greatest
   */
  public double greatestUse() {
    return chart.oiled().utilisation(strength);
  }

  /**
   * Least part of the yield stress that the torque uses: as delivered, at the rough end.
   *
   * @return equivalent stress over yield stress, in the section where it is greatest
   */
  public double leastUse() {
    return chart.asDelivered().least().combinedStress().ratio(strength.yieldStress(chart.nut().thread()));
  }

  /**
   * The judgement.
   *
   * @return by the use of the yield stress at both ends of the usual friction
   */
  public Judgement judgement() {
    return judge(greatestUse(), leastUse());
  }

  private static Judgement judge(double greatest, double least) {
    if (least > 1) {
      return Judgement.TOO_HIGH;
    }
    if (greatest > 1) {
      return Judgement.YIELDS_OILED;
    }
    if (greatest > USUAL) {
      return Judgement.ONLY_UNOILED;
    }
    return greatest < LOW ? Judgement.TOO_LOW : Judgement.SUITS;
  }

  /**
   * The preload that charts usually aim at, on the section that this stud has.
   *
   * @return 75 % of the yield stress times the area of the thread without its bore
   */
  public Force usualPreload() {
    Stress yield = strength.yieldStress(chart.nut().thread());
    return yield.times(ChartTorque.CHART_PART).times(chart.nut().sections().get(0).area());
  }

  /**
   * The friction, the same in thread and face, at which the torque makes the usual preload.
   *
   * @return coefficient of friction (dimensionless), over 0; empty if the torque does not reach that preload even without
   *     friction
   */
  public OptionalDouble impliedFriction() {
    ScrewThread t = chart.nut().thread();
    double d = t.majorDiameter().mm();
    double k = chart.pullingTorque().newtonMillimetre() / (usualPreload().newton() * d);
    double frictionless = t.lead().mm() / (2 * Math.PI * d);
    return k <= frictionless * (1 + 1e-12)
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            TighteningKernel.frictionOfNutFactor(
                k, d, t.pitchDiameter().mm(), t.lead().mm(), chart.nut().statedFace().frictionDiameter().mm()));
  }

  /**
   * Another reading of the same figure that would suit: a twelfth of it where lbf·ft was read for lbf·in, twelve times as
   * much in the other case. Only for a torque that is too high or too low.
   *
   * @return the other torque; empty if this one may be right, or the other is no better
   */
  public Optional<Torque> otherReading() {
    return switch (judgement()) {
      case TOO_HIGH -> suiting(chart.torque().times(1 / INCHES_IN_A_FOOT));
      case TOO_LOW -> suiting(chart.torque().times(INCHES_IN_A_FOOT));
      default -> Optional.empty();
    };
  }

  private Optional<Torque> suiting(Torque other) {
    if (other.compareTo(chart.nut().prevailing()) <= 0) {
      return Optional.empty();
    }
    ChartVerdict verdict = new ChartTorque(chart.nut(), other).verdict(strength);
    return verdict.judgement() == Judgement.SUITS ? Optional.of(other) : Optional.empty();
  }

  /** How the verdict follows; the last step is the greatest use of the yield stress. */
  @Override
  public Derivation explain() {
    Stress yield = strength.yieldStress(chart.nut().thread());
    Derivation.Builder b =
        Derivation.of(chart.torque() + " on " + chart.nut() + ", class " + strength)
            .steps(chart.explain())
            .step("Fu", "preload that charts usually aim at", "0.75·Re·A", usualPreload().newton(), "N",
                SourceRef.derived("75 % of the yield stress on the drilled section"), "Re = " + yield,
                "A = " + Numbers.significant(chart.nut().sections().get(0).area().mm2(), 6) + " mm²");
    impliedFriction()
        .ifPresent(
            friction ->
                b.step("μ", "friction that the torque implies", "K(μ) = (T − MP)/(Fu·d)", friction, "",
                    SourceRef.derived("exact torque relation solved for the friction")));
    return b.step("νmin", "use of the yield stress as delivered, rough", "σred/Re", leastUse(), "", RULE)
        .step("νmax", "use of the yield stress oiled, slippery", "σred/Re", greatestUse(), "", RULE)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(chart.warnings());
    Judgement judgement = judgement();
    if (judgement != Judgement.SUITS) {
      warnings.add(new Warning("chart-torque-unsuited", chart.torque() + " is " + judgement, RULE));
    }
    otherReading()
        .ifPresent(
            other ->
                warnings.add(
                    new Warning(
                        "chart-unit-slip",
                        chart.torque() + " is not plausible for this stud, " + other
                            + " would be: see whether the chart is in lbf·ft or in lbf·in",
                        SLIP)));
    return List.copyOf(warnings);
  }

  /** The judgement with both ends. */
  @Override
  public String toString() {
    return chart.torque() + " on " + chart.nut().thread() + ", class " + strength + ": " + judgement() + " ("
        + Math.round(100 * leastUse()) + " to " + Math.round(100 * greatestUse()) + " % of the yield stress)";
  }
}
