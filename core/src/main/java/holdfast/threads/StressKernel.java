// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Stresses in a stud while it is tightened. Units: N, N·mm, mm², mm³, MPa. All functions are pure and do not allocate.
 */
public final class StressKernel {
  private StressKernel() {}

  /**
   * Equivalent stress of tension and torsion, σred = √((FM/A)² + 3·(MG/WP)²) (von Mises).
   *
   * @param preload FM in N, 0 or more
   * @param threadTorque MG in N·mm, with any prevailing torque, 0 or more
   * @param area A in mm², over 0
   * @param torsionModulus WP in mm³, over 0
   * @return σred in MPa
   * @throws InputException if an argument is outside its range
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "assembly preload, equivalent stress",
      provenance = Provenance.MEMORY)
  public static double combined(double preload, double threadTorque, double area, double torsionModulus) {
    double sigma = axial(preload, area);
    double tau = torsion(threadTorque, torsionModulus);
    return Math.sqrt(sigma * sigma + 3 * tau * tau);
  }

  /**
   * Equivalent stress in a round section with an axial bore, from diameters.
   *
   * @param preload FM in N, 0 or more
   * @param threadTorque MG in N·mm, 0 or more
   * @param diameter D in mm, over 0
   * @param bore di in mm, 0 or more, less than D
   * @param plastic whether the torsion modulus is the fully plastic one
   * @return σred in MPa
   * @throws InputException if an argument is outside its range
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "assembly preload, equivalent stress",
      provenance = Provenance.MEMORY)
  public static double combined(double preload, double threadTorque, double diameter, double bore, boolean plastic) {
    return combined(
        preload,
        threadTorque,
        ThreadGeometryKernel.ringArea(diameter, bore),
        plastic ? SectionKernel.plasticModulus(diameter, bore) : SectionKernel.elasticModulus(diameter, bore));
  }

  /**
   * Axial stress, σ = FM/A.
   *
   * @param preload FM in N, 0 or more
   * @param area A in mm², over 0
   * @return σ in MPa
   * @throws InputException if an argument is outside its range
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "assembly preload, tensile stress",
      provenance = Provenance.MEMORY)
  public static double axial(double preload, double area) {
    return Check.notNegative(preload, "preload FM", "N", "a nut cannot push the joint apart")
        / Check.positive(area, "section area A", "mm²", "a section carries the preload");
  }

  /**
   * Torsion stress, τ = MG/WP.
   *
   * @param threadTorque MG in N·mm, 0 or more
   * @param torsionModulus WP in mm³, over 0
   * @return τ in MPa
   * @throws InputException if an argument is outside its range
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "assembly preload, torsion stress",
      provenance = Provenance.MEMORY)
  public static double torsion(double threadTorque, double torsionModulus) {
    return Check.notNegative(threadTorque, "thread torque MG", "N·mm", "tightening twists one way")
        / Check.positive(torsionModulus, "torsion modulus WP", "mm³", "a section carries the torque");
  }

  /**
   * Equivalent stress in service after part of the torsion has relaxed, σred,B = √(σ² + 3·(kτ·τ)²).
   *
   * @param axialStress σ in MPa
   * @param torsionStress τ in MPa
   * @param remaining kτ (dimensionless), the part of the torsion that remains, 0 to 1; 0.5 is usual
   * @return σred,B in MPa
   * @throws InputException if the remaining part is outside 0 to 1
   */
  @Source(document = "VDI 2230-1:2015", locator = "working stress, kτ = 0.5", provenance = Provenance.MEMORY)
  public static double afterRelaxation(double axialStress, double torsionStress, double remaining) {
    Check.finite(axialStress, "axial stress σ", "MPa");
    Check.finite(torsionStress, "torsion stress τ", "MPa");
    double tau = torsionStress * Check.within(remaining, 0, 1, "remaining torsion kτ", "", "a part of the whole");
    return Math.sqrt(axialStress * axialStress + 3 * tau * tau);
  }

