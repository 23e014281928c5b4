// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.umPerMK;

import holdfast.quantity.InputException;
import holdfast.tables.FromTables;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The bundled materials, read once. */
final class MaterialTable {
  private static final FromTables<List<Material>> MATERIALS = FromTables.of(tables -> read());

  private MaterialTable() {}

  static List<Material> all() {
    return MATERIALS.get();
  }

  static Material find(String name, String condition) {
    String wanted = name.strip();
    String begin = condition.strip().toLowerCase(Locale.ROOT);
    List<Material> named = new ArrayList<>();
    List<Material> found = new ArrayList<>();
    for (int row = 0; row < table().size(); row++) {
      Material material = all().get(row);
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
          "one of " + all().stream().map(Material::name).distinct().collect(Collectors.joining(", ")),
          "the table of materials does not hold it; state your own with Material.named");
    }
    throw new InputException(
        "condition of " + named.get(0).name(),
        "'" + condition + "'",
        "the beginning of just one of: " + named.stream().map(Material::condition).collect(Collectors.joining("; ")),
        "the table holds the material in these conditions");
  }

  private static boolean isCalled(int row, String wanted) {
    if (table().text(row, "name").equalsIgnoreCase(wanted)) {
      return true;
    }
    for (String alias : table().text(row, "aliases").split(";", -1)) {
      if (!alias.isEmpty() && alias.equalsIgnoreCase(wanted)) {
        return true;
      }
    }
    return false;
  }

  private static List<Material> read() {
    List<Material> materials = new ArrayList<>();
    for (int row = 0; row < table().size(); row++) {
      SourceRef source = new SourceRef(table().text(row, "source"), table().text(row, "locator"), table().provenance(row));
      Material.Builder builder =
          Material.named(table().text(row, "name"), source)
              .condition(table().text(row, "condition"))
              .kind(
                  MaterialGroup.of(table().text(row, "group")),
                  Ductility.valueOf(table().text(row, "ductility").toUpperCase(Locale.ROOT)))
              .elastic(MPa(table().number(row, "elastic_modulus")), table().number(row, "poisson_ratio"))
              .expansion(umPerMK(table().number(row, "expansion")))
              .density(table().number(row, "density"))
              .note(table().text(row, "note"));
      if (table().has(row, "yield_strength")) {
        builder.yieldStrength(MPa(table().number(row, "yield_strength")));
      }
      if (table().has(row, "tensile_strength")) {
        builder.tensileStrength(MPa(table().number(row, "tensile_strength")));
      }
      materials.add(builder.build());
    }
    return List.copyOf(materials);
  }

  private static Table table() {
    return TableSet.bundled().table("seats/collected/2026/material-properties");
  }
}
