// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/** What a measurement with its uncertainty says about a limit of size (decision rule of ISO 14253-1). */
public enum Conformity {
  /** All readings lie within the limits by at least the guard band. */
  PROVEN("conforming"),
  /** A reading lies within the guard band of a limit, or there are too few readings to prove conformity. */
  UNDECIDED("not proved either way"),
  /** A reading lies outside the limits by more than the guard band. */
  DISPROVED("not conforming");

  /** Lengths are taken as equal within this, mm: noise of binary fractions. */
  static final double NOISE = 1e-9;

  private final String label;

  Conformity(String label) {
    this.label = label;
  }

  /**
   * Decides with the whole expanded uncertainty as guard band.
   *
   * @param margin least distance of a reading inside its limit; negative if a reading lies outside
   * @param uncertainty expanded uncertainty of a reading (coverage factor 2), 0 or more
   * @return proven from a margin of the uncertainty on, disproved below the same margin outside, undecided between
   * @throws holdfast.quantity.InputException if the uncertainty is negative
   */
  public static Conformity of(Length margin, Length uncertainty) {
    return of(margin, uncertainty, DecisionRule.WHOLE_UNCERTAINTY);
  }

  /**
   * Decides by a rule.
   *
   * @param margin least distance of a reading inside its limit; negative if a reading lies outside
   * @param uncertainty expanded uncertainty of a reading (coverage factor 2), 0 or more
   * @param rule how much of the uncertainty counts
   * @return proven from a margin of the guard band on, disproved below the same margin outside, undecided between
   * @throws holdfast.quantity.InputException if the uncertainty is negative
   */
  @Source(document = "ISO 14253-1:2017", locator = "decision rules", provenance = Provenance.MEMORY)
  public static Conformity of(Length margin, Length uncertainty, DecisionRule rule) {
    Objects.requireNonNull(margin, "margin");
    Objects.requireNonNull(uncertainty, "uncertainty");
    Objects.requireNonNull(rule, "rule");
    Check.notNegative(uncertainty.mm(), "uncertainty", "mm", "it is half of an interval");
    double guard = rule.guardBand(uncertainty).mm();
    if (margin.mm() < -guard - NOISE) {
      return DISPROVED;
    }
    return margin.mm() >= guard - NOISE ? PROVEN : UNDECIDED;
  }

  /**
   * The weaker of two findings.
   *
   * @param other another finding
   * @return disproved if one of them is, else undecided if one of them is, else proven
   */
  public Conformity and(Conformity other) {
    Objects.requireNonNull(other, "other");
    return compareTo(other) >= 0 ? this : other;
  }

  @Override
  public String toString() {
    return label;
  }
}
