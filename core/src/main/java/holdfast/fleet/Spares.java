// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import holdfast.quantity.Check;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;

/**
 * Spares for a lead time.
 *
 * @param meanDemand expected failures in the lead time (a count)
 * @param wanted wanted service level (dimensionless)
 * @param stock least stock that reaches it
 */
public record Spares(double meanDemand, double wanted, int stock) implements Traced, Serializable {
  private static final SourceRef POISSON = SourceRef.derived("distribution of Poisson: P(N ≤ s) = e^−m Σ m^k/k!, k from 0 to s");

  public Spares {
    Check.finite(meanDemand, "mean demand", "");
    Check.finite(wanted, "wanted service level", "");
  }

  /**
   * Spares for a mean demand.
   *
   * @param meanDemand expected failures in the lead time (a count), 0 up to 100000
   * @param serviceLevel wanted probability that the stock suffices, 0 or more and below 1
   * @return the spares
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static Spares of(double meanDemand, double serviceLevel) {
    return new Spares(meanDemand, serviceLevel, SparesKernel.stock(meanDemand, serviceLevel));
  }

  /**
   * Service level that the stock reaches.
   *
   * @return probability that the demand does not exceed the stock
   */
  public double reached() {
    return SparesKernel.serviceLevel(meanDemand, stock);
  }

  @Override
  public Derivation explain() {
    return Derivation.of("Spares for the lead time")
        .step("P", "service level of the stock", "e^−m Σ m^k/k!, k from 0 to s", reached(), "", POISSON,
            "m = " + Numbers.significant(meanDemand, 6), "s = " + stock)
        .step("s", "stock", "least s with P(N ≤ s) ≥ wanted level", stock, "", POISSON,
            "wanted level = " + Numbers.shortest(wanted))
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return List.of(new Warning("poisson-demand", "failures of a fleet that was fitted together cluster at the end of its life:"
        + " the distribution of Poisson holds for many places of mixed age", POISSON));
  }

  /** For example {@code "3 spares (mean demand 1.2, service level 96.6 %)"}. */
  @Override
  public String toString() {
    return stock + (stock == 1 ? " spare" : " spares") + " (mean demand " + Numbers.significant(meanDemand, 3)
        + ", service level " + Numbers.significant(100 * reached(), 3) + " %)";
  }
}
