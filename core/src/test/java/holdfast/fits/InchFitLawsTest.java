// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Sizes run from 24.2 mm, over the 0.95 in where FN3 begins, to 500.12 mm, where the tables end (19.69 in). */
class InchFitLawsTest {
  @Property
  void kindOfTheFitFollowsTheFamily(@ForAll InchFitClass fit, @ForAll @DoubleRange(min = 24.2, max = 500.12) double size) {
    FitKind kind = fit.at(new Length(size)).kind();
    switch (fit.family()) {
      case RUNNING, CLEARANCE -> assertEquals(FitKind.CLEARANCE, kind);
      case TRANSITION -> assertEquals(FitKind.TRANSITION, kind);
      case INTERFERENCE, FORCE -> assertEquals(FitKind.INTERFERENCE, kind);
    }
  }

  @Property
  void holeIsTheBasis(@ForAll InchFitClass fit, @ForAll @DoubleRange(min = 24.2, max = 500.12) double size) {
    assertEquals(0, fit.at(new Length(size)).hole().lower().mm());
  }

  @Property
  void clearancesAreSumsOfDeviations(@ForAll InchFitClass fit, @ForAll @DoubleRange(min = 24.2, max = 500.12) double size) {
    Fit at = fit.at(new Length(size));
    assertEquals(at.tolerance().mm(), at.maximumClearance().minus(at.minimumClearance()).mm(), 1e-12);
    assertEquals(InchLimitsKernel.minimumClearance(size, fit.code()) * 0.0254, at.minimumClearance().mm(), 1e-12);
    assertEquals(InchLimitsKernel.maximumClearance(size, fit.code()) * 0.0254, at.maximumClearance().mm(), 1e-12);
  }

  @Property
  void manySizesAtOnceGiveTheSame(
      @ForAll InchFitClass fit,
      @ForAll @DoubleRange(min = 24.2, max = 500.12) double a,
      @ForAll @DoubleRange(min = 24.2, max = 500.12) double b) {
    double[] both = new double[8];
    InchLimitsKernel.fit(new double[] {a, b}, fit.code(), both);
    double[] second = new double[4];
    InchLimitsKernel.fit(b, fit.code(), second);
    assertArrayEquals(second, java.util.Arrays.copyOfRange(both, 4, 8));
  }

  @Property
  void tolerancesGrowWithGradeAndSize(
      @ForAll @IntRange(min = 4, max = 12) int grade,
      @ForAll @DoubleRange(min = 0.1, max = 5080) double a,
      @ForAll @DoubleRange(min = 0.1, max = 5080) double b) {
    double small = InchLimitsKernel.standardTolerance(Math.min(a, b), grade);
    double large = InchLimitsKernel.standardTolerance(Math.max(a, b), grade);
    assertTrue(small <= large);
    assertTrue(small < InchLimitsKernel.standardTolerance(Math.min(a, b), grade + 1));
  }

  @Property
  void tighterFitsOfAFamilyPressMore(@ForAll @DoubleRange(min = 24.2, max = 500.12) double size) {
    for (int fit = InchFitClass.FN1.code(); fit < InchFitClass.FN5.code(); fit++) {
      assertTrue(InchLimitsKernel.minimumClearance(size, fit + 1) <= InchLimitsKernel.minimumClearance(size, fit), "FN " + fit);
    }
    for (int fit = InchFitClass.RC1.code(); fit < InchFitClass.RC9.code(); fit++) {
      assertTrue(InchLimitsKernel.maximumClearance(size, fit + 1) >= InchLimitsKernel.maximumClearance(size, fit), "RC " + fit);
    }
  }

  @Property
  void nameReadsBack(@ForAll InchFitClass fit, @ForAll @DoubleRange(min = 24.2, max = 500.12) double size) {
    assertEquals(fit, InchFitClass.of(fit.name()));
    Length d = new Length(size);
    assertEquals(Fit.of(d, fit.name()), Fit.of(d.exactly(holdfast.quantity.KnownUnits.MM) + " " + fit.name()));
  }

  @Property(tries = 2000)
  void anyTextGivesAFitOrANamedError(@ForAll String text, @ForAll @DoubleRange(min = 0.01, max = 600) double size) {
    for (String given : new String[] {text, "FN" + text, "5/8 in " + text, text + " RC5", text + "FN2"}) {
      try {
        Fit.of(new Length(size), given);
      } catch (InputException e) {
        assertTrue(e.getMessage().length() > 20);
      }
      try {
        Fit.of(given);
      } catch (InputException e) {
        assertTrue(e.getMessage().length() > 20);
      }
    }
  }
}
