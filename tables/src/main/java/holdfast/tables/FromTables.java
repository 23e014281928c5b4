// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.util.Objects;
import java.util.function.Function;

/**
 * What a calculation reads once from the {@linkplain TableSet#bundled() tables of the program}: when first asked for, not when
 * its class is initialized. An edition that cannot be used is then refused with the documented exception at each call; from a
 * static initializer it would reach the caller as an error in a wrapping, and afterwards as a class that cannot be found.
 * Thread-safe.
 *
 * @param <T> type of what is read; immutable, or never changed
 */
public final class FromTables<T> {
  private final Function<TableSet, T> reading;
  private volatile T value;

  private FromTables(Function<TableSet, T> reading) {
    this.reading = reading;
  }

  /**
   * Something to be read once.
   *
   * @param <T> type of what is read
   * @param reading reads it from the tables; never gives null
   * @return the holder
   */
  public static <T> FromTables<T> of(Function<TableSet, T> reading) {
    return new FromTables<>(Objects.requireNonNull(reading, "reading"));
  }

  /**
   * What was read.
   *
   * @return the same at each call
   * @throws EditionException as {@link TableSet#bundled()}
   * @throws TableFormatException if a table cannot be used
   * @throws java.io.UncheckedIOException if the tables cannot be read
   */
  public T get() {
    T known = value;
    return known == null ? read() : known;
  }

  private synchronized T read() {
    if (value == null) {
      value = Objects.requireNonNull(reading.apply(TableSet.bundled()), "what was read");
    }
    return value;
  }
}
