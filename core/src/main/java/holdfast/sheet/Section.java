// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.trace.Caution;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

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
    Objects.requireNonNull(title, "title");
    return new Builder(title);
  }

  /**
   * The same with its sentences changed: values of entries and notices; room to write and drawings stay.
   *
   * @param change what becomes of a sentence
   * @return the section
   */
  public Section withText(UnaryOperator<String> change) {
    return new Section(title, blocks.stream().map(block -> changed(block, change)).toList());
  }

  private static Block changed(Block block, UnaryOperator<String> change) {
    if (block instanceof Block.Entry entry) {
      return new Block.Entry(entry.label(), change.apply(entry.value()), entry.sources());
    }
    if (block instanceof Block.Notice notice) {
      return new Block.Notice(notice.weight(), change.apply(notice.text()), notice.sources());
    }
    return block;
  }

  /** Collects blocks. Not thread-safe. */
  public static final class Builder {
    private final String title;
    private final List<Block> blocks = new ArrayList<>();

    private Builder(String title) {
      this.title = title;
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
     * Adds cautions.
     *
     * @param cautions the cautions
     * @return this builder
     */
    public Builder cautions(List<Caution> cautions) {
      Objects.requireNonNull(cautions, "cautions");
      cautions.forEach(caution -> notice(Block.Weight.CAUTION, caution.text(), caution.source()));
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
      warnings.forEach(warning -> notice(Block.Weight.WARNING, warning.message(), warning.source()));
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
