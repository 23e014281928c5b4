// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.reference;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.reference.LaminaSpacing;
import holdfast.bearings.reference.RollerProfile;
import holdfast.bearings.reference.RollerSet;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Life ratios with few laminae against 2000 of them; the listed rows are the convergence table. */
final class LaminaConvergenceSuite implements Suite {
  private static final SourceRef LIMIT = SourceRef.derived("a life ratio does not depend on the number of laminae");
  private static final String EQUAL = "equal laminae, as recalled: the edge stress factor rises steeply towards the end of a"
      + " roller, and their midpoints miss it; graded laminae are the default";

  @Override
  public String id() {
    return "bearings/reference-laminae";
  }

  @Override
  public String title() {
    return "Life ratios with 30 to 120 laminae, and refined, against 2000 laminae";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.bearings.reference.TiltedBearing#life", "holdfast.bearings.reference.LaminaSpacing");
  }

  @Override
  public List<Comparison> run() {
    Force rating = new Force(20_000);
    RollerSet rollers = RollerSet.of(14, new Length(5), new Length(10), new Length(40));
    List<Comparison> result = new ArrayList<>();
    for (RollerProfile profile :
        List.of(RollerProfile.logarithmic(), RollerProfile.flat(), RollerProfile.crowned(new Length(2000)))) {
      TiltedBearing bearing =
          TiltedBearing.of(LoadRatings.radialRoller(rating, rating), rollers.profile(profile)).clearance(new Length(0.02));
      for (double tilt : new double[] {0.001, 0.003}) {
        double limit = ratio(bearing.laminae(2000), tilt);
        String name = profile + ", tilt " + new Angle(tilt);
        for (int n : new int[] {30, 60, 120}) {
          add(result, name + ", " + n + " graded laminae", limit, ratio(bearing.laminae(n), tilt), "");
        }
        add(result, name + ", refined", limit, ratio(bearing, tilt), "");
        double equal = ratio(bearing.laminae(30).spacing(LaminaSpacing.EQUAL), tilt);
        add(result, name + ", 30 equal laminae", limit, equal, equalIsEnough(profile, tilt) ? "" : EQUAL);
      }
    }
    return result;
  }

  /** Found by this comparison: ends that are relieved and not yet loaded, or loaded so much that all depends on them. */
  private static boolean equalIsEnough(RollerProfile profile, double tilt) {
    return (profile instanceof RollerProfile.Crowned && tilt < 0.002)
        || (profile instanceof RollerProfile.Logarithmic && tilt > 0.002);
  }

  private static double ratio(TiltedBearing bearing, double tilt) {
    return bearing.life(new Force(4000), new Angle(tilt)).lifeRatio();
  }

  private static void add(List<Comparison> result, String name, double limit, double computed, String disclosure) {
    result.add(
        Comparison.of(name, LIMIT, Evidence.RECONSTRUCTION)
            .disclosed(disclosure)
            .numbers(limit, computed, 0.01 * limit, "", "1 %, the accuracy claimed for 30 or more laminae"));
  }
}
