// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.reference;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.reference.BallSet;
import holdfast.bearings.reference.RollerProfile;
import holdfast.bearings.reference.RollerSet;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.bearings.reference.TiltedLife;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Absolute lives of aligned bearings by the recalled method, whose geometry is not known beyond the number of elements. */
final class RecalledLifeSuite implements Suite {
  @Override
  public String id() {
    return "bearings/reference-recalled-lives";
  }

  @Override
  public String title() {
    return "Lives of aligned bearings under Fr = Cr against recalled numbers";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.bearings.reference.LaminaLifeKernel#life", "holdfast.bearings.reference.BallLifeKernel#life");
  }

  /** Nine balls as in a common size, or as many small ones as the recalled number asks for. */
  private static BallSet balls(int z) {
    return z == 9
        ? BallSet.of(z, new Length(7.94), new Length(38.5))
        : BallSet.of(z, new Length(1), new Length(0.5 * z));
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("bearings/reference-recalled-lives");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      Force rating = new Force(1000);
      int z = (int) cases.number(row, "elements");
      Length diameter = new Length(4);
      Length pitch = new Length(Math.max(20, 2.0 * z));
      TiltedBearing bearing =
          cases.text(row, "bearing").equals("ball")
              ? TiltedBearing.of(LoadRatings.radialBall(rating, rating), balls(z))
              : TiltedBearing.of(
                      LoadRatings.radialRoller(rating, rating),
                      RollerSet.of(z, diameter, new Length(8), pitch).profile(RollerProfile.flat()))
                  .withoutEdgeStress();
      TiltedLife life = bearing.life(rating.times(cases.number(row, "load_over_rating")), new Angle(0));
      String printed = cases.text(row, "life");
      result.add(
          Cases.comparison(cases, row, Evidence.RECALLED)
              .numbers(
                  cases.number(row, "life"), cases.text(row, "divided").equals("yes") ? life.recalledLife() : life.life(),
                  Cases.halfLastDigit(printed), "10^6 revolutions", "half a unit of the last digit"));
    }
    return result;
  }
}
