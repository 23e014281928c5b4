// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class FitLawsTest {
  private static final double[] ENDS = {
    1, 3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500, 560,
    630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800, 3150
  };

  /** Any size; each range, however small, and its ends come often. */
  @Provide
  Arbitrary<Double> sizes() {
    Arbitrary<Integer> range = Arbitraries.integers().between(0, ENDS.length - 1);
    Arbitrary<Double> place = Arbitraries.doubles().between(0.001, 1).ofScale(6);
    return Combinators.combine(range, place)
        .as((r, p) -> (r == 0 ? 0 : ENDS[r - 1]) * (1 - p) + ENDS[r] * p);
  }

  @Provide
  Arbitrary<ToleranceClass> classes() {
    return Arbitraries.integers().between(0, IsoTables.CLASSES - 1).map(ToleranceClass::at);
  }

  @Property(tries = 2000)
  void standardTolerancesGrowWithTheGrade(@ForAll("sizes") double size, @ForAll @IntRange(min = 1, max = 19) int grade) {
    Assume.that(defined(size, grade) && defined(size, grade - 1));
    assertTrue(LimitDeviationsKernel.standardTolerance(size, grade) > LimitDeviationsKernel.standardTolerance(size, grade - 1));
  }

  @Property(tries = 2000)
  void standardTolerancesDoNotShrinkWithTheSize(
      @ForAll("sizes") double one, @ForAll("sizes") double other, @ForAll @IntRange(min = 0, max = 19) int grade) {
    Assume.that(defined(one, grade) && defined(other, grade));
    double small = LimitDeviationsKernel.standardTolerance(Math.min(one, other), grade);
    double large = LimitDeviationsKernel.standardTolerance(Math.max(one, other), grade);
    assertTrue(small <= large);
  }

  private static boolean defined(double size, int grade) {
    return IsoTables.get().tolerance(grade, LimitDeviationsKernel.range(size)) != IsoTables.UNDEFINED;
  }

  @Property(tries = 5000)
  void limitsDifferByTheStandardTolerance(@ForAll("sizes") double size, @ForAll("classes") ToleranceClass c) {
    Assume.that(LimitDeviationsKernel.isDefined(size, c.code()));
    double it = LimitDeviationsKernel.standardTolerance(size, c.grade().code());
    double width = LimitDeviationsKernel.upper(size, c.code()) - LimitDeviationsKernel.lower(size, c.code());
    assertEquals(it, width, 1e-9);
    LimitDeviations typed = c.limitDeviations(new Length(size));
    assertEquals(it, typed.tolerance().in(KnownUnits.UM), 1e-6);
    LimitsOfSize limits = c.limitsOfSize(new Length(size));
    assertEquals(typed.upper().mm(), limits.upper().minus(new Length(size)).mm(), 1e-9);
  }

  @Property(tries = 5000)
  void holesFromAToHAndSymmetricOnesMirrorTheShafts(@ForAll("sizes") double size, @ForAll("classes") ToleranceClass c) {
    boolean early = c.letter().givesClearance() || c.letter() == DeviationLetter.JS;
    Assume.that(early && LimitDeviationsKernel.isDefined(size, c.code()));
    assertEquals(
        LimitDeviationsKernel.upper(size, c.code()), 0.0 - LimitDeviationsKernel.lower(size, c.mirrored().code()), 0);
  }

  @Property(tries = 10000, maxDiscardRatio = 50)
  void laterHolesMirrorTheShaftsUpToTheCorrection(@ForAll("sizes") double size, @ForAll("classes") ToleranceClass c) {
    boolean late = c.feature() == Feature.HOLE && c.letter().compareTo(DeviationLetter.P) >= 0;
    Assume.that(late && LimitDeviationsKernel.isDefined(size, c.code()));
    double difference =
        LimitDeviationsKernel.upper(size, c.code()) + LimitDeviationsKernel.lower(size, c.mirrored().code());
    int grade = c.grade().code();
    boolean corrected = size > 3 && size <= 500 && c.grade().compareTo(ToleranceGrade.IT7) <= 0;
    double expected =
        corrected
            ? LimitDeviationsKernel.standardTolerance(size, grade) - LimitDeviationsKernel.standardTolerance(size, grade - 1)
            : 0;
    assertEquals(expected, difference, 1e-9);
  }

  @Property(tries = 10000, maxDiscardRatio = 50)
  void fitsOnBothBasesAreTheSameWhereTheStandardSaysSo(
      @ForAll("sizes") double size, @ForAll("classes") ToleranceClass shaft) {
    int holeGrade = shaft.grade().code() + 1;
    Assume.that(shaft.feature() == Feature.SHAFT && shaft.letter() != DeviationLetter.H && holeGrade <= 19);
    ToleranceGrade grade = ToleranceGrade.at(holeGrade);
    boolean clearance = shaft.letter().givesClearance();
    // k has its deviation in IT4 to IT7 only.
    ToleranceGrade first = shaft.letter() == DeviationLetter.K ? ToleranceGrade.IT5 : ToleranceGrade.IT3;
    ToleranceGrade last = shaft.letter().compareTo(DeviationLetter.N) <= 0 ? ToleranceGrade.IT8 : ToleranceGrade.IT7;
    boolean corrected =
        shaft.letter().compareTo(DeviationLetter.K) >= 0
            && size > 3
            && size <= 500
            && grade.compareTo(first) >= 0
            && grade.compareTo(last) <= 0;
    boolean exception = shaft.toString().equals("m5") && size > 250 && size <= 315;
    Assume.that((clearance || corrected) && !exception);
    ToleranceClass hole = ToleranceClass.of("H" + grade.number());
    Assume.that(hole.isDefinedFor(new Length(size)) && shaft.isDefinedFor(new Length(size)));
    assertTrue(Fit.of(new Length(size), hole, shaft).onOtherBasis().isSame());
  }

  @Property(tries = 10000, maxDiscardRatio = 50)
  void changingTheBasisTwiceGivesTheFitAgain(@ForAll("sizes") double size, @ForAll("classes") ToleranceClass shaft) {
    Assume.that(shaft.feature() == Feature.SHAFT && shaft.letter() != DeviationLetter.H);
    Length nominal = new Length(size);
    ToleranceClass hole = ToleranceClass.of("H7");
    boolean defined = shaft.isDefinedFor(nominal) && shaft.mirrored().withGrade(hole.grade()).isDefinedFor(nominal);
    Assume.that(defined && ToleranceClass.of("h" + shaft.grade().number()).isDefinedFor(nominal));
    Fit fit = Fit.of(nominal, hole, shaft);
    assertEquals(fit, fit.onOtherBasis().to().onOtherBasis().to());
  }

  @Property(tries = 3000)
  void kernelsOfTheFitAgreeWithThoseOfTheParts(
      @ForAll("sizes") double size, @ForAll("classes") ToleranceClass one, @ForAll("classes") ToleranceClass other) {
    int hole = (one.feature() == Feature.HOLE ? one : one.mirrored()).code();
    int shaft = (other.feature() == Feature.SHAFT ? other : other.mirrored()).code();
    Assume.that(LimitDeviationsKernel.isDefined(size, hole) && LimitDeviationsKernel.isDefined(size, shaft));
    double[] four = new double[4];
    LimitDeviationsKernel.fit(size, hole, shaft, four);
    assertEquals(LimitDeviationsKernel.upper(size, hole), four[0], 0);
    assertEquals(LimitDeviationsKernel.lower(size, hole), four[1], 0);
    assertEquals(LimitDeviationsKernel.upper(size, shaft), four[2], 0);
    assertEquals(LimitDeviationsKernel.lower(size, shaft), four[3], 0);
    double greatest = LimitDeviationsKernel.maximumClearance(size, hole, shaft);
    double least = LimitDeviationsKernel.minimumClearance(size, hole, shaft);
    assertEquals(four[0] - four[3], greatest, 1e-9);
    assertEquals(four[1] - four[2], least, 1e-9);
    Fit fit = Fit.of(new Length(size), ToleranceClass.at(hole), ToleranceClass.at(shaft));
    assertEquals(fit.tolerance().in(KnownUnits.UM), greatest - least, 1e-6);
    FitKind kind = least >= 0 ? FitKind.CLEARANCE : greatest <= 0 ? FitKind.INTERFERENCE : FitKind.TRANSITION;
    assertEquals(kind, fit.kind());
    double[] upper = new double[1];
    double[] lower = new double[1];
    LimitDeviationsKernel.limits(new double[] {size}, hole, upper, lower);
    assertEquals(four[0], upper[0], 0);
    assertEquals(four[1], lower[0], 0);
  }

  @Property(tries = 2000)
  void classesAndFitsReadBack(@ForAll("sizes") double size, @ForAll("classes") ToleranceClass c) {
    assertEquals(c, ToleranceClass.of(c.toString()));
    ToleranceClass hole = c.feature() == Feature.HOLE ? c : c.mirrored();
    ToleranceClass shaft = ToleranceClass.of("h6");
    Assume.that(hole.isDefinedFor(new Length(size)));
    Fit fit = Fit.of(new Length(size), hole, shaft);
    assertEquals(fit, Fit.of(new Length(size), fit.designation()));
    // Sizes in text keep ten significant digits.
    double rounded = Double.parseDouble(String.format(Locale.ROOT, "%.4f", Math.max(0.001, size)));
    Assume.that(hole.isDefinedFor(new Length(rounded)));
    Fit written = Fit.of(new Length(rounded), hole, shaft);
    assertEquals(written, Fit.of(written.name()));
  }

  /** Texts that are nearly fits, and sometimes are. */
  @Provide
  Arbitrary<String> almostFits() {
    return Arbitraries.of("", " ", "H", "JS", "K", "ZC", "h", "js", "k", "zc", "I", "0", "1", "01", "6", "7", "18", "/", "/", ".", ",")
        .list()
        .ofMaxSize(7)
        .map(parts -> String.join("", parts));
  }

  @Property(tries = 5000)
  void aFitOrANamedErrorAreTheTwoOutcomes(
      @ForAll @DoubleRange(min = -10, max = 4000) double size, @ForAll("almostFits") String text) {
    try {
      Fit fit = Fit.of(new Length(size), text);
      assertTrue(fit.maximumClearance().mm() >= fit.minimumClearance().mm());
    } catch (InputException e) {
      assertTrue(e.getMessage().contains(e.permitted()));
    }
  }

  @Property(tries = 3000)
  void explanationsEndWithTheLowerDeviation(@ForAll("sizes") double size, @ForAll("classes") ToleranceClass c) {
    Length nominal = new Length(size);
    Assume.that(c.isDefinedFor(nominal));
    var steps = c.explain(nominal).steps();
    assertEquals(c.limitDeviations(nominal).lower().in(KnownUnits.UM), steps.get(steps.size() - 1).value(), 0);
    assertEquals(c.limitDeviations(nominal).upper().in(KnownUnits.UM), steps.get(steps.size() - 2).value(), 0);
    // The cells that the explanation reads from the tables add up to what the kernel gives.
    double it = steps.get(0).value();
    assertEquals(it, c.limitDeviations(nominal).tolerance().in(KnownUnits.UM), 1e-6);
    if (c.letter() != DeviationLetter.JS) {
      boolean fromLower = steps.get(1).symbol().toUpperCase(Locale.ROOT).startsWith("EI");
      double delta = steps.get(2).symbol().equals("Delta") ? steps.get(2).value() : 0;
      double upper = steps.get(1).value() + delta + (fromLower ? it : 0);
      assertEquals(upper, steps.get(steps.size() - 2).value(), 1e-9);
    }
  }
}
