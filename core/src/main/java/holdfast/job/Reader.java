// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.MountingPlan;
import holdfast.quantity.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
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
  /** Where a list of rollers may lie; null if the job comes from no folder. */
  private final Path folder;

  private Reader(Path folder) {
    this.folder = folder;
  }

  static MountingPlan read(InputStream in, String file, Path folder) throws IOException {
    Reader reader = new Reader(folder);
    Optional<MountingPlan> job = Yaml.read(in, reader.faults).flatMap(reader::job);
    reader.refuse(file);
    return job.orElseThrow();
  }

  private void refuse(String file) {
    if (!faults.isEmpty()) {
      faults.sort(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column));
      throw new JobFileException(file, faults);
    }
  }

  /** The rollers of a list. */
  static List<RollerList.Item> rollers(InputStream in, String file) throws IOException {
    Reader all = new Reader(null);
    List<RollerList.Item> items = new ArrayList<>();
    Yaml.read(in, all.faults).ifPresent(root -> root.entries().forEach((name, entry) -> {
      if (!name.equals(RollerList.KEY)) {
        all.unknown(entry.key(), name, "", Map.of(RollerList.KEY, Schema.STEPS), Map.of());
      } else if (entry.value() instanceof Yaml.Items list && !list.items().isEmpty()) {
        list.items().forEach(item -> all.roller(item, items));
      } else {
        all.faults.add(new Fault(entry.key().line(), entry.key().column(), name, text(entry.value()),
            "a list whose items begin with '- ' and have the sections roller and stud", "it is a list"));
      }
    }));
    if (all.faults.isEmpty() && items.isEmpty()) {
      all.faults.add(new Fault(1, 1, RollerList.KEY, "", "a list of rollers", "it is missing"));
    }
    all.refuse(file);
    return List.copyOf(items);
  }

  /** One roller of a list, with faults of its own, so that each is complained of. */
  private void roller(Yaml item, List<RollerList.Item> into) {
    if (!(item instanceof Yaml.Entries entries)) {
      faults.add(new Fault(item.line(), item.column(), RollerList.KEY, text(item), "the sections roller and stud",
          "an item has sections"));
      return;
    }
    boolean inFork = !entries.entries().containsKey("stud");
    List<Element> keys = Schema.ofRoller(inFork);
    Reader one = new Reader(null);
    one.section(entries, "", byPath(keys), Map.of(), one.values);
    Yaml.Text start = new Yaml.Text("", item.line(), item.column());
    one.places.put("", start);
    keys.forEach(element -> one.need(element, element instanceof Key<?> key && key.mustBeThere(), ""));
    Schema.groups(inFork).stream().filter(group -> keys.containsAll(group.keys())).forEach(one::together);
    Schema.choices(inFork).stream().filter(choice -> keys.contains(choice.one())).forEach(one::either);
    if (one.faults.isEmpty()) {
      one.part("roller", () -> new Assembly(one.values, one::part).roller(inFork));
    }
    if (one.faults.isEmpty()) {
      String name = one.values.get(Schema.ROLLER);
      if (into.stream().anyMatch(other -> other.name().equals(name))) {
        faults.add(new Fault(item.line(), item.column(), Schema.ROLLER.path(), name, "each name once",
            "the list holds this name already"));
      }
      into.add(new RollerList.Item(inFork, one.values));
    }
    faults.addAll(one.faults);
  }

  /** Takes the roller from the list that the job names; false if that gave a fault, beside which nothing else is told. */
  private boolean listed(boolean inFork) {
    if (!values.has(Schema.ROLLER_LIST) || !values.has(Schema.ROLLER)) {
      return true;
    }
    Yaml.Text place = places.get(Schema.ROLLER_LIST.path());
    String file = values.get(Schema.ROLLER_LIST);
    Optional<RollerList> list = list(place, file);
    if (list.isEmpty()) {
      return false;
    }
    String name = values.get(Schema.ROLLER);
    Optional<RollerList.Item> item = list.get().find(name);
    if (item.isEmpty() || item.get().inFork() != inFork) {
      Yaml.Text at = places.get(Schema.ROLLER.path());
      faults.add(new Fault(at.line(), at.column(), Schema.ROLLER.path(), name, String.join("; ", list.get().names()),
          item.isPresent() ? "this roller of " + file + " is held in the other way (mounting)" : file + " does not list it"));
      return false;
    }
    for (Element element : Schema.ofRoller(inFork)) {
      if (element.equals(Schema.ROLLER) || !item.get().values().has(element)) {
        continue;
      }
      if (places.containsKey(element.path())) {
        Yaml.Text twin = places.get(element.path());
        faults.add(new Fault(twin.line(), twin.column(), element.path(), "", "left out here", file + " states it already"));
      } else {
        values.take(element, item.get().values());
        places.put(element.path(), place);
      }
    }
    return true;
  }

  private Optional<RollerList> list(Yaml.Text place, String file) {
    String reason = "";
    try {
      if (folder == null) {
        reason = "this job is no file, so nothing lies beside it";
      } else if (!Path.of(file).equals(Path.of(file).getFileName()) || !Files.isRegularFile(folder.resolve(file))) {
        reason = "no such file lies beside the job";
      } else {
        return Optional.of(RollerList.read(folder.resolve(file)));
      }
    } catch (JobFileException e) {
      Fault first = e.faults().get(0);
      reason = "the list has " + e.faults().size() + " fault(s), the first: " + first;
    } catch (IOException | java.nio.file.InvalidPathException e) {
      reason = "it cannot be read";
    }
    faults.add(new Fault(place.line(), place.column(), Schema.ROLLER_LIST.path(), file,
        "the name of a roller list in the folder of the job", reason));
    return Optional.empty();
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
    if (!listed(inFork)) {
      return Optional.empty();
    }
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
