// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.fits.Fit;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Stress;
import holdfast.quantity.Temperature;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * An interference fit of a stud in a housing: what the interference does to both parts, what it takes to join them and
 * what it holds. Elastic, plane stress; {@link ElasticPlasticFit} takes over where the housing yields.
 *
 * @param stud the inner part
 * @param housing the outer part
 * @param interference least and greatest interference at 20 °C
 * @param length length over which stud and bore touch, chamfers not counted
 * @param smoothing rule for the interference lost to smoothing
 */
public record InterferenceFit(
    InnerPart stud, OuterPart housing, InterferenceBand interference, Length length, RoughnessRule smoothing)
    implements Traced, Serializable {

  /** How far the elastic figures of a fit hold. */
  public enum Validity {
    /** Both parts stay elastic, as far as their strengths are known. */
    ELASTIC,
    /** The housing yields round its bore, within the usual limit of the elastic-plastic method; the stud stays elastic. */
    ELASTIC_PLASTIC,
    /** A part is beyond its limit and no method here covers it: no figure of the tightest pair holds. */
    BEYOND
  }

  // Refuses a hole that is not smaller than the stud and a housing that is not larger.
  public InterferenceFit {
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(housing, "housing");
    Objects.requireNonNull(interference, "interference");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(smoothing, "smoothing");
    SeatChecks.size(length.mm(), "joint length", "a joint has a length");
    ThickRingKernel.checkHole(stud.hole().mm(), interference.joint().mm());
    ThickRingKernel.checkOutside(interference.joint().mm(), housing.shape().pressureDiameter(interference.joint().mm()));
  }

  /**
   * From a fit. Smoothing after the 2017 rule.
   *
   * @param stud the inner part
   * @param housing the outer part
   * @param fit an interference or transition fit
   * @param length length over which stud and bore touch
   * @return the fit
   * @throws holdfast.quantity.InputException if it is a clearance fit or the parts have no wall
   */
  public static InterferenceFit of(InnerPart stud, OuterPart housing, Fit fit, Length length) {
    Objects.requireNonNull(fit, "fit");
    return of(stud, housing, InterferenceBand.of(fit), length);
  }

  /**
   * From a band of interference. Smoothing after the 2017 rule.
   *
   * @param stud the inner part
   * @param housing the outer part
   * @param interference least and greatest interference at 20 °C
   * @param length length over which stud and bore touch
   * @return the fit
   * @throws holdfast.quantity.InputException if the parts have no wall
   */
  public static InterferenceFit of(InnerPart stud, OuterPart housing, InterferenceBand interference, Length length) {
    return new InterferenceFit(stud, housing, interference, length, RoughnessRule.DIN_7190_1_2017);
  }

  /**
   * The same fit with another rule for the interference lost to smoothing.
   *
   * @param rule the rule
   * @return the fit
   */
  public InterferenceFit withSmoothing(RoughnessRule rule) {
    Objects.requireNonNull(rule, "rule");
    return new InterferenceFit(stud, housing, interference, length, rule);
  }

  /**
   * Interference lost to smoothing.
   *
   * @return diametral loss G
   */
  public Length smoothingLoss() {
    return smoothing.loss(housing.roughness(), stud.roughness());
  }

  /**
   * Effective interference: least and greatest interference less the loss; 0 where nothing is left.
   *
   * @return the band
   */
  public Band<Length> effectiveInterference() {
    return new Band<>(new Length(effective(interference.least().mm())), new Length(effective(interference.greatest().mm())));
  }

  /**
   * Joint pressure.
   *
   * @return the band between the loosest and the tightest pair
   */
  public Band<Stress> pressure() {
    Band<Length> u = effectiveInterference();
    return new Band<>(new Stress(pressure(u.least().mm())), new Stress(pressure(u.greatest().mm())));
  }

  /**
   * How far the elastic figures hold for the tightest pair.
   *
   * @return elastic; with a plastic zone in the housing that the elastic-plastic method covers; or beyond both
   */
  public Validity validity() {
    FitLimits limits = limits(YieldRule.VON_MISES);
    if (!limits.stud().exceeded() && !limits.housing().exceeded()) {
      return Validity.ELASTIC;
    }
    if (!ElasticPlasticFit.applies(housing)) {
      return Validity.BEYOND;
    }
    return elasticPlastic(YieldRule.MODIFIED_SHEAR).covered() ? Validity.ELASTIC_PLASTIC : Validity.BEYOND;
  }

  /**
   * Joint pressure that the parts bring: elastic, and by the elastic-plastic method (modified shear stress) where the housing
   * yields and the method applies. {@link #validity} tells whether the figure may be used.
   *
   * @return the band between the loosest and the tightest pair
   */
  public Band<Stress> attainedPressure() {
    Band<Length> u = effectiveInterference();
    return new Band<>(new Stress(attained(u.least().mm())), new Stress(attained(u.greatest().mm())));
  }

  /**
   * Stresses at every critical radius at the greatest pressure.
   *
   * @return the places from the axis outwards
   */
  public List<CriticalStress> stresses() {
    return FitStresses.at(this, pressure().greatest().base());
  }

  /**
   * Stresses at every critical radius at a pressure.
   *
   * @param pressure joint pressure, 0 or more
   * @return the places from the axis outwards
   * @throws holdfast.quantity.InputException if the pressure is negative
   */
  public List<CriticalStress> stresses(Stress pressure) {
    Objects.requireNonNull(pressure, "pressure");
    return FitStresses.at(this, Check.notNegative(pressure.base(), "joint pressure", "MPa", "a joint cannot pull"));
  }

  /**
   * Changes of diameter at the greatest pressure.
   *
   * @return the changes
   */
  public FitDisplacements displacements() {
    return FitDisplacements.at(this, pressure().greatest());
  }

  /**
   * Elastic limits and safety of both parts.
   *
   * @param rule theory of yield for ductile parts
   * @return the limits
   */
  public FitLimits limits(YieldRule rule) {
    Objects.requireNonNull(rule, "rule");
    return FitLimits.of(this, rule);
  }

  /**
   * The fit with a housing that may yield.
   *
   * @param rule Tresca or modified shear stress
   * @return plastic zone and pressure at the greatest effective interference
   * @throws holdfast.quantity.InputException if the housing is brittle, its yield strength unknown, or the rule von Mises
   */
  public ElasticPlasticFit elasticPlastic(YieldRule rule) {
    Objects.requireNonNull(rule, "rule");
    return ElasticPlasticFit.of(this, rule);
  }

  /**
   * The fit at work, standing still.
   *
   * @param studTemperature temperature of the stud
   * @param housingTemperature temperature of the housing
   * @return interference and pressure at these temperatures
   */
  public ServiceState atWork(Temperature studTemperature, Temperature housingTemperature) {
    Objects.requireNonNull(studTemperature, "studTemperature");
    Objects.requireNonNull(housingTemperature, "housingTemperature");
    return ServiceState.of(this, studTemperature, housingTemperature, new RotationalSpeed(0));
  }

  /**
   * The fit at work with both parts turning together.
   *
   * @param studTemperature temperature of the stud
   * @param housingTemperature temperature of the housing
   * @param speed speed
   * @return interference and pressure at these temperatures and speed
   * @throws holdfast.quantity.InputException if a density is unknown or the housing has no end
   */
  public ServiceState atWork(Temperature studTemperature, Temperature housingTemperature, RotationalSpeed speed) {
    Objects.requireNonNull(studTemperature, "studTemperature");
    Objects.requireNonNull(housingTemperature, "housingTemperature");
    Objects.requireNonNull(speed, "speed");
    return ServiceState.of(this, studTemperature, housingTemperature, speed);
  }

  /**
   * What the joint holds at 20 °C, standing still.
   *
   * @param adhesion band of adhesion when slipping
   * @return forces and torques
   */
  public Holding holding(FrictionBand adhesion) {
    return new Holding(attainedPressure(), interference.joint(), length, adhesion);
  }

  /**
   * Pressing the stud in and out.
   *
   * @param friction band of friction while pressing
   * @return forces, work and cautions
   */
  public Pressing pressing(FrictionBand friction) {
    Objects.requireNonNull(friction, "friction");
    return Pressing.of(this, friction);
  }

  /**
   * Force at the end of the pressing stroke.
   *
   * @param friction band of friction while pressing
   * @return from the loosest pair with the least friction to the tightest with the greatest
   */
  public Band<Force> pressInForce(FrictionBand friction) {
    Objects.requireNonNull(friction, "friction");
    return pressing(friction).pressIn();
  }

  /**
   * Joining by heating the housing or cooling the stud.
   *
   * @return a builder with the usual clearance, at a room temperature of 20 °C
   */
  public ThermalAssembly.Builder thermalAssembly() {
    return ThermalAssembly.of(this);
  }

  /**
   * Temperature of the housing for a stud at 20 °C and an assembly clearance of a thousandth of the joint diameter.
   *
   * @return the temperature
   */
  public Temperature heatingTemperature() {
    return thermalAssembly().build().housingTemperature();
  }

  /** Derivation of the greatest joint pressure. */
  @Override
  public Derivation explain() {
    return FitDerivation.of(this);
  }

  /** Doubtful grip, yielding, brittle tension. */
  @Override
  public List<Warning> warnings() {
    return FitWarnings.of(this);
  }

  /** Parts, interference and pressure in one line. */
  @Override
  public String toString() {
    Band<Stress> p = pressure();
    return stud
        + " in "
        + housing
        + ", "
        + interference
        + ", pressure "
        + Numbers.fixed(p.least().base(), 1)
        + " … "
        + Numbers.fixed(p.greatest().base(), 1)
        + " MPa";
  }

  double effective(double u) {
    return Math.max(0, u - smoothingLoss().mm());
  }

  /** Pressure in MPa of an effective interference in mm. */
  double pressure(double effective) {
    double d = interference.joint().mm();
    Material i = stud.material();
    Material o = housing.material();
    return ThickRingKernel.pressure(
        effective,
        d,
        stud.hole().mm(),
        housing.shape().pressureDiameter(d),
        i.elasticModulus().base(),
        i.poissonRatio(),
        o.elasticModulus().base(),
        o.poissonRatio());
  }

  /** Pressure in MPa of an effective interference in mm, the yielding of the housing counted where that can be computed. */
  double attained(double effective) {
    return ElasticPlasticFit.applies(housing)
        ? ElasticPlasticFit.pressure(this, YieldRule.MODIFIED_SHEAR, effective)
        : pressure(effective);
  }

  /** Effective interference in mm of a pressure in MPa. */
  double interferenceFor(double pressure) {
    double d = interference.joint().mm();
    Material i = stud.material();
    Material o = housing.material();
    return ThickRingKernel.interference(
        pressure,
        d,
        stud.hole().mm(),
        housing.shape().pressureDiameter(d),
        i.elasticModulus().base(),
        i.poissonRatio(),
        o.elasticModulus().base(),
        o.poissonRatio());
  }
}
