// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;

/**
 * How a result was computed, step by step. The last step is the result itself.
 *
 * @param title what is derived
 * @param steps the steps in order; at least one
 */
public record Derivation(String title, List<Step> steps) implements Serializable {

  // Keeps an unmodifiable copy of the list; without a step there is no result.
  public Derivation {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(steps, "steps");
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new InputException("steps of '" + title + "'", "none", "one or more", "the last step is the result");
    }
  }

  /**
   * Starts a derivation.
   *
   * @param title what is derived
   * @return a builder
   */
  public static Builder of(String title) {
    Objects.requireNonNull(title, "title");
    return new Builder(title);
  }

  /**
   * The last step: the result.
   *
   * @return the step
   */
  public Step result() {
    return steps.get(steps.size() - 1);
  }

  /**
   * The documents and places used, each once, in order of use.
   *
   * @return the sources
   */
  public List<SourceRef> sources() {
    LinkedHashSet<SourceRef> sources = new LinkedHashSet<>();
    steps.forEach(step -> sources.add(step.source()));
    return List.copyOf(sources);
  }

  /** The whole derivation as text. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(title).append('\n');
    for (Step step : steps) {
      text.append(step.text()).append('\n');
    }
    return text.toString().stripTrailing();
  }

  /** Collects steps. Not thread-safe. */
  public static final class Builder {
    private final String title;
    private final List<Step> steps = new ArrayList<>();

    private Builder(String title) {
      this.title = title;
    }

    /**
     * Adds a step.
     *
     * @param symbol symbol of the result
     * @param meaning what it stands for
     * @param expression the formula in symbols
     * @param value the result in the unit named
     * @param unit its unit, empty for a pure number
     * @param source where the formula or the value comes from
     * @param inputs the numbers put in, for example {@code "d = 16 mm"}
     * @return this builder
     */
    public Builder step(
        String symbol, String meaning, String expression, double value, String unit, SourceRef source, String... inputs) {
      Objects.requireNonNull(inputs, "inputs");
      steps.add(new Step(symbol, meaning, expression, List.of(inputs), value, unit, source));
      return this;
    }

    /**
     * Adds a step.
     *
     * @param step the step
     * @return this builder
     */
    public Builder step(Step step) {
      steps.add(Objects.requireNonNull(step, "step"));
      return this;
    }

    /**
     * Adds the steps of another derivation.
     *
     * @param other the other derivation
     * @return this builder
     */
    public Builder steps(Derivation other) {
      Objects.requireNonNull(other, "other");
      steps.addAll(other.steps());
      return this;
    }

    /**
     * Ends the derivation.
     *
     * @return the derivation
     * @throws InputException if no step was added
     */
    public Derivation build() {
      return new Derivation(title, steps);
    }
  }
}
