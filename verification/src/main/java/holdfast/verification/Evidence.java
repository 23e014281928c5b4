package holdfast.verification;

/** What kind of evidence a comparison is. The report counts the kinds apart. */
public enum Evidence {
  /** A value printed in a publication that was not used to build what is checked. */
  PRINT("independent print"),
  /** A printed value that only re-adds cells of our own tables: it guards against slips of coding and transcription. */
  RECOMBINED("re-added table cells"),
  /** A table cell computed anew by the formula behind the table. */
  RECONSTRUCTION("formula reconstruction"),
  /** A worked example of a textbook, a standard or a manual. */
  WORKED_EXAMPLE("worked example"),
  /** A value from a general-purpose library or solver. */
  REFERENCE("reference computation"),
  /** A value read off a printed chart: weak. */
  CHART("chart reading"),
  /** A value of trade practice: plausibility only. */
  PRACTICE("common practice"),
  /** A recalled value: it guards against slips and proves nothing. */
  RECALLED("recalled value");

  private final String label;

  Evidence(String label) {
    this.label = label;
  }

  /**
   * The words used in reports.
   *
   * @return the label
   */
  public String label() {
    return label;
  }
}
