// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Thick elastic rings in plane stress (Lamé): joint pressure, stresses at every radius, displacements. Lengths in mm,
 * stresses and moduli in MPa. Diameters describe the joint: hole d_I of the stud (0: solid), joint D, outside D_A of
 * the housing ({@link Double#POSITIVE_INFINITY}: wide plate). A single ring has inner radius a and outer radius b.
 *
 * <p>Validity: elastic, equal length of both parts, free axial sliding. Where one part is longer the pressure rises
 * towards the ends of the shorter one; see {@link EndEffect}.
 */
@Source(document = "Boresi & Schmidt", locator = "chapter 11, thick-wall cylinders")
@Source(document = "thick cylinder notes", locator = "interference of two cylinders")
@Source(document = "derivation", locator = "plane-stress elasticity of a ring", provenance = Provenance.DERIVED)
public final class ThickRingKernel {
  private static final String PLANE_STRESS = "modulus and Poisson's ratio of an isotropic solid";
  private static final String RING = "the inner radius is smaller than the outer";

  /** Far above any strength, far below overflow: results stay finite. */
  static final double GREATEST = 1e9;

  private ThickRingKernel() {}

  /**
   * Relative yield of the inner part, {@code K_I = ((1+Q²)/(1-Q²) - ν)/E} with {@code Q = d_I/D}: its joint diameter
   * shrinks by {@code p·D·K_I}.
   *
   * @param hole diameter of the hole d_I in mm, 0 for a solid stud
   * @param joint joint diameter D in mm
   * @param modulus E in MPa
   * @param poisson ν (dimensionless)
   * @return K_I in 1/MPa
   * @throws InputException if the hole is not smaller than the stud, or an elastic constant is out of range
   */
  public static double innerCompliance(double hole, double joint, double modulus, double poisson) {
    checkElastic(modulus, poisson, "stud");
    checkHole(hole, joint);
    double q = hole / joint;
    return ((1 + q * q) / ((1 - q) * (1 + q)) - poisson) / modulus;
  }

  /**
   * Relative yield of the outer part, {@code K_A = ((1+Q²)/(1-Q²) + ν)/E} with {@code Q = D/D_A}: its joint diameter
   * grows by {@code p·D·K_A}.
   *
   * @param joint joint diameter D in mm
   * @param outside outside diameter D_A in mm, infinite for a wide plate
   * @param modulus E in MPa
   * @param poisson ν (dimensionless)
   * @return K_A in 1/MPa
   * @throws InputException if the outside is not larger than the joint, or an elastic constant is out of range
   */
  public static double outerCompliance(double joint, double outside, double modulus, double poisson) {
    checkElastic(modulus, poisson, "housing");
    checkOutside(joint, outside);
    double q = joint / outside;
    return ((1 + q * q) / ((1 - q) * (1 + q)) + poisson) / modulus;
  }

  /**
   * Joint pressure of an interference, {@code p = U/(D·(K_I + K_A))}.
   *
   * @param interference effective diametral interference U in mm, 0 or more
   * @param joint joint diameter D in mm
   * @param hole hole of the stud d_I in mm, 0 for a solid stud
   * @param outside outside of the housing D_A in mm, infinite for a wide plate
   * @param innerModulus E of the stud in MPa
   * @param innerPoisson ν of the stud (dimensionless)
   * @param outerModulus E of the housing in MPa
   * @param outerPoisson ν of the housing (dimensionless)
   * @return p in MPa
   * @throws InputException for a clearance, a hole that is not smaller than the stud, a housing that is not larger, or
   *     elastic constants out of range
   */
  public static double pressure(
      double interference,
      double joint,
      double hole,
      double outside,
      double innerModulus,
      double innerPoisson,
      double outerModulus,
      double outerPoisson) {
    SeatChecks.joint(joint);
    Check.within(interference, 0, joint, "interference", "mm", "a clearance makes no pressure, and the parts must go together");
    return interference
        / joint
        / (innerCompliance(hole, joint, innerModulus, innerPoisson)
            + outerCompliance(joint, outside, outerModulus, outerPoisson));
  }

  /**
   * Interference of a joint pressure, the inverse of {@link #pressure}.
   *
   * @param pressure p in MPa, 0 or more
   * @param joint joint diameter D in mm
   * @param hole hole of the stud d_I in mm, 0 for a solid stud
   * @param outside outside of the housing D_A in mm, infinite for a wide plate
   * @param innerModulus E of the stud in MPa
   * @param innerPoisson ν of the stud (dimensionless)
   * @param outerModulus E of the housing in MPa
   * @param outerPoisson ν of the housing (dimensionless)
   * @return effective diametral interference U in mm
   * @throws InputException as {@link #pressure} does
   */
  public static double interference(
      double pressure,
      double joint,
      double hole,
      double outside,
      double innerModulus,
      double innerPoisson,
      double outerModulus,
      double outerPoisson) {
    Check.notNegative(pressure, "joint pressure", "MPa", "a joint cannot pull");
    SeatChecks.joint(joint);
    return pressure
        * joint
        * (innerCompliance(hole, joint, innerModulus, innerPoisson)
            + outerCompliance(joint, outside, outerModulus, outerPoisson));
  }

  /**
   * Joint pressure on the bore for two parts by their own diameters, {@code p = (D_I - D_B)/(D_B·(K_I + K_A))}, each
   * compliance taken with its own part's diameter. The radial force is common, so the pressure on the stud is
   * {@code p·D_B/D_I}. It differs from {@link #pressure} only where the interference is no longer small against the wall.
   *
   * @param studDiameter outside diameter D_I of the free stud in mm
   * @param boreDiameter bore D_B of the free housing in mm
   * @param hole hole of the stud d_I in mm, 0 for a solid stud
   * @param outside outside of the housing D_A in mm, infinite for a wide plate
   * @param innerModulus E of the stud in MPa
   * @param innerPoisson ν of the stud (dimensionless)
   * @param outerModulus E of the housing in MPa
   * @param outerPoisson ν of the housing (dimensionless)
   * @return p in MPa
   * @throws InputException for a clearance, or as {@link #pressure} does
   */
  @Source(
      document = "derivation",
      locator = "common radial force; displacements of both free parts add to the overlap",
      provenance = Provenance.DERIVED)
  public static double pressureOfParts(
      double studDiameter,
      double boreDiameter,
      double hole,
      double outside,
      double innerModulus,
      double innerPoisson,
      double outerModulus,
      double outerPoisson) {
    SeatChecks.size(boreDiameter, "bore of the housing", "a bore has a size");
    Check.within(
        studDiameter, boreDiameter, 2 * boreDiameter, "stud diameter", "mm", "the stud is not smaller than its bore");
    return (studDiameter - boreDiameter)
        / boreDiameter
        / (innerCompliance(hole, studDiameter, innerModulus, innerPoisson)
            + outerCompliance(boreDiameter, outside, outerModulus, outerPoisson));
  }

  /**
   * Pressures of many interferences of one pair of parts.
   *
   * @param interferences effective diametral interferences in mm, each 0 or more
   * @param joint joint diameter D in mm
   * @param hole hole of the stud d_I in mm, 0 for a solid stud
   * @param outside outside of the housing D_A in mm, infinite for a wide plate
   * @param innerModulus E of the stud in MPa
   * @param innerPoisson ν of the stud (dimensionless)
   * @param outerModulus E of the housing in MPa
   * @param outerPoisson ν of the housing (dimensionless)
   * @param pressures receives p in MPa, at least as long as the interferences
   * @throws InputException as {@link #pressure} does, or if the result array is too short
   */
  public static void pressures(
      double[] interferences,
      double joint,
      double hole,
      double outside,
      double innerModulus,
      double innerPoisson,
      double outerModulus,
      double outerPoisson,
      double[] pressures) {
    Objects.requireNonNull(interferences, "interferences");
    Objects.requireNonNull(pressures, "pressures");
    if (pressures.length < interferences.length) {
      throw new InputException(
          "result array", pressures.length + " places", "at least " + interferences.length, "one for each item");
    }
    SeatChecks.joint(joint);
    double compliance =
        innerCompliance(hole, joint, innerModulus, innerPoisson) + outerCompliance(joint, outside, outerModulus, outerPoisson);
    for (int i = 0; i < interferences.length; i++) {
      double u = interferences[i];
      Check.within(u, 0, joint, "interference", "mm", "a clearance makes no pressure, and the parts must go together");
      pressures[i] = u / joint / compliance;
    }
  }

  /**
   * Radial stress in a ring, {@code (p_i·s - p_o)/(1-s) - (p_i-p_o)·(a/r)²/(1-s)} with {@code s = (a/b)²}.
   *
   * @param r radius in mm, from a to b
   * @param inner inner radius a in mm, 0 for a solid disk (p_i then has no meaning and no effect)
   * @param outer outer radius b in mm, may be infinite
   * @param innerPressure pressure p_i in the hole in MPa
   * @param outerPressure pressure p_o outside in MPa
   * @return stress in MPa, tension positive
   * @throws InputException if a, b or r do not describe a ring, or a pressure is not finite
   */
  public static double radialStress(double r, double inner, double outer, double innerPressure, double outerPressure) {
    checkRing(r, inner, outer, innerPressure, outerPressure);
    return mean(inner, outer, innerPressure, outerPressure) - swing(r, inner, outer, innerPressure, outerPressure);
  }

  /**
   * Hoop stress in a ring, {@code (p_i·s - p_o)/(1-s) + (p_i-p_o)·(a/r)²/(1-s)} with {@code s = (a/b)²}.
   *
   * @param r radius in mm, from a to b
   * @param inner inner radius a in mm, 0 for a solid disk (p_i then has no meaning and no effect)
   * @param outer outer radius b in mm, may be infinite
   * @param innerPressure pressure p_i in the hole in MPa
   * @param outerPressure pressure p_o outside in MPa
   * @return stress in MPa, tension positive
   * @throws InputException if a, b or r do not describe a ring, or a pressure is not finite
   */
  public static double hoopStress(double r, double inner, double outer, double innerPressure, double outerPressure) {
    checkRing(r, inner, outer, innerPressure, outerPressure);
    return mean(inner, outer, innerPressure, outerPressure) + swing(r, inner, outer, innerPressure, outerPressure);
  }

  /**
   * Outer radius of a ring whose hoop stress at the bore reaches a limit under a pressure inside,
   * {@code a·√((σ+p)/(σ-p))}.
   *
   * @param inner inner radius a in mm, over 0
   * @param innerPressure pressure p inside in MPa, 0 or more
   * @param hoopLimit greatest hoop stress σ in MPa, over p
   * @return outer radius in mm
   * @throws InputException if a value is out of range; no wall is thick enough for a limit that is not over the pressure
   */
  public static double outerRadiusForHoop(double inner, double innerPressure, double hoopLimit) {
    Check.positive(inner, "inner radius", "mm", RING);
    Check.notNegative(innerPressure, "pressure inside", "MPa", "a pressure");
    if (!(hoopLimit > innerPressure && hoopLimit <= Check.GREATEST)) {
      throw new InputException(
          "hoop stress limit",
          Numbers.shortest(hoopLimit) + " MPa",
          "over the pressure " + Numbers.shortest(innerPressure) + " MPa",
          "even an endless wall carries the pressure as hoop stress at its bore");
    }
    return inner * Math.sqrt((hoopLimit + innerPressure) / (hoopLimit - innerPressure));
  }

  /**
   * Radial displacement in a ring with free ends, outwards positive:
   * {@code u = (1-ν)/E·A·r + (1+ν)/E·B/r} with {@code σ = A ∓ B/r²}.
   *
   * @param r radius in mm, from a to b, finite
   * @param inner inner radius a in mm, 0 for a solid disk
   * @param outer outer radius b in mm, may be infinite
   * @param innerPressure pressure p_i in the hole in MPa
   * @param outerPressure pressure p_o outside in MPa
   * @param modulus E in MPa
   * @param poisson ν (dimensionless)
   * @return u in mm
   * @throws InputException if a, b or r do not describe a ring, or another value is out of range
   */
  public static double radialDisplacement(
      double r, double inner, double outer, double innerPressure, double outerPressure, double modulus, double poisson) {
    checkElastic(modulus, poisson, "ring");
    checkRing(r, inner, outer, innerPressure, outerPressure);
    Check.finite(r, "radius", "mm");
    double mean = mean(inner, outer, innerPressure, outerPressure);
    double swing = swing(r, inner, outer, innerPressure, outerPressure);
    return r * ((1 - poisson) * mean + (1 + poisson) * swing) / modulus;
  }

  /**
   * Radial displacement in a closed cylinder under the same pressures, whose wall carries the axial stress
   * {@code σ_z = A}: {@code u = r/E·(σ_θ - ν·(σ_r + σ_z))}.
   *
   * @param r radius in mm, from a to b, finite
   * @param inner inner radius a in mm
   * @param outer outer radius b in mm
   * @param innerPressure pressure p_i inside in MPa
   * @param outerPressure pressure p_o outside in MPa
   * @param modulus E in MPa
   * @param poisson ν (dimensionless)
   * @return u in mm, outwards positive
   * @throws InputException if a, b or r do not describe a ring, or another value is out of range
   */
  public static double radialDisplacementClosed(
      double r, double inner, double outer, double innerPressure, double outerPressure, double modulus, double poisson) {
    return radialDisplacement(r, inner, outer, innerPressure, outerPressure, modulus, poisson)
        - r * poisson * mean(inner, outer, innerPressure, outerPressure) / modulus;
  }

  /**
   * Axial stress in the wall of a closed cylinder, {@code (p_i·a² - p_o·b²)/(b² - a²)}.
   *
   * @param inner inner radius a in mm
   * @param outer outer radius b in mm
   * @param innerPressure pressure p_i inside in MPa
   * @param outerPressure pressure p_o outside in MPa
   * @return σ_z in MPa
   * @throws InputException if a and b do not describe a ring, or a pressure is not finite
   */
  public static double axialStressClosed(double inner, double outer, double innerPressure, double outerPressure) {
    checkRing(outer, inner, outer, innerPressure, outerPressure);
    return mean(inner, outer, innerPressure, outerPressure);
  }

  /**
   * Modulus that turns the plane-stress formulas of this class into plane strain: {@code E/(1-ν²)}. Poisson's ratio is
   * to be replaced by {@code ν/(1-ν)}.
   *
   * @param modulus E in MPa
   * @param poisson ν (dimensionless)
   * @return the modulus in MPa
   * @throws InputException if a value is out of range
   */
  public static double planeStrainModulus(double modulus, double poisson) {
    checkElastic(modulus, poisson, "ring");
    return modulus / ((1 - poisson) * (1 + poisson));
  }

  private static double mean(double inner, double outer, double innerPressure, double outerPressure) {
    double q = inner / outer;
    return (innerPressure * (q * q) - outerPressure) / ((1 - q) * (1 + q));
  }

  private static double swing(double r, double inner, double outer, double innerPressure, double outerPressure) {
    if (inner == 0) {
      return 0;
    }
    double q = inner / outer;
    double s = inner / r;
    return (innerPressure - outerPressure) * (s * s) / ((1 - q) * (1 + q));
  }

  static void checkElastic(double modulus, double poisson, String part) {
    if (!(modulus >= 1 && modulus <= 1e7)) {
      throw new InputException(
          "modulus of elasticity (" + part + ")",
          Numbers.shortest(modulus) + " MPa",
          "from 1 MPa to 10000000 MPa",
          PLANE_STRESS);
    }
    if (!(poisson >= 0 && poisson <= 0.5)) {
      throw new InputException("Poisson's ratio (" + part + ")", Numbers.shortest(poisson), "from 0 to 0.5", PLANE_STRESS);
    }
  }

  static void checkHole(double hole, double joint) {
    SeatChecks.joint(joint);
    if (!(hole >= 0 && hole < joint)) {
      throw new InputException(
          "hole of the stud",
          Numbers.shortest(hole) + " mm",
          "from 0 mm to less than the joint diameter " + Numbers.shortest(joint) + " mm",
          "the stud needs a wall");
    }
  }

  static void checkOutside(double joint, double outside) {
    SeatChecks.joint(joint);
    if (!(outside > joint && (outside <= 1e9 || outside == Double.POSITIVE_INFINITY))) {
      throw new InputException(
          "outside diameter of the housing",
          Numbers.shortest(outside) + " mm",
          "over the joint diameter " + Numbers.shortest(joint) + " mm, up to 1000000000 mm or infinite",
          "the housing needs a wall");
    }
  }

  private static void checkRing(double r, double inner, double outer, double innerPressure, double outerPressure) {
    Check.notNegative(inner, "inner radius", "mm", RING);
    if (!(outer > inner)) {
      throw new InputException("outer radius", Numbers.shortest(outer) + " mm", "over " + Numbers.shortest(inner) + " mm", RING);
    }
    Check.within(r, inner, outer, "radius", "mm", "it lies in the ring");
    Check.within(innerPressure, -GREATEST, GREATEST, "pressure inside", "MPa", "no ring carries more");
    Check.within(outerPressure, -GREATEST, GREATEST, "pressure outside", "MPa", "no ring carries more");
  }
}
