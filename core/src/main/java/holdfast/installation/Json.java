// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/** Writes records of text, numbers, truth values and lists of such as JSON, components in their order. */
final class Json {
  private Json() {}

  static String write(Object value) {
    if (value instanceof String text) {
      return quoted(text);
    }
    if (value instanceof Double || value instanceof Boolean) {
      return value.toString();
    }
    if (value instanceof List<?> list) {
      StringJoiner items = new StringJoiner(",", "[", "]");
      list.forEach(item -> items.add(write(item)));
      return items.toString();
    }
    StringJoiner members = new StringJoiner(",", "{", "}");
    for (RecordComponent component : value.getClass().getRecordComponents()) {
      members.add(quoted(component.getName()) + ":" + write(component(component, value)));
    }
    return members.toString();
  }

  private static Object component(RecordComponent component, Object holder) {
    try {
      return component.getAccessor().invoke(holder);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("component " + component, e);
    }
  }

  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < ' ') {
        out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }
}
