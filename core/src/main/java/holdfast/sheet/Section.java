// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.trace.Caution;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A section of a sheet.
 *
 * @param title its heading
 * @param blocks its contents in order
 */
public record Section(String title, List<Block> blocks) implements Serializable {
  // Keeps an unmodifiable copy; refuses a section that nobody could find.
  public Section {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(blocks, "blocks");
    if (title.isBlank()) {
      throw new InputException("title of a section", "''", "not blank", "it is the heading");
    }
    blocks = List.copyOf(blocks);
  }

  /**
   * Starts a section.
   *
   * @param title its heading
   * @return a builder
   */
  public static Builder of(String title) {
    return of(title, SheetUnits.METRIC);
  }

  /**
   * Starts a section.
   *
   * @param title its heading
   * @param units units of the quantities in its sentences
   * @return a builder
   */
  public static Builder of(String title, SheetUnits units) {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(units, "units");
    return new Builder(title, units);
  }

  /** Collects blocks. Not thread-safe. */
  public static final class Builder {
    private final String title;
    private final SheetUnits units;
    private final List<Block> blocks = new ArrayList<>();

    private Builder(String title, SheetUnits units) {
      this.title = title;
      this.units = units;
    }

    /**
     * Adds a named value.
     *
     * @param label what it is
     * @param value the value with unit
     * @param sources where it comes from
     * @return this builder
     */
    public Builder entry(String label, String value, SourceRef... sources) {
      Objects.requireNonNull(sources, "sources");
      return entry(label, value, List.of(sources));
    }

    /**
     * Adds a named value.
     *
     * @param label what it is
     * @param value the value with unit
     * @param sources where it comes from
     * @return this builder
     */
    public Builder entry(String label, String value, List<SourceRef> sources) {
      blocks.add(new Block.Entry(label, value, sources));
      return this;
    }

    /**
     * Adds a notice.
     *
     * @param weight how loudly it speaks
     * @param text the sentence
     * @param sources where it comes from
     * @return this builder
     */
    public Builder notice(Block.Weight weight, String text, SourceRef... sources) {
      Objects.requireNonNull(sources, "sources");
      blocks.add(new Block.Notice(weight, text, List.of(sources)));
      return this;
    }

    /**
     * Adds a notice whose quantities are printed in the units of the section.
     *
     * @param weight how loudly it speaks
     * @param message the sentence
     * @param sources where it comes from
     * @return this builder
     */
    public Builder notice(Block.Weight weight, Message message, SourceRef... sources) {
      return notice(weight, units.text(message), sources);
    }

    /**
     * Adds a named value whose quantities are printed in the units of the section.
     *
     * @param label what it is
     * @param value the value
     * @param sources where it comes from
     * @return this builder
     */
    public Builder entry(String label, Message value, List<SourceRef> sources) {
      return entry(label, units.text(Objects.requireNonNull(value, "value")), sources);
    }

    /**
     * Adds cautions.
     *
     * @param cautions the cautions
     * @return this builder
     */
    public Builder cautions(List<Caution> cautions) {
      Objects.requireNonNull(cautions, "cautions");
      cautions.forEach(caution -> notice(Block.Weight.of(caution.signal()), caution.text(), caution.source()));
      return this;
    }

    /**
     * Adds warnings of a result.
     *
     * @param warnings the warnings
     * @return this builder
     */
    public Builder warnings(List<Warning> warnings) {
      Objects.requireNonNull(warnings, "warnings");
      warnings.forEach(warning -> notice(Block.Weight.NOTE, warning.content(), warning.source()));
      return this;
    }

    /**
     * Adds room to write.
     *
     * @param label what is to be written
     * @param hint unit or permitted range; may be empty
     * @return this builder
     */
    public Builder blank(String label, String hint) {
      blocks.add(new Block.Blank(label, hint));
      return this;
    }

    /**
     * Adds a drawing.
     *
     * @param picture the drawing
     * @return this builder
     */
    public Builder picture(Block.Picture picture) {
      Objects.requireNonNull(picture, "picture");
      blocks.add(picture);
      return this;
    }

    /**
     * Ends the section.
     *
     * @return the section
     */
    public Section build() {
      return new Section(title, blocks);
    }
  }
}
