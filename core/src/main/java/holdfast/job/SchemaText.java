// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The schema as a page for people and as JSON Schema (draft 2020-12) for editors. */
final class SchemaText {
  private SchemaText() {}

  static String page() {
    StringBuilder page = new StringBuilder();
    for (boolean inFork : new boolean[] {false, true}) {
      String mounting = Schema.IN_FORK.kind().write().text(inFork, holdfast.rollers.MeasureSystem.METRIC);
      page.append("## ").append(mounting).append("\n\n| key | value | meaning | without it |\n| --- | --- | --- | --- |\n");
      for (Element element : Schema.of(inFork)) {
        if (element instanceof Key<?> key) {
          row(page, key, "");
        } else if (element instanceof Element.Repeat repeat) {
          page.append("| `").append(repeat.path()).append("` | a list | ").append(cell(repeat.meaning())).append(" | ")
              .append(cell(repeat.otherwise())).append(" |\n");
          repeat.keys().forEach(key -> row(page, key, repeat.path() + "[]."));
        }
      }
      page.append('\n');
    }
    return page.toString();
  }

  private static void row(StringBuilder page, Key<?> key, String within) {
    page.append("| `").append(within).append(key.path()).append("` | ").append(cell(key.kind().accepts())).append(" | ")
        .append(cell(key.meaning())).append(" | ").append(key.mustBeThere() ? "must be there" : cell(key.otherwise()))
        .append(" |\n");
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }

  static String json() {
    List<String> kinds = new ArrayList<>();
    for (boolean inFork : new boolean[] {false, true}) {
      Map<String, Object> root = new LinkedHashMap<>();
      Schema.of(inFork).forEach(element -> place(root, element));
      kinds.add(object(root, ""));
    }
    return "{\n\"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n\"title\": \"Holdfast job\",\n\"oneOf\": [\n"
        + String.join(",\n", kinds) + "\n]\n}\n";
  }

  @SuppressWarnings("unchecked")
  private static void place(Map<String, Object> root, Element element) {
    String[] parts = element.path().split("\\.", -1);
    Map<String, Object> section = root;
    for (int i = 0; i + 1 < parts.length; i++) {
      section = (Map<String, Object>) section.computeIfAbsent(parts[i], name -> new LinkedHashMap<String, Object>());
    }
    section.put(parts[parts.length - 1], element);
  }

  @SuppressWarnings("unchecked")
  private static String object(Map<String, Object> section, String indent) {
    List<String> properties = new ArrayList<>();
    List<String> required = new ArrayList<>();
    section.forEach((name, content) -> {
      String inner = indent + "  ";
      if (content instanceof Key<?> key) {
        properties.add(inner + quote(name) + ": " + value(key));
        if (key.mustBeThere()) {
          required.add(quote(name));
        }
      } else if (content instanceof Element.Repeat repeat) {
        Map<String, Object> item = new LinkedHashMap<>();
        repeat.keys().forEach(key -> item.put(key.path(), key));
        properties.add(inner + quote(name) + ": {\"type\": \"array\", \"minItems\": 1, \"description\": "
            + quote(repeat.meaning())
            + ", \"items\":\n" + object(item, inner) + "}");
      } else {
        Map<String, Object> deeper = (Map<String, Object>) content;
        properties.add(inner + quote(name) + ":\n" + object(deeper, inner));
        if (mandatory(deeper)) {
          required.add(quote(name));
        }
      }
    });
    return indent + "{\"type\": \"object\", \"additionalProperties\": false,\n" + indent + "\"required\": ["
        + String.join(", ", required) + "],\n" + indent + "\"properties\": {\n" + String.join(",\n", properties) + "\n"
            + indent + "}}";
  }

  @SuppressWarnings("unchecked")
  private static boolean mandatory(Map<String, Object> section) {
    return section.values().stream().anyMatch(content -> content instanceof Key<?> key
        ? key.mustBeThere()
        : content instanceof Map<?, ?> deeper && mandatory((Map<String, Object>) deeper));
  }

  /** Numbers without a unit may stand bare; all else is text, because its unit is part of the value. */
  private static String value(Key<?> key) {
    boolean bare = key.kind().equals(Kind.NUMBER) || key.kind().equals(Kind.COUNT);
    String words = key.kind().words().isEmpty()
        ? ""
        : ", \"enum\": [" + String.join(", ", key.kind().words().stream().map(SchemaText::quote).toList()) + "]";
    return "{\"type\": " + (bare ? "[\"string\", \"number\"]" : "\"string\"") + words + ", \"description\": "
        + quote(key.meaning() + " [" + key.kind().accepts() + "]" + (key.mustBeThere() ? "" : "; without it: " + key.otherwise()))
        + ", \"examples\": [" + quote(key.example()) + "]}";
  }

  private static String quote(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
