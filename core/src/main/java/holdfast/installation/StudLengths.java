// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Lengths of a stud, both from its end.
 *
 * @param stud length from the clamped face of the flange to the end of the stud, over 0
 * @param thread length of the thread, run-out included, over 0 and below the length of the stud
 */
public record StudLengths(Length stud, Length thread) implements Serializable {
  // Refuses a thread that leaves no shank.
  public StudLengths {
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(thread, "thread");
    Check.positive(stud.mm(), "length of the stud", "mm", "it is a size");
    Check.positive(thread.mm(), "length of the thread", "mm", "the nut needs a thread");
    if (thread.compareTo(stud) >= 0) {
      throw new InputException("length of the thread", thread.toString(), "below the length of the stud, " + stud,
          "a plain shank sits in the bore");
    }
  }

  /**
   * The plain shank, which sits in the bore of the member.
   *
   * @return length of the stud less its thread
   */
  public Length shank() {
    return stud.minus(thread);
  }
}
