// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a measured roller may be.
 *
 * @param tolerance greatest difference that was permitted
 * @param candidates all sizes within the tolerance, the closest first; empty if there is none
 * @param closest the closest size of all, within the tolerance or not
 */
public record Identification(Length tolerance, List<Candidate> candidates, Candidate closest) implements Serializable {
  // Keeps an unmodifiable copy.
  public Identification {
    Objects.requireNonNull(tolerance, "tolerance");
    Objects.requireNonNull(candidates, "candidates");
    Objects.requireNonNull(closest, "closest");
    candidates = List.copyOf(candidates);
  }

  /**
   * Whether the measured dimensions leave just one size.
   *
   * @return true if there is exactly one candidate
   */
  public boolean unique() {
    return candidates.size() == 1;
  }

  /**
   * The threads that the candidates may have.
   *
   * @return designations, each once, in the order of the candidates
   */
  public Set<String> threads() {
    Set<String> threads = new LinkedHashSet<>();
    candidates.forEach(candidate -> threads.addAll(candidate.size().stud().threads()));
    return threads;
  }

  /**
   * What must be known before a nut or a tap is fetched.
   *
   * @return warnings: nothing found, several sizes, threads that differ by practice, metric and inch sizes that are alike
   */
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (candidates.isEmpty()) {
      warnings.add(new Warning("no-size-within-tolerance", Message.of("no tabulated size is within ", tolerance,
          "; the closest is ", closest), closest.size().source()));
      return warnings;
    }
    for (Candidate candidate : candidates) {
      List<String> threads = candidate.size().stud().threads();
      if (threads.size() > 1) {
        warnings.add(new Warning("thread-differs-by-practice", Message.of("a stud of ", candidate.size().stud().diameter(),
            " is made with ", String.join(" and with ", threads), ": check the pitch on the part"),
            candidate.size().source()));
        break;
      }
    }
    if (candidates.stream().map(c -> c.size().series().system()).distinct().count() > 1) {
      warnings.add(new Warning("metric-and-inch", Message.of("metric and inch sizes are within ", tolerance, ": ",
          candidates.stream()
              .map(c -> c.size().outsideDiameter() + " with " + String.join(" or ", c.size().stud().threads()))
              .collect(Collectors.joining(", ")), "; check the thread on the part,"
                  + " nuts of the two systems can start on the wrong stud"),
          SourceRef.commonPractice("check the thread before the nut is turned")));
    } else if (candidates.size() > 1) {
      warnings.add(new Warning("several-sizes", Message.of(candidates.size(), " sizes are within ", tolerance,
          ": measure more dimensions or closer"), candidates.get(0).size().source()));
    }
    return List.copyOf(warnings);
  }

  /** The candidates, one a line. */
  @Override
  public String toString() {
    return candidates.isEmpty()
        ? "no tabulated size within " + tolerance
        : candidates.stream().map(Candidate::toString).collect(Collectors.joining("\n"));
  }
}
