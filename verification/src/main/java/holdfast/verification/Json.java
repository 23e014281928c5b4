// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.Iterator;
import java.util.Map;

/** Writes maps, lists, texts, whole numbers and truth values as JSON (RFC 8259). */
final class Json {
  private final StringBuilder text = new StringBuilder();

  private Json() {}

  static String of(Object value) {
    Json json = new Json();
    json.write(value);
    return json.text.append('\n').toString();
  }

  private void write(Object value) {
    if (value instanceof Map<?, ?> map) {
      open('{');
      for (Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator(); entries.hasNext(); ) {
        Map.Entry<?, ?> entry = entries.next();
        quote(entry.getKey().toString());
        text.append(": ");
        write(entry.getValue());
        text.append(entries.hasNext() ? ",\n" : "\n");
      }
      text.append('}');
    } else if (value instanceof Iterable<?> list) {
      open('[');
      for (Iterator<?> items = list.iterator(); items.hasNext(); ) {
        write(items.next());
        text.append(items.hasNext() ? ",\n" : "\n");
      }
      text.append(']');
    } else if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
      text.append(value);
    } else if (value instanceof String string) {
      quote(string);
    } else {
      throw new IllegalArgumentException("no JSON for " + value);
    }
  }

  private void open(char bracket) {
    text.append(bracket).append('\n');
  }

  private void quote(String string) {
    text.append('"');
    for (int i = 0; i < string.length(); i++) {
      char c = string.charAt(i);
      switch (c) {
        case '"', '\\' -> text.append('\\').append(c);
        case '\n' -> text.append("\\n");
        default -> {
          if (c < ' ') {
            text.append("\\u00").append(Character.forDigit(c >> 4, 16)).append(Character.forDigit(c & 15, 16));
          } else {
            text.append(c);
          }
        }
      }
    }
    text.append('"');
  }
}
