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
 * Interval of replacing a group of rollers together.
 *
 * @param years the interval in years
 * @param hours running hours in the interval, at the place that runs most
 * @param wanted wanted reliability
 * @param reached reliability at the interval; at least the wanted one
 * @param places number of rollers that all must survive; 1 if each is looked at by itself
 */
public record GroupReplacement(double years, double hours, double wanted, double reached, int places)
    implements Traced, Serializable {
  public GroupReplacement {
    Check.finite(years, "interval", "years");
    Check.finite(hours, "running hours", "h");
    Check.finite(wanted, "wanted reliability", "");
    Check.finite(reached, "reliability reached", "");
  }

  @Override
  public Derivation explain() {
    return Derivation.of("Interval of group replacement")
        .step("R", "reliability at the interval", places > 1 ? "Π S(h·T) over the places" : "S(h·T)", reached, "",
            SourceRef.derived("independent places: the probabilities multiply"), "wanted: " + Numbers.shortest(wanted),
            "places: " + places)
        .step("T", "interval", "greatest T with R(T) ≥ wanted R, by bracketed bisection", years, "years",
            SourceRef.derived("survival falls with time, so the bracket holds the only crossing"))
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return reached - wanted > 1e-6
        ? List.of(new Warning("survival-jumps", "the survival function jumps at the interval from "
            + Numbers.significant(reached, 5) + " to below " + Numbers.significant(wanted, 5),
            SourceRef.derived("a step in the caller's survival function")))
        : List.of();
  }

  /** For example {@code "1.25 years (1875 h at the place that runs most)"}. */
  @Override
  public String toString() {
    return Numbers.significant(years, 3) + " years (" + Numbers.significant(hours, 4) + " h at the place that runs most)";
  }
}
