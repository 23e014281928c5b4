// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

/** What kind of evidence a comparison is. The report counts the kinds apart. */
public enum Evidence {
  /** A value printed in a publication that was not used to build what is checked. */
  PRINT(
      "independent print",
      "A printed value that was not used to build what is checked. Strong: an error on our side would show."),
  /** A printed value that only re-adds cells of our own tables: it guards against slips of coding and transcription. */
  RECOMBINED(
      "re-added table cells",
      "A printed value that only re-adds cells of our own tables, which were compared with such prints before. "
          + "It guards against slips of coding and transcription; it does not confirm the cells a second time."),
  /** A table cell computed anew by the formula behind the table. */
  RECONSTRUCTION(
      "formula reconstruction",
      "A table cell computed anew by the formula or rule behind the table. Agreement confirms the cell without "
          + "any print; where table and formula differ, the table rules and the difference is listed."),
  /** A worked example of a textbook, a standard or a manual. */
  WORKED_EXAMPLE(
      "worked example",
      "An example worked in a textbook, a standard or a manual. Strong: it checks the whole path from input to "
          + "result."),
  /** A value from a general-purpose library or solver. */
  REFERENCE(
      "reference computation",
      "A value from a general-purpose library or solver, with its version. It checks the mathematics, not the "
          + "choice of the formula."),
  /** A printed formula coded a second time from its source, in another language: it guards against slips of coding only. */
  RECODED(
      "formula coded a second time",
      "A printed formula coded a second time from its source, in another language and by another library. Weak: it "
          + "guards against slips of coding only; a formula that was misread or is out of place agrees with itself."),
  /** A value read off a printed chart: weak. */
  CHART(
      "chart reading",
      "A value read off a printed chart. Weak: the reading is uncertain by the width of a line."),
  /** A value of trade practice: plausibility only. */
  PRACTICE(
      "common practice",
      "A value of trade practice. Plausibility only."),
  /** A recalled value: it guards against slips and proves nothing. */
  RECALLED(
      "recalled value",
      "A value recalled from a document that was not at hand. It guards against slips and proves nothing.");

  private final String label;
  private final String meaning;

  Evidence(String label, String meaning) {
    this.label = label;
    this.meaning = meaning;
  }

  /**
   * The words used in reports.
   *
   * @return the label
   */
  public String label() {
    return label;
  }

  /**
   * What a comparison of this kind proves.
   *
   * @return one or two sentences
   */
  public String meaning() {
    return meaning;
  }
}
