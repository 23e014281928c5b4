// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.quantity.Check;
import java.io.Serializable;
import java.util.Objects;

/**
 * One fault of a job file.
 *
 * @param line line where it stands, from 1
 * @param column column where it stands, from 1
 * @param key the key, its parts joined by points, for example {@code "nut.torque"}; empty where no key can be told
 * @param found what stood there, shortened; empty where something is missing
 * @param accepted what is accepted there
 * @param reason why what stood there is not
 */
public record Fault(int line, int column, String key, String found, String accepted, String reason) implements Serializable {
  private static final int LONGEST = 80;

  // Keeps the echo of a hostile file short.
  public Fault {
    Check.within(line, 1, Integer.MAX_VALUE, "line", "", "lines count from 1");
    Check.within(column, 1, Integer.MAX_VALUE, "column", "", "columns count from 1");
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(accepted, "accepted");
    Objects.requireNonNull(reason, "reason");
    key = shortened(key);
    found = shortened(Objects.requireNonNull(found, "found"));
  }

  static String shortened(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints().limit(LONGEST).forEach(c -> {
      int type = Character.getType(c);
      boolean shown = !Character.isISOControl(c) && type != Character.FORMAT && type != Character.SURROGATE
          && type != Character.LINE_SEPARATOR && type != Character.PARAGRAPH_SEPARATOR && type != Character.UNASSIGNED;
      plain.appendCodePoint(shown ? c : '\u00b7');
    });
    return text.codePointCount(0, text.length()) > LONGEST ? plain + " …" : plain.toString();
  }

  /** For example {@code "line 12, column 11, nut.torque: '75' is not accepted …"}. */
  @Override
  public String toString() {
    return "line " + line + ", column " + column + (key.isEmpty() ? "" : ", " + key) + ": "
        + (found.isEmpty() ? "" : "'" + found + "': ") + reason + (accepted.isEmpty() ? "" : "; accepted: " + accepted);
  }
}
