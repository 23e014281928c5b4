// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.quantity.KnownUnits;
import holdfast.seats.Material;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Thermal expansion of every material against the usual range of its group: plausibility only. */
final class ExpansionRangeSuite implements Suite {
  @Override
  public String id() {
    return "seats/expansion-ranges";
  }

  @Override
  public String title() {
    return "Materials: thermal expansion within the usual range of the group";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.seats.Material#thermalExpansion");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("seats/expansion-ranges");
    List<Comparison> result = new ArrayList<>();
    for (Material material : Material.all()) {
      int row = cases.find("group", material.group().toString());
      if (row >= 0) {
        double least = cases.number(row, "least");
        double greatest = cases.number(row, "greatest");
        result.add(
            Comparison.of(
                    "range of " + material.group() + ": " + material.name() + ", " + material.condition(),
                    Cases.source(cases, row),
                    Evidence.PRACTICE)
                .disclosed(disclosure(material))
                .band(least, material.thermalExpansion().in(KnownUnits.UM_PER_M_K), greatest, "µm/(m·K)",
                    "usual range of the group"));
      }
    }
    return result;
  }

  /** Why a material lies outside of the range of its group. */
  private static String disclosure(Material material) {
    return switch (material.name()) {
      case "EN AC-42100", "EN AC-44000" -> "Silicon in casting alloys lowers the expansion below that of wrought aluminium.";
      case "ASTM A48 class 25" -> "6.7e-6/°F in its source is 12.06, printed as 12.1; the range ends at 12.";
      default -> "";
    };
  }
}
