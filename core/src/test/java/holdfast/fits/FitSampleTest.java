// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import org.junit.jupiter.api.Test;

/** Small samples, whose figures can be worked out from their few clearances. */
class FitSampleTest {
  private static final StatisticalFit FIT = StatisticalFit.centred(Fit.of("25 H7/k6"), 1);

  private static double quantile(FitSample sample, double share) {
    return sample.quantile(share).in(KnownUnits.UM);
  }

  @Test
  void meanAndDeviationOfTwoPairs() {
    FitSample two = FIT.sample(2, 7);
    double a = quantile(two, 0.5);
    double b = quantile(two, 1);
    assertEquals((a + b) / 2, two.meanClearance().in(KnownUnits.UM), 1e-9);
    // With n - 1 = 1: 2 · ((b - a) / 2)² = (b - a)² / 2.
    assertEquals((b - a) / Math.sqrt(2), two.standardDeviation().in(KnownUnits.UM), 1e-9);
  }

  @Test
  void quantilesStepThroughTheSortedPairs() {
    FitSample four = FIT.sample(4, 7);
    for (int i = 1; i <= 4; i++) {
      double value = quantile(four, i / 4.0);
      assertEquals(value, quantile(four, (i - 0.9) / 4));
      assertEquals((i - 1) / 4.0, four.shareBelow(um(value - 1e-6)));
      assertEquals(i / 4.0, four.shareBelow(um(value + 1e-6)));
    }
  }

  @Test
  void aShareScattersWithTheRootOfTheSample() {
    FitSample hundred = FIT.sample(100, 7);
    assertEquals(0.05, hundred.standardError(0.5), 1e-15);
    assertEquals(0.03, hundred.standardError(0.1), 1e-15);
    assertEquals(0, hundred.standardError(0));
    assertEquals(0, hundred.standardError(1));
  }

  @Test
  void printsPairsMeanDeviationAndInterference() {
    String text = FIT.sample(1, 7).toString();
    assertTrue(text.matches("1 pairs: mean clearance [+-]?[0-9.]+ µm, standard deviation 0 µm, (0|100) % interfere"), text);
  }

  @Test
  void aSampleHasAtLeastOnePair() {
    assertEquals(1, FIT.sample(1, 7).pairs());
    InputException e = assertThrows(InputException.class, () -> FIT.sample(0, 7));
    assertEquals("number of pairs (0) must be from 1 to 10000000; an empty sample says nothing, a larger one no more", e.getMessage());
  }
}
