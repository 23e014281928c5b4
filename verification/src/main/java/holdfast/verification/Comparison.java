// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import java.util.OptionalDouble;

/**
 * One published value against ours.
 *
 * @param name what is compared, with inputs and place, for example {@code "25 H7/p6, least clearance"}
 * @param published the published value, as text with unit
 * @param computed our value, as text with unit
 * @param tolerance permitted difference, as text with unit
 * @param toleranceReason why that much: for example {@code "half a unit of the last printed digit"}
 * @param agrees whether the difference is within the tolerance
 * @param share difference over tolerance, 0 or more; empty where words or a band are compared, or where the tolerance is 0
 * @param disclosure why a disagreement stands; empty when agreement is expected
 * @param source where the published value stands
 * @param evidence what kind of evidence this is
 */
public record Comparison(
    String name,
    String published,
    String computed,
    String tolerance,
    String toleranceReason,
    boolean agrees,
    OptionalDouble share,
    String disclosure,
    SourceRef source,
    Evidence evidence) {

  /** What came of a comparison. */
  public enum Outcome {
    /** Within the tolerance. */
    AGREES("agrees"),
    /** Outside the tolerance, with the reason stated. */
    DISCLOSED("disclosed"),
    /** Outside the tolerance without a reason: fails the audit. */
    UNDISCLOSED("undisclosed"),
    /** Within the tolerance though a disagreement is disclosed: the disclosure must go; fails the audit. */
    STALE_DISCLOSURE("stale disclosure");

    private final String label;

    Outcome(String label) {
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

    /**
     * Whether the audit fails because of it.
     *
     * @return true for an undisclosed disagreement and for a stale disclosure
     */
    public boolean fails() {
      return this == UNDISCLOSED || this == STALE_DISCLOSURE;
    }
  }

  /**
   * What came of it.
   *
   * @return the outcome
   */
  public Outcome outcome() {
    if (agrees) {
      return disclosure.isEmpty() ? Outcome.AGREES : Outcome.STALE_DISCLOSURE;
    }
    return disclosure.isEmpty() ? Outcome.UNDISCLOSED : Outcome.DISCLOSED;
  }

  /**
   * Starts a comparison.
   *
   * @param name what is compared, with inputs and place
   * @param source where the published value stands
   * @param evidence what kind of evidence it is
   * @return a builder
   */
  public static Builder of(String name, SourceRef source, Evidence evidence) {
    return new Builder(name, source, evidence);
  }

  /** Collects what a comparison needs. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private final SourceRef source;
    private final Evidence evidence;
    private String disclosure = "";

    private Builder(String name, SourceRef source, Evidence evidence) {
      this.name = name;
      this.source = source;
      this.evidence = evidence;
    }

    /**
     * States why a disagreement stands.
     *
     * @param reason the reason with its evidence; empty for none
     * @return this builder
     */
    public Builder disclosed(String reason) {
      this.disclosure = reason.strip();
      return this;
    }

    /**
     * Compares numbers.
     *
     * @param published the published value
     * @param computed our value; NaN never agrees
     * @param tolerance greatest permitted absolute difference, 0 or more
     * @param unit unit of all three, empty for pure numbers
     * @param toleranceReason why that much
     * @return the comparison
     */
    public Comparison numbers(double published, double computed, double tolerance, String unit, String toleranceReason) {
      // The slack of 1e-12 lets a difference of exactly the tolerance pass in binary arithmetic.
      double difference = Math.abs(computed - published);
      boolean agrees = difference <= tolerance * (1 + 1e-12) + 1e-12 * Math.abs(published);
      boolean measurable = tolerance > 0 && Double.isFinite(difference);
      String suffix = unit.isEmpty() ? "" : " " + unit;
      return new Comparison(
          name,
          Numbers.shortest(published) + suffix,
          Numbers.significant(computed, 9) + suffix,
          Numbers.significant(tolerance, 3) + suffix,
          toleranceReason,
          agrees,
          measurable ? OptionalDouble.of(difference / tolerance) : OptionalDouble.empty(),
          disclosure,
          source,
          evidence);
    }

    /**
     * Compares a number with a published band: any value in it agrees, and no value of it is singled out.
     *
     * @param least least published value
     * @param computed our value; NaN never agrees
     * @param greatest greatest published value, at least the least one
     * @param unit unit of all three, empty for pure numbers
     * @param bandIs what the band is of
     * @return the comparison
     */
    public Comparison band(double least, double computed, double greatest, String unit, String bandIs) {
      if (!(least <= greatest)) {
        throw new IllegalArgumentException("no band: " + least + " to " + greatest);
      }
      double slack = 1e-12 * Math.max(Math.abs(least), Math.abs(greatest));
      double outside = Math.max(Math.max(least - computed, computed - greatest), 0);
      String suffix = unit.isEmpty() ? "" : " " + unit;
      return new Comparison(
          name,
          Numbers.shortest(least) + " to " + Numbers.shortest(greatest) + suffix,
          Numbers.significant(computed, 9) + suffix,
          "within the band",
          bandIs,
          outside <= slack && !Double.isNaN(computed),
          OptionalDouble.empty(),
          disclosure,
          source,
          evidence);
    }

    /**
     * Compares words.
     *
     * @param published the published words
     * @param computed ours
     * @return the comparison
     */
    public Comparison words(String published, String computed) {
      return new Comparison(
          name, published, computed, "none", "words must be equal", published.equals(computed), OptionalDouble.empty(),
          disclosure, source, evidence);
    }
  }
}
