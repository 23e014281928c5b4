// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Source;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Objects;

/**
 * Rings of radial bearings of class Normal as partners of a fit, so that nobody has to type their deviations. Not for tapered
 * roller bearings and not for track rollers, whose rings have limits of their own.
 */
@Source(document = "ISO 492:2014", locator = "class Normal, deviations of the mean bore and outside diameter")
public final class BearingRing {
  private BearingRing() {}

  /**
   * The bore of an inner ring, as the hole of a fit with a shaft.
   *
   * @param diameter nominal bore d, over 2.5 up to 120 mm
   * @return for example 6 mm with 0/-8 µm
   * @throws InputException if the table does not hold the size
   */
  public static TolerancedSize bore(Length diameter) {
    return size(diameter, "bore");
  }

  /**
   * The outside of an outer ring, as the shaft of a fit with a housing.
   *
   * @param diameter nominal outside diameter D, over 6 up to 180 mm
   * @return for example 52 mm with 0/-13 µm
   * @throws InputException if the table does not hold the size
   */
  public static TolerancedSize outside(Length diameter) {
    return size(diameter, "outside diameter");
  }

  private static TolerancedSize size(Length diameter, String surface) {
    Objects.requireNonNull(diameter, "diameter");
    Table table = TableSet.bundled().table("fits/iso-492/2014/normal-class");
    double from = Double.POSITIVE_INFINITY;
    double end = 0;
    for (int row = 0; row < table.size(); row++) {
      if (table.text(row, "surface").equals(surface)) {
        from = Math.min(from, table.number(row, "over_mm"));
        end = Math.max(end, table.number(row, "up_to_mm"));
        if (diameter.mm() > table.number(row, "over_mm") && diameter.mm() <= table.number(row, "up_to_mm")) {
          LimitDeviations deviations = new LimitDeviations(
              KnownUnits.UM.of(table.number(row, "lower")), KnownUnits.UM.of(table.number(row, "upper")));
          String text = Numbers.shortest(table.number(row, "upper")) + "/" + Numbers.shortest(table.number(row, "lower")) + " µm";
          return TolerancedSize.given(diameter, deviations, text, table.cell(row, "lower").source());
        }
      }
    }
    throw new InputException(
        surface + " of a bearing ring", diameter.toString(),
        "over " + Numbers.shortest(from) + " mm up to " + Numbers.shortest(end) + " mm",
        "the prints that were found of ISO 492, class Normal, hold these sizes");
  }
}
