// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.bearings;

import holdfast.bearings.BasicLifeKernel;
import holdfast.bearings.BearingGeometry;
import holdfast.bearings.BearingType;
import holdfast.bearings.DutyKernel;
import holdfast.bearings.GeometryRatings;
import holdfast.bearings.WeibullKernel;
import holdfast.quantity.Angle;
import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** All suites of load ratings and rating life. */
public final class BearingSuites {
  private BearingSuites() {}

  /**
   * All suites of this subject.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    List<Suite> suites = new ArrayList<>(FactorSuites.all());
    suites.add(new RowSuite("bearings/worked-examples", "Worked examples of the standards and of catalogues",
        List.of("holdfast.bearings.BasicLifeKernel", "holdfast.bearings.EquivalentLoadKernel",
            "holdfast.bearings.DynamicRatingKernel#radialBall", "holdfast.bearings.StaticRatingKernel#radialBall",
            "holdfast.bearings.RatingAdjustmentKernel", "holdfast.bearings.DutyKernel#systemLife",
            "holdfast.bearings.LubricationKernel#kappa", "holdfast.bearings.ReliabilityKernel#a1"),
        () -> Cases.table("bearings/worked-examples"), BearingSuites::workedExample));
    suites.add(new RowSuite("bearings/geometry", "Deep groove ball bearings: quotient of published ratings, and f0",
        List.of("holdfast.bearings.BearingGeometry#ratings"), () -> Cases.table("bearings/geometry"), BearingSuites::geometry));
    suites.add(new RowSuite("bearings/distribution", "Distribution of lives: estimates from data, recalled factors",
        List.of("holdfast.bearings.WeibullKernel", "holdfast.bearings.BasicLifeKernel#l10"),
        () -> Cases.table("bearings/distribution"), BearingSuites::distribution));
    suites.add(new RowSuite("bearings/censored-estimates", "Weibull estimates from histories with suspensions",
        List.of("holdfast.bearings.WeibullKernel#maximumLikelihoodSlope",
            "holdfast.bearings.WeibullKernel#maximumLikelihoodScale", "holdfast.bearings.WeibullKernel#life"),
        () -> Cases.table("bearings/censored-estimates"), BearingSuites::censored));
    suites.add(new RowSuite("bearings/varying-load", "Mean load of periodic loads",
        List.of("holdfast.bearings.DutyKernel#sinusoid", "holdfast.bearings.DutyKernel#rectifiedSine"),
        () -> Cases.table("bearings/varying-load"), BearingSuites::varyingLoad));
    suites.addAll(ChartSuites.all());
    suites.add(BearingValues.suite());
    suites.add(BearingValues.leastLoads());
    return List.copyOf(suites);
  }

  private static void workedExample(Table t, int row, List<Comparison> result) {
    double expected = t.number(row, "expected");
    result.add(Cases.comparison(t, row, Evidence.WORKED_EXAMPLE)
        .numbers(expected, WorkedExamples.compute(t.text(row, "calculation"), t.text(row, "inputs")),
            t.number(row, "tolerance") * expected, "", t.text(row, "reason")));
  }

  private static void geometry(Table t, int row, List<Comparison> result) {
    GeometryRatings ratings = BearingGeometry.balls(BearingType.DEEP_GROOVE_BALL, 1, (int) t.number(row, "z"),
        new Length(t.number(row, "dw")), new Length(t.number(row, "dpw")), new Angle(0)).ratings();
    Evidence evidence = t.text(row, "geometry").equals("recalled") ? Evidence.RECALLED : Evidence.RECONSTRUCTION;
    double quotient = t.number(row, "c_over_c0");
    result.add(Comparison.of(t.address(row) + ", C/C0", Cases.source(t, row), evidence)
        .disclosed(t.text(row, "disclosed"))
        .numbers(quotient, ratings.dynamic().ratio(ratings.staticRating()), 0.01 * quotient, "",
            "1 %: both ratings are rounded to three digits, and the pitch diameter is that of an ideal bearing"));
    if (t.has(row, "f0")) {
      result.add(Comparison.of(t.address(row) + ", f0", Cases.source(t, row), evidence)
          .disclosed(t.text(row, "f0_disclosed"))
          .numbers(t.number(row, "f0"), ratings.f0(), 0.1, "",
              "half a unit of the last printed digit of the value and of the table"));
    }
  }

  private static void distribution(Table t, int row, List<Comparison> result) {
    boolean recalled = t.provenance(row) == Provenance.MEMORY;
    result.add(Cases.comparison(t, row, recalled ? Evidence.RECALLED : Evidence.WORKED_EXAMPLE)
        .numbers(t.number(row, "expected"), distributionValue(t, row), t.number(row, "tolerance"), "", t.text(row, "reason")));
  }

  private static double distributionValue(Table t, int row) {
    double[] lives = Cases.table("bearings/fatigue-lives").numbers("life");
    double slope = t.has(row, "slope") ? t.number(row, "slope") : WeibullKernel.maximumLikelihoodSlope(lives);
    return switch (t.text(row, "quantity")) {
      case "maximum likelihood slope" -> slope;
      case "maximum likelihood scale" -> WeibullKernel.maximumLikelihoodScale(lives, slope);
      case "ratio L50/L10" -> WeibullKernel.life(0.5, slope, WeibullKernel.scale(1, 0.9, slope, 0), 0);
      case "two-parameter a1" ->
          WeibullKernel.life(t.number(row, "reliability") / 100, slope, WeibullKernel.scale(1, 0.9, slope, 0), 0);
      case "basic life at C/P = 4, ball" -> BasicLifeKernel.ball(4, 1);
      case "basic life at C/P = 4, roller" -> BasicLifeKernel.roller(4, 1);
      default -> throw new IllegalArgumentException("no calculation for '" + t.text(row, "quantity") + "'");
    };
  }

  private static void censored(Table t, int row, List<Comparison> result) {
    Table history = Cases.table("bearings/censored-lives");
    int[] items = IntStream.range(0, history.size())
        .filter(i -> history.text(i, "history").equals(t.text(row, "history")))
        .flatMap(i -> IntStream.generate(() -> i).limit((long) history.number(i, "count"))).toArray();
    double[] lives = new double[items.length];
    boolean[] failed = new boolean[items.length];
    for (int k = 0; k < items.length; k++) {
      lives[k] = history.number(items[k], "hours");
      failed[k] = history.number(items[k], "failed") == 1;
    }
    double slope = WeibullKernel.maximumLikelihoodSlope(lives, failed);
    double scale = WeibullKernel.maximumLikelihoodScale(lives, failed, slope);
    double actual = switch (t.text(row, "quantity")) {
      case "slope" -> slope;
      case "scale" -> scale;
      case "B10" -> WeibullKernel.life(0.9, slope, scale, 0);
      default -> throw new IllegalArgumentException("no calculation for '" + t.text(row, "quantity") + "'");
    };
    boolean recalled = t.provenance(row) == Provenance.MEMORY;
    result.add(Cases.comparison(t, row, recalled ? Evidence.RECALLED : Evidence.WORKED_EXAMPLE)
        .numbers(t.number(row, "expected"), actual, Cases.halfLastDigit(t.text(row, "expected")), "",
            "half a unit of the last printed digit"));
  }

  private static void varyingLoad(Table t, int row, List<Comparison> result) {
    double p = t.number(row, "exponent");
    boolean rectified = t.text(row, "curve").equals("rectified sine");
    result.add(Cases.comparison(t, row, Evidence.PRINT)
        .numbers(t.number(row, "expected"), rectified ? DutyKernel.rectifiedSine(p, 1) : DutyKernel.sinusoid(p, 1),
            t.number(row, "tolerance"), "", t.text(row, "reason")));
  }
}
