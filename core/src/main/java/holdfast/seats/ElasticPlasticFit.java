// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
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
 * A fit whose housing may yield round its bore, at the greatest effective interference. The housing is elastic and
 * perfectly plastic and not brittle; the stud stays elastic. The plastic zone has a closed solution in a ring and in a wide
 * plate only: near an edge and in a block the result is elastic up to the limit of {@link InterferenceFit#limits} and
 * refused beyond it.
 *
 * @param fit the fit
 * @param rule theory of yield: Tresca or modified shear stress
 * @param yieldDifference difference k of hoop and radial stress in the plastic zone
 * @param ratio joint over outside diameter Q of the ring, or of the ring that another outline contains (dimensionless)
 * @param plasticRatio radius of the plastic zone over joint radius ζ (dimensionless); 1 if the housing stays elastic
 * @param pressure joint pressure
 */
public record ElasticPlasticFit(
    InterferenceFit fit, YieldRule rule, Stress yieldDifference, double ratio, double plasticRatio, Stress pressure)
    implements Traced, Serializable {
  private static final SourceRef METHOD = SourceRef.memory("DIN 7190-1:2017", "elastic-plastic interference fits");
  private static final double USUAL_SHARE = 0.3;

  public ElasticPlasticFit {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(yieldDifference, "yieldDifference");
    Objects.requireNonNull(pressure, "pressure");
    Check.finite(ratio, "diameter ratio Q", "");
    Check.finite(plasticRatio, "plastic radius over joint radius", "");
  }

  /**
   * Computes the fit at its greatest effective interference.
   *
   * @param fit the fit
   * @param rule Tresca or modified shear stress
   * @return the result
   * @throws InputException if the housing is brittle, its yield strength unknown, the rule von Mises, or if a housing that is
   *     neither ring nor wide plate yields
   */
  public static ElasticPlasticFit of(InterferenceFit fit, YieldRule rule) {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(rule, "rule");
    Material housing = fit.housing().material();
    if (housing.brittle()) {
      throw new InputException(
          "housing material", housing.name(), "a material that yields", "a brittle housing breaks instead; keep it elastic");
    }
    double yield =
        housing
            .yieldStrength()
            .orElseThrow(
                () ->
                    new InputException(
                        "yield strength of " + housing.name(), "unknown", "stated", "the plastic zone depends on it"))
            .base();
    double k = PlasticRingKernel.yieldDifference(rule, yield);
    HousingShape shape = fit.housing().shape();
    double q = ratio(fit);
    double elastic = fit.pressure().greatest().base();
    if (!closed(shape)) {
      if (fit.limits(rule).housing().exceeded()) {
        throw new InputException(
            "shape of the housing", shape.toString(), "a ring or a wide plate, once it yields",
            "no closed solution is known beyond " + fit.limits(rule).housing() + "; the ring that the outline contains, "
                + new Length(2 * shape.outlineRadius()) + ", gives the least pressure");
      }
      return new ElasticPlasticFit(fit, rule, new Stress(k), q, 1, new Stress(elastic));
    }
    double zeta = plasticRatio(fit, fit.effectiveInterference().greatest().mm(), k);
    double pressure = zeta > 1 ? PlasticRingKernel.pressure(zeta, q, k) : elastic;
    return new ElasticPlasticFit(fit, rule, new Stress(k), q, zeta, new Stress(pressure));
  }

  private static double ratio(InterferenceFit fit) {
    HousingShape shape = fit.housing().shape();
    return shape.kind() == HousingShape.Kind.WIDE ? 0 : fit.interference().joint().mm() / (2 * shape.outlineRadius());
  }

  private static boolean closed(HousingShape shape) {
    return shape.kind() == HousingShape.Kind.RING || shape.kind() == HousingShape.Kind.WIDE;
  }

  /** Whether the plastic zone of this housing can be computed. */
  static boolean applies(OuterPart housing) {
    return closed(housing.shape()) && !housing.material().brittle() && housing.material().yieldStrength().isPresent();
  }

  /** Pressure in MPa of an effective interference in mm, if the method applies. */
  static double pressure(InterferenceFit fit, YieldRule rule, double effective) {
    double k = PlasticRingKernel.yieldDifference(rule, fit.housing().material().yieldStrength().orElseThrow().base());
    double zeta = plasticRatio(fit, effective, k);
    return zeta > 1 ? PlasticRingKernel.pressure(zeta, ratio(fit), k) : fit.pressure(effective);
  }

  private static double plasticRatio(InterferenceFit fit, double effective, double k) {
    Material housing = fit.housing().material();
    return PlasticRingKernel.plasticRatioOfInterference(
        effective, ratio(fit), fit.interference().joint().mm(), studCompliance(fit), housing.elasticModulus().base(),
        housing.poissonRatio(), k);
  }

  /**
   * Whether the housing yields.
   *
   * @return true if there is a plastic zone
   */
  public boolean yields() {
    return plasticRatio > 1;
  }

  /**
   * Whether the housing has no more to give: more interference brings no more pressure.
   *
   * @return true if it is fully plastic or its bore flows axially
   */
  public boolean exhausted() {
    return plasticRatio >= PlasticRingKernel.greatestPlasticRatio(ratio);
  }

  /**
   * Radius of the plastic zone.
   *
   * @return distance from the axis; the joint radius if the housing stays elastic
   */
  public Length plasticRadius() {
    return fit.interference().joint().times(plasticRatio / 2);
  }

  /**
   * Share of the housing's cross-section that is plastic.
   *
   * @return 0 to 1; a usual limit is 0.3
   */
  public double plasticShare() {
    return PlasticRingKernel.plasticShare(plasticRatio, ratio);
  }

  /**
   * Safety against full plasticity.
   *
   * @return fully plastic pressure over pressure, 1 or more; infinite without pressure
   */
  public double safety() {
    return PlasticRingKernel.fullyPlasticPressure(ratio, yieldDifference.base()) / pressure.base();
  }

  /**
   * Whether the method covers this fit: usual plastic share, ductile housing, elastic stud.
   *
   * @return false if a warning of the method applies
   */
  public boolean covered() {
    return warnings().isEmpty();
  }

  @Override
  public Derivation explain() {
    String[] inputs = {
      "k = " + Numbers.significant(yieldDifference.base(), 6) + " MPa (" + rule + ")",
      "Q = " + Numbers.significant(ratio, 6),
      "U_w = " + Numbers.significant(fit.effectiveInterference().greatest().mm() * 1000, 6) + " µm"
    };
    Derivation.Builder steps = Derivation.of("Joint pressure with a housing that yields");
    steps.steps(fit.explain());
    steps.step(
        "ζ",
        "radius of the plastic zone over joint radius",
        "root of U_w = D·(p·(K_I - (1-ν_A)/E_A) + k·ζ²/E_A), at least 1",
        plasticRatio,
        "",
        METHOD,
        inputs);
    steps.step(
        "p",
        "joint pressure",
        yields() ? "k/2·(2·ln ζ - Q²·ζ² + 1)" : "elastic, as above",
        pressure.base(),
        "MPa",
        METHOD,
        "ζ = " + Numbers.significant(plasticRatio, 6));
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (yields() && fit.housing().material().ductility() != Ductility.DUCTILE) {
      warnings.add(
          new Warning(
              "not-ductile-enough",
              fit.housing().material().name() + " may not stretch far enough; the method asks for 10 % elongation or more",
              METHOD));
    }
    if (plasticShare() > USUAL_SHARE) {
      warnings.add(
          new Warning(
              "plastic-share",
              "the plastic zone is " + Numbers.fixed(plasticShare() * 100, 0) + " % of the section, above the usual 30 %",
              METHOD));
    }
    if (exhausted()) {
      warnings.add(
          new Warning("exhausted", "the housing carries no more pressure; the interference only enlarges it", METHOD));
    }
    FitLimits.PartLimit stud = FitLimits.of(fit, rule, pressure, fit.stresses(pressure), true).stud();
    if (stud.exceeded()) {
      warnings.add(new Warning("stud-yields", "the stud yields too (" + stud + "); the method no longer holds", METHOD));
    }
    return List.copyOf(warnings);
  }

  @Override
  public String toString() {
    return yields()
        ? "housing yields to "
            + plasticRadius()
            + " radius, "
            + Numbers.fixed(plasticShare() * 100, 0)
            + " % of its section; pressure "
            + Numbers.fixed(pressure.base(), 1)
            + " MPa"
        : "housing stays elastic; pressure " + Numbers.fixed(pressure.base(), 1) + " MPa";
  }

  private static double studCompliance(InterferenceFit fit) {
    Material stud = fit.stud().material();
    return ThickRingKernel.innerCompliance(
        fit.stud().hole().mm(), fit.interference().joint().mm(), stud.elasticModulus().base(), stud.poissonRatio());
  }
}
