// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.tables.SourceRef;

/** How the interval is shortened for a roller without cage. Three catalogues say "more often"; two give a number. */
public enum FullComplementRule {
  /** A tenth: published for full-complement cylindrical roller bearings, the nearest case. */
  TENTH("one tenth", 0.1,
      SourceRef.published(
          "Rolling bearings catalogue 17000 EN", "pages 109 to 115, full-complement cylindrical roller bearings")),
  /** Half: trade practice, an upper end. */
  HALF("one half", 0.5, SourceRef.commonPractice("full complement: half the interval or less"));

  private final String label;
  private final double factor;
  private final SourceRef source;

  FullComplementRule(String label, double factor, SourceRef source) {
    this.label = label;
    this.factor = factor;
    this.source = source;
  }

  /**
   * Factor on the interval.
   *
   * @return 0.1 or 0.5
   */
  public double factor() {
    return factor;
  }

  /**
   * Where the rule comes from.
   *
   * @return document, locator and provenance
   */
  public SourceRef source() {
    return source;
  }

  /** For example {@code "one tenth"}. */
  @Override
  public String toString() {
    return label;
  }
}
