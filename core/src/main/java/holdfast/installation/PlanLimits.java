// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.installation.LimitCheck.Bound;
import holdfast.installation.LimitCheck.Consequence;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * All limits of a plan: fatigue, static, ring, stud, track, speed, temperature, least load and tilt.
 *
 * @param checks the limits that are known; at least one of them has a margin
 * @param notKnown what is not among them and why
 */
public record PlanLimits(List<LimitCheck> checks, List<Warning> notKnown) implements Traced, Serializable {
  private static final SourceRef RATIO = SourceRef.derived("permitted over demanded, or demanded over least; the least governs");

  // Keeps unmodifiable copies.
  public PlanLimits {
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(notKnown, "notKnown");
    if (checks.isEmpty()) {
      throw new InputException("limits of a plan", "none", "at least one", "one of them governs");
    }
    checks = List.copyOf(checks);
    if (checks.stream().noneMatch(check -> check.margin().isPresent())) {
      throw new InputException("limits of a plan", checks.toString(), "at least one with a margin", "one of them governs");
    }
    notKnown = List.copyOf(notKnown);
  }

  /**
   * The limit with the least margin.
   *
   * @return the limit that governs
   */
  public LimitCheck governing() {
    return checks.stream()
        .filter(check -> check.margin().isPresent())
        .min(Comparator.comparingDouble(check -> check.margin().getAsDouble()))
        .orElseThrow();
  }

  /**
   * The limits that are exceeded.
   *
   * @return in their order; empty if all hold
   */
  public List<LimitCheck> exceeded() {
    return checks.stream().filter(check -> !check.holds()).toList();
  }

  /** Margin by margin; the last step is the least. */
  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Limits and margins");
    for (LimitCheck check : checks) {
      check
          .margin()
          .ifPresent(
              margin ->
                  steps.step("m", check.name(),
                      check.bound() == Bound.AT_MOST ? "permitted / demanded" : "demanded / least", margin, "",
                      check.sources().get(0), "demanded " + check.demand(), "permitted " + check.permitted()));
    }
    return steps
        .step("m", "governing: " + governing().name(), "least of the margins", governing().margin().getAsDouble(), "", RATIO)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(notKnown);
    for (LimitCheck check : exceeded()) {
      if (check.consequence() == Consequence.WARNING) {
        warnings.add(new Warning("limit-exceeded", Message.of("the limit '", check.name(), "' is exceeded: ", check.demand(),
            (check.bound() == Bound.AT_MOST ? ", at most " : ", at least "), check.permitted()), check.sources().get(0)));
      }
    }
    return List.copyOf(warnings);
  }

  /** For example {@code "governed by fatigue, margin 1.18"}. */
  @Override
  public String toString() {
    return "governed by " + governing().name() + ", margin "
        + Numbers.significant(governing().margin().getAsDouble(), 3);
  }
}
