// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A failure mode that was found by words.
 *
 * @param mode the failure mode
 * @param inSymptom words of the query that its symptom holds
 * @param elsewhere words of the query that only its classes, causes, checks or corrections hold
 */
public record Finding(FailureMode mode, List<String> inSymptom, List<String> elsewhere) implements Serializable {
  // Keeps unmodifiable copies.
  public Finding {
    Objects.requireNonNull(mode, "mode");
    Objects.requireNonNull(inSymptom, "inSymptom");
    Objects.requireNonNull(elsewhere, "elsewhere");
    inSymptom = List.copyOf(inSymptom);
    elsewhere = List.copyOf(elsewhere);
  }

  /**
   * Number of words of the query that were found.
   *
   * @return in the symptom and elsewhere together
   */
  public int matches() {
    return inSymptom.size() + elsewhere.size();
  }

  /** The failure mode as text. */
  @Override
  public String toString() {
    return mode.toString();
  }
}
