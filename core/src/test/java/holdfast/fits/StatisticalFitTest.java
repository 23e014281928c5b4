// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.SizeDistribution.Shape;
import holdfast.fits.SizeDistribution.Side;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class StatisticalFitTest {
  private static final Fit FIT = Fit.of("25 H7/k6");

  @Test
  void centredProcessesOfIndexOne() {
    StatisticalFit fit = StatisticalFit.centred(FIT, 1);
    assertEquals(2, fit.meanClearance().in(KnownUnits.UM), 1e-9);
    // sqrt(21² + 13²) / 6.
    assertEquals(Math.sqrt(610) / 6, fit.standardDeviation().in(KnownUnits.UM), 1e-9);
    assertEquals("25 H7/k6 in production: mean clearance 2 µm ± 4.12 µm (one sigma), 31.4 % interfere", fit.toString());
    assertEquals(fit.probabilityOfInterference(), fit.explain().result().value(), 0);
    assertTrue(fit.warnings().isEmpty());
    // Three standard deviations on both sides.
    assertEquals(0.0027, fit.hole().shareOutside(FIT.hole().limits()), 1e-5);
  }

  @Test
  void anOffsetProcessHasItsIndexAtTheNearerLimit() {
    SizeDistribution low = SizeDistribution.capable(FIT.hole().limits(), 1.33, 1.0, Side.LOWER);
    assertEquals(1.0, low.mean().minus(FIT.hole().limits().lower()).mm() / (3 * low.standardDeviation().mm()), 1e-9);
    SizeDistribution high = SizeDistribution.capable(FIT.hole().limits(), 1.33, 1.0, Side.UPPER);
    assertEquals(1.0, FIT.hole().limits().upper().minus(high.mean()).mm() / (3 * high.standardDeviation().mm()), 1e-9);
    assertEquals(low.standardDeviation(), high.standardDeviation());
    SizeDistribution bad = SizeDistribution.capable(FIT.shaft().limits(), 1, 0, Side.UPPER);
    assertEquals(0.5, bad.shareOutside(FIT.shaft().limits()), 1e-6);
    StatisticalFit fit = new StatisticalFit(FIT, low, bad);
    assertEquals("parts-outside-limits", fit.warnings().get(0).code());
    assertTrue(fit.warnings().get(0).message().contains("50 % of the shafts"), fit.warnings().toString());
    StatisticalFit holes = new StatisticalFit(FIT, SizeDistribution.capable(FIT.hole().limits(), 1, 0, Side.LOWER), low);
    assertTrue(holes.warnings().get(0).message().contains("50 % of the holes"), holes.warnings().toString());
  }

  @Test
  void closedFormAndSampleAgreeWithinSamplingError() {
    SizeDistribution normalHole = SizeDistribution.centred(FIT.hole().limits(), 1);
    SizeDistribution normalShaft = SizeDistribution.capable(FIT.shaft().limits(), 1.2, 0.9, Side.UPPER);
    SizeDistribution uniformHole = SizeDistribution.uniform(FIT.hole().limits());
    SizeDistribution uniformShaft = SizeDistribution.uniform(FIT.shaft().limits());
    StatisticalFit[] fits = {
      new StatisticalFit(FIT, normalHole, normalShaft),
      new StatisticalFit(FIT, normalHole, uniformShaft),
      new StatisticalFit(FIT, uniformHole, normalShaft),
      new StatisticalFit(FIT, uniformHole, uniformShaft)
    };
    int pairs = 200_000;
    for (StatisticalFit fit : fits) {
      FitSample sample = fit.sample(pairs, 20260101L);
      assertEquals(sample.toString(), fit.sample(pairs, 20260101L).toString());
      double sigma = fit.standardDeviation().in(KnownUnits.UM);
      assertEquals(fit.meanClearance().in(KnownUnits.UM), sample.meanClearance().in(KnownUnits.UM), 4 * sigma / Math.sqrt(pairs));
      // The standard error of a standard deviation is at most sigma / sqrt(2 n) for these shapes.
      assertEquals(sigma, sample.standardDeviation().in(KnownUnits.UM), 4 * sigma / Math.sqrt(2.0 * pairs));
      for (double p : new double[] {0.001, 0.01, 0.1, 0.5, 0.9, 0.99}) {
        double share = sample.shareBelow(fit.quantile(p));
        assertEquals(p, share, 4 * sample.standardError(p), fit + ", quantile " + p);
        double closed = fit.probabilityBelow(sample.quantile(p));
        assertEquals(p, closed, 4 * sample.standardError(p) + 1.0 / pairs);
      }
      double interference = fit.probabilityOfInterference();
      assertEquals(interference, sample.shareOfInterference(), 4 * sample.standardError(interference));
      assertEquals(pairs, sample.pairs());
    }
  }

  @Property(tries = 500)
  void quantilesInvertProbabilities(
      @ForAll @DoubleRange(min = 0.0001, max = 0.9999) @Scale(4) double p,
      @ForAll @DoubleRange(min = 0.01, max = 50) double sigma1,
      @ForAll @DoubleRange(min = 0.01, max = 50) double sigma2,
      @ForAll boolean normal1,
      @ForAll boolean normal2) {
    double q = ClearanceDistributionKernel.quantile(p, 3, sigma1, normal1, sigma2, normal2);
    assertEquals(p, ClearanceDistributionKernel.probability(q, 3, sigma1, normal1, sigma2, normal2), 1e-9);
    // Both shapes are symmetrical about the mean.
    double opposite = ClearanceDistributionKernel.quantile(1 - p, 3, sigma1, normal1, sigma2, normal2);
    assertEquals(6, q + opposite, 1e-7 * (sigma1 + sigma2));
    // The order of the parts does not matter.
    assertEquals(
        ClearanceDistributionKernel.probability(5, 3, sigma1, normal1, sigma2, normal2),
        ClearanceDistributionKernel.probability(5, 3, sigma2, normal2, sigma1, normal1),
        1e-14);
  }

  @Property(tries = 500)
  void probabilityGrowsFromZeroToOne(
      @ForAll @DoubleRange(min = -100, max = 100) double x,
      @ForAll @DoubleRange(min = 0, max = 10) double step,
      @ForAll @DoubleRange(min = 0, max = 20) double sigma1,
      @ForAll @DoubleRange(min = 0, max = 20) double sigma2,
      @ForAll boolean normal1,
      @ForAll boolean normal2) {
    double low = ClearanceDistributionKernel.probability(x, 0, sigma1, normal1, sigma2, normal2);
    double high = ClearanceDistributionKernel.probability(x + step, 0, sigma1, normal1, sigma2, normal2);
    assertTrue(low >= -1e-12 && high <= 1 + 1e-12 && low <= high + 1e-12, low + " " + high);
  }

  /** A micrometre or a metre, the probability is the same. */
  @Property(tries = 200)
  void unitsDoNotMatter(
      @ForAll @DoubleRange(min = -4, max = 4) double x,
      @ForAll @DoubleRange(min = 1e-5, max = 3) @Scale(6) double ratio,
      @ForAll boolean normal1,
      @ForAll boolean normal2) {
    double plain = ClearanceDistributionKernel.probability(x, 0, 1, normal1, ratio, normal2);
    for (double unit : new double[] {1e-3, 1e3}) {
      assertEquals(
          plain, ClearanceDistributionKernel.probability(x * unit, 0, unit, normal1, ratio * unit, normal2), 1e-9);
    }
  }

  /** Normal quantiles far out, where 1 - p has no digits left; computed with statistics.NormalDist of Python 3.11. */
  @Test
  void tailsKeepTheirDigits() {
    assertEquals(-7.941345326170995, ClearanceDistributionKernel.quantile(1e-15, 0, 0.6, true, 0.8, true), 1e-9);
    assertEquals(-37.0470962993612, ClearanceDistributionKernel.quantile(1e-300, 0, 0.6, true, 0.8, true), 1e-9);
    // Two uniform parts of half widths 4 and 1: P = (z + 5)² / 32 from -5 to -3.
    double root3 = Math.sqrt(3);
    assertEquals(
        -5 + Math.sqrt(32e-9), ClearanceDistributionKernel.quantile(1e-9, 0, 4 / root3, false, 1 / root3, false), 1e-12);
  }

  @Test
  void aVeryNarrowUniformPartAddsItsVariance() {
    for (double x : new double[] {-2, -0.5, 0, 1, 3}) {
      // Just below and just above the switch of the formula.
      double below = ClearanceDistributionKernel.probability(x, 0, 1, true, 0.9999e-3 / Math.sqrt(3), false);
      double above = ClearanceDistributionKernel.probability(x, 0, 1, true, 1.0001e-3 / Math.sqrt(3), false);
      assertEquals(below, above, 1e-9);
    }
  }

  @Test
  void fixedSizesMakeSteps() {
    assertEquals(0, ClearanceDistributionKernel.probability(2.999, 3, 0, true, 0, true));
    assertEquals(1, ClearanceDistributionKernel.probability(3, 3, 0, true, 0, true));
    assertEquals(1, ClearanceDistributionKernel.probability(3, 3, 0, false, 0, false));
    assertEquals(0, ClearanceDistributionKernel.probability(2.999, 3, 0, false, 0, false));
    assertEquals(3, ClearanceDistributionKernel.quantile(0.2, 3, 0, true, 0, false));
    double root3 = Math.sqrt(3);
    assertEquals(0.75, ClearanceDistributionKernel.probability(root3 / 2, 0, 0, true, 1, false), 1e-12);
    assertEquals(0.75, ClearanceDistributionKernel.probability(root3 / 2, 0, 1, false, 0, true), 1e-12);
  }

  @Test
  void uniformPartsReachExactlyTheLimitsOfTheFit() {
    StatisticalFit fit = StatisticalFit.uniform(FIT);
    assertEquals(0, fit.probabilityBelow(FIT.minimumClearance()), 1e-12);
    assertEquals(1, fit.probabilityBelow(FIT.maximumClearance()), 1e-12);
    assertEquals(1, fit.probabilityBetween(FIT.minimumClearance(), FIT.maximumClearance()), 1e-12);
    assertEquals(0.5, fit.probabilityBetween(fit.meanClearance(), FIT.maximumClearance()), 1e-12);
    assertEquals(0, fit.hole().shareOutside(FIT.hole().limits()), 1e-9);
    assertEquals(Shape.UNIFORM, fit.hole().shape());
  }

  @Test
  void wrongProcessesAreRefused() {
    LimitsOfSize limits = FIT.hole().limits();
    assertEquals(
        "capability index Cp", assertThrows(InputException.class, () -> SizeDistribution.centred(limits, 0)).parameter());
    InputException e = assertThrows(InputException.class, () -> SizeDistribution.capable(limits, 1, 1.1, Side.UPPER));
    assertEquals("capability index Cpk", e.parameter());
    assertThrows(InputException.class, () -> SizeDistribution.capable(limits, 1, Double.NaN, Side.UPPER));
    assertThrows(InputException.class, () -> SizeDistribution.normal(mm(25), um(-1)));
    assertEquals("normal, mean 25.000 mm, standard deviation 0 µm", SizeDistribution.normal(mm(25), um(0)).toString());
    // 21 µm / sqrt(12) = 6.062 µm
    assertEquals("uniform, mean 25.0105 mm, standard deviation 6.062 µm", SizeDistribution.uniform(limits).toString());
    StatisticalFit fit = StatisticalFit.centred(FIT, 1);
    assertEquals("probability p", assertThrows(InputException.class, () -> fit.quantile(0)).parameter());
    assertThrows(InputException.class, () -> fit.quantile(1));
    assertThrows(InputException.class, () -> fit.quantile(Double.NaN));
    assertThrows(InputException.class, () -> fit.sample(0, 1));
    FitSample sample = fit.sample(1, 1);
    assertEquals(0, sample.standardDeviation().mm());
    assertThrows(InputException.class, () -> sample.quantile(0));
    assertThrows(InputException.class, () -> sample.standardError(2));
    assertThrows(InputException.class, () -> ClearanceDistributionKernel.probability(Double.NaN, 0, 1, true, 1, true));
    assertThrows(InputException.class, () -> ClearanceDistributionKernel.probability(0, 0, -1, true, 1, true));
  }
}
