// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.verification.Suite;
import java.util.List;

/** The suites of inch limits and fits. */
public final class InchSuites {
  private InchSuites() {}

  /**
   * All of them.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    return List.of(
        InchSecondPrintSuite.suite(),
        new InchStandardToleranceSuite(),
        new InchClearanceSuite(),
        InchLimitDeviationSuite.suite(),
        new InchGradeSuite(),
        new InchLetterSuite(),
        new InchForceFitSuite());
  }
}
