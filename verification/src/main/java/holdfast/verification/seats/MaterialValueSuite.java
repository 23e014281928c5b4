// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.quantity.KnownUnits;
import holdfast.seats.Material;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Material values in the units in which they were printed, and the same materials in a second source. */
final class MaterialValueSuite {
  /** Exact: lb in kg over in³ in m³. */
  private static final double LB_PER_IN3 = 0.45359237 / (0.0254 * 0.0254 * 0.0254);
  /** Exact: slug in kg (lbf·s²/ft) over ft³ in m³. */
  private static final double SLUG_PER_FT3 = 0.45359237 * 9.80665 / 0.3048 / (0.3048 * 0.3048 * 0.3048);

  private MaterialValueSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "seats/material-values",
        "Materials: values back in the units of print, and second sources",
        MaterialValueSuite::row,
        "holdfast.seats.Material#of");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    Material material = Material.of(cases.text(row, "name"), cases.text(row, "condition"));
    String unit = cases.text(row, "unit");
    boolean other = cases.text(row, "basis").equals("other source");
    result.add(
        Cases.comparison(cases, row, other ? Evidence.PRINT : Evidence.RECOMBINED)
            .numbers(
                cases.number(row, "value"),
                computed(material, cases.text(row, "property"), unit),
                Cases.halfLastDigit(cases.text(row, "value")),
                unit,
                "half a unit of the last printed digit"));
  }

  private static double computed(Material m, String property, String unit) {
    return switch (property) {
      case "elastic modulus" -> m.elasticModulus().in(KnownUnits.PSI) / 1e6;
      case "yield strength" -> m.yieldStrength().orElseThrow().in(KnownUnits.KSI);
      case "tensile strength" -> m.tensileStrength().orElseThrow().in(KnownUnits.KSI);
      case "expansion" -> m.thermalExpansion().perKelvin() * 1e6 * 5 / 9;
      case "poisson ratio" -> m.poissonRatio();
      case "density" ->
          switch (unit) {
            case "lb/in³" -> m.density().orElseThrow() / LB_PER_IN3;
            case "slug/ft³" -> m.density().orElseThrow() / SLUG_PER_FT3;
            default -> m.density().orElseThrow();
          };
      default -> throw new IllegalArgumentException("no such property: " + property);
    };
  }
}
