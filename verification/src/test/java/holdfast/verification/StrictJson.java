// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON by the grammar of RFC 8259 and nothing else; numbers as Double. For tests. */
final class StrictJson {
  private final String text;
  private int at;

  private StrictJson(String text) {
    this.text = text;
  }

  static Object parse(String text) {
    StrictJson json = new StrictJson(text);
    Object value = json.value();
    json.space();
    if (json.at != text.length()) {
      throw json.wrong("the end");
    }
    return value;
  }

  private Object value() {
    space();
    return switch (peek()) {
      case '{' -> object();
      case '[' -> array();
      case '"' -> string();
      case 't' -> word("true", true);
      case 'f' -> word("false", false);
      default -> number();
    };
  }

  private Map<String, Object> object() {
    Map<String, Object> map = new LinkedHashMap<>();
    take('{');
    space();
    if (peek() != '}') {
      do {
        space();
        String key = string();
        space();
        take(':');
        if (map.put(key, value()) != null) {
          throw wrong("a key once: " + key);
        }
        space();
      } while (more());
    }
    take('}');
    return map;
  }

  private List<Object> array() {
    List<Object> list = new ArrayList<>();
    take('[');
    space();
    if (peek() != ']') {
      do {
        list.add(value());
        space();
      } while (more());
    }
    take(']');
    return list;
  }

  private boolean more() {
    if (peek() == ',') {
      at++;
      return true;
    }
    return false;
  }

  private String string() {
    StringBuilder result = new StringBuilder();
    take('"');
    while (peek() != '"') {
      char c = text.charAt(at++);
      if (c < ' ') {
        throw wrong("no control character");
      }
      result.append(c == '\\' ? escape() : c);
    }
    at++;
    return result.toString();
  }

  private char escape() {
    char c = text.charAt(at++);
    return switch (c) {
      case '"', '\\', '/' -> c;
      case 'n' -> '\n';
      case 't' -> '\t';
      case 'u' -> {
        at += 4;
        yield (char) Integer.parseInt(text.substring(at - 4, at), 16);
      }
      default -> throw wrong("an escape");
    };
  }

  private Object number() {
    int from = at;
    while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    String number = text.substring(from, at);
    if (!number.matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?")) {
      throw wrong("a number");
    }
    return Double.valueOf(number);
  }

  private Object word(String word, Object value) {
    if (!text.startsWith(word, at)) {
      throw wrong(word);
    }
    at += word.length();
    return value;
  }

  private void space() {
    while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  private char peek() {
    if (at >= text.length()) {
      throw wrong("more text");
    }
    return text.charAt(at);
  }

  private void take(char wanted) {
    if (peek() != wanted) {
      throw wrong("'" + wanted + "'");
    }
    at++;
  }

  private IllegalArgumentException wrong(String wanted) {
    return new IllegalArgumentException("at " + at + ": expected " + wanted);
  }
}
