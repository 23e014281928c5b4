// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * Varying load and speed, oscillation, and several bearings together. Symbols: P load (N), p life exponent, n speed
 * (rpm), t share of time, L life (million revolutions or h), e Weibull slope.
 */
public final class DutyKernel {
  private DutyKernel() {}

  /**
   * Mean speed of a duty in steps, {@code nm = Σ ni ti / Σ ti}.
   *
   * @param rpm speeds ni in rpm, 0 or more, at least one above 0
   * @param time times ti in one unit, or shares of time (dimensionless), over 0
   * @return nm in rpm
   * @throws holdfast.quantity.InputException if the duty is empty, the arrays differ in length or a value is out of range
   */
  @Source(document = "derivation", locator = "revolutions over time", provenance = Provenance.DERIVED)
  public static double meanSpeed(double[] rpm, double[] time) {
    Objects.requireNonNull(rpm, "rpm");
    Objects.requireNonNull(time, "time");
    double total = 0;
    for (double t : time) {
      total += checkTime(t);
    }
    return revolutions(rpm, time) / total;
  }

  /**
   * Constant load with the same life as a duty in steps, {@code Pm = [Σ Pi^p ni ti / Σ ni ti]^(1/p)}.
   *
   * @param exponent p (dimensionless), from 1 to 20
   * @param p loads Pi in N, 0 or more
   * @param rpm speeds ni in rpm, 0 or more
   * @param time times ti in one unit, or shares of time (dimensionless), over 0
   * @return Pm in N
   * @throws holdfast.quantity.InputException if the duty is empty, the arrays differ in length or a value is out of range
   */
  @Source(document = "Rolling bearings catalogue pages A25-A37", locator = "mean load under fluctuating load and speed")
  public static double meanLoad(double exponent, double[] p, double[] rpm, double[] time) {
    Objects.requireNonNull(p, "p");
    Objects.requireNonNull(rpm, "rpm");
    Objects.requireNonNull(time, "time");
    checkExponent(exponent);
    Refusal.sameLength(p.length, rpm.length, "speeds");
    double all = revolutions(rpm, time);
    double greatest = 0;
    for (double load : p) {
      greatest = Math.max(greatest, Check.notNegative(load, "load P of a step", "N", "its size, without direction"));
    }
    if (greatest == 0) {
      return 0;
    }
    double sum = 0;
    for (int i = 0; i < p.length; i++) {
      // Relative to the greatest load, so that powers of large loads do not overflow.
      sum += Math.pow(p[i] / greatest, exponent) * rpm[i] * time[i] / all;
    }
    return greatest * Math.pow(sum, 1 / exponent);
  }