  /**
   * Preload at which the equivalent stress reaches a given one while tightening, FM = σ·A/√(1 + 3·(l·A/WP)²), with l =
   * MG/FM the lever of the thread.
   *
   * @param stress σ in MPa, 0 or more: ν·Rp0.2 for the assembly preload
   * @param area A in mm², over 0
   * @param torsionModulus WP in mm³, over 0
   * @param threadLever l in mm, 0 or more
   * @return FM in N
   * @throws InputException if an argument is outside its range
   */
  @Source(
      document = "VDI 2230-1:2015",
      locator = "assembly preload FM,Tab, with the exact lever of the thread",
      provenance = Provenance.MEMORY)
  public static double preloadAt(double stress, double area, double torsionModulus, double threadLever) {
    Check.notNegative(stress, "equivalent stress", "MPa", "a stress to be reached by tightening");
    Check.positive(area, "section area A", "mm²", "a section carries the preload");
    Check.positive(torsionModulus, "torsion modulus WP", "mm³", "a section carries the torque");
    Check.notNegative(threadLever, "lever of the thread MG/FM", "mm", "tightening twists one way");
    double twist = threadLever * area / torsionModulus;
    return stress * area / Math.sqrt(1 + 3 * twist * twist);
  }

  /**
   * The same with a prevailing torque, which twists without pulling: (FM/A)² + 3·((l·FM + MP)/WP)² = σ², solved for FM.
   *
   * @param stress σ in MPa, 0 or more
   * @param area A in mm², over 0
   * @param torsionModulus WP in mm³, over 0
   * @param threadLever l in mm, 0 or more
   * @param prevailing MP in N·mm, 0 or more
   * @return FM in N; 0 if the prevailing torque alone reaches the stress
   * @throws InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "equivalent stress with prevailing torque", provenance = Provenance.DERIVED)
  public static double preloadAt(
      double stress, double area, double torsionModulus, double threadLever, double prevailing) {
    double plain = preloadAt(stress, area, torsionModulus, threadLever);
    if (Check.notNegative(prevailing, "prevailing torque MP", "N·mm", "it resists turning") == 0) {
      return plain;
    }
    double p = prevailing / torsionModulus;
    double l = threadLever / torsionModulus;
    double qa = 1 / (area * area) + 3 * l * l;
    double qb = 6 * l * p;
    double qc = 3 * p * p - stress * stress;
    return qc >= 0 ? 0 : -2 * qc / (qb + Math.sqrt(qb * qb - 4 * qa * qc));
  }

  /**
   * Preload at which the stress in service reaches a given one, with part of the torsion relaxed and an added axial load:
   * ((FM + FX)/A)² + 3·(kτ·(l·FM + MP)/WP)² = σ², solved for FM.
   *
   * @param stress σ in MPa, 0 or more
   * @param area A in mm², over 0
   * @param torsionModulus WP in mm³, over 0
   * @param threadLever l in mm, 0 or more
   * @param prevailing MP in N·mm, 0 or more
   * @param added FX in N, 0 or more: the stud's part of the working load, and a thermal gain
   * @param remaining kτ (dimensionless), 0 to 1
   * @return FM in N; 0 if the added load alone reaches the stress
   * @throws InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "working stress solved for the preload", provenance = Provenance.DERIVED)
  public static double preloadInService(
      double stress,
      double area,
      double torsionModulus,
      double threadLever,
      double prevailing,
      double added,
      double remaining) {
    preloadAt(stress, area, torsionModulus, threadLever);
    Check.notNegative(prevailing, "prevailing torque MP", "N·mm", "it resists turning");
    Check.notNegative(added, "added axial load FX", "N", "a tension");
    Check.within(remaining, 0, 1, "remaining torsion kτ", "", "a part of the whole");
    double k = Math.sqrt(3) * remaining / torsionModulus;
    double l = k * threadLever;
    double p = k * prevailing;
    double q = added / area;
    double a = 1 / (area * area) + l * l;
    double b = 2 * (q / area + l * p);
    double c = q * q + p * p - stress * stress;
    return c >= 0 ? 0 : -2 * c / (b + Math.sqrt(b * b - 4 * a * c));
  }
}
