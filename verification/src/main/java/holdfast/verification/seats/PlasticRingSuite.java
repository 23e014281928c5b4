// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.PlasticRingKernel;
import holdfast.seats.ThickRingKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Housings that yield: pressure and plastic zone against one-dimensional finite elements. */
final class PlasticRingSuite {
  private PlasticRingSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "seats/plastic-rings",
        "Elastic-plastic interference fits: pressure and plastic zone against finite elements",
        PlasticRingSuite::row,
        "holdfast.seats.PlasticRingKernel");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    Row c = new Row(cases, row);
    double ratio = c.get("joint") / c.get("outside");
    double stud =
        ThickRingKernel.innerCompliance(c.get("hole"), c.get("joint"), c.get("inner_modulus"), c.get("inner_poisson"));
    double zeta =
        PlasticRingKernel.plasticRatioOfInterference(
            c.get("interference"),
            ratio,
            c.get("joint"),
            stud,
            c.get("outer_modulus"),
            c.get("outer_poisson"),
            c.get("yield_difference"));
    double pressure = PlasticRingKernel.pressure(zeta, ratio, c.get("yield_difference"));
    double least = c.get("front_least");
    double greatest = c.get("front_greatest");
    result.add(
        compare(c, "joint pressure")
            .numbers(
                c.get("pressure"), pressure, 1e-4 * c.get("pressure"), "MPa", "grid of the model: a hundredth of a percent"));
    result.add(
        compare(c, "radius of the plastic zone over joint radius")
            .band(least, zeta, greatest, "", "the front of the model lies between two points"));
  }

  private static Comparison.Builder compare(Row c, String name) {
    return Comparison.of(c.table().address(c.index()) + ", " + name, Cases.source(c.table(), c.index()), Evidence.REFERENCE)
        .disclosed(c.text("disclosed"));
  }
}
