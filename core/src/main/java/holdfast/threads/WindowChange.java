// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.trace.Message;
import java.io.Serializable;
import java.util.Objects;

/**
 * A change that would open an empty torque window, or would not.
 *
 * @param code short stable name for programs, for example {@code "less-friction"}
 * @param content what would be changed, in words with the value that just opens the window
 * @param opens whether this change alone opens it
 */
public record WindowChange(String code, Message content, boolean opens) implements Serializable {
  public WindowChange {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(content, "content");
  }

  /**
   * A change without quantities.
   *
   * @param code short stable name for programs
   * @param change what would be changed
   * @param opens whether this change alone opens it
   */
  public WindowChange(String code, String change, boolean opens) {
    this(code, Message.of(Objects.requireNonNull(change, "change")), opens);
  }

  /**
   * What would be changed, its quantities as they print themselves.
   *
   * @return the words
   */
  public String change() {
    return content.toString();
  }

  /**
   * The change and whether it is enough.
   *
   * @return the words, quantities as quantities
   */
  public Message words() {
    return Message.of(opens ? "opens the window: " : "not enough alone: ", content);
  }

  /** The change. */
  @Override
  public String toString() {
    return words().toString();
  }
}
