// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.rollers.MeasureSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * A job file with a comment on every key: values that are there stand, keys that may be left out and are not there stand
 * commented out with an example.
 */
final class Template {
  private static final int WIDTH = 100;

  private final StringBuilder text = new StringBuilder();
  private final Values values;
  private final MeasureSystem system;
  private List<String> open = List.of();

  private Template(Values values, MeasureSystem system) {
    this.values = values;
    this.system = system;
  }

  static String text(Values values, boolean inFork, MeasureSystem system) {
    Template template = new Template(values, system);
    List<Element> elements = Schema.of(inFork);
    for (Element element : elements) {
      template.element(element, elements);
    }
    return template.text.toString();
  }

  private void element(Element element, List<Element> elements) {
    String indent = enter(element.path(), elements);
    String name = last(element.path());
    if (element instanceof Key<?> key) {
      comment(indent, sentence(key));
      if (values.has(key)) {
        text.append(indent).append(name).append(": ").append(value(key, values)).append('\n');
      } else {
        text.append(indent).append("# ").append(name).append(": ").append(Yaml.scalar(key.example())).append('\n');
      }
    } else if (element instanceof Element.Repeat repeat) {
      comment(indent, repeat.meaning() + "; without it: " + repeat.otherwise());
      boolean there = values.has(repeat);
      String lead = there ? indent : indent + "# ";
      text.append(lead).append(name).append(":\n");
      List<Values> items = there ? values.items(repeat) : List.of(new Values());
      for (Values item : items) {
        String mark = "  - ";
        for (Key<?> key : repeat.keys()) {
          if (!there || item.has(key)) {
            text.append(lead).append(mark).append(key.path()).append(": ")
                .append(there ? value(key, item) : Yaml.scalar(key.example())).append('\n');
            mark = "    ";
          }
        }
      }
    }
  }

  private static String sentence(Key<?> key) {
    return key.meaning() + (key.kind().measured() ? "" : " [" + key.kind().accepts() + "]") + (key.mustBeThere() ? ""
        : "; without it: " + key.otherwise());
  }

  private static String last(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private <T> String value(Key<T> key, Values from) {
    return Yaml.scalar(key.kind().write().text(from.get(key), system));
  }

  /** Section heads, commented out if nothing under them is there, so that the file stays one that can be read. */
  private String enter(String path, List<Element> elements) {
    String[] parts = path.split("\\.", -1);
    List<String> sections = new ArrayList<>(List.of(parts).subList(0, parts.length - 1));
    for (int depth = 0; depth < sections.size(); depth++) {
      if (open.size() <= depth || !open.subList(0, depth + 1).equals(sections.subList(0, depth + 1))) {
        String prefix = String.join(".", sections.subList(0, depth + 1)) + ".";
        boolean there = elements.stream().anyMatch(e -> e.path().startsWith(prefix) && values.has(e));
        text.append(depth == 0 ? "\n" : "").append("  ".repeat(depth)).append(there ? "" : "# ").append(sections.get(depth))
            .append(":\n");
      }
    }
    open = sections;
    return "  ".repeat(sections.size());
  }

  private void comment(String indent, String sentence) {
    StringBuilder line = new StringBuilder();
    for (String word : sentence.split(" ", -1)) {
      if (line.length() > 0 && indent.length() + line.length() + word.length() > WIDTH) {
        text.append(indent).append("#").append(line).append('\n');
        line.setLength(0);
      }
      line.append(' ').append(word);
    }
    text.append(indent).append("#").append(line).append('\n');
  }
}
