// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.umPerMK;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The bundled materials, read once. */
final class MaterialTable {
  private static final Table TABLE = TableSet.bundled().table("seats/collected/2026/material-properties");
  private static final List<Material> MATERIALS = read();

  private MaterialTable() {}

  static List<Material> all() {
    return MATERIALS;
  }

  static Material find(String name, String condition) {
    String wanted = name.strip();
    String begin = condition.strip().toLowerCase(Locale.ROOT);
    List<Material> named = new ArrayList<>();
    List<Material> found = new ArrayList<>();
    for (int row = 0; row < TABLE.size(); row++) {
      Material material = MATERIALS.get(row);
      if (isCalled(row, wanted)) {
        named.add(material);
        String its = material.condition().toLowerCase(Locale.ROOT);
        if (its.equals(begin) && !begin.isEmpty()) {
          return material;
        }
        if (its.startsWith(begin)) {
          found.add(material);
        }
      }
    }
    if (found.size() == 1) {
      return found.get(0);
    }
    if (named.isEmpty()) {
      throw new InputException(
          "material",
          "'" + name + "'",
          "one of " + MATERIALS.stream().map(Material::name).distinct().collect(Collectors.joining(", ")),
          "the table of materials does not hold it; state your own with Material.named");
    }
    throw new InputException(
        "condition of " + named.get(0).name(),
        "'" + condition + "'",
        "the beginning of just one of: " + named.stream().map(Material::condition).collect(Collectors.joining("; ")),
        "the table holds the material in these conditions");
  }

  private static boolean isCalled(int row, String wanted) {
    if (TABLE.text(row, "name").equalsIgnoreCase(wanted)) {
      return true;
    }
    for (String alias : TABLE.text(row, "aliases").split(";", -1)) {
      if (!alias.isEmpty() && alias.equalsIgnoreCase(wanted)) {
        return true;
      }
    }
    return false;
  }

  private static List<Material> read() {
    List<Material> materials = new ArrayList<>();
    for (int row = 0; row < TABLE.size(); row++) {
      SourceRef source = new SourceRef(TABLE.text(row, "source"), TABLE.text(row, "locator"), TABLE.provenance(row));
      Material.Builder builder =
          Material.named(TABLE.text(row, "name"), source)
              .condition(TABLE.text(row, "condition"))
              .kind(
                  MaterialGroup.of(TABLE.text(row, "group")),
                  Ductility.valueOf(TABLE.text(row, "ductility").toUpperCase(Locale.ROOT)))
              .elastic(MPa(TABLE.number(row, "elastic_modulus")), TABLE.number(row, "poisson_ratio"))
              .expansion(umPerMK(TABLE.number(row, "expansion")))
              .density(TABLE.number(row, "density"))
              .note(TABLE.text(row, "note"));
      if (TABLE.has(row, "yield_strength")) {
        builder.yieldStrength(MPa(TABLE.number(row, "yield_strength")));
      }
      if (TABLE.has(row, "tensile_strength")) {
        builder.tensileStrength(MPa(TABLE.number(row, "tensile_strength")));
      }
      materials.add(builder.build());
    }
    return List.copyOf(materials);
  }
}
