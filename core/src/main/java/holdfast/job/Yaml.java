// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.YamlUnicodeReader;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * A YAML document as texts, maps and lists with their places. Every scalar is text, whatever it looks like; anchors, aliases,
 * tags and doubled keys are faults. Built from the parser's events, so that depth and size end before they hurt.
 */
sealed interface Yaml {
  /** Greatest nesting: four are used. */
  int DEEPEST = 12;

  /** Greatest size of a file in characters: a fleet of thousands of places fits in. */
  int LONGEST = 1 << 20;

  int line();

  int column();

  record Text(String text, int line, int column) implements Yaml {}

  record Items(List<Yaml> items, int line, int column) implements Yaml {}

  record Entries(Map<String, Entry> entries, int line, int column) implements Yaml {}

  record Entry(Text key, Yaml value) {}

  /** The root of the document, and in {@code faults} what is wrong with it; empty if nothing can be made of it. */
  static Optional<Entries> read(InputStream in, List<Fault> faults) throws IOException {
    LoadSettings settings = LoadSettings.builder().setCodePointLimit(LONGEST).setUseMarks(true).build();
    try (YamlUnicodeReader reader = new YamlUnicodeReader(in)) {
      Iterator<Event> events = new Parse(settings).parseReader(reader).iterator();
      Builder builder = new Builder(faults);
      while (events.hasNext() && builder.take(events.next())) {
        // The builder keeps what it needs.
      }
      return builder.root();
    } catch (MarkedYamlEngineException e) {
      Optional<Mark> mark = e.getProblemMark().or(e::getContextMark);
      String problem = e.getProblem() == null ? "" : e.getProblem();
      faults.add(new Fault(mark.map(m -> m.getLine() + 1).orElse(1), mark.map(m -> m.getColumn() + 1).orElse(1), "", "",
          "YAML: 'key: value' a line, blanks for indents", "the file cannot be read as YAML here: " + Fault.shortened(problem)));
    } catch (YamlEngineException | UncheckedIOException | java.nio.charset.CharacterCodingException e) {
      faults.add(new Fault(1, 1, "", "", "a text file in UTF-8 of at most " + LONGEST + " characters",
          "the file cannot be read as text: " + Fault.shortened(String.valueOf(e.getMessage()))));
    }
    return Optional.empty();
  }

  /** Makes the tree of the events. */
  final class Builder {
    /** A map or list that is still open. */
    private static final class Open {
      final Map<String, Entry> entries;
      final List<Yaml> items;
      final int line;
      final int column;
      Text key;

      Open(boolean map, int line, int column) {
        this.entries = map ? new LinkedHashMap<>() : null;
        this.items = map ? null : new ArrayList<>();
        this.line = line;
        this.column = column;
      }

      Yaml close() {
        return entries == null ? new Items(items, line, column) : new Entries(entries, line, column);
      }
    }

    private final List<Fault> faults;
    private final List<Open> open = new ArrayList<>();
    private Yaml root;
    private int documents;

    Builder(List<Fault> faults) {
      this.faults = faults;
    }

    Optional<Entries> root() {
      if (root instanceof Entries entries) {
        return Optional.of(entries);
      }
      if (faults.isEmpty()) {
        faults.add(new Fault(1, 1, "", "", "keys and their values", root == null ? "the file is empty" : "the file has no keys"));
      }
      return Optional.empty();
    }

    /** False once nothing more can be made of the file. */
    boolean take(Event event) {
      int line = event.getStartMark().map(mark -> mark.getLine() + 1).orElse(1);
      int column = event.getStartMark().map(mark -> mark.getColumn() + 1).orElse(1);
      if (event.getEventId() == Event.ID.DocumentStart && ++documents > 1) {
        faults.add(new Fault(line, column, "", "", "one job a file", "a second document begins here"));
        return false;
      }
      if (event instanceof AliasEvent) {
        faults.add(new Fault(line, column, "", "*", "the value itself", "aliases are not taken"));
        return false;
      }
      if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
        faults.add(new Fault(line, column, "", "&", "the value itself", "anchors are not taken"));
        return false;
      }
      if (event instanceof ScalarEvent scalar) {
        if (scalar.getTag().isPresent()) {
          faults.add(new Fault(line, column, "", scalar.getTag().get(), "the value without a tag", "tags are not taken"));
        }
        put(new Text(scalar.getValue(), line, column));
      } else if (event instanceof MappingStartEvent || event instanceof SequenceStartEvent) {
        if (open.size() == DEEPEST) {
          faults.add(new Fault(line, column, "", "", "at most " + DEEPEST + " levels", "the file is nested too deeply"));
          return false;
        }
        open.add(new Open(event instanceof MappingStartEvent, line, column));
      } else if (event.getEventId() == Event.ID.MappingEnd || event.getEventId() == Event.ID.SequenceEnd) {
        put(open.remove(open.size() - 1).close());
      }
      return true;
    }

    private void put(Yaml value) {
      if (open.isEmpty()) {
        root = value;
        return;
      }
      Open parent = open.get(open.size() - 1);
      if (parent.items != null) {
        parent.items.add(value);
      } else if (parent.key == null) {
        parent.key = key(value);
      } else {
        Entry doubled = parent.entries.putIfAbsent(parent.key.text(), new Entry(parent.key, value));
        if (doubled != null) {
          faults.add(new Fault(parent.key.line(), parent.key.column(), parent.key.text(), "", "each key once",
              "the key stands already on line " + doubled.key().line()));
        }
        parent.key = null;
      }
    }

    private Text key(Yaml value) {
      if (value instanceof Text text) {
        return text;
      }
      faults.add(new Fault(value.line(), value.column(), "", "", "a word as key", "a list or map stands in the place of a key"));
      return new Text("", value.line(), value.column());
    }
  }

  /** Text that YAML reads back as the same text when it stands behind a key; no mark-up, so that a page can carry it. */
  static String scalar(String text) {
    if (PLAIN.matcher(text).matches() && !text.endsWith(" ") && !RESERVED.contains(text)) {
      return text;
    }
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(c -> {
      if (c == '"' || c == '\\') {
        quoted.append('\\').appendCodePoint(c);
      } else if (Character.isISOControl(c) || c == '<' || c == '>' || c == '&' || c == 0x2028 || c == 0x2029 || c == 0xFEFF) {
        quoted.append(String.format("\\u%04x", c));
      } else {
        quoted.appendCodePoint(c);
      }
    });
    return quoted.append('"').toString();
  }

  /** Letters, digits and what never begins or ends anything in YAML; ": " and " #" cannot occur. */
  Pattern PLAIN = Pattern.compile("(?:[\\p{L}\\p{N}+./(]|-(?=\\p{N}))(?:[\\p{L}\\p{N} +./()°·²³µ%′…,;=-]|:(?=[^ ]))*");

  /** Read as text here, but not by every other reader. */
  Set<String> RESERVED = Set.of("null", "true", "false");
}
