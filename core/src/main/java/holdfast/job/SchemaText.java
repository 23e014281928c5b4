// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The schema as a page for people and as JSON Schema (draft 2020-12) for editors. */
final class SchemaText {
  private SchemaText() {}

  private static final String HEAD = """
      # The job file

      A job is a text file: YAML 1.2, and so JSON too. Keys are words of the trade, values carry their units. What stands here
      is made from the program's own list of keys; `schema page` prints it, `schema json` prints the same as JSON Schema, which
      editors know ([job-schema.json](job-schema.json)). The bundled jobs and those of the questions lie as files in
      [jobs](jobs).

      - Every value is text: `no` is a word, not a truth value. Anchors, aliases, tags and doubled keys are refused.
      - Decimal sign is the point. Fractions are read as the trade writes them: `1-1/2 in`, `5/8 in`.
      - Ranges are `0.10 … 0.16`, `0.10..0.16` or `0.10 to 0.16`; the unit may stand once: `-20..110 °C`.
      - Signs that keyboards lack have other spellings: `um`, `Nm`, `lbf in`, `mm2/s`, `degC`, `degF`.
      - Unknown keys are faults. All faults of a file are listed at once, with line, column and what is accepted.
      - Whatever is taken where nothing is stated stands in the last column; there is nothing else.

      `new stud-metric`, `new stud-inch` and `new yoke` write a file in which every key is explained.

      ## A list of rollers

      Rollers whose values their makers state may stand in a file of their own, each with the sections `roller` and `stud` of a
      stud roller, or `roller` of a yoke roller, and so with the origin of its values:

      ```yaml
      rollers:
        - roller: {name: A 40 (invented), size: metric 40 mm, rolling-elements: caged needle rollers, seals: contact,
            ratings: {dynamic: 14.2 kN, static: 17.5 kN, outer-ring: deflecting, origin: stated},
            limits: {temperatures: -20 … 110 °C, torque: 85 N·m}}
          stud: {material: 16MnCr5, grease-bore: 3 mm, head: slot}
      ```

      A job in the same folder takes one by its name, with `roller-list: rollers.yaml` and nothing but `name` under `roller`.
      `choose JOB --rollers rollers.yaml` puts each of them in the place of the job's roller, tells the margin of what governs,
      the smallest that may be installed, and why the next smaller one must not be. The printed series state no ratings, so
      that a size is compared once a list states what its maker rates it at.

      """;

  static String page() {
    StringBuilder page = new StringBuilder(HEAD);
    for (boolean inFork : new boolean[] {false, true}) {
      page.append("## ").append(mounting(inFork))
          .append("\n\n| key | value | meaning | without it |\n| --- | --- | --- | --- |\n");
      for (Element element : Schema.of(inFork)) {
        if (element instanceof Key<?> key) {
          row(page, key, "");
        } else if (element instanceof Element.Repeat repeat) {
          page.append("| `").append(repeat.path()).append("` | a list | ").append(cell(repeat.meaning())).append(" | ")
              .append(cell(repeat.otherwise())).append(" |\n");
          repeat.keys().forEach(key -> row(page, key, repeat.path() + "[]."));
        }
      }
      page.append(inFork ? "" : "\n");
    }
    return page.toString();
  }

  private static String mounting(boolean inFork) {
    return Schema.IN_FORK.kind().write().text(inFork, holdfast.rollers.MeasureSystem.METRIC);
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
      for (boolean listed : new boolean[] {false, true}) {
        Map<String, Object> root = new LinkedHashMap<>();
        Schema.of(inFork).stream().filter(element -> listed
            ? element.equals(Schema.ROLLER) || !Schema.ofRoller(inFork).contains(element)
            : !element.equals(Schema.ROLLER_LIST)).forEach(element -> place(root, element));
        kinds.add(object(root, "", listed ? List.of(quote(Schema.ROLLER_LIST.path())) : List.of())
            .replace(value(Schema.IN_FORK), "{\"const\": " + quote(mounting(inFork)) + ", \"description\": "
                + quote(Schema.IN_FORK.meaning()) + "}"));
      }
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
  private static String object(Map<String, Object> section, String indent, List<String> alsoRequired) {
    List<String> properties = new ArrayList<>();
    List<String> required = new ArrayList<>(alsoRequired);
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
            + ", \"items\":\n" + object(item, inner, List.of()) + "}");
      } else {
        Map<String, Object> deeper = (Map<String, Object>) content;
        properties.add(inner + quote(name) + ":\n" + object(deeper, inner, List.of()));
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
