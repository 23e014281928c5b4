// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.verification.Comparison.Outcome;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The outcome of all suites.
 *
 * @param results the suites with their comparisons, in the order of the report
 */
public record Audit(List<Result> results) {

  /**
   * One suite and what came of it.
   *
   * @param suite the suite
   * @param comparisons its comparisons
   */
  public record Result(Suite suite, List<Comparison> comparisons) {
    // Keeps an unmodifiable copy of the list.
    public Result {
      comparisons = List.copyOf(comparisons);
    }

    /**
     * Number of comparisons with an outcome.
     *
     * @param outcome the outcome
     * @return how many
     */
    public long count(Outcome outcome) {
      return comparisons.stream().filter(c -> c.outcome() == outcome).count();
    }
  }

  // Keeps an unmodifiable copy of the list.
  public Audit {
    results = List.copyOf(results);
  }

  /**
   * Runs suites.
   *
   * @param suites the suites
   * @return the outcome
   */
  public static Audit of(List<Suite> suites) {
    List<Result> results = new ArrayList<>();
    for (Suite suite : suites) {
      results.add(new Result(suite, suite.run()));
    }
    return new Audit(results);
  }

  /**
   * All comparisons.
   *
   * @return in the order of the report
   */
  public List<Comparison> comparisons() {
    return results.stream().flatMap(result -> result.comparisons().stream()).toList();
  }

  /**
   * Number of comparisons with an outcome.
   *
   * @param outcome the outcome
   * @return how many
   */
  public long count(Outcome outcome) {
    return results.stream().mapToLong(result -> result.count(outcome)).sum();
  }

  /**
   * Comparisons by kind of evidence.
   *
   * @return the number for each kind that occurs
   */
  public Map<Evidence, Long> byEvidence() {
    Map<Evidence, Long> counts = new EnumMap<>(Evidence.class);
    comparisons().forEach(c -> counts.merge(c.evidence(), 1L, Long::sum));
    return counts;
  }

  /**
   * Whether nothing is hidden: no undisclosed disagreement, no stale disclosure.
   *
   * @return true if the audit passes
   */
  public boolean passes() {
    return count(Outcome.UNDISCLOSED) == 0 && count(Outcome.STALE_DISCLOSURE) == 0;
  }
}
