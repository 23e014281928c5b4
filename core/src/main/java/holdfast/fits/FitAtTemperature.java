// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
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
 * A fit away from 20 °C: hole and shaft with their own expansion and temperature. The parts expand freely; what they do
 * to each other is left to the interference fit.
 *
 * @param fit the fit at 20 °C
 * @param holeExpansion coefficient of linear expansion of the part with the hole
 * @param shaftExpansion coefficient of linear expansion of the shaft
 * @param holeTemperature temperature of the part with the hole
 * @param shaftTemperature temperature of the shaft
 */
@Source(
    document = "derivation",
    locator = "free linear expansion from the reference temperature of 20 °C",
    provenance = Provenance.DERIVED)
public record FitAtTemperature(
    Fit fit,
    ThermalExpansion holeExpansion,
    ThermalExpansion shaftExpansion,
    Temperature holeTemperature,
    Temperature shaftTemperature)
    implements Traced, Serializable {
  private static final SourceRef EXPANSION =
      SourceRef.derived("free linear expansion from the reference temperature of 20 °C: d(T) = d20 (1 + alpha (T - 20 °C))");
  /** How far from 20 °C one coefficient of expansion is usually taken as constant, K. */
  private static final double USUAL_SPAN = 100;

  // Refuses what the law of expansion does not hold for.
  public FitAtTemperature {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(holeExpansion, "holeExpansion");
    Objects.requireNonNull(shaftExpansion, "shaftExpansion");
    Objects.requireNonNull(holeTemperature, "holeTemperature");
    Objects.requireNonNull(shaftTemperature, "shaftTemperature");
    ThermalFitKernel.sizeAt(fit.hole().limits().lower().mm(), holeExpansion.perKelvin(), holeTemperature.celsius());
    ThermalFitKernel.sizeAt(fit.shaft().limits().lower().mm(), shaftExpansion.perKelvin(), shaftTemperature.celsius());
  }

  /**
   * A fit at one temperature of both parts.
   *
   * @param fit the fit at 20 °C
   * @param holeExpansion coefficient of linear expansion of the part with the hole
   * @param shaftExpansion coefficient of linear expansion of the shaft
   * @param temperature temperature of both parts
   * @return the fit at that temperature
   */
  public static FitAtTemperature uniform(
      Fit fit, ThermalExpansion holeExpansion, ThermalExpansion shaftExpansion, Temperature temperature) {
    Objects.requireNonNull(temperature, "temperature");
    return new FitAtTemperature(fit, holeExpansion, shaftExpansion, temperature, temperature);
  }

  /**
   * Greatest clearance at the temperatures.
   *
   * @return that of the loosest pair; negative for an interference
   */
  public Length maximumClearance() {
    return clearance(fit.hole().limits().upper(), fit.shaft().limits().lower());
  }

  /**
   * Least clearance at the temperatures.
   *
   * @return that of the tightest pair; negative for an interference
   */
  public Length minimumClearance() {
    return clearance(fit.hole().limits().lower(), fit.shaft().limits().upper());
  }

  /**
   * Limits of size of the hole at its temperature.
   *
   * @return both limits, expanded
   */
  public LimitsOfSize holeLimits() {
    return expanded(fit.hole().limits(), holeExpansion, holeTemperature);
  }

  /**
   * Limits of size of the shaft at its temperature.
   *
   * @return both limits, expanded
   */
  public LimitsOfSize shaftLimits() {
    return expanded(fit.shaft().limits(), shaftExpansion, shaftTemperature);
  }

  /**
   * Kind of the fit at the temperatures.
   *
   * @return clearance, transition or interference
   */
  public FitKind kind() {
    return FitKind.of(minimumClearance(), maximumClearance());
  }

  /**
   * The one temperature of both parts at which the loosest pair has no clearance and no interference.
   *
   * @return the temperature; empty if both parts expand alike or it lies below absolute zero
   */
  public Optional<Temperature> uniformTemperatureOfLoosestContact() {
    return contact(fit.hole().limits().upper(), fit.shaft().limits().lower());
  }

  /**
   * The one temperature of both parts at which the tightest pair has no clearance and no interference.
   *
   * @return the temperature; empty if both parts expand alike or it lies below absolute zero
   */
  public Optional<Temperature> uniformTemperatureOfTightestContact() {
    return contact(fit.hole().limits().lower(), fit.shaft().limits().upper());
  }

  private Length clearance(Length hole, Length shaft) {
    return new Length(
        ThermalFitKernel.clearance(
            hole.mm(),
            holeExpansion.perKelvin(),
            holeTemperature.celsius(),
            shaft.mm(),
            shaftExpansion.perKelvin(),
            shaftTemperature.celsius()));
  }

  private Optional<Temperature> contact(Length hole, Length shaft) {
    double celsius =
        ThermalFitKernel.uniformTemperature(
            hole.mm(), holeExpansion.perKelvin(), shaft.mm(), shaftExpansion.perKelvin(), 0);
    return celsius > -273.15 && celsius <= Check.GREATEST ? Optional.of(new Temperature(celsius)) : Optional.empty();
  }

  private static LimitsOfSize expanded(LimitsOfSize limits, ThermalExpansion expansion, Temperature temperature) {
    return new LimitsOfSize(
        new Length(ThermalFitKernel.sizeAt(limits.lower().mm(), expansion.perKelvin(), temperature.celsius())),
        new Length(ThermalFitKernel.sizeAt(limits.upper().mm(), expansion.perKelvin(), temperature.celsius())));
  }

  /** The fit at 20 °C, then greatest and, as the last step, least clearance at the temperatures. */
  @Override
  public Derivation explain() {
    String[] inputs = {
      "alpha_h = " + holeExpansion, "T_h = " + holeTemperature, "alpha_s = " + shaftExpansion, "T_s = " + shaftTemperature
    };
    String rule = "hole (1 + alpha_h (T_h - 20 °C)) - shaft (1 + alpha_s (T_s - 20 °C))";
    return Derivation.of(this.toString())
        .steps(fit.explain())
        .step("C_max,T", "greatest clearance at the temperatures", rule + ", greatest hole, smallest shaft",
            maximumClearance().in(KnownUnits.UM), "µm", EXPANSION, inputs)
        .step("C_min,T", "least clearance at the temperatures", rule + ", smallest hole, greatest shaft",
            minimumClearance().in(KnownUnits.UM), "µm", EXPANSION, inputs)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(fit.warnings());
    if (kind() != fit.kind()) {
      warnings.add(new Warning("kind-changes",
          Message.of(fit.kind(), " at ", new Temperature(ThermalFitKernel.REFERENCE), " becomes ", kind()), EXPANSION));
    }
    if (Math.min(holeExpansion.perKelvin(), shaftExpansion.perKelvin()) < 0) {
      warnings.add(new Warning("shrinks-when-warmed",
          "a coefficient of expansion is negative: hardly a solid shrinks when warmed; check its sign", EXPANSION));
    }
    double hole = Math.abs(holeTemperature.celsius() - ThermalFitKernel.REFERENCE);
    double shaft = Math.abs(shaftTemperature.celsius() - ThermalFitKernel.REFERENCE);
    if (Math.max(hole, shaft) > USUAL_SPAN) {
      String message = "more than 100 K from 20 °C: the coefficients of expansion must be means over that span";
      warnings.add(new Warning("wide-temperature-span", message, SourceRef.commonPractice("mean coefficients of expansion")));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code "25 H7/p6 with hole at 80 °C, shaft at 80 °C: transition fit, 10 µm interference … 24 µm clearance"}. */
  @Override
  public String toString() {
    return fit.name() + " with hole at " + holeTemperature + ", shaft at " + shaftTemperature + ": " + kind() + ", "
        + FitText.clearances(minimumClearance(), maximumClearance(), fit.hole().origin().inInches());
  }
}