  /**
   * Life under steps with different lives by linear damage, {@code 1/L = Σ ui/Li}, ui shares of revolutions for lives in
   * revolutions, shares of time for lives in hours.
   *
   * @param shares ui (dimensionless), 0 or more, at least one above 0; they are divided by their sum
   * @param lives Li, all in the unit of the answer, over 0; infinite where a step does no damage
   * @return L; infinite if no step does damage
   * @throws holdfast.quantity.InputException if the duty is empty, the arrays differ in length or a value is out of range
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = "rating life under variable operating conditions")
  public static double damageLife(double[] shares, double[] lives) {
    Objects.requireNonNull(shares, "shares");
    Objects.requireNonNull(lives, "lives");
    Refusal.sameLength(shares.length, lives.length, "lives");
    double total = 0;
    double damage = 0;
    for (int i = 0; i < shares.length; i++) {
      total += Check.notNegative(shares[i], "share of a step", "", "a share is not negative");
      if (!(lives[i] > 0)) {
        throw Refusal.of("life of a step", lives[i], "", "over 0", "a step with a load has a life");
      }
      damage += shares[i] / lives[i];
    }
    Check.positive(total, "sum of the shares", "", "a duty has at least one step");
    return total / damage;
  }

  /**
   * Mean load of a load that rises linearly, exactly:
   * {@code [(Pmax^(p+1) - Pmin^(p+1)) / ((p+1)(Pmax - Pmin))]^(1/p)}.
   *
   * @param exponent p (dimensionless), from 1 to 20
   * @param least Pmin in N, 0 or more
   * @param greatest Pmax in N, over 0, at least Pmin
   * @return Pm in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "mean of P^p over the revolutions", provenance = Provenance.DERIVED)
  public static double linear(double exponent, double least, double greatest) {
    checkExponent(exponent);
    checkRange(least, greatest);
    double r = least / greatest;
    if (1 - r < 1e-6) {
      return 0.5 * (least + greatest);
    }
    return greatest * Math.pow((1 - Math.pow(r, exponent + 1)) / ((exponent + 1) * (1 - r)), 1 / exponent);
  }

  /**
   * Mean load of a load that rises linearly, rule of thumb {@code (Pmin + 2 Pmax)/3}.
   *
   * @param least Pmin in N, 0 or more
   * @param greatest Pmax in N, over 0, at least Pmin
   * @return Pm in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Rolling bearings catalogue pages A25-A37", locator = "mean load under linearly varying load")
  public static double linearRule(double least, double greatest) {
    checkRange(least, greatest);
    return (least + 2 * greatest) / 3;
  }

  /**
   * Mean load of {@code P = Pmax (1 - cos φ)/2}, from 0 to Pmax: {@code Pmax [Γ(p+½) / (√π Γ(p+1))]^(1/p)}.
   *
   * @param exponent p (dimensionless), from 1 to 20
   * @param greatest Pmax in N, over 0
   * @return Pm in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "mean of sin^(2p)", provenance = Provenance.DERIVED)
  public static double sinusoid(double exponent, double greatest) {
    checkRange(0, greatest);
    return greatest * Math.pow(meanSinePower(2 * checkExponent(exponent)), 1 / exponent);
  }

  /**
   * Mean load of the rectified sine {@code P = Pmax |sin φ|}: {@code Pmax [Γ((p+1)/2) / (√π Γ(p/2+1))]^(1/p)}.
   *
   * @param exponent p (dimensionless), from 1 to 20
   * @param greatest Pmax in N, over 0
   * @return Pm in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "mean of |sin|^p", provenance = Provenance.DERIVED)
  public static double rectifiedSine(double exponent, double greatest) {
    checkRange(0, greatest);
    return greatest * Math.pow(meanSinePower(checkExponent(exponent)), 1 / exponent);
  }

  /**
   * Mean load of a stationary and a rotating load, {@code F1 + 0.3 F2 + 0.2 F2²/F1} with F1 the larger.
   *
   * @param stationary stationary load in N, 0 or more
   * @param rotating rotating load in N, 0 or more
   * @return Pm in N
   * @throws holdfast.quantity.InputException if a load is negative or both are 0
   */
  @Source(document = "Rolling bearings catalogue pages A25-A37", locator = "mean load under stationary and rotating load")
  public static double stationaryAndRotating(double stationary, double rotating) {
    Check.notNegative(stationary, "stationary load", "N", "its size, without direction");
    Check.notNegative(rotating, "rotating load", "N", "its size, without direction");
    double larger = Check.positive(Math.max(stationary, rotating), "larger load", "N", "without load no rating life exists");
    double smaller = Math.min(stationary, rotating);
    return larger + 0.3 * smaller + 0.2 * smaller * smaller / larger;
  }

