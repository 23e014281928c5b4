// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Objects;

/** Adhesion coefficients of steel studs from the bundled tables; all of them recalled. */
public final class Adhesion {
  private static final Table PRESSED = TableSet.bundled().table("seats/din-7190-1/2017/adhesion-pressed");
  private static final Table SHRUNK = TableSet.bundled().table("seats/din-7190-1/2017/adhesion-shrunk");

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
    for (int row = 0; row < PRESSED.size(); row++) {
      if (PRESSED.text(row, "group").equals(tableGroup(housing).toString()) && PRESSED.text(row, "condition").equals(condition)) {
        least = Math.min(least, PRESSED.number(row, "coefficient"));
        greatest = Math.max(greatest, PRESSED.number(row, "coefficient"));
      }
    }
    if (greatest == 0) {
      throw unknown(housing + ", " + condition, PRESSED);
    }
    return new FrictionBand(least, greatest, source(PRESSED));
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
    for (int row = 0; row < SHRUNK.size(); row++) {
      String condition = SHRUNK.text(row, "condition");
      boolean dry = !condition.startsWith("oil-injection");
      boolean clean = condition.startsWith("degreased") == degreased || condition.equals("dry");
      if (dry && clean && SHRUNK.text(row, "group").equals(shrunkGroup(housing).toString())) {
        return new FrictionBand(SHRUNK.number(row, "least"), SHRUNK.number(row, "greatest"), source(SHRUNK));
      }
    }
    throw unknown(housing + (degreased ? ", degreased" : ", not degreased"), SHRUNK);
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
}
