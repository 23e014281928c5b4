// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Objects;

/** Adhesion coefficients of steel studs from the bundled tables; all of them recalled. */
public final class Adhesion {

  private Adhesion() {}

  /**
   * A pressed-in fit: from the least coefficient of slipping to the greatest of breaking loose over the housings of the
   * group.
   *
   * @param housing group of the housing
   * @param lubricated whether the joint was oiled for pressing
   * @return the band
   * @throws InputException if the table holds no such pair
   */
  public static FrictionBand pressed(MaterialGroup housing, boolean lubricated) {
    Objects.requireNonNull(housing, "housing");
    String condition = lubricated ? "lubricated" : "dry";
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    Table table = pressed();
    for (int row = 0; row < table.size(); row++) {
      if (table.text(row, "group").equals(tableGroup(housing).toString()) && table.text(row, "condition").equals(condition)) {
        least = Math.min(least, table.number(row, "coefficient"));
        greatest = Math.max(greatest, table.number(row, "coefficient"));
      }
    }
    if (greatest == 0) {
      throw unknown(housing + ", " + condition, table);
    }
    return new FrictionBand(least, greatest, source(table));
  }

  /**
   * A shrunk or expanded fit joined dry.
   *
   * @param housing group of the housing
   * @param degreased whether the faces were degreased; without meaning for aluminium and brass
   * @return the band
   * @throws InputException if the table holds no such pair
   */
  public static FrictionBand shrunk(MaterialGroup housing, boolean degreased) {
    Objects.requireNonNull(housing, "housing");
    Table table = shrunk();
    for (int row = 0; row < table.size(); row++) {
      String condition = table.text(row, "condition");
      boolean dry = !condition.startsWith("oil-injection");
      boolean clean = condition.startsWith("degreased") == degreased || condition.equals("dry");
      if (dry && clean && table.text(row, "group").equals(shrunkGroup(housing).toString())) {
        return new FrictionBand(table.number(row, "least"), table.number(row, "greatest"), source(table));
      }
    }
    throw unknown(housing + (degreased ? ", degreased" : ", not degreased"), table);
  }

  private static MaterialGroup tableGroup(MaterialGroup group) {
    return switch (group) {
      case TEMPERED_STEEL, HARDENED_STEEL -> MaterialGroup.STEEL;
      case BRONZE -> MaterialGroup.BRASS;
      default -> group;
    };
  }

  private static MaterialGroup shrunkGroup(MaterialGroup group) {
    return switch (group) {
      case DUCTILE_IRON, MALLEABLE_IRON -> MaterialGroup.GREY_IRON;
      case MAGNESIUM_ALLOY -> MaterialGroup.ALUMINIUM_ALLOY;
      default -> tableGroup(group);
    };
  }

  private static SourceRef source(Table table) {
    return table.descriptor().source();
  }

  private static InputException unknown(String pair, Table table) {
    StringBuilder known = new StringBuilder();
    for (int row = 0; row < table.size(); row++) {
      String entry = table.text(row, "group") + ", " + table.text(row, "condition");
      if (known.indexOf(entry) < 0) {
        known.append(known.length() == 0 ? "" : "; ").append(entry);
      }
    }
    return new InputException("housing and condition", pair, "one of: " + known, "state a band of your own for other pairs");
  }

  private static Table pressed() {
    return TableSet.bundled().table("seats/din-7190-1/2017/adhesion-pressed");
  }

  private static Table shrunk() {
    return TableSet.bundled().table("seats/din-7190-1/2017/adhesion-shrunk");
  }
}
