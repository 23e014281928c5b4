// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.OperatingTime;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ModifiedLifeTest {
  private static final LoadRatings ROLLER = LoadRatings.radialRoller(kN(14.2), kN(17.5));
  private static final Lubrication FILM = Lubrication.of(mm2PerS(60), rpm(180), mm(30));
  private static final Contamination DIRT = Contamination.of(ContaminationLevel.SLIGHT_CONTAMINATION);

  @Test
  void lifeAndDerivation() {
    ModifiedLife life = RatingLife.modified(ROLLER, kN(2.1), Reliability.ofPercent(95), FILM, DIRT);
    assertEquals(life.millionRevolutions(), life.explain().result().value());
    assertEquals("L5m", life.explain().result().symbol());
    assertEquals(0.3, life.contaminationFactor());
    assertEquals(17500 / 8.2, life.fatigueLimit().newton(), 1e-9);
    assertEquals(LifeModificationKernel.life(
            BearingFamily.RADIAL_ROLLER, 14200, 17500 / 8.2, 2100, 95, FILM.kappa(), 0.3), life.millionRevolutions(), 1e-9);
    assertEquals("fatigue-limit-estimated", life.warnings().get(0).code());
  }

  @Test
  void jumpsAtTheBordersOfKappa() {
    for (BearingFamily family : BearingFamily.values()) {
      for (double border : new double[] {0.4, 1}) {
        double worst = 0;
        for (double x = 0.005; x <= 5; x *= 1.1) {
          double below = LifeModificationKernel.factor(family, Math.nextDown(border), x);
          double above = LifeModificationKernel.factor(family, border, x);
          worst = Math.max(worst, Math.abs(above / below - 1));
        }
        System.out.printf(java.util.Locale.ROOT,
            "%s: greatest jump of aISO at kappa = %.1f: %.2e (relative)%n", family, border, worst);
        // The printed coefficients have five digits; the exponent of 9 and the small base magnify their rounding.
        assertTrue(worst < 5e-3, family + " at " + border + ": " + worst);
      }
    }
  }

  @Test
  void capsAndBorders() {
    assertEquals(50, LifeModificationKernel.radialBall(4, 5));
    assertEquals(LifeModificationKernel.radialBall(4, 0.1), LifeModificationKernel.radialBall(9, 0.1));
    assertEquals(LifeModificationKernel.thrustRoller(0.5, 5), LifeModificationKernel.thrustRoller(0.5, 50));
    assertEquals(0.1, LifeModificationKernel.radialRoller(2, 0));
    InputException dry = assertThrows(InputException.class, () -> LifeModificationKernel.radialBall(0.0999, 1));
    assertTrue(dry.getMessage().startsWith("viscosity ratio κ (0.0999) must be 0.1 or more"), dry.getMessage());
    assertThrows(InputException.class, () -> LifeModificationKernel.radialBall(Double.NaN, 1));
    assertThrows(InputException.class, () -> Contamination.ofFactor(1.1));
  }

  @Test
  void additives() {
    BearingFamily family = BearingFamily.RADIAL_BALL;
    double real = LifeModificationKernel.factor(family, 0.5, 0.5 * 0.4);
    double raised = LifeModificationKernel.factor(family, 1, 0.5 * 0.4);
    assertEquals(Math.min(raised, 3), LifeModificationKernel.withAdditives(family, 0.5, 0.5, 0.5, 0.4));
    assertTrue(real < raised);
    // Dirty: no help. Strong film: none needed. Value above 3 for the real κ: kept.
    assertEquals(LifeModificationKernel.factor(family, 0.5, 0.19 * 0.4), LifeModificationKernel.withAdditives(family, 0.5, 0.19, 0.19, 0.4));
    assertEquals(LifeModificationKernel.factor(family, 2, 0.2), LifeModificationKernel.withAdditives(family, 2, 0.5, 0.5, 0.4));
    double high = LifeModificationKernel.factor(family, 0.9, 0.9 * 2);
    assertTrue(high > 3);
    assertEquals(high, LifeModificationKernel.withAdditives(family, 0.9, 0.9, 0.9, 2));
    ModifiedLife life = RatingLife.modified(ROLLER, kN(2.1), Reliability.L10,
        Lubrication.ofKappa(0.5, mm(30)).withProvenAdditives(), Contamination.ofFactor(0.5));
    assertTrue(life.warnings().stream().anyMatch(w -> w.code().equals("additives")));
  }

  @Test
  void warnings() {
    ModifiedLife life = RatingLife.modified(ROLLER.withFatigueLimit(kN(2)), N(100), Reliability.L10,
        Lubrication.ofKappa(6, mm(30)), Contamination.ofFactor(1));
    assertEquals(java.util.List.of("kappa-above-4", "argument-above-5", "modification-at-50"),
        life.warnings().stream().map(w -> w.code()).toList());
  }

  @Test
  void inverses() {
    OperatingTime wanted = hours(20000);
    Force load = RatingLife.allowableLoad(ROLLER, wanted, rpm(180), Reliability.ofPercent(95), FILM, DIRT);
    assertEquals(20000, RatingLife.modified(ROLLER, load, Reliability.ofPercent(95), FILM, DIRT).hours(rpm(180)).hours(), 1e-3);
    KinematicViscosity nu =
        RatingLife.requiredViscosity(ROLLER, kN(2.1), Reliability.L10, hours(60000), rpm(180), mm(30), DIRT);
    ModifiedLife life = RatingLife.modified(ROLLER, kN(2.1), Reliability.L10, Lubrication.of(nu, rpm(180), mm(30)), DIRT);
    assertEquals(60000, life.hours(rpm(180)).hours(), 1);
    InputException never = assertThrows(InputException.class,
        () -> RatingLife.requiredViscosity(ROLLER, kN(7), Reliability.L10, hours(1e6), rpm(180), mm(30), DIRT));
    assertTrue(never.getMessage().contains("κ = 4"), never.getMessage());
    assertEquals(2100, RatingLife.allowableLoad(ROLLER, RatingLife.basic(ROLLER, kN(2.1)).hours(rpm(180)), rpm(180),
        Reliability.L10).newton(), 1e-6);
    assertEquals(14200, RatingLife.requiredRating(BearingFamily.RADIAL_ROLLER, kN(2.1),
        RatingLife.basic(ROLLER, kN(2.1)).hours(rpm(180)), rpm(180)).newton(), 1e-6);
    assertEquals(180, RatingLife.allowableSpeed(life, life.hours(rpm(180))).rpm(), 1e-9);
  }

  @Test
  void referenceViscosityBranchesMeet() {
    double below = LubricationKernel.referenceViscosity(Math.nextDown(1000.0), 50);
    double above = LubricationKernel.referenceViscosity(1000, 50);
    // 45000/4500 = 10 against 1000^0.33 = 9.77: the two printed branches differ by 2.3 %.
    assertEquals(1, below / above, 0.024);
    assertThrows(InputException.class, () -> LubricationKernel.referenceViscosity(0, 50));
  }

  @Test
  void contaminationEquations() {
    assertEquals(0, Cleanliness.GREASE_VERY_SEVERE.factor(1, 25));
    assertTrue(Cleanliness.GREASE_SLIGHT_TO_TYPICAL.factor(4, 499) < Cleanliness.GREASE_SLIGHT_TO_TYPICAL.factor(4, 500));
    assertEquals(0.8, Contamination.of(ContaminationLevel.HIGH_CLEANLINESS, 1).factor(1, mm(99)), 1e-12);
    assertEquals(0.8, Contamination.of(ContaminationLevel.HIGH_CLEANLINESS).factor(1, mm(100)), 1e-12);
  }

  @Property
  void modificationRisesWithFilmAndCleanliness(@ForAll BearingFamily family, @ForAll @DoubleRange(min = 0.1, max = 3.9) double kappa,
      @ForAll @DoubleRange(min = 0.01, max = 4.9) double x, @ForAll @DoubleRange(min = 1.01, max = 3) double more) {
    double value = LifeModificationKernel.factor(family, kappa, x);
    assertTrue(value >= 0.1 && value <= 50);
    assertTrue(LifeModificationKernel.factor(family, kappa, x * more) >= value);
    // The printed coefficients let the factor fall by up to 0.3 % where the branches meet.
    assertTrue(LifeModificationKernel.factor(family, kappa * more, x) >= value * (1 - 3e-3));
  }

  @Property
  void lifeFallsWithLoadAndDirt(@ForAll BearingFamily family, @ForAll @DoubleRange(min = 500, max = 50000) double p,
      @ForAll @DoubleRange(min = 0.1, max = 4) double kappa, @ForAll @DoubleRange(min = 0.05, max = 0.9) double eC) {
    double life = LifeModificationKernel.life(family, 1e5, 4000, p, 90, kappa, eC);
    assertTrue(LifeModificationKernel.life(family, 1e5, 4000, p * 1.1, 90, kappa, eC) < life);
    assertTrue(LifeModificationKernel.life(family, 1e5, 4000, p, 90, kappa, eC * 1.1) >= life);
    assertTrue(LifeModificationKernel.life(family, 1e5, 5000, p, 90, kappa, eC) >= life);
    assertTrue(LifeModificationKernel.life(family, 1e5, 4000, p, 80, kappa, eC) > life);
    assertEquals(life, LifeModificationKernel.life(family, 2e5, 8000, 2 * p, 90, kappa, eC), 1e-9 * life);
    double back = InverseLifeKernel.allowableLoad(family, 1e5, 4000, 90, kappa, eC, false, 0.5, life);
    assertEquals(p, back, 1e-6 * p);
  }

  @Property
  void contaminationFactorRisesWithFilmAndSize(@ForAll Cleanliness cleanliness,
      @ForAll @DoubleRange(min = 0.1, max = 4) double kappa, @ForAll @DoubleRange(min = 20, max = 2000) double dpw) {
    double value = cleanliness.factor(kappa, dpw);
    assertTrue(value >= 0 && value < 1);
    assertTrue(cleanliness.factor(kappa * 1.1, dpw) >= value);
    assertTrue(cleanliness.factor(kappa, dpw * 1.1) >= value);
  }
}
