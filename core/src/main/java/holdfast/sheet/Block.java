// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.quantity.InputException;
import holdfast.quantity.PlainText;
import holdfast.tables.SourceRef;
import holdfast.trace.SignalWord;
import java.io.Serializable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A piece of a section. */
public sealed interface Block extends Serializable {
  /**
   * The sources of what the block says.
   *
   * @return the sources; empty if the block states a wish or leaves room to write
   */
  default List<SourceRef> sources() {
    return List.of();
  }

  /**
   * A named value.
   *
   * @param label what it is
   * @param value the value with unit
   * @param sources where it comes from
   */
  record Entry(String label, String value, List<SourceRef> sources) implements Block {
    // Keeps an unmodifiable copy of the list.
    public Entry {
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(value, "value");
      Objects.requireNonNull(sources, "sources");
      sources = List.copyOf(sources);
    }
  }

  /** How loudly a notice speaks. */
  enum Weight {
    /** The work must not go on. */
    STOP("DO NOT INSTALL"),
    /** Work that kills if it is done otherwise. */
    DANGER("DANGER"),
    /** Work that can kill or injure seriously. */
    SERIOUS("WARNING"),
    /** Work that can hurt someone less. */
    MINOR("CAUTION"),
    /** Work that can damage parts or machine. */
    DAMAGE("NOTICE"),
    /** A limit of the calculation that the reader must know. */
    NOTE("NOTE WELL"),
    /** Plain advice. */
    ADVICE("ADVICE");

    private final String label;

    Weight(String label) {
      this.label = label;
    }

    /**
     * The weight of a signal word.
     *
     * @param signal what can happen
     * @return the weight that prints it
     */
    public static Weight of(SignalWord signal) {
      return switch (Objects.requireNonNull(signal, "signal")) {
        case DANGER -> DANGER;
        case WARNING -> SERIOUS;
        case CAUTION -> MINOR;
        case NOTICE -> DAMAGE;
      };
    }

    /**
     * The word that opens the notice.
     *
     * @return the word
     */
    public String label() {
      return label;
    }
  }

  /**
   * A sentence to be read.
   *
   * @param weight how loudly it speaks
   * @param text the sentence
   * @param sources where it comes from
   */
  record Notice(Weight weight, String text, List<SourceRef> sources) implements Block {
    // Keeps an unmodifiable copy of the list.
    public Notice {
      Objects.requireNonNull(weight, "weight");
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(sources, "sources");
      sources = List.copyOf(sources);
    }
  }

  /**
   * Room for a value or a name written by hand.
   *
   * @param label what is to be written
   * @param hint unit or permitted range; may be empty
   */
  record Blank(String label, String hint) implements Block {
    public Blank {
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(hint, "hint");
    }
  }

  /**
   * A drawing: values put into one of the templates of this package, so that no markup comes from outside.
   *
   * @param title what it shows
   * @param description the same in words, for those who cannot see it and for the text sheet
   * @param template file name of the template, which ends in {@code .svg}
   * @param values what the template asks for besides title and description
   */
  record Picture(String title, String description, String template, Map<String, ?> values) implements Block {
    // Keeps an unmodifiable copy; refuses a template that draws nothing.
    public Picture {
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(description, "description");
      Objects.requireNonNull(template, "template");
      Objects.requireNonNull(values, "values");
      if (!template.endsWith(".svg")) {
        throw new InputException("template of a drawing", PlainText.printable(template), "the name of one in SVG",
            "the sheet takes the drawing as it is");
      }
      values = Map.copyOf(values);
    }

    /**
     * The drawing.
     *
     * @return one SVG element, in which every value is escaped
     * @throws InputException if there is no such template, or it asks for a value that is not there
     */
    public String svg() {
      Map<String, Object> all = new HashMap<>(values);
      all.put("title", title);
      all.put("description", description);
      return Templates.render(template, all);
    }
  }
}
