package holdfast.fits;

/** Kind of a fit (ISO 286-1:2010, 3.3). */
public enum FitKind {
  /** The hole is never smaller than the shaft. */
  CLEARANCE("clearance fit"),
  /** Clearance or interference, as the parts turn out. */
  TRANSITION("transition fit"),
  /** The hole is never larger than the shaft. */
  INTERFERENCE("interference fit");

  private final String label;

  FitKind(String label) {
    this.label = label;
  }

  @Override
  public String toString() {
    return label;
  }
}
