// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import holdfast.verification.ValueSuite;
import java.util.ArrayList;
import java.util.List;

/** The suites of threads and tightening. */
public final class ThreadSuites {
  private ThreadSuites() {}

  /**
   * All suites.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    List<Suite> suites = new ArrayList<>(LookUpSuites.all());
    suites.addAll(List.of(
        new GeometrySuites.MetricDiameters(),
        new GeometrySuites.MetricAreas(),
        new GeometrySuites.UnifiedAreas(),
        new GeometrySuites.MetricLimits(),
        new GeometrySuites.UnifiedLimits(),
        new MetricToleranceSuites.Prints(),
        new MetricToleranceSuites.Steps(),
        new MetricToleranceSuites.Formulas(),
        new StrengthSuites.MetricLoads(),
        new StrengthSuites.InchLoads(),
        new StrengthSuites.SpaceThreads(),
        new StrengthSuites.RecalledShearAreas(),
        new TighteningSuites.AssemblyValues(),
        new TighteningSuites.RecalledAssemblyValues(),
        new TighteningSuites.InchTorques(),
        new TighteningSuites.SpacePreloads(),
        new TighteningSuites.StudTorques(),
        new TighteningSuites.GovernmentTorques(),
        AssemblyPairSuite.suite(),
        new WorkedExampleSuite(),
        ValueSuite.of("threads/reference-values", Evidence.REFERENCE, ThreadValues::value, ThreadValues.REFERENCE),
        new SampledPreloadSuite(),
        new NutLoadSuite(),
        ValueSuite.of("threads/recalled-formulas", Evidence.RECALLED, ThreadValues::value, ThreadValues.RECALLED)));
    return List.copyOf(suites);
  }
}
