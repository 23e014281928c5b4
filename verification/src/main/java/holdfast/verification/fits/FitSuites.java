package holdfast.verification.fits;

import holdfast.verification.Suite;
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
    return List.of(
        new StandardToleranceSuite(),
        new LimitDeviationSuite(),
        new DifferingLimitDeviationSuite(),
        new RoundedJsSuite(),
        new FitExampleSuite(),
        new PreferredFitKindSuite(),
        new ToleranceFormulaSuite(),
        new DeviationFormulaSuite(),
        new HoleRuleSuite(),
        new DeltaSuite(),
        new SymmetrySuite());
  }
}
