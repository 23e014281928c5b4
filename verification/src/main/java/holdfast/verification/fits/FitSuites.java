// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import holdfast.verification.ValueSuite;
import java.util.ArrayList;
import java.util.List;

/** The suites of limits and fits. */
public final class FitSuites {
  private FitSuites() {}

  /**
   * All of them.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    List<Suite> suites = new ArrayList<>();
    suites.addAll(List.of(
        StandardToleranceSuite.suite(),
        LimitDeviationSuite.suite(),
        new DifferingLimitDeviationSuite(),
        new RoundedJsSuite(),
        FitExampleSuite.suite(),
        PreferredFitKindSuite.suite(),
        new ToleranceFormulaSuite(),
        new GaugeGradeSuite(),
        PartnerLookUps.suite(),
        new DeviationFormulaSuite(),
        new HoleRuleSuite(),
        new DeltaSuite(),
        new SymmetrySuite(),
        EquivalentSuite.suite(),
        StatisticalFitSuite.suite(),
        ThermalFitSuite.suite(),
        ValueSuite.of(
            "fits/reference-values",
            Evidence.REFERENCE,
            FitValues::value,
            "holdfast.fits.ThermalFitKernel#uniformTemperature",
            "holdfast.fits.SizeDistribution",
            "holdfast.fits.DecisionRule")));
    suites.addAll(TypedFitSuites.all());
    return List.copyOf(suites);
  }
}
