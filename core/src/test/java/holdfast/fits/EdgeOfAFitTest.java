// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a clearance is exactly 0 or exactly as large as its uncertainty, the decimals decide and not their doubles. */
class EdgeOfAFitTest {
  @Test
  void aClearanceOfJustTheUncertaintyIsCertain() {
    for (int i = 1; i <= 1000; i++) {
      double size = 10 + i * 0.037;
      // The uncertainties of 3 µm and 4 µm make one of 5 µm.
      Readings shaft = Readings.at20(um(3), mm(size));
      MeasuredFit loose = new MeasuredFit(Fit.of(mm(size), "H7/h6"), Readings.at20(um(4), mm(size + 0.005)), shaft);
      assertEquals(Optional.of(FitKind.CLEARANCE), loose.certainKind(), "at " + size);
      MeasuredFit tight = new MeasuredFit(Fit.of(mm(size), "H7/h6"), Readings.at20(um(4), mm(size - 0.005)), shaft);
      assertEquals(Optional.of(FitKind.INTERFERENCE), tight.certainKind(), "at " + size);
      MeasuredFit doubtful = new MeasuredFit(Fit.of(mm(size), "H7/h6"), Readings.at20(um(4), mm(size + 0.0049)), shaft);
      assertEquals(Optional.empty(), doubtful.certainKind(), "at " + size);
    }
  }

  @Test
  void equalPartsHaveNoClearanceAndAreNoTransitionByNoise() {
    for (int i = 1; i <= 1000; i++) {
      double size = i * 0.1;
      MeasuredFit fit = new MeasuredFit(
          Fit.of(mm(size), "H7/h6"), Readings.at20(um(0), mm(size + 0.003)), Readings.at20(um(0), mm(size).plus(um(3))));
      assertEquals(FitKind.CLEARANCE, fit.kind(), "at " + size);
      assertEquals(0, fit.clearance().mm(), 1e-12);
    }
  }

  @Test
  void partsThatJustTouchDoNotInterfere() {
    SizeDistribution fixed = new SizeDistribution(SizeDistribution.Shape.NORMAL, mm(25), um(0));
    StatisticalFit touching = new StatisticalFit(Fit.of(mm(25), "H7/h6"), fixed, fixed);
    assertEquals(0, touching.probabilityOfInterference());
    assertEquals(0, touching.probabilityBelow(um(0)));
    assertEquals(1, touching.probabilityBelow(um(0.001)));
    StatisticalFit tight = new StatisticalFit(
        touching.fit(), fixed, new SizeDistribution(SizeDistribution.Shape.UNIFORM, mm(25.001), um(0)));
    assertEquals(1, tight.probabilityOfInterference());
  }

  @ParameterizedTest
  @CsvSource({"25.000, 0", "25.021, 0", "24.999, 1", "25.022, 1", "25.010, 0"})
  void aFixedSizeOnItsLimitIsInside(double size, double outside) {
    SizeDistribution fixed = new SizeDistribution(SizeDistribution.Shape.NORMAL, mm(size), um(0));
    assertEquals(outside, fixed.shareOutside(TolerancedSize.of(mm(25), "H7").limits()));
  }

  @Test
  void aRangeThatEndsBeforeItBeginsIsRefused() {
    FitSelector selector = FitSelector.holeBasis(mm(25));
    InputException e = assertThrows(InputException.class, () -> new FitRequest(selector, um(40), um(5)));
    assertEquals("least clearance", e.parameter());
    assertThrows(InputException.class, () -> selector.clearanceBetween(um(40), um(5)));
    assertThrows(InputException.class, () -> selector.interferenceBetween(um(45), um(5)));
    assertTrue(selector.clearanceBetween(um(40), um(40)).candidates().isEmpty(), "one value is a range");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.MIN_VALUE, 1e-310, 1e-200, 1e-100, 1, 1e28})
  void aQuantileIsFoundForTheLeastAndTheGreatestSpread(double spread) {
    for (boolean normal1 : new boolean[] {true, false}) {
      for (boolean normal2 : new boolean[] {true, false}) {
        for (double p : new double[] {1e-300, 1e-9, 0.1, 0.5, 0.9, 1 - 1e-16}) {
          for (double other : new double[] {0, spread, spread / 3}) {
            double q = ClearanceDistributionKernel.quantile(p, 0, spread, normal1, other, normal2);
            assertTrue(Math.abs(q) <= 60 * spread, spread + ", " + other + " at " + p + ": " + q);
            assertTrue(p < 0.5 ? q <= 0 : q >= 0, spread + ", " + other + " at " + p + ": " + q);
            if (spread >= 1e-300 && p >= 1e-9) {
              // Fed back; at the sharp end of a uniform distribution the distance from the end keeps seven digits.
              assertEquals(p, ClearanceDistributionKernel.probability(q, 0, spread, normal1, other, normal2), 1e-6 * p);
            }
          }
        }
      }
    }
  }
}
