// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Source;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Objects;

/** Groups of radial internal clearance of cylindrical roller bearings with cylindrical bore, before mounting. */
@Source(document = "ISO 5753-1:2009", locator = "cylindrical roller bearings, cylindrical bore")
public enum ClearanceGroup {
  /** Less than normal. */
  C2,
  /** Normal. */
  CN,
  /** Greater than normal. */
  C3,
  /** Greater than C3. */
  C4,
  /** Greater than C4. */
  C5;

  /**
   * Least radial clearance.
   *
   * @param bore bore d of the bearing, over 0 to the end of the table
   * @return the diametral play of the ring across the rollers, 0 or more
   * @throws InputException if the table does not hold the bore
   */
  public Length least(Length bore) {
    return value(bore, "least");
  }

  /**
   * Greatest radial clearance.
   *
   * @param bore bore d of the bearing, over 0 to the end of the table
   * @return the diametral play of the ring across the rollers
   * @throws InputException if the table does not hold the bore
   */
  public Length greatest(Length bore) {
    return value(bore, "greatest");
  }

  /**
   * Least clearance that is left when the inner ring is pressed onto its shaft and the raceway grows with it.
   *
   * @param bore bore d of the bearing, over 0 to the end of the table
   * @param growth by how much the diameter of the raceway grows, 0 or more
   * @return the clearance left; negative for preload
   * @throws InputException if the table does not hold the bore, or the raceway shrinks
   */
  public Length leastAfterFitting(Length bore, Length growth) {
    Objects.requireNonNull(growth, "growth");
    Check.notNegative(growth.mm(), "growth of the raceway", "mm", "a press fit widens the ring");
    return least(bore).minus(growth);
  }

  private Length value(Length bore, String column) {
    Objects.requireNonNull(bore, "bore");
    Table table = TableSet.bundled().table("bearings/iso-5753-1/2009/cylindrical-roller-clearance");
    double end = 0;
    for (int row = 0; row < table.size(); row++) {
      if (table.text(row, "group").equals(name())) {
        end = Math.max(end, table.number(row, "up_to_mm"));
        if (bore.mm() > table.number(row, "over_mm") && bore.mm() <= table.number(row, "up_to_mm")) {
          return KnownUnits.UM.of(table.number(row, column));
        }
      }
    }
    throw new InputException(
        "bore d", bore.toString(), "over 0 mm up to " + holdfast.quantity.Numbers.shortest(end) + " mm",
        "the table of clearances of group " + this + " ends there");
  }
}
