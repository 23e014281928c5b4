// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Words of a text for searching. A word is a run of letters and digits in lower case; words that say nothing are left
 * out; one ending of plural or inflection is cut: "ies" becomes "y"; "ing", "ed", "es" and "s" are dropped; then a
 * doubled last consonant becomes single and a final "e" is dropped. At least three letters remain, else the word stays.
 */
final class Words {
  private static final Set<String> SAY_NOTHING =
      Set.of("a", "an", "and", "at", "by", "for", "from", "in", "is", "it", "of", "on", "or", "the", "to", "under", "when",
          "with");

  private Words() {}

  static Set<String> of(String text) {
    Set<String> stems = new LinkedHashSet<>();
    for (String word : tokens(text)) {
      stems.add(stem(word));
    }
    return stems;
  }

  static List<String> tokens(String text) {
    List<String> tokens = new ArrayList<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+", -1)) {
      if (!word.isEmpty() && !SAY_NOTHING.contains(word)) {
        tokens.add(word);
      }
    }
    return tokens;
  }

  static String stem(String word) {
    String cut = word;
    if (word.endsWith("ies") && word.length() > 4) {
      cut = word.substring(0, word.length() - 3) + "y";
    } else {
      for (String ending : List.of("ing", "ed", "es", "s")) {
        boolean doubleS = ending.equals("s") && word.endsWith("ss");
        if (word.endsWith(ending) && word.length() - ending.length() >= 3 && !doubleS) {
          cut = word.substring(0, word.length() - ending.length());
          break;
        }
      }
    }
    int n = cut.length();
    boolean doubled = n > 3 && cut.charAt(n - 1) == cut.charAt(n - 2) && "bdfgklmnprtz".indexOf(cut.charAt(n - 1)) >= 0;
    if (doubled) {
      cut = cut.substring(0, n - 1);
    }
    return cut.length() > 3 && cut.endsWith("e") ? cut.substring(0, cut.length() - 1) : cut;
  }
}
