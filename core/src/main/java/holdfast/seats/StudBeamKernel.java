// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Deflection and slope of a cantilever by elementary beam theory, each load alone; loads add. Distances in mm from the
 * fixed end, EI in N·mm², results in mm and rad, positive in the direction of the load. Shear is not included: see
 * {@link #shearDeflection}.
 */
@Source(
    document = "derivation",
    locator = "double integration of the bending moment over EI",
    provenance = Provenance.DERIVED)
public final class StudBeamKernel {
  /** Gauss-Legendre nodes on 0 … 1: exact up to the fifth degree. */
  private static final double[] NODES = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};
  private static final double[] WEIGHTS = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  private StudBeamKernel() {}

  /**
   * Deflection by a force.
   *
   * @param force force F in N
   * @param at distance a of the force in mm
   * @param x where the deflection is wanted in mm
   * @param stiffness EI in N·mm²
   * @return F x² (3a - x)/(6EI) up to the force, straight beyond it
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double deflectionOfForce(double force, double at, double x, double stiffness) {
    check(force, "force F", at, x, stiffness);
    double near = Math.min(x, at);
    return force * near * near * (3 * at - near) / (6 * stiffness) + slopeOfForce(force, at, near, stiffness) * (x - near);
  }

  /**
   * Slope by a force.
   *
   * @param force force F in N
   * @param at distance a of the force in mm
   * @param x where the slope is wanted, in mm
   * @param stiffness EI in N·mm²
   * @return F x (2a - x)/(2EI) up to the force, constant beyond it
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double slopeOfForce(double force, double at, double x, double stiffness) {
    check(force, "force F", at, x, stiffness);
    double near = Math.min(x, at);
    return force * near * (2 * at - near) / (2 * stiffness);
  }

  /**
   * Deflection by a moment.
   *
   * @param moment moment M in N·mm
   * @param at distance of the moment in mm
   * @param x where the deflection is wanted in mm
   * @param stiffness EI in N·mm²
   * @return M x²/(2EI) up to the moment, straight beyond it
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double deflectionOfMoment(double moment, double at, double x, double stiffness) {
    check(moment, "moment M", at, x, stiffness);
    double near = Math.min(x, at);
    return moment * near * (x - near / 2) / stiffness;
  }

  /**
   * Deflection by a load that changes linearly between two places.
   *
   * @param from start of the load in mm
   * @param to end of the load in mm, beyond its start
   * @param atStart load per length at the start, N/mm
   * @param atEnd load per length at the end, N/mm
   * @param x where the deflection is wanted in mm
   * @param stiffness EI in N·mm²
   * @return the deflection
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double deflectionOfLoad(
      double from, double to, double atStart, double atEnd, double x, double stiffness) {
    checkLoad(from, to, atStart, atEnd, x, stiffness);
    // Influence of a force at s: x²(3s - x)/6 beyond x, s²(3x - s)/6 before it. Times a linear load that is at most
    // of the fourth degree in s on either side of x, so the rule is exact.
    return sum(from, to, atStart, atEnd, x, false) / stiffness;
  }

  /**
   * Slope by a load that changes linearly between two places.
   *
   * @param from start of the load in mm
   * @param to end of the load in mm, beyond its start
   * @param atStart load per length at the start, N/mm
   * @param atEnd load per length at the end, N/mm
   * @param x where the slope is wanted, in mm
   * @param stiffness EI in N·mm²
   * @return the slope
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static double slopeOfLoad(double from, double to, double atStart, double atEnd, double x, double stiffness) {
    checkLoad(from, to, atStart, atEnd, x, stiffness);
    return sum(from, to, atStart, atEnd, x, true) / stiffness;
  }

  /** The load times its influence at x, summed on either side of x. */
  private static double sum(double from, double to, double atStart, double atEnd, double x, boolean slope) {
    double length = to - from;
    double near = Math.min(Math.max(x, from), to);
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double s1 = from + (near - from) * NODES[i];
      double s2 = near + (to - near) * NODES[i];
      double q1 = atStart + (atEnd - atStart) * (s1 - from) / length;
      double q2 = atStart + (atEnd - atStart) * (s2 - from) / length;
      double first = slope ? slopeInfluence(s1, x) : influence(s1, x);
      double second = slope ? slopeInfluence(s2, x) : influence(s2, x);
      sum += WEIGHTS[i] * ((near - from) * q1 * first + (to - near) * q2 * second);
    }
    return sum;
  }

  /**
   * Deflection by shear, up to and at the middle of a load that is spread evenly.
   *
   * @param force radial load F in N
   * @param width width B over which it is spread in mm
   * @param gap distance g of the near edge of the load in mm
   * @param diameter stud diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @param modulus modulus of elasticity E in MPa
   * @param poisson Poisson's ratio ν
   * @return F (g + 3B/8)/(κ G A): over the gap the whole load shears the stud, over the inner half width the load still
   *     to come
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Cowper 1966", locator = "Timoshenko beam, shear coefficient", provenance = Provenance.MEMORY)
  public static double shearDeflection(
      double force, double width, double gap, double diameter, double bore, double modulus, double poisson) {
    StudBendingKernel.checkLoad(force, width, gap);
    Check.positive(modulus, "modulus of elasticity E", "MPa", "an elastic body has stiffness");
    double shearModulus = modulus / (2 * (1 + poisson));
    double rigidity =
        StudSectionKernel.shearCoefficient(diameter, bore, poisson)
            * shearModulus
            * StudSectionKernel.area(diameter, bore);
    return force * (gap + 0.375 * width) / rigidity;
  }

  /** Slope of the axis by shear in the middle of an even load, F/(2 κ G A); bending apart. Units as above, result in rad. */
  static double shearSlope(double force, double diameter, double bore, double modulus, double poisson) {
    double rigidity = StudSectionKernel.shearCoefficient(diameter, bore, poisson) * modulus / (2 * (1 + poisson))
        * StudSectionKernel.area(diameter, bore);
    return force / (2 * rigidity);
  }

  private static double influence(double s, double x) {
    return s > x ? x * x * (3 * s - x) / 6 : s * s * (3 * x - s) / 6;
  }

  private static double slopeInfluence(double s, double x) {
    return s > x ? x * (2 * s - x) / 2 : s * s / 2;
  }

  private static void check(double load, String name, double at, double x, double stiffness) {
    Check.finite(load, name, "");
    Check.notNegative(at, "distance of the load", "mm", "measured from the fixed end");
    Check.notNegative(x, "distance x", "mm", "measured from the fixed end");
    Check.positive(stiffness, "bending stiffness EI", "N·mm²", "an elastic beam has stiffness");
  }

  private static void checkLoad(double from, double to, double atStart, double atEnd, double x, double stiffness) {
    check(atStart, "load per length at its start", from, x, stiffness);
    Check.finite(atEnd, "load per length at its end", "N/mm");
    Check.positive(to - from, "length of the load", "mm", "the load ends beyond its start");
  }
}
