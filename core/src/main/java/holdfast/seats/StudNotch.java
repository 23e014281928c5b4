package holdfast.seats;

/** A change of section that concentrates stress in a stud. */
public enum StudNotch {
  /** Shoulder fillet between a greater and a smaller diameter. */
  FILLET,
  /** Relief groove with a round bottom. */
  GROOVE;

  /** How a notched stud is loaded. */
  public enum Loading {
    /** Bending. */
    BENDING,
    /** Tension along the axis. */
    TENSION,
    /** Torsion. */
    TORSION
  }
}
