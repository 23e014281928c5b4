// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.trace.Derivation;
import holdfast.trace.Warning;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Rating life under a duty in steps: {@code 1/L = Σ ui/Li}, ui the share of revolutions of a step.
 *
 * @param ratings load ratings of the bearing
 * @param spectrum the duty
 * @param reliability reliability
 * @param modified whether aISO is used
 * @param modifications aISO of each step; 1 for a basic life
 * @param stepLives life of each step alone in million revolutions; infinite for a step without load
 * @param millionRevolutions life under the duty in million revolutions
 * @param stepWarnings warnings of the steps
 */
public record SpectrumLife(
    LoadRatings ratings,
    LoadSpectrum spectrum,
    Reliability reliability,
    boolean modified,
    List<Double> modifications,
    List<Double> stepLives,
    double millionRevolutions,
    List<Warning> stepWarnings)
    implements RatedLife {

  // Keeps unmodifiable copies of the lists.
  public SpectrumLife {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(spectrum, "spectrum");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(modifications, "modifications");
    Objects.requireNonNull(stepLives, "stepLives");
    Objects.requireNonNull(stepWarnings, "stepWarnings");
    Check.finite(millionRevolutions, "life under the duty", "million revolutions");
    int steps = spectrum.steps().size();
    Refusal.sameLength(steps, modifications.size(), "modifications of the steps");
    Refusal.sameLength(steps, stepLives.size(), "lives of the steps");
    modifications.forEach(one -> Check.finite(one, "aISO of a step", ""));
    stepLives.forEach(one -> Check.within(one, 0, Double.POSITIVE_INFINITY, "life of a step", "million revolutions",
        "infinite for a step without load"));
    modifications = List.copyOf(modifications);
    stepLives = List.copyOf(stepLives);
    stepWarnings = List.copyOf(stepWarnings);
  }

  static SpectrumLife basic(LoadRatings ratings, LoadSpectrum spectrum, Reliability reliability) {
    List<RatedLife> lives = new ArrayList<>();
    List<Double> modifications = new ArrayList<>();
    for (LoadSpectrum.Step step : spectrum.steps()) {
      lives.add(step.load().newton() == 0 ? null : RatingLife.basic(ratings, step.load(), reliability));
      modifications.add(1.0);
    }
    return of(ratings, spectrum, reliability, false, modifications, lives);
  }

  static SpectrumLife modified(LoadRatings ratings, LoadSpectrum spectrum, Reliability reliability,
      List<Lubrication> lubrication, List<Contamination> contamination) {
    Refusal.sameLength(spectrum.steps().size(), lubrication.size(), "lubrications");
    Refusal.sameLength(spectrum.steps().size(), contamination.size(), "contaminations");
    List<RatedLife> lives = new ArrayList<>();
    List<Double> modifications = new ArrayList<>();
    for (int i = 0; i < spectrum.steps().size(); i++) {
      Force load = spectrum.steps().get(i).load();
      ModifiedLife life = load.newton() == 0
          ? null : RatingLife.modified(ratings, load, reliability, lubrication.get(i), contamination.get(i));
      lives.add(life);
      modifications.add(life == null ? LifeModificationKernel.GREATEST : life.modification());
    }
    return of(ratings, spectrum, reliability, true, modifications, lives);
  }

  private static SpectrumLife of(LoadRatings ratings, LoadSpectrum spectrum, Reliability reliability, boolean modified,
      List<Double> modifications, List<RatedLife> lives) {
    double[] revolutions = revolutions(spectrum);
    double[] values = new double[lives.size()];
    List<Double> boxed = new ArrayList<>();
    Map<String, Warning> warnings = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i++) {
      RatedLife life = lives.get(i);
      values[i] = life == null ? Double.POSITIVE_INFINITY : life.millionRevolutions();
      boxed.add(values[i]);
      if (life == null) {
        warnings.put("step-without-load", new Warning("step-without-load",
            "a step has no load: it does no damage in this sum; see the least load of the bearing", BearingSources.DAMAGE));
      } else {
        life.warnings().forEach(warning -> warnings.putIfAbsent(warning.code(), warning));
      }
    }
    double life = DutyKernel.damageLife(revolutions, values);
    if (Double.isInfinite(life)) {
      throw Refusal.of("load spectrum", "no step with load and speed", "at least one", "without load no rating life exists");
    }
    return new SpectrumLife(
        ratings, spectrum, reliability, modified, modifications, boxed, life, List.copyOf(warnings.values()));
  }

  private static double[] revolutions(LoadSpectrum spectrum) {
    double mean = spectrum.meanSpeed().rpm();
    return spectrum.steps().stream().mapToDouble(step -> step.share() * step.speed().rpm() / mean).toArray();
  }

  /**
   * The life in operating hours of the duty, standstill included.
   *
   * @return hours at the mean speed of the duty
   */
  public OperatingTime hours() {
    RotationalSpeed mean = spectrum.meanSpeed();
    return hours(mean);
  }

  /**
   * Share of each step in the damage.
   *
   * @return shares in the order of the steps, which add up to 1
   */
  public List<Double> damageShares() {
    double[] revolutions = revolutions(spectrum);
    List<Double> shares = new ArrayList<>();
    for (int i = 0; i < revolutions.length; i++) {
      shares.add(revolutions[i] * millionRevolutions / stepLives.get(i));
    }
    return List.copyOf(shares);
  }

  @Override
  public Derivation explain() {
    double[] revolutions = revolutions(spectrum);
    Derivation.Builder steps = Derivation.of("Rating life of a " + ratings.family() + " under a duty of " + stepLives.size()
        + " steps");
    steps.step("nm", "mean speed", "Σ n t", spectrum.meanSpeed().rpm(), "rpm", BearingSources.DAMAGE);
    steps.step("Pm", "constant load with the same basic life", "[Σ P^p n t / Σ n t]^(1/p)",
        spectrum.meanLoad(ratings.family()).newton(), "N", BearingSources.MEAN_LOAD);
    for (int i = 0; i < revolutions.length; i++) {
      LoadSpectrum.Step step = spectrum.steps().get(i);
      if (Double.isInfinite(stepLives.get(i))) {
        continue;
      }
      steps.step("L" + (i + 1), "life in step " + (i + 1) + " alone", modified ? "a1 aISO (C/P)^p" : "a1 (C/P)^p",
          stepLives.get(i),
          "million revolutions", modified ? BearingSources.MODIFIED_LIFE : BearingSources.LIFE, "P = " + step.load(),
          "n = " + step.speed(), "t = " + Numbers.significant(step.share(), 4), "u = " + Numbers.significant(revolutions[i], 4),
          "aISO = " + Numbers.significant(modifications.get(i), 4));
    }
    return steps
        .step(reliability.lifeSymbol() + (modified ? "m" : ""), "life under the duty", "1 / Σ (u/L)", millionRevolutions,
            "million revolutions", BearingSources.DAMAGE)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return stepWarnings;
  }

  /** For example {@code "L10 = 584.7 million revolutions, 54130 h of the duty"}. */
  @Override
  public String toString() {
    return reliability.lifeSymbol() + (modified ? "m" : "") + " = " + Numbers.significant(millionRevolutions, 4)
        + " million revolutions, " + hours() + " of the duty";
  }
}
