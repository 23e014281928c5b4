// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import java.util.Objects;

/**
 * How far inside a limit a reading must lie to prove conformity, and how far outside to disprove it. Both rules are recalled:
 * the standard was not at hand.
 */
@Source(document = "ISO 14253-1:2017", locator = "decision rules", provenance = Provenance.MEMORY)
public enum DecisionRule {
  /**
   * The guard band is the whole expanded uncertainty U (coverage factor 2), as the older editions have it, as we recall: the
   * cautious rule, under which a part at the edge conforms with 97.7 %.
   */
  WHOLE_UNCERTAINTY("the whole uncertainty", 1, SourceRef.memory("ISO 14253-1:2017", "decision rules, whole U as guard band")),
  /**
   * A part at the edge of the acceptance zone conforms with a probability of 95 %, the default of the edition of 2017, as we
   * recall: the guard band is 1.645 standard uncertainties, 0.82 U. One limit counts: it holds where the uncertainty is small
   * beside the tolerance.
   */
  PROBABILITY_95("95 % conformance probability", 1.6448536269514722 / 2,
      SourceRef.memory("ISO 14253-1:2017", "decision rules, conformance probability of 95 %"));

  private final String label;
  private final double shareOfU;
  private final SourceRef source;

  DecisionRule(String label, double shareOfU, SourceRef source) {
    this.label = label;
    this.shareOfU = shareOfU;
    this.source = source;
  }

  /**
   * The guard band.
   *
   * @param uncertainty expanded uncertainty U of a reading (coverage factor 2), 0 or more
   * @return by how much the acceptance zone is narrower at each limit
   */
  public Length guardBand(Length uncertainty) {
    Objects.requireNonNull(uncertainty, "uncertainty");
    return uncertainty.times(shareOfU);
  }

  /** Where the rule comes from. */
  SourceRef source() {
    return source;
  }

  @Override
  public String toString() {
    return label;
  }
}
