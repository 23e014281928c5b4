// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.SeatHold;
import holdfast.seats.SeatSlopeKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Locale;

/** Elastic seats of studs between the nodes of the table, for a load at 0.6 d from the mouth. */
final class StudSeatModelSuite {
  private static final double ARM = 0.6;
  private static final double DIAMETER = 18;
  private static final double MODULUS = 206000;
  private static final double FORCE = 2100;
  private static final String SMOOTH = "3 %: mesh of table and model 1.5 %, the rest for the cubic between the nodes";

  private StudSeatModelSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "seats/stud-seats",
        "Slope of a stud in an elastic seat against solids that are no nodes of the table",
        StudSeatModelSuite::row,
        "holdfast.seats.SeatSlopeKernel");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    Row c = new Row(cases, row);
    double length = c.get("length");
    double wall = c.get("wall");
    double moduli = c.get("moduli");
    double bore = c.get("bore");
    for (SeatHold hold : SeatHold.values()) {
      String column = hold.name().toLowerCase(Locale.ROOT);
      double unit = FORCE / (MODULUS * DIAMETER * DIAMETER);
      double expected = (ARM * c.get(column + "_moment") + c.get(column + "_force")) * unit;
      double computed =
          SeatSlopeKernel.mouthSlope(hold, FORCE, ARM * DIAMETER, DIAMETER, MODULUS, length, wall, moduli, bore);
      result.add(compare(c, "slope, " + column.replace('_', ' '), "disclosed", expected, computed, 0.03 * Math.abs(expected),
          "rad", SMOOTH));
    }
    result.add(compare(c, "force on the bore", "disclosed_force",
        c.get("bore_force_of_force") + ARM * c.get("bore_force_of_moment"),
        SeatSlopeKernel.boreForce(ARM, length, wall, moduli, bore), 0.03, "", "3 % of the load"));
    result.add(compare(c, "moment on the bore", "disclosed",
        c.get("bore_moment_of_force") + ARM * c.get("bore_moment_of_moment"),
        SeatSlopeKernel.boreMoment(ARM, length, wall, moduli, bore), 0.03 * ARM, "", "3 % of the moment of the load"));
  }

  private static Comparison compare(
      Row c, String what, String disclosed, double expected, double computed, double tolerance, String unit, String reason) {
    return Comparison.of(c.table().address(c.index()) + ", " + what, Cases.source(c.table(), c.index()), Evidence.REFERENCE)
        .disclosed(c.text(disclosed))
        .numbers(expected, computed, tolerance, unit, reason);
  }
}
