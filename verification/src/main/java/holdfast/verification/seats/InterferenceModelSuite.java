// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.ThickRingKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/**
 * The closed form against finite elements. Where both parts are of equal length it is exact; where they are not, the
 * disclosed differences show the limit of the closed form.
 */
final class InterferenceModelSuite {
  private static final String PENALTY = "compliance of the penalty contact, p/(K·δ), up to 0.004 %";
  private static final String NODES = "nodal stresses, extrapolated within elements; both sides of the joint differ by 0.05 %";
  private static final String MEAN = "mean of nodal stresses that lie up to 0.09 % below the contact pressure";

  private InterferenceModelSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "seats/interference-models",
        "Interference fits: pressure and hoop stresses against finite elements with contact",
        InterferenceModelSuite::row,
        "holdfast.seats.ThickRingKernel#pressureOfParts", "holdfast.seats.ThickRingKernel#hoopStress");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    Row c = new Row(cases, row);
    double pressure = pressure(c);
    double delta = c.get("radial_interference");
    double stud = c.get("joint") / 2 + delta / 2;
    double bore = c.get("joint") / 2 - delta / 2;
    double hole = c.get("hole") / 2;
    double housing = ThickRingKernel.hoopStress(bore, bore, c.get("outside") / 2, pressure, 0);
    double inside = ThickRingKernel.hoopStress(hole, hole, stud, 0, pressure * bore / stud);
    result.add(compare(c, "contact pressure", "pressure", "disclosed_pressure", pressure, 5e-5, PENALTY));
    result.add(compare(c, "hoop stress of the bore", "housing_hoop", "disclosed_housing", housing, 1e-3, NODES));
    result.add(compare(c, "hoop stress inside the stud", "stud_hoop", "disclosed_stud", inside, 1e-3, NODES));
    result.add(compare(c, "mean pressure", "mean_pressure", "disclosed_mean", pressure, 1.5e-3, MEAN));
  }

  /** Pressure on the bore in MPa of a case whose overlap is in the geometry. */
  static double pressure(Row c) {
    double delta = c.get("radial_interference");
    return ThickRingKernel.pressureOfParts(
        c.get("joint") + delta,
        c.get("joint") - delta,
        c.get("hole"),
        c.get("outside"),
        c.get("inner_modulus"),
        c.get("inner_poisson"),
        c.get("outer_modulus"),
        c.get("outer_poisson"));
  }

  private static Comparison compare(
      Row c, String name, String column, String disclosed, double computed, double relative, String reason) {
    double value = c.get(column);
    return Comparison.of(
            c.table().address(c.index()) + ", " + name, Cases.source(c.table(), c.index()), Evidence.REFERENCE)
        .disclosed(c.text(disclosed))
        .numbers(value, computed, Math.abs(value) * relative, "MPa", reason);
  }
}
