// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.reference.RollerProfile;
import holdfast.installation.ValueOrigin;
import holdfast.installation.PricedPair;
import holdfast.installation.RollerInterior;
import holdfast.installation.SeatPrice;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.List;

/** Play of a stud to life ratio against a computation with a general-purpose scientific library. */
final class SeatPriceSuite {
  /** The moment of laminae against that of a continuous length with a numerical root search. */
  private static final double TILT = 0.002;
  /** 60 or more graded laminae stay within 0.1 % of the limit of many laminae. */
  private static final double RATIO = 0.001;

  private SeatPriceSuite() {}

  static Suite suite() {
    return RollerSuites.suite(
        "seat-prices", "Price of a loose seat: lean, tilt between the raceways and life ratio", SeatPriceSuite::price,
        "holdfast.installation.SeatPrice", "holdfast.installation.RacewayTilt", "holdfast.installation.CrownKernel#ringTilt",
        "holdfast.seats.SeatTilt");
  }

  private static void price(Table cases, int row, List<Comparison> result) {
    PricedPair pair = pair(cases, row);
    double lean = cases.number(row, "lean");
    add(cases, row, result, "lean", lean, pair.tilt().studTilt().radian(), 1e-9 * lean, "rad", "roots of both to 1e-9");
    double raceways = cases.number(row, "raceways");
    add(cases, row, result, "raceways", raceways, pair.tilt().raceways().radian(), TILT * raceways, "rad",
        "0.2 %: laminae against a continuous length, and a root search inside a root search");
    double ratio = cases.number(row, "life_ratio");
    add(cases, row, result, "life_ratio", ratio, pair.lifeRatio(), RATIO * ratio, "",
        "0.1 %: graded laminae, doubled in number, against a continuous length");
  }

  private static void add(Table cases, int row, List<Comparison> result, String quantity, double theirs, double ours,
      double tolerance, String unit, String reason) {
    result.add(
        Comparison.of(
                cases.address(row) + ", " + quantity.replace('_', ' '), Cases.source(cases, row),
                Evidence.REFERENCE)
            .disclosed(cases.text(row, "disclosed"))
            .numbers(theirs, ours, tolerance, unit, reason));
  }

  private static PricedPair pair(Table cases, int row) {
    Force rating = new Force(cases.number(row, "cr"));
    RollerInterior interior =
        RollerInterior.describe()
            .rollers((int) cases.number(row, "z"), mm(cases, row, "dwe"), mm(cases, row, "lwe"), ValueOrigin.ESTIMATED)
            .pitchDiameter(mm(cases, row, "dpw"), ValueOrigin.ESTIMATED)
            .clearance(mm(cases, row, "s"), ValueOrigin.ESTIMATED)
            .profile(profile(cases.text(row, "profile")), ValueOrigin.ESTIMATED)
            .build();
    return SeatPrice.of(interior, LoadRatings.trackRoller(rating, rating, OuterRing.RIGID))
        .duty(new Force(cases.number(row, "fr")), new RotationalSpeed(100))
        .seat(mm(cases, row, "stud"), mm(cases, row, "length"))
        .ring(mm(cases, row, "outside"), mm(cases, row, "crown"))
        .bending(new Angle(cases.number(row, "bending")))
        .face(mm(cases, row, "runout"), mm(cases, row, "face"))
        .clearance(mm(cases, row, "clearance"))
        .build()
        .loosest();
  }

  private static RollerProfile profile(String text) {
    return switch (text) {
      case "log" -> RollerProfile.logarithmic();
      case "flat" -> RollerProfile.flat();
      default -> RollerProfile.crowned(new Length(Double.parseDouble(text.substring(2))));
    };
  }

  private static Length mm(Table cases, int row, String column) {
    return new Length(cases.number(row, column));
  }
}
