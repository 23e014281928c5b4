// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
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
 * A fit and its equivalent on the other basis, with the same letter and the same grades: H7/p6 and P7/h6. The
 * correction Delta makes the two the same where the shaft is one grade finer than the hole; elsewhere they may differ,
 * and the result tells by how much.
 *
 * @param from the fit as given
 * @param to its equivalent on the other basis
 */
@Source(document = "ISO 286-1:1988", locator = "Annex A, general and special rule for holes", provenance = Provenance.MEMORY)
public record BasisChange(Fit from, Fit to) implements Traced, Serializable {
  private static final SourceRef RULE = SourceRef.memory("ISO 286-1:1988", "Annex A, general and special rule for holes");

  public BasisChange {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
  }

  /**
   * The equivalent of a fit on the other basis.
   *
   * @param fit a fit of two tolerance classes, one of them H or h but not both
   * @return both fits
   * @throws InputException if the fit is on no basis or on both, or the other class is not defined for the size
   */
  public static BasisChange of(Fit fit) {
    Objects.requireNonNull(fit, "fit");
    ToleranceClass hole = Basis.isoClass(fit.hole(), Feature.HOLE);
    ToleranceClass shaft = Basis.isoClass(fit.shaft(), Feature.SHAFT);
    boolean basicHole = hole.letter() == DeviationLetter.H;
    if (basicHole == (shaft.letter() == DeviationLetter.H)) {
      throw new InputException(
          "fit",
          fit.designation(),
          "a hole H with another shaft than h, or a shaft h with another hole than H",
          basicHole ? "H with h is on both bases and its own equivalent" : "the fit is on no basis");
    }
    // The letters change places, the grades stay.
    ToleranceClass newHole = shaft.mirrored().withGrade(hole.grade());
    ToleranceClass newShaft = hole.mirrored().withGrade(shaft.grade());
    return new BasisChange(fit, Fit.of(fit.nominalSize(), newHole, newShaft));
  }

  /**
   * Whether both fits have the same clearances.
   *
   * @return true if least and greatest clearance agree
   */
  public boolean isSame() {
    return minimumChange().mm() == 0 && maximumChange().mm() == 0;
  }

  /**
   * Change of the least clearance.
   *
   * @return least clearance of the new fit - that of the given one
   */
  public Length minimumChange() {
    return change(to.minimumClearance(), from.minimumClearance());
  }

  /**
   * Change of the greatest clearance.
   *
   * @return greatest clearance of the new fit - that of the given one
   */
  public Length maximumChange() {
    return change(to.maximumClearance(), from.maximumClearance());
  }

  /** Both clearances are whole hundredths of a micrometre; what is smaller is noise of the binary fraction. */
  private static Length change(Length now, Length before) {
    return KnownUnits.UM.of(Math.rint(now.minus(before).in(KnownUnits.UM) * 100) / 100);
  }

  @Override
  public Derivation explain() {
    return Derivation.of(from.name() + " on the other basis: " + to.designation())
        .steps(from.explain())
        .steps(to.explain())
        .step("dC_max", "change of the greatest clearance", "C_max new - C_max given",
            maximumChange().in(KnownUnits.UM), "µm", RULE)
        .step("dC_min", "change of the least clearance", "C_min new - C_min given",
            minimumChange().in(KnownUnits.UM), "µm", RULE)
        .build();
  }

  /** Those of both fits, and one if the clearances differ. */
  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(from.warnings());
    warnings.addAll(to.warnings());
    if (!isSame()) {
      String message =
          to.designation() + " differs from " + from.designation() + ": least clearance by "
              + FitText.deviation(minimumChange()) + ", greatest by " + FitText.deviation(maximumChange());
      warnings.add(new Warning("equivalent-differs", message, RULE));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code "25 H7/p6 → P7/h6: same clearances"}. */
  @Override
  public String toString() {
    String difference =
        "least clearance " + FitText.deviation(minimumChange()) + ", greatest " + FitText.deviation(maximumChange());
    return from.name() + " → " + to.designation() + ": " + (isSame() ? "same clearances" : difference);
  }
}
