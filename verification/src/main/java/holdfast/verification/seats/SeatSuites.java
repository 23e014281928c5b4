// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.verification.Suite;
import java.util.List;

/** The suites of seats. */
public final class SeatSuites {
  private SeatSuites() {}

  /**
   * All of them.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    return List.of(
        RingExampleSuite.suite(),
        ShrinkFitSuite.suite(),
        AssemblyTemperatureSuite.suite(),
        InterferenceModelSuite.suite(),
        new JointProfileSuite(),
        HousingModelSuite.suite(),
        PlasticRingSuite.suite(),
        MaterialValueSuite.suite(),
        new ExpansionRangeSuite(),
        RoughnessGradeSuite.suite());
  }
}
