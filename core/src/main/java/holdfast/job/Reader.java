// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.MountingPlan;
import holdfast.quantity.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Reads a job file: first its keys and values, then the parts, then the job; every step gathers all its faults. */
final class Reader {
  private final List<Fault> faults = new ArrayList<>();
  /** Where each section and value that is there begins. */
  private final Map<String, Yaml.Text> places = new HashMap<>();
  private final Values values = new Values();

  private Reader() {}

  static MountingPlan read(InputStream in, String file) throws IOException {
    Reader reader = new Reader();
    Optional<MountingPlan> job = Yaml.read(in, reader.faults).flatMap(reader::job);
    if (!reader.faults.isEmpty()) {
      reader.faults.sort(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column));
      throw new JobFileException(file, reader.faults);
    }
    return job.orElseThrow();
  }

  private Optional<MountingPlan> job(Yaml.Entries root) {
    Yaml.Entry mounting = root.entries().get(Schema.IN_FORK.path());
    if (mounting == null) {
      faults.add(new Fault(root.line(), root.column(), Schema.IN_FORK.path(), "", Schema.IN_FORK.kind().accepts(),
          "it is missing, and the other keys depend on it"));
      return Optional.empty();
    }
    value(Schema.IN_FORK, mounting, values, "");
    if (!values.has(Schema.IN_FORK)) {
      return Optional.empty();
    }
    boolean inFork = values.get(Schema.IN_FORK);
    Map<String, Element> known = byPath(Schema.of(inFork));
    Map<String, Element> elsewhere = byPath(Schema.of(!inFork));
    places.clear();
    section(root, "", known, elsewhere, values);
    Schema.of(inFork).forEach(element -> need(element, element instanceof Key<?> key && key.mustBeThere(), ""));
    Schema.groups(inFork).forEach(this::together);
    Schema.choices(inFork).forEach(this::either);
    if (!faults.isEmpty()) {
      return Optional.empty();
    }
    return new Assembly(values, this::part).job(inFork);
  }

  private static Map<String, Element> byPath(List<? extends Element> elements) {
    Map<String, Element> map = new LinkedHashMap<>();
    elements.forEach(element -> map.put(element.path(), element));
    return map;
  }

  private void section(
      Yaml.Entries section, String prefix, Map<String, Element> known, Map<String, Element> elsewhere, Values into) {
    section.entries().forEach((name, entry) -> {
      String path = prefix + name;
      Element element = known.get(path);
      if (element instanceof Key<?> key) {
        value(key, entry, into, "");
      } else if (element instanceof Element.Repeat repeat) {
        items(repeat, entry, into);
      } else if (known.keySet().stream().anyMatch(p -> p.startsWith(path + "."))) {
        places.put(path, entry.key());
        if (entry.value() instanceof Yaml.Entries inner) {
          section(inner, path + ".", known, elsewhere, into);
        } else {
          String keys = String.join(", ", children(path + ".", known));
          faults.add(new Fault(entry.key().line(), entry.key().column(), path, text(entry.value()), "keys on lines of their own: "
              + keys, "it is a section"));
        }
      } else {
        unknown(entry.key(), path, prefix, known, elsewhere);
      }
    });
  }

  private void unknown(Yaml.Text key, String path, String prefix, Map<String, Element> known, Map<String, Element> elsewhere) {
    Set<String> siblings = children(prefix, known);
    boolean other = elsewhere.keySet().stream().anyMatch(p -> p.equals(path) || p.startsWith(path + "."));
    String reason = other
        ? "this key belongs to jobs whose roller is held in the other way (mounting)"
        : Suggestion.of(key.text(), siblings).map(near -> "the key is not known; did you mean '" + near + "'?")
            .orElse("the key is not known here");
    faults.add(new Fault(key.line(), key.column(), path, "", String.join(", ", siblings), reason));
  }

  private static Set<String> children(String prefix, Map<String, Element> known) {
    return known.keySet().stream()
        .filter(path -> path.startsWith(prefix))
        .map(path -> path.substring(prefix.length()).split("\\.", 2)[0])
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private <T> void value(Key<T> key, Yaml.Entry entry, Values into, String within) {
    places.put(within + key.path(), entry.key());
    if (!(entry.value() instanceof Yaml.Text text)) {
      faults.add(new Fault(entry.value().line(), entry.value().column(), within + key.path(), "", key.kind().accepts(),
          "one value stands here, not a list or section"));
      return;
    }
    try {
      if (text.text().isBlank()) {
        throw new InputException(key.path(), "", key.kind().accepts(),
            "the value is missing; leave the key out if nothing is stated");
      }
      into.read(key, text.text());
    } catch (InputException e) {
      faults.add(new Fault(text.line(), text.column(), within + key.path(), text.text(), accepted(key, e), e.reason()));
    }
  }

  private static String accepted(Key<?> key, InputException e) {
    return key.kind().words().isEmpty() ? e.permitted() : key.kind().accepts();
  }

  private void items(Element.Repeat repeat, Yaml.Entry entry, Values into) {
    places.put(repeat.path(), entry.key());
    String keys = repeat.keys().stream().map(Key::path).collect(Collectors.joining(", "));
    if (!(entry.value() instanceof Yaml.Items list) || list.items().isEmpty()) {
      faults.add(new Fault(entry.key().line(), entry.key().column(), repeat.path(), text(entry.value()),
          "a list whose items begin with '- ' and have the keys " + keys, "it is a list"));
      return;
    }
    List<Values> all = new ArrayList<>();
    Map<String, Element> known = byPath(repeat.keys());
    for (Yaml item : list.items()) {
      if (!(item instanceof Yaml.Entries entries)) {
        faults.add(new Fault(item.line(), item.column(), repeat.path(), text(item), "the keys " + keys, "an item has keys"));
        continue;
      }
      Values one = new Values();
      entries.entries().forEach((name, inner) -> {
        if (known.get(name) instanceof Key<?> key) {
          value(key, inner, one, repeat.path() + ".");
        } else {
          unknown(inner.key(), repeat.path() + "." + name, "", known, Map.of());
        }
      });
      repeat.keys().stream()
          .filter(key -> key.mustBeThere() && !entries.entries().containsKey(key.path()))
          .forEach(key -> missing(item.line(), item.column(), repeat.path() + "." + key.path(), key));
      all.add(one);
    }
    into.putItems(repeat, List.copyOf(all));
  }

  private static String text(Yaml value) {
    return value instanceof Yaml.Text text ? text.text() : "";
  }

  /** A fault at the innermost section that is there, if the element is needed and does not stand in the file. */
  private void need(Element element, boolean needed, String because) {
    if (!needed || places.containsKey(element.path())) {
      return;
    }
    String section = element.path();
    while (!section.isEmpty() && !places.containsKey(section)) {
      section = section.contains(".") ? section.substring(0, section.lastIndexOf('.')) : "";
    }
    Yaml.Text place = places.getOrDefault(section, new Yaml.Text("", 1, 1));
    if (element instanceof Key<?> key) {
      faults.add(new Fault(place.line(), place.column(), key.path(), "", key.kind().accepts() + ", such as " + key.example(),
          "it is missing" + because + ": " + key.meaning()));
    } else {
      faults.add(new Fault(place.line(), place.column(), element.path(), "", "a list",
          "it is missing" + because + ": " + element.meaning()));
    }
  }

  private void missing(int line, int column, String path, Key<?> key) {
    faults.add(new Fault(line, column, path, "", key.kind().accepts() + ", such as " + key.example(),
        "it is missing: " + key.meaning()));
  }

  private void together(Schema.Together group) {
    Optional<Element> there = group.keys().stream().filter(element -> places.containsKey(element.path())).findFirst();
    there.ifPresent(first -> group.keys().forEach(element -> need(element, true, " beside " + first.path())));
  }

  private void either(Schema.Either choice) {
    boolean one = places.containsKey(choice.one().path());
    if (!one) {
      choice.others().forEach(element -> need(element, true, ", or " + choice.one().path() + " in its place"));
    } else if (!choice.one().equals(Schema.ROLLER_SIZE)) {
      choice.others().stream().filter(element -> places.containsKey(element.path())).forEach(element -> {
        Yaml.Text place = places.get(element.path());
        faults.add(new Fault(place.line(), place.column(), element.path(), "", "one of the two",
            "it stands beside " + choice.one().path() + ", which says the same"));
      });
    }
  }

  /** Makes a part; what the part refuses becomes a fault at its section. */
  private <T> Optional<T> part(String section, Supplier<T> make) {
    try {
      return Optional.of(make.get());
    } catch (InputException e) {
      Yaml.Text place = places.getOrDefault(section, new Yaml.Text("", 1, 1));
      faults.add(new Fault(place.line(), place.column(), section, e.value(), e.permitted(), e.parameter() + ": " + e.reason()));
      return Optional.empty();
    }
  }
}
