// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Torque and preload of a screw thread with the exact helix and flank relation, and in the linear form.
 *
 * <p>Units: mm, N, N·mm. Symbols: FM preload, MA tightening torque, MG thread torque, MK torque under the bearing face,
 * d2 pitch diameter, Ph lead, μG and μK coefficients of friction in the thread and under the face, DKm mean diameter of
 * the bearing face, φ helix angle, ρ' = atan(μG/cos 30°) friction angle of the 60° thread. All functions are pure and
 * do not allocate.
 */
public final class TighteningKernel {
  private static final double SECANT = 1 / ThreadGeometryKernel.COS_HALF_ANGLE;
  private static final double TWO_PI = 2 * Math.PI;

  private TighteningKernel() {}

  /**
   * Thread torque per preload, MG/FM = (d2/2)·tan(φ + ρ').
   *
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param threadFriction μG (dimensionless), over 0
   * @return the lever of the thread in mm
   * @throws InputException if an argument is not over 0, or φ + ρ' reaches 90°
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "thread torque, exact form; the one behind the printed tables",
      provenance = Provenance.MEMORY)
  public static double threadLever(double d2, double lead, double threadFriction) {
    double slope = slope(d2, lead);
    double rub = SECANT * friction(threadFriction, "thread friction μG");
    double denominator = 1 - slope * rub;
    if (!(denominator > 0)) {
      throw new InputException(
          "thread friction μG",
          Numbers.shortest(threadFriction),
          "less than " + Numbers.significant(1 / (slope * SECANT), 4),
          "with more friction the thread cannot be turned (helix and friction angle reach 90°)");
    }
    return 0.5 * d2 * (slope + rub) / denominator;
  }

  /**
   * Thread torque per preload for loosening, (d2/2)·tan(ρ' − φ); negative if the thread is not self-locking.
   *
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param threadFriction μG (dimensionless), over 0
   * @return the loosening lever of the thread in mm
   * @throws InputException if an argument is not over 0
   */
  @Source(document = "VDI 2230-1:2015", locator = "loosening torque", provenance = Provenance.MEMORY)
  public static double looseningLever(double d2, double lead, double threadFriction) {
    double slope = slope(d2, lead);
    double rub = SECANT * friction(threadFriction, "thread friction μG");
    return 0.5 * d2 * (rub - slope) / (1 + slope * rub);
  }

