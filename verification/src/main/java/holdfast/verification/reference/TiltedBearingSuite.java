// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.reference;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.reference.BallSet;
import holdfast.bearings.reference.Loading;
import holdfast.bearings.reference.RingMotion;
import holdfast.bearings.reference.RollerProfile;
import holdfast.bearings.reference.RollerSet;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.bearings.reference.TiltedLife;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Tilted bearings against a computation with a general-purpose scientific library that integrates without laminae. */
final class TiltedBearingSuite {
  /** What an angle that follows from a moment may differ by: root search with numerical derivatives. */
  private static final double ANGLE = 1e-8;

  private TiltedBearingSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "bearings/reference-tilted-bearings",
        "Tilted bearings: life, life ratio, displacement, greatest load and tilt against a computation without laminae",
        TiltedBearingSuite::row,
        "holdfast.bearings.reference.TiltedBearing#life", "holdfast.bearings.reference.LoadDistributionKernel",
        "holdfast.bearings.reference.LaminaLifeKernel", "holdfast.bearings.reference.BallDistributionKernel",
        "holdfast.bearings.reference.BallLifeKernel", "holdfast.bearings.reference.BallKernel#stiffness",
        "holdfast.bearings.reference.ProfileKernel");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    boolean ball = cases.text(row, "kind").equals("ball");
    TiltedLife life = bearing(cases, row, ball).life(loading(cases, row));
    // Laminae against a continuous length at the end of a contact, where the load sets in with a vertical tangent.
    double share = ball ? 1e-6 : 2e-4;
    String reason = ball ? "root search to 1e-7" : "1000 laminae against a continuous length";
    add(result, cases, row, "life_ratio", life.lifeRatio(), share, "", reason);
    add(result, cases, row, "life", life.life(), share, "10^6 revolutions", reason);
    add(result, cases, row, "displacement", life.displacement().mm(), ball ? 1e-6 : 1e-5, "mm", reason);
    add(result, cases, row, "greatest_load", life.greatestLoad().newton(), ball ? 1e-6 : 1e-5, "N", reason);
    if (cases.has(row, "moment")) {
      angle(result, cases, row, "tilt_along", life.tiltAlong());
      angle(result, cases, row, "tilt_across", life.tiltAcross());
    }
  }

  private static void add(
      List<Comparison> result, Table cases, int row, String column, double ours, double share, String unit, String reason) {
    double theirs = cases.number(row, column);
    result.add(
        Comparison.of(cases.address(row) + ", " + column.replace('_', ' '), Cases.source(cases, row), Evidence.REFERENCE)
            .disclosed(cases.text(row, "disclosed"))
            .numbers(theirs, ours, share * Math.abs(theirs), unit, reason));
  }

  private static void angle(List<Comparison> result, Table cases, int row, String column, Angle ours) {
    result.add(
        Comparison.of(cases.address(row) + ", " + column.replace('_', ' '), Cases.source(cases, row), Evidence.REFERENCE)
            .disclosed(cases.text(row, "disclosed"))
            .numbers(cases.number(row, column), ours.radian(), ANGLE, "rad", "root search with numerical derivatives"));
  }

  static TiltedBearing bearing(Table cases, int row, boolean ball) {
    Force cr = new Force(cases.number(row, "cr"));
    int z = (int) cases.number(row, "z");
    TiltedBearing bearing =
        ball
            ? TiltedBearing.of(
                LoadRatings.radialBall(cr, cr),
                BallSet.of(z, length(cases, row, "dwe"), length(cases, row, "dpw"))
                    .grooves(length(cases, row, "ri"), length(cases, row, "re")))
            : TiltedBearing.of(
                    LoadRatings.radialRoller(cr, cr),
                    RollerSet.of(z, length(cases, row, "dwe"), length(cases, row, "lwe"), length(cases, row, "dpw"))
                        .profile(profile(cases.text(row, "profile"))))
                .laminae(1000);
    return bearing
        .clearance(length(cases, row, "s"))
        .rings(RingMotion.valueOf(cases.text(row, "inner")), RingMotion.valueOf(cases.text(row, "outer")))
        .firstElementAt(new Angle(cases.number(row, "first")));
  }

  static RollerProfile profile(String text) {
    if (text.equals("flat")) {
      return RollerProfile.flat();
    }
    return text.equals("log")
        ? RollerProfile.logarithmic()
        : RollerProfile.crowned(new Length(Double.parseDouble(text.substring(2))));
  }

  static Loading loading(Table cases, int row) {
    Loading loading = Loading.radial(new Force(cases.number(row, "fr"))).axial(new Force(cases.number(row, "fa")));
    return cases.has(row, "moment")
        ? loading.moment(new Torque(cases.number(row, "moment")), new Torque(cases.number(row, "moment_across")))
        : loading.tilted(new Angle(cases.number(row, "tilt")), new Angle(cases.number(row, "across")));
  }

  static Length length(Table cases, int row, String column) {
    return new Length(cases.number(row, column));
  }
}
