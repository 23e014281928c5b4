// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Plain go and no-go sizes of the limit gauges for a part: plug for a hole, ring or gap gauge for a shaft. They are the
 * limits of size themselves. The tolerances of the gauge maker and the wear of the gauge are not in them, because the table
 * of ISO 1938-1 was not at hand.
 *
 * @param part the part to be gauged
 * @param feature hole or shaft
 */
@Source(
    document = "common practice",
    locator = "go gauge at the limit with most material, no-go gauge at the limit with least",
    provenance = Provenance.COMMON_PRACTICE)
public record GaugeLimits(TolerancedSize part, Feature feature) implements Traced, Serializable {
  private static final SourceRef PLAIN =
      SourceRef.commonPractice("go gauge at the limit with most material, no-go gauge at the limit with least");

  // Refuses a gauge for nothing, and a plug for a shaft class: its go and no-go sides would be exchanged.
  public GaugeLimits {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(feature, "feature");
    feature.requireOf(part.origin());
  }

  /**
   * Sizes of a plug gauge.
   *
   * @param hole the hole
   * @return the gauge
   * @throws holdfast.quantity.InputException if the part has a shaft class
   */
  public static GaugeLimits plug(TolerancedSize hole) {
    Objects.requireNonNull(hole, "hole");
    return new GaugeLimits(hole, Feature.HOLE);
  }

  /**
   * Sizes of a ring or gap gauge.
   *
   * @param shaft the shaft
   * @return the gauge
   * @throws holdfast.quantity.InputException if the part has a hole class
   */
  public static GaugeLimits ring(TolerancedSize shaft) {
    Objects.requireNonNull(shaft, "shaft");
    return new GaugeLimits(shaft, Feature.SHAFT);
  }

  /**
   * Size of the go side, which must pass over the whole seat.
   *
   * @return lower limit of a hole, upper limit of a shaft
   */
  public Length go() {
    return feature == Feature.HOLE ? part.limits().lower() : part.limits().upper();
  }

  /**
   * Size of the no-go side, which must not enter anywhere.
   *
   * @return upper limit of a hole, lower limit of a shaft
   */
  public Length noGo() {
    return feature == Feature.HOLE ? part.limits().upper() : part.limits().lower();
  }

  /** The limit deviations, then the go and, as the last step, the no-go size. */
  @Override
  public Derivation explain() {
    boolean hole = feature == Feature.HOLE;
    return Derivation.of(this.toString())
        .steps(part.explain())
        .step("go", "size of the go side", hole ? "D + lower deviation" : "D + upper deviation", go().mm(), "mm", PLAIN)
        .step("no-go", "size of the no-go side", hole ? "D + upper deviation" : "D + lower deviation", noGo().mm(), "mm", PLAIN)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(part.warnings());
    warnings.add(
        new Warning(
            "plain-limits",
            "plain limits: tolerances and wear of the gauge after ISO 1938-1 are not taken off; a new gauge made to other sizes"
                + " than these can still be right",
            PLAIN));
    return List.copyOf(warnings);
  }

  /** For example {@code "plug gauge for 25 H7: go 25.000 mm, no-go 25.021 mm (plain limits)"}. */
  @Override
  public String toString() {
    boolean inches = part.origin().inInches();
    return (feature == Feature.HOLE ? "plug" : "ring or gap") + " gauge for " + FitText.nominal(part.nominalSize(), inches) + " "
        + part.designation() + ": go " + FitText.drawn(go(), inches) + ", no-go " + FitText.drawn(noGo(), inches)
        + " (plain limits)";
  }
}
