// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.Objects;

/**
 * Something that the reader of a result must know.
 *
 * @param code short stable name for programs, for example {@code "load-above-half-C"}
 * @param content the warning with the quantities that caused it
 * @param source where the limit comes from
 */
public record Warning(String code, Message content, SourceRef source) implements Serializable {
  public Warning {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(content, "content");
    Objects.requireNonNull(source, "source");
  }

  /**
   * A warning without quantities.
   *
   * @param code short stable name for programs
   * @param message the warning
   * @param source where the limit comes from
   */
  public Warning(String code, String message, SourceRef source) {
    this(code, Message.of(Objects.requireNonNull(message, "message")), source);
  }

  /**
   * The warning as text, its quantities as they print themselves.
   *
   * @return the sentence
   */
  public String message() {
    return content.toString();
  }

  @Override
  public String toString() {
    return message() + " (" + source + ")";
  }
}
