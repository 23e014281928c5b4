// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Objects;

/** Amounts by which surfaces settle after tightening. */
public final class Embedding {
  private Embedding() {}

  /**
   * Embedding of a joint: thread once, each face and each inner interface by its roughness.
   *
   * @param roughness Rz of the surfaces, below 160 µm
   * @param shear whether the joint is loaded in shear and not along the stud
   * @param faces number of bearing faces of head and nut, 0 or more
   * @param interfaces number of inner interfaces, 0 or more
   * @return fZ
   * @throws InputException if the roughness is outside the table or a number is negative
   */
  @Source(document = "VDI 2230-1:2015", locator = "Table 5", provenance = Provenance.MEMORY)
  public static Length amount(Length roughness, boolean shear, int faces, int interfaces) {
    Objects.requireNonNull(roughness, "roughness");
    Check.notNegative(faces, "number of bearing faces", "", "a number");
    Check.notNegative(interfaces, "number of inner interfaces", "", "a number");
    double rz = Check.notNegative(roughness.mm() * 1000, "roughness Rz", "µm", "a height");
    Table table = TableSet.bundled().table("threads/vdi-2230/2015/embedding");
    for (int row = 0; row < table.size(); row++) {
      if (table.text(row, "loading").equals(shear ? "shear" : "tension/compression")
          && rz >= table.number(row, "rz_from")
          && rz < table.number(row, "rz_below")) {
        double um = table.number(row, "thread") + faces * table.number(row, "face") + interfaces * table.number(row, "interface");
        return new Length(um / 1000);
      }
    }
    throw new InputException("roughness Rz", roughness.toString(), "from 0 µm to below 160 µm", "VDI 2230-1:2015, Table 5");
  }
}
