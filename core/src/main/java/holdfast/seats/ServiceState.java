// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Stress;
import holdfast.quantity.Temperature;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A fit at work: interference and pressure at the temperatures of its parts and, if both turn together, at speed. Elastic
 * constants are those at room temperature.
 *
 * @param fit the fit
 * @param studTemperature temperature of the stud
 * @param housingTemperature temperature of the housing
 * @param speed speed of both parts together; 0 for a stud that stands still
 * @param interference interference at work before smoothing; negative is clearance
 * @param pressure joint pressure; 0 where nothing is left
 */
public record ServiceState(
    InterferenceFit fit,
    Temperature studTemperature,
    Temperature housingTemperature,
    RotationalSpeed speed,
    Band<Length> interference,
    Band<Stress> pressure)
    implements Traced, Serializable {
  private static final SourceRef THERMAL = SourceRef.derived("free thermal expansion of both parts");
  /** Above this temperature moduli and strengths of common metals fall noticeably. */
  private static final double WARM = 150;

  public ServiceState {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(studTemperature, "studTemperature");
    Objects.requireNonNull(housingTemperature, "housingTemperature");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(interference, "interference");
    Objects.requireNonNull(pressure, "pressure");
  }

  static ServiceState of(InterferenceFit fit, Temperature stud, Temperature housing, RotationalSpeed speed) {
    double loss = speed.rpm() == 0 ? 0 : rotationLoss(fit, speed.rpm());
    double least = atTemperature(fit, fit.interference().least().mm(), stud, housing) - loss;
    double greatest = atTemperature(fit, fit.interference().greatest().mm(), stud, housing) - loss;
    return new ServiceState(
        fit,
        stud,
        housing,
        speed,
        new Band<>(new Length(least), new Length(greatest)),
        new Band<>(
            new Stress(pressureAt(fit, fit.interference().least().mm(), least)),
            new Stress(pressureAt(fit, fit.interference().greatest().mm(), greatest))));
  }

  /** A housing that has yielded while it was joined, or yields at work, springs back along the elastic line. */
  private static double pressureAt(InterferenceFit fit, double joined, double atWork) {
    double first = fit.effective(joined);
    double now = fit.effective(atWork);
    return now >= first
        ? fit.attained(now)
        : Math.max(0, fit.attained(first) - (fit.pressure(first) - fit.pressure(now)));
  }

  /**
   * Stresses of both parts at work, with those of rotation, against their limits.
   *
   * @param rule theory of yield for ductile parts
   * @return stresses and limits; elastic
   */
  public FitLimits limits(YieldRule rule) {
    Objects.requireNonNull(rule, "rule");
    return FitLimits.of(fit, rule, elastic(), stresses(), speed.rpm() == 0);
  }

  /**
   * How far the elastic figures hold for the tightest pair at work.
   *
   * @return that of the joined pair, or that of the pair at work if it is worse
   */
  public InterferenceFit.Validity validity() {
    InterferenceFit.Validity joined = fit.validity();
    FitLimits limits = limits(YieldRule.VON_MISES);
    if (!limits.stud().exceeded() && !limits.housing().exceeded()) {
      return joined;
    }
    if (speed.rpm() != 0) {
      return InterferenceFit.Validity.BEYOND;
    }
    InterferenceBand band = new InterferenceBand(fit.interference().joint(), interference.least(), interference.greatest());
    InterferenceFit.Validity now =
        new InterferenceFit(fit.stud(), fit.housing(), band, fit.length(), fit.smoothing()).validity();
    return now.compareTo(joined) >= 0 ? now : joined;
  }

  private Stress elastic() {
    return new Stress(fit.pressure(fit.effective(interference.greatest().mm())));
  }

  /**
   * Common temperature of both parts at which the loosest pair loses its effective interference, at standstill.
   *
   * @return the temperature: above 20 °C if the housing grows more than the stud, below if less; empty if it is never
   *     reached or the loosest pair has no effective interference at 20 °C
   */
  public Optional<Temperature> lossTemperature() {
    double effective = fit.effectiveInterference().least().mm();
    if (effective == 0) {
      return Optional.empty();
    }
    double loss =
        ThermalSeatKernel.lossTemperature(
            effective,
            fit.interference().joint().mm(),
            fit.stud().material().thermalExpansion().base(),
            fit.housing().material().thermalExpansion().base());
    return loss < -273.15 || Double.isInfinite(loss) ? Optional.empty() : Optional.of(new Temperature(loss));
  }

  /**
   * Stresses at every critical radius at the greatest interference, with those of rotation; elastic.
   *
   * @return the places from the axis outwards
   */
  public List<CriticalStress> stresses() {
    return FitStresses.turning(fit, elastic().base(), speed.rpm());
  }

  /**
   * Hoop stress at the housing bore by rotation alone.
   *
   * @return stress that {@link #stresses} holds beside that of the pressure; 0 at standstill
   */
  public Stress rotationHoop() {
    if (speed.rpm() == 0) {
      return new Stress(0);
    }
    double joint = fit.interference().joint().mm();
    Material o = fit.housing().material();
    return new Stress(
        RotationKernel.boreHoop(
            joint, fit.housing().shape().pressureDiameter(joint), density(o), o.poissonRatio(), speed.rpm()));
  }

  /**
   * What the joint holds at work.
   *
   * @param adhesion band of adhesion when slipping
   * @return forces and torques
   */
  public Holding holding(FrictionBand adhesion) {
    return new Holding(pressure, fit.interference().joint(), fit.length(), adhesion);
  }

  /** Derivation of the least pressure at work. */
  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Least joint pressure at work");
    steps.step(
        "U(θ)",
        "least interference at work",
        "U + D·(α_I·(θ_I - 20) - α_A·(θ_A - 20))" + (speed.rpm() == 0 ? "" : " - loss at speed"),
        interference.least().mm() * 1000,
        "µm",
        THERMAL,
        "U = " + fit.interference().least(),
        "θ_I = " + studTemperature,
        "θ_A = " + housingTemperature);
    if (speed.rpm() != 0) {
      steps.step(
          "ΔU",
          "loss at speed, taken off above",
          "2·(u_A - u_I), centrifugal growth of bore and stud",
          rotationLoss(fit, speed.rpm()) * 1000,
          "µm",
          SourceRef.published("Ugural & Fenster", "example 8.4, rotation of a shrink fit"),
          "n = " + speed);
    }
    steps.step(
        "p",
        "least joint pressure",
        "max(0, U(θ) - G)/(D·(K_I + K_A))",
        pressure.least().base(),
        "MPa",
        SourceRef.published("Boresi & Schmidt", "chapter 11, thick-wall cylinders"),
        "G = " + fit.smoothingLoss());
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (pressure.greatest().base() == 0) {
      warnings.add(new Warning("loose-at-work", "no pair of the fit keeps any grip at work", THERMAL));
    } else if (pressure.least().base() == 0) {
      warnings.add(new Warning("loosest-pair-loose-at-work", "the loosest pair has no grip at work", THERMAL));
    }
    FitLimits limits = limits(YieldRule.VON_MISES);
    if (limits.stud().exceeded()) {
      warnings.add(new Warning("stud-limit-at-work",
          Message.of("the stud is beyond its limit at work: ", limits.stud().words()), THERMAL));
    }
    if (limits.housing().exceeded()) {
      warnings.add(new Warning("housing-limit-at-work",
          Message.of("the housing is beyond its limit at work: ", limits.housing().words()), THERMAL));
    }
    if (Math.max(studTemperature.celsius(), housingTemperature.celsius()) > WARM) {
      warnings.add(
          new Warning(
              "warm",
              "above 150 °C moduli and strengths fall; state a material with its values at temperature",
              SourceRef.commonPractice("room-temperature values hold up to about 150 °C, less for aluminium")));
    }
    return List.copyOf(warnings);
  }

  @Override
  public String toString() {
    return "stud at "
        + studTemperature
        + ", housing at "
        + housingTemperature
        + ": interference "
        + interference
        + ", pressure "
        + pressure;
  }

  private static double atTemperature(InterferenceFit fit, double u, Temperature stud, Temperature housing) {
    return ThermalSeatKernel.interferenceAt(
        u,
        fit.interference().joint().mm(),
        fit.stud().material().thermalExpansion().base(),
        stud.celsius(),
        fit.housing().material().thermalExpansion().base(),
        housing.celsius());
  }

  private static double rotationLoss(InterferenceFit fit, double rpm) {
    double joint = fit.interference().joint().mm();
    Material i = fit.stud().material();
    Material o = fit.housing().material();
    return RotationKernel.interferenceLoss(
        joint,
        fit.stud().hole().mm(),
        fit.housing().shape().pressureDiameter(joint),
        density(i),
        i.elasticModulus().base(),
        i.poissonRatio(),
        density(o),
        o.elasticModulus().base(),
        o.poissonRatio(),
        rpm);
  }

  static double density(Material material) {
    return material
        .density()
        .orElseThrow(
            () -> new InputException("density of " + material.name(), "unknown", "stated", "rotation acts on mass"));
  }
}
