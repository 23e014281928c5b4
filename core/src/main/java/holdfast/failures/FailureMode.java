// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A symptom with what may be behind it.
 *
 * @param symptom what is seen
 * @param classes classes of damage by ISO 15243; empty for faults that are no damage of a bearing
 * @param group damage, or where in the work the fault lies: fastening, mounting, lubrication, seat, set-up
 * @param causes likely causes
 * @param checks what to check
 * @param corrections what to do
 * @param margins computed margins that speak for a cause; the link is the judgement of this project
 * @param source the first document that states it
 * @param documents all documents that state it
 */
public record FailureMode(
    String symptom,
    List<DamageClass> classes,
    String group,
    List<String> causes,
    List<String> checks,
    List<String> corrections,
    Set<Margin> margins,
    SourceRef source,
    List<String> documents)
    implements Serializable {
  // Keeps unmodifiable copies.
  public FailureMode {
    Objects.requireNonNull(symptom, "symptom");
    Objects.requireNonNull(classes, "classes");
    Objects.requireNonNull(group, "group");
    Objects.requireNonNull(causes, "causes");
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(corrections, "corrections");
    Objects.requireNonNull(margins, "margins");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(documents, "documents");
    classes = List.copyOf(classes);
    causes = List.copyOf(causes);
    checks = List.copyOf(checks);
    corrections = List.copyOf(corrections);
    margins = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(margins));
    documents = List.copyOf(documents);
  }

  /** Symptom, classes, causes, checks, correction and source, one a line. */
  @Override
  public String toString() {
    return symptom
        + (classes.isEmpty() ? " (" + group + ")" : " (" + String.join("; ",
            classes.stream().map(DamageClass::toString).toList()) + ")")
        + "\n  likely: " + String.join("; ", causes)
        + "\n  check: " + String.join("; ", checks)
        + "\n  correct: " + String.join("; ", corrections)
        + "\n  [" + String.join("; ", documents) + "]";
  }
}