  /**
   * Torque per preload under the bearing face, MK/FM = μK·DKm/2.
   *
   * @param meanFaceDiameter DKm in mm, over 0
   * @param faceFriction μK (dimensionless), over 0
   * @return the lever of the face in mm
   * @throws InputException if an argument is not over 0
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "bearing face torque",
      provenance = Provenance.MEMORY)
  public static double faceLever(double meanFaceDiameter, double faceFriction) {
    Check.positive(meanFaceDiameter, "mean face diameter DKm", "mm", "the nut bears on a ring");
    return 0.5 * meanFaceDiameter * friction(faceFriction, "face friction μK");
  }

  /**
   * Tightening torque of a preload, MA = FM·[(d2/2)·tan(φ + ρ') + μK·DKm/2] + MP.
   *
   * @param preload FM in N, 0 or more
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param threadFriction μG (dimensionless), over 0
   * @param meanFaceDiameter DKm in mm, over 0
   * @param faceFriction μK (dimensionless), over 0
   * @param prevailing prevailing torque MP of a locking nut in N·mm, 0 or more
   * @return MA in N·mm
   * @throws InputException if an argument is outside its range
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "tightening torque, exact form; the one behind the printed tables",
      provenance = Provenance.MEMORY)
  public static double torque(
      double preload,
      double d2,
      double lead,
      double threadFriction,
      double meanFaceDiameter,
      double faceFriction,
      double prevailing) {
    Check.notNegative(preload, "preload FM", "N", "a nut cannot push the joint apart");
    Check.notNegative(prevailing, "prevailing torque MP", "N·mm", "it resists turning");
    return preload * (threadLever(d2, lead, threadFriction) + faceLever(meanFaceDiameter, faceFriction)) + prevailing;
  }

  /**
   * Preload of a tightening torque, the inverse of {@link #torque}.
   *
   * @param torque MA in N·mm, at least the prevailing torque
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param threadFriction μG (dimensionless), over 0
   * @param meanFaceDiameter DKm in mm, over 0
   * @param faceFriction μK (dimensionless), over 0
   * @param prevailing prevailing torque MP of a locking nut in N·mm, 0 or more
   * @return FM in N
   * @throws InputException if an argument is outside its range
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "tightening torque, exact form; the one behind the printed tables",
      provenance = Provenance.MEMORY)
  public static double preload(
      double torque,
      double d2,
      double lead,
      double threadFriction,
      double meanFaceDiameter,
      double faceFriction,
      double prevailing) {
    Check.notNegative(prevailing, "prevailing torque MP", "N·mm", "it resists turning");
    if (!(torque >= prevailing && torque <= Check.GREATEST)) {
      throw new InputException(
          "tightening torque MA",
          Numbers.shortest(torque) + " N·mm",
          "at least the prevailing torque, " + Numbers.shortest(prevailing) + " N·mm",
          "less only turns the nut and makes no preload");
    }
    return (torque - prevailing)
        / (threadLever(d2, lead, threadFriction) + faceLever(meanFaceDiameter, faceFriction));
  }

  /**
   * Preloads of many tightenings.
   *
   * @param torques MA in N·mm, each at least the prevailing torque
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param threadFrictions μG of each (dimensionless), over 0
   * @param meanFaceDiameter DKm in mm, over 0
   * @param faceFrictions μK of each (dimensionless), over 0
   * @param prevailing prevailing torque MP in N·mm, 0 or more
   * @param preloads receives FM in N
   * @throws InputException if an argument is outside its range
   * @throws InputException if the arrays differ in length
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "tightening torque, exact form; the one behind the printed tables",
      provenance = Provenance.MEMORY)
  public static void preloads(
      double[] torques,
      double d2,
      double lead,
      double[] threadFrictions,
      double meanFaceDiameter,
      double[] faceFrictions,
      double prevailing,
      double[] preloads) {
    Objects.requireNonNull(torques, "torques");
    Objects.requireNonNull(threadFrictions, "threadFrictions");
    Objects.requireNonNull(faceFrictions, "faceFrictions");
    Objects.requireNonNull(preloads, "preloads");
    int n = torques.length;
    if (threadFrictions.length != n || faceFrictions.length != n || preloads.length != n) {
      throw new InputException("frictions and preloads", threadFrictions.length + ", " + faceFrictions.length + " and "
          + preloads.length + " entries", n + " entries each", "parallel arrays have one entry per torque");
    }
    for (int i = 0; i < n; i++) {
      preloads[i] = preload(torques[i], d2, lead, threadFrictions[i], meanFaceDiameter, faceFrictions[i], prevailing);
    }
  }

  /**
   * Part of the torque that stretches the stud and would remain without friction, FM·Ph/(2π).
   *
   * @param preload FM in N, 0 or more
   * @param lead Ph in mm, over 0
   * @return the pitch part in N·mm
   * @throws InputException if an argument is outside its range
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "tightening torque, pitch part",
      provenance = Provenance.MEMORY)
  public static double pitchTorque(double preload, double lead) {
    Check.notNegative(preload, "preload FM", "N", "a nut cannot push the joint apart");
    return preload * Check.positive(lead, "lead Ph", "mm", "a thread has a lead") / TWO_PI;
  }

  /**
   * Lever of the thread in the linear form, Ph/(2π) + d2·μG/(2·cos 30°).
   *
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param threadFriction μG (dimensionless), over 0
   * @return MG/FM in mm; at usual friction up to 1.5 % below the exact form
   * @throws InputException if an argument is not over 0
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "tightening torque, linear form",
      provenance = Provenance.MEMORY)
  public static double linearThreadLever(double d2, double lead, double threadFriction) {
    slope(d2, lead);
    return lead / TWO_PI + 0.5 * SECANT * d2 * friction(threadFriction, "thread friction μG");
  }

  /**
   * Lever of the thread in the linear form with the rounded coefficients that the guideline prints, 0.16·Ph + 0.58·d2·μG.
   *
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param threadFriction μG (dimensionless), over 0
   * @return MG/FM in mm
   * @throws InputException if an argument is not over 0
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "tightening torque, linear form as printed with 0.16 and 0.58",
      provenance = Provenance.MEMORY)
  public static double printedThreadLever(double d2, double lead, double threadFriction) {
    slope(d2, lead);
    return 0.16 * lead + 0.58 * d2 * friction(threadFriction, "thread friction μG");
  }

  /**
   * Torque per preload in the linear form, MA/FM = Ph/(2π) + d2·μG/(2·cos 30°) + DKm·μK/2.
   *
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param threadFriction μG (dimensionless), over 0
   * @param meanFaceDiameter DKm in mm, over 0
   * @param faceFriction μK (dimensionless), over 0
   * @return the lever in mm; at usual friction 0.1 to 1 % below the exact form
   * @throws InputException if an argument is not over 0
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "tightening torque, linear form",
      provenance = Provenance.MEMORY)
  public static double linearLever(
      double d2, double lead, double threadFriction, double meanFaceDiameter, double faceFriction) {
    return linearThreadLever(d2, lead, threadFriction) + faceLever(meanFaceDiameter, faceFriction);
  }

  /**
   * Nut factor, K = MA/(FM·d), exact form.
   *
   * @param d nominal diameter in mm, over 0
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param threadFriction μG (dimensionless), over 0
   * @param meanFaceDiameter DKm in mm, over 0
   * @param faceFriction μK (dimensionless), over 0
   * @return K
   * @throws InputException if an argument is not over 0
   */
  @Source(document = "NASA TM-106943", locator = "eq. (2)")
  public static double nutFactor(
      double d, double d2, double lead, double threadFriction, double meanFaceDiameter, double faceFriction) {
    Check.positive(d, "nominal diameter d", "mm", "a thread has a diameter");
    return (threadLever(d2, lead, threadFriction) + faceLever(meanFaceDiameter, faceFriction)) / d;
  }

