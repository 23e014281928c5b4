// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Yielding of the seat: the engaged part of the stud as a beam of finite length on an elastic foundation, loaded at the
 * mouth by the radial load and its moment. The foundation modulus c (N/mm per mm of length) is an input: it has no
 * universal value and is to be calibrated by test or by a solid model. The foundation pulls as well as it pushes, as a
 * press fit does while its pressure lasts; a stud with clearance has contact on one side only and is softer.
 */
@Source(
    document = "Hetenyi 1946",
    locator = "beam of finite length with free ends, end force and end moment",
    provenance = Provenance.MEMORY)
public final class StudSeatKernel {
  /** From here on the far end is too far to matter in a double. */
  private static final double LONG = 20;

  private StudSeatKernel() {}

  /**
   * Characteristic of stud and foundation.
   *
   * @param foundation foundation modulus c in N/mm²
   * @param stiffness EI of the stud in N·mm²
   * @return λ = (c/(4 E I))^(1/4) in 1/mm; a seat longer than about 3/λ acts as endless
   * @throws holdfast.quantity.InputException if an argument is not positive
   */
  public static double characteristic(double foundation, double stiffness) {
    Check.positive(foundation, "foundation modulus c", "N/mm²", "a seat has stiffness");
    Check.positive(stiffness, "bending stiffness EI", "N·mm²", "a stud has stiffness");
    return Math.sqrt(Math.sqrt(foundation / (4 * stiffness)));
  }

  /**
   * Deflection of the stud at the seat mouth.
   *
   * @param force radial load F in N
   * @param arm distance a of its line of action from the mouth in mm
   * @param foundation foundation modulus c in N/mm²
   * @param stiffness EI of the stud in N·mm²
   * @param engaged engaged length L in mm
   * @return y0 in mm; (2λ/c) (F + λ F a) for a long seat, F/(cL) (4 + 6a/L) for a short one
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double mouthDeflection(double force, double arm, double foundation, double stiffness, double engaged) {
    double lambda = check(force, arm, foundation, stiffness, engaged);
    double x = lambda * engaged;
    return 2 * lambda / foundation * force * (forceShape(x) + lambda * arm * commonShape(x));
  }

  /**
   * Slope of the stud at the seat mouth.
   *
   * @param force radial load F in N
   * @param arm distance a of its line of action from the mouth in mm
   * @param foundation foundation modulus c in N/mm²
   * @param stiffness EI of the stud in N·mm²
   * @param engaged engaged length L in mm
   * @return θ0 in rad; (2λ²/c) (F + 2λ F a) for a long seat, F/(cL²) (6 + 12a/L) for a short one
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double mouthSlope(double force, double arm, double foundation, double stiffness, double engaged) {
    double lambda = check(force, arm, foundation, stiffness, engaged);
    double x = lambda * engaged;
    return 2 * lambda * lambda / foundation * force * (commonShape(x) + 2 * lambda * arm * momentShape(x));
  }

  /** (sinh x cosh x - sin x cos x)/(sinh² x - sin² x). */
  private static double forceShape(double x) {
    return x > LONG ? 1 : 0.5 * difference(2 * x) / denominator(x);
  }

  /** (sinh² x + sin² x)/(sinh² x - sin² x). */
  private static double commonShape(double x) {
    if (x > LONG) {
      return 1;
    }
    double sinh = Math.sinh(x);
    double sin = Math.sin(x);
    return (sinh * sinh + sin * sin) / denominator(x);
  }

  /** (sinh x cosh x + sin x cos x)/(sinh² x - sin² x). */
  private static double momentShape(double x) {
    return x > LONG ? 1 : 0.5 * (Math.sinh(2 * x) + Math.sin(2 * x)) / denominator(x);
  }

  private static double denominator(double x) {
    return difference(x) * (Math.sinh(x) + Math.sin(x));
  }

  /** sinh t - sin t, by its series where the difference would lose digits. */
  private static double difference(double t) {
    if (t > 1) {
      return Math.sinh(t) - Math.sin(t);
    }
    double t4 = t * t * t * t;
    return t * t * t / 3 * (1 + t4 / 840 * (1 + t4 / 7920 * (1 + t4 / 32760)));
  }

  private static double check(double force, double arm, double foundation, double stiffness, double engaged) {
    StudBendingKernel.checkLoad(force, 0, arm);
    Check.positive(engaged, "engaged length L", "mm", "the seat holds the stud over it");
    return characteristic(foundation, stiffness);
  }
}
