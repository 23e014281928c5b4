package holdfast.verification.contact;

import holdfast.verification.Suite;
import java.util.List;

/** The suites on contact and stud strength. */
public final class ContactSuites {
  private ContactSuites() {}

  /**
   * All suites of this subject.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    return List.of(
        new ContactGeometrySuite(),
        new EllipticIntegralSuite(),
        new ContactEllipseSuite(),
        new HertzLibrarySuite(),
        new HertzCoefficientSuite(),
        new ContactExampleSuite(),
        new AxisStressSuite(),
        new AxisMaximaSuite(),
        new OrthogonalShearSuite(),
        new LineApproachSuite(),
        new TrackFactorSuite(),
        new CantileverExampleSuite(),
        new StudExampleSuite(),
        new StudSectionSuite(),
        new StudFatigueSuite(),
        new StudSeatSuite());
  }
}
