// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Length;
import holdfast.tables.Cell;
import holdfast.tables.Provenance;
import holdfast.tables.Table;
import holdfast.trace.Derivation;
import holdfast.trace.Warning;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Limit deviations of one part of an inch fit.
 *
 * @param fitClass class of the fit
 * @param feature hole or shaft
 */
public record InchDeviations(InchFitClass fitClass, Feature feature) implements DeviationOrigin {
  public InchDeviations {
    Objects.requireNonNull(fitClass, "fitClass");
    Objects.requireNonNull(feature, "feature");
  }

  /** For example {@code "FN2 shaft"}. */
  @Override
  public String designation() {
    return fitClass + " " + feature;
  }

  @Override
  public Optional<Feature> appliesTo() {
    return Optional.of(feature);
  }

  @Override
  public boolean inInches() {
    return true;
  }

  /** The two cells, in thousandths of an inch. */
  @Override
  public Derivation explain(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    boolean hole = feature == Feature.HOLE;
    Cell upper = cell(nominalSize, feature.toString() + "_upper");
    Cell lower = cell(nominalSize, feature.toString() + "_lower");
    return Derivation.of(FitText.nominal(nominalSize, true) + " " + designation())
        .step(hole ? "ES" : "es", "upper limit deviation", upper.address(), upper.value(), "thou", upper.source())
        .step(hole ? "EI" : "ei", "lower limit deviation", lower.address(), lower.value(), "thou", lower.source())
        .build();
  }

  /** A warning if the row is recalled and was found in no print. */
  @Override
  public List<Warning> warnings(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    Cell cell = cell(nominalSize, feature.toString() + "_upper");
    return cell.source().provenance() == Provenance.MEMORY
        ? List.of(new Warning("recalled-cell", cell.address() + ": " + cell.note(), cell.source()))
        : List.of();
  }

  private Cell cell(Length nominalSize, String column) {
    Table table = InchTables.get().table(fitClass);
    return table.cell(InchTables.get().row(InchLimitsKernel.range(nominalSize.mm(), fitClass.code())), column);
  }
}
