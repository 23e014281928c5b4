// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.failures.Margin;
import holdfast.quantity.InputException;
import holdfast.quantity.Quantity;
import holdfast.quantity.Temperature;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What the duty asks, beside what it is allowed.
 *
 * @param name what limits, for example {@code "static"}
 * @param demand what the duty asks
 * @param bound whether the permitted value is a greatest or a least one
 * @param permitted what is allowed, of the same kind
 * @param consequence what follows if the limit is exceeded
 * @param reading the margin by which the table of failures knows it
 * @param sources where the limit comes from, one or more: first the source of the permitted value itself, then those of the
 *     demand
 */
public record LimitCheck(
    String name,
    Quantity<?> demand,
    Bound bound,
    Quantity<?> permitted,
    Consequence consequence,
    Margin reading,
    List<SourceRef> sources)
    implements Serializable {

  /** Which side of the permitted value is allowed. */
  public enum Bound {
    /** The demand must not be greater. */
    AT_MOST,
    /** The demand must not be less. */
    AT_LEAST
  }

  /** What follows if a limit is exceeded. */
  public enum Consequence {
    /** The roller must not be installed so. */
    STOP,
    /** The reader must know. */
    WARNING
  }

  // Keeps an unmodifiable copy; refuses a limit without source and to compare a force with a speed.
  public LimitCheck {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(bound, "bound");
    Objects.requireNonNull(permitted, "permitted");
    Objects.requireNonNull(consequence, "consequence");
    Objects.requireNonNull(reading, "reading");
    Objects.requireNonNull(sources, "sources");
    sources = List.copyOf(sources);
    if (sources.isEmpty()) {
      throw new InputException("sources of limit '" + name + "'", "none", "one or more",
          "a limit without a source is not audited");
    }
    if (demand.getClass() != permitted.getClass()) {
      throw new InputException("permitted value of limit '" + name + "'", permitted.toString(), "of the kind of " + demand,
          "a force is not compared with a speed");
    }
  }

  /**
   * Whether the duty keeps the limit.
   *
   * @return true up to and including the permitted value
   */
  public boolean holds() {
    int order = Double.compare(demand.base(), permitted.base());
    return bound == Bound.AT_MOST ? order <= 0 : order >= 0;
  }

  /**
   * How many times the demand could grow (or, for a least value, shrink) before the limit is reached.
   *
   * @return the factor, below 1 if the limit is exceeded; empty for temperatures, which have no ratio, and where the
   *     divisor is zero, or so small that the factor is no number
   */
  public OptionalDouble margin() {
    double divisor = bound == Bound.AT_MOST ? demand.base() : permitted.base();
    double dividend = bound == Bound.AT_MOST ? permitted.base() : demand.base();
    double factor = dividend / divisor;
    return demand instanceof Temperature || !Double.isFinite(factor) ? OptionalDouble.empty() : OptionalDouble.of(factor);
  }

  /** For example {@code "static: 2.1 kN, at most 8.75 kN"}. */
  @Override
  public String toString() {
    return name + ": " + demand + (bound == Bound.AT_MOST ? ", at most " : ", at least ") + permitted;
  }
}
