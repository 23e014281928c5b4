// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import holdfast.tables.SourceRef;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.Objects;

/**
 * A caution for work that can hurt someone. A caution points to a rule; it never claims that following it satisfies
 * the rule.
 *
 * @param signal what can happen if it is not followed
 * @param text the caution
 * @param source the rule or manual on which it rests
 */
public record Caution(SignalWord signal, String text, SourceRef source) implements Serializable {
  public Caution {
    Objects.requireNonNull(signal, "signal");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(source, "source");
  }

  @Override
  public String toString() {
    return text + " [" + TableSet.bundled().sources().citation(source.document()) + ", " + source.locator() + "]";
  }
}
