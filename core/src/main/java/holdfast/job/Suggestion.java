// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word that a mistyped one most likely stands for. */
final class Suggestion {
  private static final int LONGEST = 60;

  private Suggestion() {}

  /** The nearest word, if no more than a third of its letters differ. */
  static Optional<String> of(String typed, Collection<String> known) {
    String word = typed.strip().toLowerCase(Locale.ROOT);
    if (word.isEmpty() || word.length() > LONGEST) {
      return Optional.empty();
    }
    return known.stream()
        .filter(candidate -> distance(word, candidate) <= Math.max(1, candidate.length() / 3))
        .min(Comparator.comparingInt(candidate -> distance(word, candidate)));
  }

  /** Letters to change, add or drop, with two swapped ones counted once. */
  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
        if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
