// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.reference;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.reference.BallSet;
import holdfast.bearings.reference.RollerProfile;
import holdfast.bearings.reference.RollerSet;
import holdfast.bearings.reference.RollingElements;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Suites of the life of tilted bearings. */
public final class ReferenceLifeSuites {
  /** Exponent of the load by the deflection: point contact 3/2, line contact 10/9. */
  private static final double BALL = 1.5;
  private static final double ROLLER = 10.0 / 9;

  private ReferenceLifeSuites() {}

  /**
   * All suites of this subject.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    return List.of(
        new LoadSharing(), new FiniteSums(), new DistributionIntegralSuite(), new RecalledLifeSuite(), TiltedBearingSuite.suite(),
        new ElementSuite(), ModifiedLifeSuite.suite(), new LaminaConvergenceSuite());
  }

  /** Greatest element load times number of elements over the radial load: aligned, no clearance, one element under the load. */
  private static double factor(boolean ball, int elements) {
    double pitch = Math.max(60, elements * 2.5);
    RollingElements set =
        ball
            ? BallSet.of(elements, new Length(2), new Length(pitch))
            : RollerSet.of(elements, new Length(2), new Length(4), new Length(pitch)).profile(RollerProfile.flat());
    LoadRatings ratings =
        ball ? LoadRatings.radialBall(new Force(1e5), new Force(1e5)) : LoadRatings.radialRoller(new Force(1e5), new Force(1e5));
    Force load = new Force(1000);
    TiltedBearing bearing = TiltedBearing.of(ratings, set).clearance(new Length(0));
    return bearing.life(load, new Angle(0)).greatestLoad().newton() * elements / load.newton();
  }

  /** Against printed and recalled factors. */
  private static final class LoadSharing implements Suite {
    @Override
    public String id() {
      return "bearings/reference-load-sharing";
    }

    @Override
    public String title() {
      return "Greatest element load without clearance against printed factors";
    }

    @Override
    public List<String> calculations() {
      return List.of("holdfast.bearings.reference.TiltedBearing#life");
    }

    @Override
    public List<Comparison> run() {
      Table cases = Cases.table("bearings/reference-load-sharing");
      List<Comparison> result = new ArrayList<>();
      for (int row = 0; row < cases.size(); row++) {
        double computed = factor(cases.text(row, "bearing").equals("ball"), (int) cases.number(row, "elements"));
        Evidence evidence = cases.provenance(row) == Provenance.PUBLISHED ? Evidence.PRINT : Evidence.RECALLED;
        result.add(
            Cases.comparison(cases, row, evidence)
                .numbers(
                    cases.number(row, "factor"), computed, cases.number(row, "tolerance"), "", cases.text(row, "reason")));
      }
      return result;
    }
  }

  /** Against the sum that statics gives in closed form: Z over the sum of cos^(1 + p) over the loaded half. */
  private static final class FiniteSums implements Suite {
    private static final SourceRef STATICS =
        SourceRef.derived("statics without clearance: load of an element goes with cos^p of its angle, p from the contact law");

    @Override
    public String id() {
      return "bearings/reference-finite-sums";
    }

    @Override
    public String title() {
      return "Greatest element load of finite numbers of elements against the closed sum of statics";
    }

    @Override
    public List<String> calculations() {
      return List.of("holdfast.bearings.reference.TiltedBearing#life");
    }

    @Override
    public List<Comparison> run() {
      List<Comparison> result = new ArrayList<>();
      for (int elements : new int[] {6, 9, 14, 20, 33, 60}) {
        for (boolean ball : new boolean[] {true, false}) {
          double sum = 0;
          for (int j = 0; j < elements; j++) {
            double cosine = Math.cos(2 * Math.PI * j / elements);
            sum += cosine > 1e-12 ? Math.pow(cosine, 1 + (ball ? BALL : ROLLER)) : 0;
          }
          double expected = elements / sum;
          result.add(
              Comparison.of(elements + (ball ? " balls" : " rollers"), STATICS, Evidence.RECONSTRUCTION)
                  .numbers(
                      expected,
                      factor(ball, elements),
                      1e-8 * expected * elements,
                      "",
                      "residual of the equilibrium: 1e-9 of the load, taken by one element"));
        }
      }
      return result;
    }
  }
}
