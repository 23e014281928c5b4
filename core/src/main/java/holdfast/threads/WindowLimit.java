// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import java.io.Serializable;
import java.util.Objects;

/**
 * One limit of a torque window.
 *
 * @param code short stable name for programs, for example {@code "stud-stress"}
 * @param content what is limited, in words with values
 * @param torque set torque at which the limit is just reached
 * @param source rule behind the limit
 */
public record WindowLimit(String code, Message content, Torque torque, SourceRef source) implements Serializable {
  public WindowLimit {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(content, "content");
    Objects.requireNonNull(torque, "torque");
    Objects.requireNonNull(source, "source");
  }

  /**
   * What is limited, its quantities as they print themselves.
   *
   * @return the words
   */
  public String meaning() {
    return content.toString();
  }

  /** Torque and meaning. */
  @Override
  public String toString() {
    return torque + ": " + content;
  }
}
