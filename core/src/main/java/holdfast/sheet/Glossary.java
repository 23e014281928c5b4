// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the symbols in the values of a sheet stand for; only those that occur are listed. Not thread-safe. */
final class Glossary {
  private static final Map<String, String> MEANINGS = new LinkedHashMap<>();

  static {
    MEANINGS.put("C0", "basic static load rating");
    MEANINGS.put("Cu", "fatigue load limit");
    MEANINGS.put("C", "basic dynamic load rating");
    MEANINGS.put("P", "equivalent load");
    MEANINGS.put("D", "outside diameter of the roller");
    MEANINGS.put("κ", "viscosity ratio: oil as it is over oil as it is needed");
    MEANINGS.put("eC", "contamination factor");
    MEANINGS.put("aISO", "life modification factor");
    MEANINGS.put("Rz", "greatest height of the roughness profile");
    MEANINGS.put("HRC", "hardness by Rockwell, scale C");
  }

  /** Single letters are symbols only where a number is given for them. */
  private static final Pattern SYMBOL =
      Pattern.compile("(?<![\\p{L}\\d°])(?:(C0|Cu|κ|eC|aISO|Rz|HRC)(?![\\p{L}\\d])|(C|P)(?= = )|(D)(?= \\d))");

  private final Map<String, String> found = new LinkedHashMap<>();

  /** The pieces of a text; a piece that is a symbol carries its meaning. */
  List<Map<String, Object>> words(String text) {
    List<Map<String, Object>> words = new ArrayList<>();
    Matcher symbols = SYMBOL.matcher(text);
    int from = 0;
    while (symbols.find()) {
      add(words, text.substring(from, symbols.start()), null);
      String symbol = symbols.group();
      found.put(symbol, MEANINGS.get(symbol));
      add(words, symbol, MEANINGS.get(symbol));
      from = symbols.end();
    }
    add(words, text.substring(from), null);
    return words;
  }

  private static void add(List<Map<String, Object>> words, String text, String meaning) {
    if (!text.isEmpty()) {
      Map<String, Object> word = new HashMap<>(Map.of("text", text));
      word.put("meaning", meaning == null ? List.of() : meaning);
      words.add(word);
    }
  }

  /** The symbols found so far. */
  List<Map<String, String>> entries() {
    return MEANINGS.keySet().stream().filter(found::containsKey)
        .map(symbol -> Map.of("symbol", symbol, "meaning", MEANINGS.get(symbol))).toList();
  }
}
