// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.KnownUnits;
import holdfast.tables.FromTables;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A published limit of misalignment.
 *
 * @param kind kind of bearing
 * @param quantity what is limited, for example {@code "permissible misalignment"}
 * @param printed the limit as its source states it
 * @param limit the limit as an angle
 * @param loadFrom low end of the range of P/C in which it holds (dimensionless); 0 if it holds for every load
 * @param loadTo high end of that range (dimensionless); positive infinity if it holds for every load
 * @param condition condition in words; empty if none is stated
 * @param effect what happens above it; empty if not stated
 * @param source document, locator and provenance
 */
public record MisalignmentLimit(
    MisalignmentKind kind,
    String quantity,
    String printed,
    Angle limit,
    double loadFrom,
    double loadTo,
    String condition,
    String effect,
    SourceRef source)
    implements Serializable {
  private static final FromTables<List<MisalignmentLimit>> LIMITS =
      FromTables.of(tables -> read(tables.table("installation/collected/2026/misalignment-limits")));

  public MisalignmentLimit {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(printed, "printed");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(effect, "effect");
    Objects.requireNonNull(source, "source");
    Check.finite(loadFrom, "low end of the range of P/C", "");
    Check.within(loadTo, loadFrom, Double.POSITIVE_INFINITY, "high end of the range of P/C", "", "from low to high");
  }

  /**
   * All limits.
   *
   * @return the limits in the order of the table
   */
  public static List<MisalignmentLimit> all() {
    return LIMITS.get();
  }

  /**
   * Limits of a kind of bearing, whatever its load.
   *
   * @param kind the kind
   * @return the limits in the order of the table; at least one
   */
  public static List<MisalignmentLimit> of(MisalignmentKind kind) {
    Objects.requireNonNull(kind, "kind");
    return LIMITS.get().stream().filter(l -> l.kind() == kind).toList();
  }

  /**
   * Limits of a kind of bearing at a load.
   *
   * @param kind the kind
   * @param loadShare P/C (dimensionless), 0 or more
   * @return the limits whose range of load holds the share, both ends included; empty if no limit is published for so
   *     high a load, then the maker must be asked
   * @throws holdfast.quantity.InputException if the share is negative or not finite
   */
  public static List<MisalignmentLimit> of(MisalignmentKind kind, double loadShare) {
    Objects.requireNonNull(kind, "kind");
    Check.notNegative(loadShare, "load share P/C", "", "it is a ratio of loads");
    return of(kind).stream().filter(l -> loadShare >= l.loadFrom && loadShare <= l.loadTo).toList();
  }

  /**
   * The narrowest limit of a kind of bearing at a load.
   *
   * @param kind the kind
   * @param loadShare P/C (dimensionless), 0 or more
   * @return the limit; empty if none is published for so high a load
   * @throws holdfast.quantity.InputException if the share is negative or not finite
   */
  public static Optional<MisalignmentLimit> narrowest(MisalignmentKind kind, double loadShare) {
    Objects.requireNonNull(kind, "kind");
    return of(kind, loadShare).stream().min(Comparator.comparing(MisalignmentLimit::limit));
  }

  /**
   * Whether a misalignment is within the limit.
   *
   * @param misalignment the angle; its sign does not count
   * @return true up to and including the limit
   */
  public boolean permits(Angle misalignment) {
    Objects.requireNonNull(misalignment, "misalignment");
    return Math.abs(misalignment.base()) <= limit.base() * (1 + 1e-12);
  }

  private static List<MisalignmentLimit> read(Table table) {
    List<MisalignmentLimit> limits = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      limits.add(
          new MisalignmentLimit(
              kind(table.text(row, "kind")),
              table.text(row, "quantity"),
              table.text(row, "printed"),
              KnownUnits.MRAD.of(table.number(row, "limit")),
              table.has(row, "load_from") ? table.number(row, "load_from") : 0,
              table.has(row, "load_to") ? table.number(row, "load_to") : Double.POSITIVE_INFINITY,
              table.text(row, "condition"),
              table.text(row, "effect"),
              new SourceRef(table.text(row, "source"), table.text(row, "locator"), table.provenance(row))));
    }
    return List.copyOf(limits);
  }

  private static MisalignmentKind kind(String label) {
    for (MisalignmentKind candidate : MisalignmentKind.values()) {
      if (candidate.toString().equals(label)) {
        return candidate;
      }
    }
    throw new IllegalStateException("kind '" + label + "' of the table of misalignment has no name here");
  }

  /** For example {@code "1 mrad (track roller, flat ring; 0.001 in/in)"}. */
  @Override
  public String toString() {
    return limit + " (" + kind + "; " + printed + ")";
  }
}
