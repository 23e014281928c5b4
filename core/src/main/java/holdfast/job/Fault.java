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

  // Keeps the echo of a hostile file short and on its line.
  public Fault {
    Check.within(line, 1, Integer.MAX_VALUE, "line", "", "lines count from 1");
    Check.within(column, 1, Integer.MAX_VALUE, "column", "", "columns count from 1");
    Objects.requireNonNull(key, "key");
    accepted = plain(Objects.requireNonNull(accepted, "accepted"), Integer.MAX_VALUE);
    reason = plain(Objects.requireNonNull(reason, "reason"), Integer.MAX_VALUE);
    key = shortened(key);
    found = shortened(Objects.requireNonNull(found, "found"));
  }

  static String shortened(String text) {
    return plain(text, LONGEST) + (text.codePointCount(0, text.length()) > LONGEST ? " …" : "");
  }

  /** Without what breaks a line, moves a cursor or turns the direction of writing. */
  private static String plain(String text, int longest) {
    StringBuilder plain = new StringBuilder();
    text.codePoints().limit(longest).forEach(c -> {
      int type = Character.getType(c);
      boolean shown = !Character.isISOControl(c) && type != Character.FORMAT && type != Character.SURROGATE
          && type != Character.LINE_SEPARATOR && type != Character.PARAGRAPH_SEPARATOR && type != Character.UNASSIGNED;
      plain.appendCodePoint(shown ? c : '\u00b7');
    });
    return plain.toString();
  }

  /** For example {@code "line 12, column 11, nut.torque: '75' is not accepted …"}. */
  @Override
  public String toString() {
    return "line " + line + ", column " + column + (key.isEmpty() ? "" : ", " + key) + ": "
        + (found.isEmpty() ? "" : "'" + found + "': ") + reason + (accepted.isEmpty() ? "" : "; accepted: " + accepted);
  }
}
