// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.Serializable;
import java.util.regex.Pattern;

/**
 * One edition of a table set: what it calls itself, and the digest of its files, which tells two editions of one name apart.
 *
 * @param version version of the set, for example {@code "2026.1"}: 1 to 64 of 0-9, A-Z, a-z, '.' and '-', because it
 *     stands on the line of a sheet that says what to trust
 * @param digest SHA-256 over every file of the set: 64 hexadecimal digits in lower case
 */
public record Edition(String version, String digest) implements Serializable {
  static final Pattern VERSION = Pattern.compile("[0-9A-Za-z.-]{1,64}");
  static final String RULE = "1 to 64 of 0-9, A-Z, a-z, '.' and '-'";

  private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");

  public Edition {
    if (!VERSION.matcher(version).matches() || !DIGEST.matcher(digest).matches()) {
      throw new IllegalArgumentException(
          "edition '" + version + "', '" + digest + "': the version must be " + RULE + ", the digest 64 digits 0-9a-f");
    }
  }

  @Override
  public String toString() {
    return "table set " + version + ", SHA-256 " + digest;
  }
}
