// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;

/** The entries of a {@code .properties} file with their lines. Each name stands once. */
final class Entries {
  private final String file;
  private final Map<String, String> values = new LinkedHashMap<>();
  private final Map<String, Integer> lines = new LinkedHashMap<>();

  private Entries(String file) {
    this.file = file;
  }

  /** {@link Properties} knows neither lines nor that a name stood before, so each entry is given to it alone. */
  static Entries read(String file, String text) {
    Entries entries = new Entries(file);
    List<String> lines = text.lines().toList();
    int number = 0;
    while (number < lines.size()) {
      int first = number + 1;
      StringBuilder entry = new StringBuilder(lines.get(number++));
      while (continues(entry) && number < lines.size()) {
        entry.append('\n').append(lines.get(number++));
      }
      entries.add(first, entry.toString());
    }
    return entries;
  }

  /** A comment never goes on; another line does where it ends in an odd number of backslashes. */
  private static boolean continues(CharSequence entry) {
    String text = entry.toString();
    String start = text.stripLeading();
    int backslashes = 0;
    while (backslashes < text.length() && text.charAt(text.length() - 1 - backslashes) == '\\') {
      backslashes++;
    }
    return !start.startsWith("#") && !start.startsWith("!") && backslashes % 2 != 0;
  }

  private void add(int line, String text) {
    Properties one = new Properties();
    try {
      one.load(new StringReader(text));
    } catch (IllegalArgumentException e) {
      throw new TableFormatException(file, line, e.getMessage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    for (String name : one.stringPropertyNames()) {
      String value = one.getProperty(name).strip();
      // Here again, because the escapes of the format can write any character.
      Printable.require(file, line, name);
      Printable.require(file, line, value);
      if (values.putIfAbsent(name, value) != null) {
        throw new TableFormatException(file, line, "entry '" + name + "' stands in line " + lines.get(name) + " already");
      }
      lines.put(name, line);
    }
  }

  Set<String> names() {
    return values.keySet();
  }

  /** The value, or empty text if there is no such entry. */
  String value(String name) {
    return values.getOrDefault(name, "");
  }

  String required(String name) {
    String value = value(name);
    if (value.isEmpty()) {
      throw fault(name, "entry '" + name + "' is missing or empty");
    }
    return value;
  }

  /** An error that names the line of an entry, if it has one. */
  TableFormatException fault(String name, String fault) {
    return new TableFormatException(file, lines.getOrDefault(name, 0), fault);
  }
}
