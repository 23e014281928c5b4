// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.rollers.MeasureSystem;
import java.util.ArrayList;
import java.util.List;

/** Writes values in the order of the schema, a section deeper with each part of a path. */
final class Writer {
  private final StringBuilder text = new StringBuilder();
  private final MeasureSystem system;
  private List<String> open = List.of();

  private Writer(MeasureSystem system) {
    this.system = system;
  }

  static String text(Values values, boolean inFork, MeasureSystem system) {
    Writer writer = new Writer(system);
    for (Element element : Schema.of(inFork)) {
      if (values.has(element)) {
        writer.element(element, values);
      }
    }
    return writer.text.toString();
  }

  private void element(Element element, Values values) {
    String indent = enter(element.path());
    String name = element.path().substring(element.path().lastIndexOf('.') + 1);
    if (element instanceof Key<?> key) {
      text.append(indent).append(name).append(": ").append(value(key, values)).append('\n');
    } else if (element instanceof Element.Repeat repeat) {
      text.append(indent).append(name).append(":\n");
      for (Values item : values.items(repeat)) {
        String mark = indent + "  - ";
        for (Key<?> key : repeat.keys()) {
          if (item.has(key)) {
            text.append(mark).append(key.path()).append(": ").append(value(key, item)).append('\n');
            mark = indent + "    ";
          }
        }
      }
    }
  }

  /** Opens the sections of a path that are not open yet; the indent of its last part. */
  private String enter(String path) {
    String[] parts = path.split("\\.", -1);
    List<String> sections = List.of(parts).subList(0, parts.length - 1);
    for (int depth = 0; depth < sections.size(); depth++) {
      if (open.size() <= depth || !open.subList(0, depth + 1).equals(sections.subList(0, depth + 1))) {
        text.append("  ".repeat(depth)).append(sections.get(depth)).append(":\n");
      }
    }
    open = new ArrayList<>(sections);
    return "  ".repeat(sections.size());
  }

  private <T> String value(Key<T> key, Values from) {
    return Yaml.scalar(key.kind().write().text(from.get(key), system));
  }
}
