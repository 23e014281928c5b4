// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import java.util.function.ToDoubleFunction;

/**
 * Elastic limits of both parts and safety of the tightest pair against them.
 *
 * @param rule theory of yield for parts that yield
 * @param greatestPressure greatest joint pressure of the fit
 * @param stud limit of the stud
 * @param housing limit of the housing
 */
public record FitLimits(YieldRule rule, Stress greatestPressure, PartLimit stud, PartLimit housing)
    implements Traced, Serializable {
  private static final SourceRef YIELD = SourceRef.derived("yield theories on the stresses of a thick ring");
  private static final SourceRef SAFETY = SourceRef.derived("strength over stress");
  /** Two roads to a stress that equals its limit differ by a few last digits. */
  private static final double ROUNDING = 1e-12;

  public FitLimits {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(greatestPressure, "greatestPressure");
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(housing, "housing");
  }

  /**
   * Stress of one part by the tightest pair, and what it bears. Elastic: beyond the limit the stress is no longer true.
   *
   * @param material name of the material
   * @param measure what the stress is: equivalent stress after a theory of yield, or greatest principal stress
   * @param place where it is greatest
   * @param stress the stress
   * @param strength yield strength, or tensile strength of a brittle part; null if it is unknown
   * @param limitPressure joint pressure at the limit; null if the strength is unknown or the parts turn
   * @param brittle whether the limit is fracture, not yield
   */
  public record PartLimit(
      String material, String measure, CriticalStress.Place place, Stress stress, Stress strength, Stress limitPressure,
      boolean brittle)
      implements Serializable {
    public PartLimit {
      Objects.requireNonNull(material, "material");
      Objects.requireNonNull(measure, "measure");
      Objects.requireNonNull(place, "place");
      Objects.requireNonNull(stress, "stress");
    }

    /**
     * What sets the limit.
     *
     * @return the kind of stress, or which strength is unknown
     */
    public String criterion() {
      return strength == null ? strengthName() + " of " + material + " unknown" : measure;
    }

    /**
     * Which strength limits the part.
     *
     * @return the yield strength, or the tensile strength of a brittle part
     */
    public String strengthName() {
      return brittle ? "tensile strength" : "yield strength";
    }

    /**
     * Joint pressure at the limit.
     *
     * @return the pressure; empty if the strength is unknown or the parts turn
     */
    public Optional<Stress> pressure() {
      return Optional.ofNullable(limitPressure);
    }

    /**
     * What the part bears.
     *
     * @return yield or tensile strength; empty if it is unknown
     */
    public Optional<Stress> knownStrength() {
      return Optional.ofNullable(strength);
    }

    /**
     * Strength over stress.
     *
     * @return the safety, a ratio; empty if the strength is unknown or nothing stresses the part
     */
    public OptionalDouble safety() {
      double safety = strength == null ? Double.POSITIVE_INFINITY : strength.base() / stress.base();
      return Double.isFinite(safety) ? OptionalDouble.of(safety) : OptionalDouble.empty();
    }

    /**
     * Whether the tightest pair stays below the limit.
     *
     * @return true if the strength is known and the stress is not above it
     */
    public boolean holds() {
      return strength != null && !exceeded();
    }

    /**
     * Whether the tightest pair is beyond the limit.
     *
     * @return true if the strength is known and the stress is above it, rounding aside
     */
    public boolean exceeded() {
      return strength != null && stress.base() > strength.base() * (1 + ROUNDING);
    }

    /**
     * Stress and limit in words, with their quantities.
     *
     * @return for example stress, strength and safety, or what is unknown
     */
    public Message words() {
      Message text = Message.of(stress, " at the ", place, " (", measure, "), ");
      return strength == null
          ? Message.of(text, criterion())
          : Message.of(text, strengthName(), " ", strength,
              safety().isPresent() ? ", safety " + Numbers.significant(safety().getAsDouble(), 3) : ", nothing presses");
    }

    @Override
    public String toString() {
      String text = Numbers.fixed(stress.base(), 1) + " MPa at the " + place + " (" + measure + ")";
      return strength == null
          ? text + ", " + criterion()
          : text + ", " + strengthName() + " " + Numbers.fixed(strength.base(), 1) + " MPa"
              + (safety().isPresent() ? ", safety " + Numbers.significant(safety().getAsDouble(), 3) : ", nothing presses");
    }
  }

  /** Limit and safety of both parts; a part whose strength is unknown has neither. */
  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Elastic limits of the tightest pair, " + rule)
        .step("pmax", "greatest joint pressure", "pressure of the tightest pair", greatestPressure.megapascal(), "MPa",
            FitDerivation.RING);
    explain(steps, stud, "S", "stud");
    explain(steps, housing, "H", "housing");
    Stream.of(stud, housing).flatMapToDouble(part -> part.safety().stream()).min()
        .ifPresent(least -> steps.step("S", "safety that governs", "min(SS, SH)", least, "", SAFETY));
    return steps.build();
  }

  private static void explain(Derivation.Builder steps, PartLimit part, String index, String name) {
    steps.step("σ" + index, part.measure() + ", " + name + ", at the " + part.place(), "greatest over the critical places",
        part.stress().megapascal(), "MPa", YIELD);
    part.safety().ifPresent(safety -> steps.step("S" + index, "safety of the " + name, part.strengthName() + "/σ" + index, safety,
        "", SAFETY, part.strengthName() + " " + part.strength()));
  }

  /** What is not judged, because a strength is not known. */
  @Override
  public List<Warning> warnings() {
    return Stream.of(stud, housing)
        .filter(part -> part.knownStrength().isEmpty())
        .map(part -> new Warning("strength-unknown", part.criterion() + ": its limit is not judged", YIELD))
        .toList();
  }

  static FitLimits of(InterferenceFit fit, YieldRule rule) {
    Stress pressure = fit.pressure().greatest();
    return of(fit, rule, pressure, fit.stresses(pressure), true);
  }

  /** Of stresses that may hold more than those of the pressure; then no pressure alone is the limit. */
  static FitLimits of(
      InterferenceFit fit, YieldRule rule, Stress pressure, List<CriticalStress> stresses, boolean pressureAlone) {
    return new FitLimits(rule, pressure, stud(fit, rule, stresses, pressureAlone), housing(fit, rule, stresses, pressureAlone));
  }

  private static PartLimit stud(InterferenceFit fit, YieldRule rule, List<CriticalStress> stresses, boolean pressureAlone) {
    Material material = fit.stud().material();
    CriticalStress worst = worst(stresses, false, stress -> stress.equivalent(rule).base());
    Stress yield = material.yieldStrength().orElse(null);
    Stress limit = null;
    if (yield != null && pressureAlone) {
      double ratio = fit.stud().hole().mm() / fit.interference().joint().mm();
      limit = new Stress(ElasticLimitKernel.studPressure(rule, yield.base(), ratio));
    }
    return new PartLimit(
        material.name(), rule.toString(), worst.place(), worst.equivalent(rule), yield, limit, false);
  }

  private static PartLimit housing(
      InterferenceFit fit, YieldRule rule, List<CriticalStress> stresses, boolean pressureAlone) {
    Material material = fit.housing().material();
    boolean brittle = material.brittle();
    // Near an edge the outline can be stressed higher than the bore.
    CriticalStress worst =
        worst(stresses, true, stress -> brittle ? stress.hoop().base() : stress.equivalent(rule).base());
    Stress stress = brittle ? worst.hoop() : worst.equivalent(rule);
    Stress strength = (brittle ? material.tensileStrength() : material.yieldStrength()).orElse(null);
    Stress limit = strength != null && pressureAlone ? housingLimit(fit, rule, strength.base(), brittle) : null;
    return new PartLimit(
        material.name(), brittle ? "greatest principal stress" : rule.toString(), worst.place(), stress, strength, limit,
        brittle);
  }

  private static Stress housingLimit(InterferenceFit fit, YieldRule rule, double strength, boolean brittle) {
    double joint = fit.interference().joint().mm();
    double hoop = fit.housing().shape().hoopFactor(joint);
    double outline = fit.housing().shape().outlineFactor(joint);
    return new Stress(
        brittle
            ? ElasticLimitKernel.brittleHousingPressure(strength, Math.max(hoop, outline))
            : Math.min(
                ElasticLimitKernel.housingPressure(rule, strength, hoop),
                outline == 0 ? strength : strength / (outline * share(rule))));
  }

  /** A single stress counts fully, but for the modified shear stress, which counts √3/2 of it. */
  private static double share(YieldRule rule) {
    return new CriticalStress(CriticalStress.Place.HOUSING_OUTSIDE, new Length(1), new Stress(0), new Stress(1))
        .equivalent(rule)
        .base();
  }

  private static CriticalStress worst(
      List<CriticalStress> stresses, boolean ofHousing, ToDoubleFunction<CriticalStress> measure) {
    return stresses.stream()
        .filter(stress -> stress.place().ofHousing() == ofHousing)
        .max(Comparator.comparingDouble(measure))
        .orElseThrow();
  }

  @Override
  public String toString() {
    return "stud " + stud + "; housing " + housing;
  }
}
