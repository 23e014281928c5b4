// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Equivalent stresses of principal stresses, in MPa. The plane-stress forms take the third as zero. */
@Source(document = "Ugural & Fenster", locator = "chapter 8, example 8.2, yield theories of a thick ring")
@Source(document = "derivation", locator = "definitions of the yield theories", provenance = Provenance.DERIVED)
public final class EquivalentStressKernel {
  private EquivalentStressKernel() {}

  /**
   * Von Mises stress in plane stress, {@code √(σ_θ² + σ_r² - σ_θ·σ_r)}.
   *
   * @param hoop σ_θ in MPa
   * @param radial σ_r in MPa
   * @return equivalent stress, 0 or more
   * @throws holdfast.quantity.InputException if a stress is beyond ±1e9 MPa
   */
  public static double vonMises(double hoop, double radial) {
    check(hoop, "hoop stress");
    check(radial, "radial stress");
    return Math.sqrt(hoop * hoop + radial * radial - hoop * radial);
  }

  /**
   * Von Mises stress of three principal stresses.
   *
   * @param first a principal stress in MPa
   * @param second another in MPa
   * @param third the third in MPa
   * @return equivalent stress, 0 or more
   * @throws holdfast.quantity.InputException if a stress is beyond ±1e9 MPa
   */
  public static double vonMises(double first, double second, double third) {
    check(first, "first principal stress");
    check(second, "second principal stress");
    check(third, "third principal stress");
    double a = first - second;
    double b = second - third;
    double c = third - first;
    return Math.sqrt(0.5 * (a * a + b * b + c * c));
  }

  /**
   * Tresca stress in plane stress: the greatest difference among σ_θ, σ_r and 0.
   *
   * @param hoop σ_θ in MPa
   * @param radial σ_r in MPa
   * @return equivalent stress, 0 or more; twice the greatest shear stress
   * @throws holdfast.quantity.InputException if a stress is beyond ±1e9 MPa
   */
  public static double tresca(double hoop, double radial) {
    return tresca(hoop, radial, 0);
  }

  /**
   * Tresca stress of three principal stresses: their greatest difference.
   *
   * @param first a principal stress in MPa
   * @param second another in MPa
   * @param third the third in MPa
   * @return equivalent stress, 0 or more; twice the greatest shear stress
   * @throws holdfast.quantity.InputException if a stress is beyond ±1e9 MPa
   */
  public static double tresca(double first, double second, double third) {
    check(first, "first principal stress");
    check(second, "second principal stress");
    check(third, "third principal stress");
    return Math.max(first, Math.max(second, third)) - Math.min(first, Math.min(second, third));
  }

  private static void check(double stress, String name) {
    Check.within(stress, -ThickRingKernel.GREATEST, ThickRingKernel.GREATEST, name, "MPa", "no solid carries more");
  }
}
