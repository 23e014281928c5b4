// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Constants of laminae: deflection law, load ratings, edge stress factor. Symbols: Lwe effective roller length, Dwe roller
 * diameter, Dpw pitch diameter (mm), Z rollers of one row, i rows, γ = Dwe/Dpw, Cr basic dynamic
 * load rating (N).
 */
public final class LaminaKernel {
  /** Exponent of the deflection law of a line contact, 10/9: recalled. */
  public static final double EXPONENT = 10.0 / 9;
  /** Line-contact constant 35948: recalled; equals 3.97e-5 Q^0.9/Lwe^0.8 for each of the two contacts. */
  public static final double LINE_CONSTANT = 35948;
  /** Factor 0.83 by which the recalled ratings are divided. It cancels in every ratio of lives. */
  public static final double RATING_DIVISOR = 0.83;

  /** Factor that the division by {@link #RATING_DIVISOR} puts on every life, 0.83^-4 = 2.107. */
  public static final double RECALLED_LIFE_FACTOR =
      1 / (RATING_DIVISOR * RATING_DIVISOR * RATING_DIVISOR * RATING_DIVISOR);

  /** Radial load over Z and the ring load of a ring that rotates, at zero clearance: recalled; the integral is 0.3764. */
  public static final double INNER = 0.378;
  /** The same for a ring that stands still: recalled; the integral is 0.3630. */
  public static final double OUTER = 0.364;
  /** Ratio of the two: recalled; the integrals give 1.0367. */
  public static final double RING_RATIO = 1.038;

  private LaminaKernel() {}

  /**
   * Stiffness constant of a roller between both rings, Q = cL d^(10/9) with cL = 35948 Lwe^(8/9), steel on steel.
   *
   * <p>That a lamina has the share of cL that it has of the length is derived (constant line load). The power law replaces
   * the logarithmic law of elasticity, δ = 4 w (1-ν²)/(π E) [ln(2 Lwe/b) + 1/2] for two half-spaces (b half-width of the
   * contact), whose exponent at usual loads is 1.08 to 1.10 and which is up to a fifth softer; constant and exponent are
   * recalled.
   *
   * @param lwe Lwe in mm, over 0
   * @return cL in N/mm^(10/9)
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO/TS 16281:2008", locator = "stiffness of a roller contact", provenance = Provenance.MEMORY)
  public static double stiffness(double lwe) {
    return LINE_CONSTANT * Math.pow(length(lwe), 8.0 / 9);
  }

  /**
   * Rating of the inner ring contact, {@code Qci = Cr/(0.378 Z i^(7/9)) {1+[1.038((1-γ)/(1+γ))^(143/108)]^(9/2)}^(2/9)},
   * for a nominal contact angle of 0. The recalled method divides it by {@link #RATING_DIVISOR}, which is left to the caller.
   *
   * <p>The form follows from the combination of both rings by the power 9/2 and from the ring load Cr/(0.376 Z) at zero
   * clearance; the exponent 143/108 is that behind the table of fc; 0.378 and 1.038 are kept as recalled.
   *
   * @param cr Cr in N, over 0
   * @param z Z, 3 or more
   * @param rows i, 1 or more
   * @param gamma γ (dimensionless), over 0 and under 1
   * @return Qci in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO/TS 16281:2008", locator = "rolling element load for the basic dynamic load rating, inner ring",
      provenance = Provenance.MEMORY)
  public static double innerRating(double cr, int z, int rows, double gamma) {
    return rating(cr, z, rows, INNER) * Math.pow(1 + Math.pow(ratio(gamma), 4.5), 2.0 / 9);
  }

  /**
   * Rating of the outer ring contact: as {@link #innerRating} with 0.364 and the exponent -9/2 in the braces.
   *
   * @param cr Cr in N, over 0
   * @param z Z, 3 or more
   * @param rows i, 1 or more
   * @param gamma γ (dimensionless), over 0 and under 1
   * @return Qce in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO/TS 16281:2008", locator = "rolling element load for the basic dynamic load rating, outer ring",
      provenance = Provenance.MEMORY)
  public static double outerRating(double cr, int z, int rows, double gamma) {
    return rating(cr, z, rows, OUTER) * Math.pow(1 + Math.pow(ratio(gamma), -4.5), 2.0 / 9);
  }

  /**
   * Share of a contact rating that a lamina has, qc/Qc = w^(7/9) with w its share of the length; recalled as nL^(-7/9) for
   * equal laminae. Derived: laminae that are loaded in proportion to their lengths have together the life of the undivided
   * contact, because then Σ (q/qc)^(9/2) = (Q/Qc)^(9/2) Σ w.
   *
   * @param share w (dimensionless), over 0 up to 1
   * @return qc/Qc
   * @throws holdfast.quantity.InputException if the share is outside its range
   */
  @Source(document = "derivation", locator = "evenly loaded laminae have together the life of the contact",
      provenance = Provenance.DERIVED)
  public static double ratingShare(double share) {
    return Math.pow(Check.overUpTo(share, 0, 1, "share of a lamina", "", "laminae are parts of the roller"), 7.0 / 9);
  }

