// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import java.util.Objects;

/**
 * Limit deviations that somebody states: a drawing, a catalogue or a measurement.
 *
 * @param designation how to name them, for example {@code "bore of the inner ring"}
 * @param deviations the deviations
 * @param source who states them
 */
public record GivenDeviations(String designation, LimitDeviations deviations, SourceRef source) implements DeviationOrigin {
  /** Deviations without a document behind them. */
  static final SourceRef CALLER = SourceRef.derived("limit deviations as given by the caller");

  public GivenDeviations {
    Objects.requireNonNull(designation, "designation");
    Objects.requireNonNull(deviations, "deviations");
    Objects.requireNonNull(source, "source");
  }

  @Override
  public Derivation explain(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return Derivation.of(designation)
        .step("upper", "upper limit deviation, " + designation, "given", deviations.upper().in(KnownUnits.UM), "µm", source)
        .step("lower", "lower limit deviation, " + designation, "given", deviations.lower().in(KnownUnits.UM), "µm", source)
        .build();
  }
}