  /**
   * Life in oscillation, {@code Losc = L · 90°/φ}, in million cycles.
   *
   * <p>Definition: φ is the half swing, from the middle position to one end. A cycle goes there, back, to the other end
   * and back: 4 φ. The raceways roll as much in a cycle as in 4 φ / 360° revolutions; the same damage for the same rolling
   * gives the formula. Printed forms with 180° in place of 90° count the whole swing 2 φ as the amplitude.
   *
   * @param millionRevolutions life L at the same load with full revolutions, 0 or more
   * @param halfSwing φ in rad, over 0
   * @return million cycles
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "same damage for the same rolling distance", provenance = Provenance.DERIVED)
  public static double oscillation(double millionRevolutions, double halfSwing) {
    Check.notNegative(millionRevolutions, "life L", "million revolutions", "a life is not negative");
    return millionRevolutions * (0.5 * Math.PI) / checkSwing(halfSwing);
  }

  /**
   * Load which, applied with full revolutions, gives as many million revolutions as the oscillation gives million
   * cycles: {@code Posc = P (φ/90°)^(1/p)}.
   *
   * @param exponent p (dimensionless), from 1 to 20
   * @param p load in N, over 0
   * @param halfSwing φ in rad, over 0
   * @return Posc in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "same damage for the same rolling distance", provenance = Provenance.DERIVED)
  public static double oscillationLoad(double exponent, double p, double halfSwing) {
    return BasicLifeKernel.checkLoad(p) * Math.pow(checkSwing(halfSwing) / (0.5 * Math.PI), 1 / checkExponent(exponent));
  }

  /**
   * Half swing below which the tracks of neighbouring rolling elements on a raceway no longer meet, so that the life
   * equation does not hold: rolling elements move over the outer raceway by (1-γ)/2 of the angle, over the inner by
   * (1+γ)/2, and stand 360°/Z apart; the outer raceway decides, {@code φ = 360° / (Z (1-γ))}.
   *
   * @param z rolling elements of a row (a count), 1 or more
   * @param gamma Dw cos α/Dpw (dimensionless), 0 or more, below 1
   * @return φ in rad
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "rolling of the elements between the raceways", provenance = Provenance.DERIVED)
  public static double criticalHalfSwing(double z, double gamma) {
    if (!(gamma >= 0 && gamma < 1)) {
      throw Refusal.of("ratio γ = Dw cos α/Dpw", gamma, "", "0 or more, below 1", "the elements lie on a wider pitch circle");
    }
    return 2 * Math.PI / (DynamicRatingKernel.checkElements(z) * (1 - gamma));
  }

  /**
   * Life of several bearings until the first of them fails, with the reliability of the single lives,
   * {@code L = [Σ Li^-e]^(-1/e)}.
   *
   * @param lives Li, all in one unit of time and of one reliability, over 0
   * @param slope Weibull slope e, from 0.1 to 1000
   * @return L in the unit of the lives
   * @throws holdfast.quantity.InputException if there are no lives or a value is not above zero
   */
  @Source(document = "Ball and roller bearings catalogue 2202/E", locator = "4.6, life of a machine with several bearings")
  public static double systemLife(double[] lives, double slope) {
    Objects.requireNonNull(lives, "lives");
    WeibullKernel.checkSlope(slope);
    double least = Double.POSITIVE_INFINITY;
    for (double life : lives) {
      least = Math.min(least, Check.positive(life, "life of a bearing", "", "a bearing with a load has a life"));
    }
    if (lives.length == 0) {
      throw Refusal.of("lives", "none", "at least one life", "a system has at least one bearing");
    }
    double sum = 0;
    for (double life : lives) {
      sum += Math.pow(least / life, slope);
    }
    return least * Math.pow(sum, -1 / slope);
  }

  private static double meanSinePower(double power) {
    return Math.exp(LogGamma.value(0.5 * (power + 1)) - LogGamma.value(0.5 * power + 1)) / Math.sqrt(Math.PI);
  }

  private static double revolutions(double[] rpm, double[] time) {
    Refusal.sameLength(rpm.length, time.length, "times");
    double sum = 0;
    for (int i = 0; i < rpm.length; i++) {
      Check.notNegative(rpm[i], "speed n of a step", "rpm", "its size, without direction");
      sum += rpm[i] * checkTime(time[i]);
    }
    return Check.positive(sum, "revolutions of the duty", "", "a duty has at least one step that turns");
  }

  private static double checkTime(double time) {
    return Check.positive(time, "share of time of a step", "", "a step lasts some time; leave out steps that do not occur");
  }

  static double checkExponent(double exponent) {
    return Check.within(exponent, 1, 20, "life exponent p", "", "3 for balls, 10/3 for rollers");
  }

  private static double checkSwing(double halfSwing) {
    return Check.positive(halfSwing, "half swing φ", "rad", "a bearing that stands still is checked statically");
  }

  private static void checkRange(double least, double greatest) {
    Check.notNegative(least, "least load Pmin", "N", "its size, without direction");
    Check.positive(greatest, "greatest load Pmax", "N", "without load no rating life exists");
    if (least > greatest) {
      throw Refusal.of("least load Pmin", least, "N", "at most the greatest load", "least and greatest are exchanged");
    }
  }
}
