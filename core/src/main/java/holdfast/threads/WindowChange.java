// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import java.io.Serializable;
import java.util.Objects;

/**
 * A change that would open an empty torque window, or would not.
 *
 * @param code short stable name for programs, for example {@code "less-friction"}
 * @param change what would be changed, in words with the value that just opens the window
 * @param opens whether this change alone opens it
 */
public record WindowChange(String code, String change, boolean opens) implements Serializable {
  public WindowChange {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(change, "change");
  }

  /** The change. */
  @Override
  public String toString() {
    return (opens ? "opens the window: " : "not enough alone: ") + change;
  }
}
