package holdfast.fits;

/** What a measurement with its uncertainty says about a limit of size (decision rule of ISO 14253-1). */
public enum Conformity {
  /** All readings lie within the limits by at least the uncertainty. */
  PROVEN("conformity proven"),
  /** A reading lies within the uncertainty of a limit. */
  UNDECIDED("undecided: within the uncertainty of a limit"),
  /** A reading lies outside the limits by more than the uncertainty. */
  DISPROVED("nonconformity proven");

  private final String label;

  Conformity(String label) {
    this.label = label;
  }

  @Override
  public String toString() {
    return label;
  }
}
