package holdfast.bearings.reference;

/** Elastic constants of bearing steel as recalled for the f0 table, which they reproduce. */
final class Steel {
  static final double MODULUS = 207_000;
  static final double POISSON = 0.3;
  /** E/(1-ν²). */
  static final double PLANE_MODULUS = MODULUS / (1 - POISSON * POISSON);
  /** Contact modulus of steel on steel, E/[2 (1-ν²)]. */
  static final double REDUCED_MODULUS = 0.5 * PLANE_MODULUS;

  private Steel() {}
}
