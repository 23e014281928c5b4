// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The preload band that is left in service: scatter of the tightening, less embedding, with the thermal change.
 *
 * @param assembly the tightening with its scatter
 * @param embeddingLoss preload lost by embedding FZ, 0 or more
 * @param thermalChange change with temperature; both the cold and the warm state count
 */
public record ServicePreload(ScatteredPreload assembly, Force embeddingLoss, Force thermalChange)
    implements Traced, Serializable {

  // Refuses an embedding that adds preload.
  public ServicePreload {
    Objects.requireNonNull(assembly, "assembly");
    Objects.requireNonNull(embeddingLoss, "embeddingLoss");
    Objects.requireNonNull(thermalChange, "thermalChange");
    Check.notNegative(embeddingLoss.newton(), "embedding loss FZ", "N", "surfaces settle one way");
  }

  /**
   * Least preload in service.
   *
   * @return worst case of the assembly less embedding and less any thermal loss; 0 if nothing is left
   */
  public Force least() {
    double left = assembly.worstCaseLeast().newton() - embeddingLoss.newton() + Math.min(0, thermalChange.newton());
    return new Force(Math.max(0, left));
  }

  /**
   * Greatest preload in service: before embedding, with any thermal gain.
   *
   * @return worst case of the assembly and thermal gain
   */
  public Force greatest() {
    return new Force(assembly.worstCaseGreatest().newton() + Math.max(0, thermalChange.newton()));
  }

  /** How the band follows; the last step is the least preload. */
  @Override
  public Derivation explain() {
    return Derivation.of("Preload in service")
        .steps(assembly.explain())
        .step("Fmax", "greatest preload in service", "FM,max + thermal gain", greatest().newton(), "N",
            SourceRef.published("NASA TM-106943", "eq. (12)"), "ΔF = " + thermalChange)
        .step("Fmin", "least preload in service", "FM,min − FZ − thermal loss, not below 0", least().newton(), "N",
            SourceRef.published("NASA TM-106943", "eq. (13)"), "FZ = " + embeddingLoss, "ΔF = " + thermalChange)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(assembly.warnings());
    if (least().newton() == 0) {
      warnings.add(
          new Warning("preload-lost", "in the worst case no preload is left in service", SourceRef.derived("sum of the losses")));
    }
    return warnings;
  }

  /** The band. */
  @Override
  public String toString() {
    return "preload in service " + least() + " … " + greatest();
  }
}
