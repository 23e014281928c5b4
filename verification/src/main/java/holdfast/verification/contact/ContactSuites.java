// SPDX-License-Identifier: Apache-2.0
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
        ContactGeometrySuite.suite(),
        EllipticIntegralSuite.suite(),
        ContactEllipseSuite.suite(),
        HertzLibrarySuite.suite(),
        HertzCoefficientSuite.suite(),
        ContactExampleSuite.suite(),
        AxisStressSuite.suite(),
        AxisMaximaSuite.suite(),
        OrthogonalShearSuite.suite(),
        LineApproachSuite.suite(),
        TrackFactorSuite.suite(),
        CantileverExampleSuite.suite(),
        StudExampleSuite.suite(),
        StudSectionSuite.suite(),
        StudFatigueSuite.suite(),
        StudSeatSuite.suite(),
        ContactValues.suite());
  }
}