  /**
   * Edge stress factor {@code f = 1 - 0.01/ln(1.985 |x/Lwe|)}; recalled for equal laminae, where
   * {@code x/Lwe = (2k-nL-1)/(2nL)}.
   *
   * @param position x/Lwe of the middle of the lamina (dimensionless), -0.5 to 0.5
   * @return f, 1 in the middle, 2.33 at the very end
   * @throws holdfast.quantity.InputException if the position is outside its range
   */
  @Source(document = "ISO/TS 16281:2008", locator = "stress riser of a lamina", provenance = Provenance.MEMORY)
  public static double edgeStressFactor(double position) {
    Check.within(position, -0.5, 0.5, "position x/Lwe", "", "laminae lie on the roller");
    // In the middle the logarithm goes to minus infinity and the factor to 1.
    return 1 - 0.01 / Math.log(1.985 * Math.abs(position));
  }

  /**
   * Greatest pressure of a line contact of steel on steel, {@code p = sqrt(w K/(π R))} with
   * {@code K = E/[2 (1-ν²)]} and {@code 1/R = 2/Dwe ± 2/Dr}.
   *
   * @param lineLoad w in N/mm, 0 or more
   * @param dwe Dwe in mm, over 0
   * @param raceway raceway diameter Dr in mm: over 0 for an inner raceway, below -Dwe for an outer one (hollow)
   * @return greatest Hertz pressure in MPa
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "Hertz line contact, E = 207 000 MPa, ν = 0.3", provenance = Provenance.DERIVED)
  public static double pressure(double lineLoad, double dwe, double raceway) {
    Check.notNegative(lineLoad, "line load w", "N/mm", "a contact does not pull");
    Check.positive(dwe, "roller diameter Dwe", "mm", "a roller has a diameter");
    Check.nonZero(raceway, "raceway diameter", "mm", "a raceway has a diameter");
    double curvature = Check.positive(2 / dwe + 2 / raceway, "sum of curvatures", "1/mm", "the roller must fit in the raceway");
    return Math.sqrt(lineLoad * Steel.REDUCED_MODULUS * curvature / Math.PI);
  }

  static double length(double lwe) {
    return Check.within(lwe, Inputs.LEAST_SIZE, 10_000, "effective roller length Lwe", "mm", "a roller has a length");
  }

  private static double rating(double cr, int z, int rows, double factor) {
    Inputs.elements(z);
    Check.within(rows, 1, 20, "rows i", "", "a bearing has at least one row");
    return Inputs.rating(cr) / (factor * z * Math.pow(rows, 7.0 / 9));
  }

  private static double ratio(double gamma) {
    if (!(gamma > 0 && gamma < 1)) {
      throw Inputs.refused("ratio Dwe/Dpw", gamma, "over 0 and under 1", "the rollers lie inside the pitch circle");
    }
    return RING_RATIO * Math.pow((1 - gamma) / (1 + gamma), 143.0 / 108);
  }
}
