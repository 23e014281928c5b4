// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.Objects;

/**
 * What can be done about parts that do not pass. Advice: the instructions of the makers and the judgement of a licensed
 * engineer go before it.
 *
 * @param code short stable name for programs, for example {@code "bore-large"}
 * @param text the advice
 * @param source where it comes from
 */
public record Remedy(String code, String text, SourceRef source) implements Serializable {
  public Remedy {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(source, "source");
  }

  @Override
  public String toString() {
    return text + " (" + source + ")";
  }
}