  /**
   * Friction that gives a nut factor when thread and face rub alike: the inverse of {@link #nutFactor} with μG = μK.
   *
   * <p>With s = tan φ and c = 1/cos 30° the exact form is (d2/2)·(s + c·μ)/(1 − s·c·μ) + (DKm/2)·μ = K·d, a quadratic
   * equation for μ; its smaller root is the physical one.
   *
   * @param nutFactor K (dimensionless), over the value of a frictionless thread
   * @param d nominal diameter in mm, over 0
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param meanFaceDiameter DKm in mm, over 0
   * @return μG = μK
   * @throws InputException if no friction over 0 gives this nut factor
   */
  @Source(document = "derivation", locator = "exact tightening torque solved for equal friction", provenance = Provenance.DERIVED)
  public static double frictionOfNutFactor(double nutFactor, double d, double d2, double lead, double meanFaceDiameter) {
    double s = slope(d2, lead);
    Check.positive(d, "nominal diameter d", "mm", "a thread has a diameter");
    Check.positive(meanFaceDiameter, "mean face diameter DKm", "mm", "the nut bears on a ring");
    double frictionless = 0.5 * d2 * s / d;
    if (!(nutFactor > frictionless && nutFactor <= Check.GREATEST)) {
      throw new InputException(
          "nut factor K",
          Numbers.shortest(nutFactor),
          "over " + Numbers.significant(frictionless, 4),
          "that much the pitch takes without any friction");
    }
    double r = 0.5 * meanFaceDiameter;
    double sc = s * SECANT;
    // −r·sc·μ² + (r + (d2/2)·c + K·d·sc)·μ − (K·d − (d2/2)·s) = 0, solved without cancellation.
    double b = r + 0.5 * d2 * SECANT + nutFactor * d * sc;
    double e = nutFactor * d - 0.5 * d2 * s;
    return 2 * e / (b + Math.sqrt(b * b - 4 * r * sc * e));
  }

  /**
   * Mean diameter of a bearing ring, DKm = (dW + DKi)/2, as the printed assembly tables use it.
   *
   * @param outer dW in mm
   * @param inner DKi in mm, 0 or more, less than dW
   * @return DKm in mm
   * @throws InputException if the ring is empty
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "effective diameter of the bearing face",
      provenance = Provenance.MEMORY)
  public static double meanFaceDiameter(double outer, double inner) {
    checkRing(outer, inner);
    return 0.5 * (outer + inner);
  }

  /**
   * Friction diameter of a ring under uniform pressure, (2/3)·(dW³ − DKi³)/(dW² − DKi²).
   *
   * @param outer dW in mm
   * @param inner DKi in mm, 0 or more, less than dW
   * @return the friction diameter in mm; never below the mean diameter
   * @throws InputException if the ring is empty
   */
  @Source(document = "derivation", locator = "moment of uniform pressure on a ring", provenance = Provenance.DERIVED)
  public static double uniformPressureDiameter(double outer, double inner) {
    checkRing(outer, inner);
    return 2.0 / 3.0 * (outer * outer + outer * inner + inner * inner) / (outer + inner);
  }

  static void checkRing(double outer, double inner) {
    Check.notNegative(inner, "inner face diameter DKi", "mm", "a diameter");
    if (!(outer > inner && outer >= Check.LEAST && outer <= Check.GREATEST)) {
      throw new InputException(
          "outer face diameter dW",
          Numbers.shortest(outer) + " mm",
          "over the inner diameter, " + Numbers.shortest(inner) + " mm",
          "the bearing face is a ring");
    }
  }

  private static double slope(double d2, double lead) {
    Check.positive(d2, "pitch diameter d2", "mm", "a thread has a pitch diameter");
    return Check.positive(lead, "lead Ph", "mm", "a thread has a lead") / (Math.PI * d2);
  }

  private static double friction(double value, String name) {
    return Check.positive(value, name, "", "without friction nothing holds the nut");
  }
}
