// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.List;
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
    /** Work that can hurt someone. */
    CAUTION("CAUTION"),
    /** A limit of the calculation that the reader must know. */
    WARNING("NOTE WELL"),
    /** Plain advice. */
    ADVICE("ADVICE");

    private final String label;

    Weight(String label) {
      this.label = label;
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
   * A drawing.
   *
   * @param title what it shows
   * @param description the same in words, for those who cannot see it and for the text sheet
   * @param svg the drawing as one SVG element
   */
  record Picture(String title, String description, String svg) implements Block {
    public Picture {
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(description, "description");
      Objects.requireNonNull(svg, "svg");
    }
  }
}
