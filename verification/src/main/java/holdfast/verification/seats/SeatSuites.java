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
        new RingExampleSuite(),
        new ShrinkFitSuite(),
        new AssemblyTemperatureSuite(),
        new InterferenceModelSuite(),
        new JointProfileSuite(),
        new HousingModelSuite(),
        new PlasticRingSuite(),
        new MaterialValueSuite(),
        new ExpansionRangeSuite(),
        new RoughnessGradeSuite());
  }
}
