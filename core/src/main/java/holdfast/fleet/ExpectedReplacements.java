// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Replacements on failure that are expected in a period.
 *
 * @param years length of the period in years
 * @param positions the places
 * @param each expected replacements of each place, in the order of the places
 */
public record ExpectedReplacements(double years, List<FleetPosition> positions, List<Double> each)
    implements Traced, Serializable {
  // Keeps unmodifiable copies.
  public ExpectedReplacements {
    Objects.requireNonNull(positions, "positions");
    Objects.requireNonNull(each, "each");
    Check.finite(years, "length of the period", "years");
    if (each.size() != positions.size()) {
      throw new InputException("expected replacements", each.size() + " numbers", positions.size() + " numbers",
          "one for each place");
    }
    each.forEach(one -> Check.finite(one, "expected replacements of a place", ""));
    positions = List.copyOf(positions);
    each = List.copyOf(each);
  }

  /**
   * Expected replacements of the whole fleet.
   *
   * @return the sum over the places
   */
  public double total() {
    return each.stream().mapToDouble(Double::doubleValue).sum();
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Expected replacements in " + Numbers.significant(years, 4) + " years");
    for (int i = 0; i < positions.size(); i++) {
      FleetPosition p = positions.get(i);
      steps.step("M", "expected replacements, " + p.name(), "M(t) = F(t) + ∫ M(t − x) dF(x)", each.get(i), "",
          FleetPlan.renewalSource(), "t = " + Numbers.significant(p.hoursPerYear() * years, 6) + " h", "age = " + p.age());
    }
    return steps.step("ΣM", "expected replacements of the fleet", "sum over the places", total(), "",
        SourceRef.derived("expectations add")).build();
  }

  @Override
  public List<Warning> warnings() {
    return List.of(new Warning("survival-of-the-caller", "the survival function is the caller's: mounting faults, dirt and"
        + " overload fail rollers that rating life does not count", SourceRef.derived("rating life counts fatigue alone")));
  }

  /** For example {@code "3.2 replacements in 2 years"}. */
  @Override
  public String toString() {
    return Numbers.significant(total(), 3) + " replacements in " + Numbers.significant(years, 4) + " years";
  }
}
