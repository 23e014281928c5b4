// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.Objects;

/**
 * Something that the reader of a result must know.
 *
 * @param code short stable name for programs, for example {@code "load-above-half-C"}
 * @param message the warning with the values that caused it
 * @param source where the limit comes from
 */
public record Warning(String code, String message, SourceRef source) implements Serializable {
  public Warning {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(message, "message");
    Objects.requireNonNull(source, "source");
  }

  @Override
  public String toString() {
    return message + " (" + source + ")";
  }
}
