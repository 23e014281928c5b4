// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

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
import java.util.Optional;

/**
 * The fit of two measured parts at 20 °C: clearance from the readings, its uncertainty, and whether the parts conform
 * to the drawing.
 *
 * @param drawing the fit that the drawing asks for
 * @param hole readings of the hole
 * @param shaft readings of the shaft
 */
@Source(document = "derivation", locator = "difference of two independent readings", provenance = Provenance.DERIVED)
@Source(document = "ISO 14253-1:2017", locator = "decision rules", provenance = Provenance.MEMORY)
public record MeasuredFit(Fit drawing, Readings hole, Readings shaft) implements Traced, Serializable {
  private static final SourceRef DIFFERENCE =
      SourceRef.derived("clearance as difference of sizes at 20 °C; uncertainties of independent readings add in quadrature");
  private static final SourceRef DECISION = SourceRef.memory("ISO 14253-1:2017", "decision rules");

  public MeasuredFit {
    Objects.requireNonNull(drawing, "drawing");
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(shaft, "shaft");
  }

  /**
   * Clearance of the mean sizes.
   *
   * @return mean hole - mean shaft; negative for an interference
   */
  public Length clearance() {
    return hole.mean().minus(shaft.mean());
  }

  /**
   * Greatest clearance anywhere on the parts, from the extreme readings.
   *
   * @return greatest hole - smallest shaft; negative for an interference
   */
  public Length maximumClearance() {
    return hole.range().upper().minus(shaft.range().lower());
  }

  /**
   * Least clearance anywhere on the parts, from the extreme readings.
   *
   * @return smallest hole - greatest shaft; negative for an interference
   */
  public Length minimumClearance() {
    return hole.range().lower().minus(shaft.range().upper());
  }

  /**
   * Expanded uncertainty of a clearance.
   *
   * @return root of the sum of squares of both uncertainties
   */
  public Length uncertainty() {
    return new Length(Math.hypot(hole.uncertainty().mm(), shaft.uncertainty().mm()));
  }

  /**
   * Kind of the fit, as the readings have it.
   *
   * @return clearance, transition or interference; transition if only some places interfere
   */
  public FitKind kind() {
    return FitKind.of(minimumClearance(), maximumClearance());
  }

  /**
   * Kind of the fit, if the uncertainty leaves no doubt about it.
   *
   * @return the kind, or empty if the uncertainty reaches over zero clearance
   */
  public Optional<FitKind> certainKind() {
    // The whole uncertainty on either side of no clearance, as on either side of a limit.
    if (Conformity.of(minimumClearance(), uncertainty()) == Conformity.PROVEN) {
      return Optional.of(FitKind.CLEARANCE);
    }
    return Conformity.of(maximumClearance().negated(), uncertainty()) == Conformity.PROVEN
        ? Optional.of(FitKind.INTERFERENCE)
        : Optional.empty();
  }

  /**
   * Whether the hole conforms to its limits of size.
   *
   * @return proven, undecided or disproved
   */
  public Conformity holeConformity() {
    return hole.conformity(drawing.hole().limits());
  }

  /**
   * Whether the shaft conforms to its limits of size.
   *
   * @return proven, undecided or disproved
   */
  public Conformity shaftConformity() {
    return shaft.conformity(drawing.shaft().limits());
  }

  /** Mean sizes, uncertainty and, as the last step, the clearance of the mean sizes. */
  @Override
  public Derivation explain() {
    String mean = "mean of d / (1 + alpha (T - 20 °C))";
    return Derivation.of(this.toString())
        .step("D_h", "mean size of the hole at 20 °C", mean, hole.mean().mm(), "mm", DIFFERENCE, inputs(hole))
        .step("D_s", "mean size of the shaft at 20 °C", mean, shaft.mean().mm(), "mm", DIFFERENCE, inputs(shaft))
        .step("U", "expanded uncertainty of the clearance", "sqrt(U_h² + U_s²)", uncertainty().in(KnownUnits.UM), "µm",
            DIFFERENCE, "U_h = " + hole.uncertainty(), "U_s = " + shaft.uncertainty())
        .step("C", "clearance of the mean sizes (negative: interference)", "D_h - D_s", clearance().in(KnownUnits.UM), "µm",
            DIFFERENCE)
        .build();
  }

  private static String[] inputs(Readings readings) {
    List<String> inputs = new ArrayList<>();
    readings.sizes().forEach(size -> inputs.add("d = " + FitText.size(size)));
    inputs.add("alpha = " + readings.expansion());
    inputs.add("T = " + readings.temperature());
    return inputs.toArray(String[]::new);
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    conformity(warnings, "hole", holeConformity(), hole, drawing.hole());
    conformity(warnings, "shaft", shaftConformity(), shaft, drawing.shaft());
    if (certainKind().isEmpty()) {
      String message = "the readings do not settle the kind of the fit: clearance "
          + FitText.deviation(clearance()) + " with an uncertainty of " + FitText.amount(uncertainty(), false);
      warnings.add(new Warning("kind-uncertain", message, DIFFERENCE));
    }
    if (kind() != drawing.kind() && drawing.kind() != FitKind.TRANSITION) {
      String message = "the drawing asks for a " + drawing.kind() + ", the parts make a " + kind();
      warnings.add(new Warning("kind-differs", message, DIFFERENCE));
    }
    return List.copyOf(warnings);
  }

  private static void conformity(
      List<Warning> warnings, String part, Conformity conformity, Readings readings, TolerancedSize drawing) {
    if (conformity != Conformity.PROVEN) {
      String message = part + ": " + conformity + "; readings " + readings.range() + ", limits " + drawing.limits()
          + ", uncertainty " + FitText.amount(readings.uncertainty(), false);
      warnings.add(new Warning(part + "-conformity", message, DECISION));
    }
  }

  /** For example {@code "25 H7/p6 as measured: interference fit, 12 µm … 17 µm interference, ± 2.5 µm"}. */
  @Override
  public String toString() {
    return drawing.name() + " as measured: " + kind() + ", "
        + FitText.clearances(minimumClearance(), maximumClearance(), drawing.hole().origin().inInches())
        + ", ± " + FitText.amount(uncertainty(), drawing.hole().origin().inInches());
  }
}
