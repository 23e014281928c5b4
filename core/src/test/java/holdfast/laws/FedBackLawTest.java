// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.BasicLifeKernel;
import holdfast.bearings.BearingFamily;
import holdfast.bearings.Cleanliness;
import holdfast.bearings.Contamination;
import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.InverseLifeKernel;
import holdfast.bearings.LifeModificationKernel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.Lubrication;
import holdfast.bearings.ModifiedLife;
import holdfast.bearings.OuterRing;
import holdfast.bearings.RatingLife;
import holdfast.bearings.Reliability;
import holdfast.bearings.ReliabilityKernel;
import holdfast.bearings.ViscosityKernel;
import holdfast.fits.ClearanceDistributionKernel;
import holdfast.fits.ThermalFitKernel;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.Length;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What an inverse answers is taken by the calculation it turns round, and gives back what was wanted. */
class FedBackLawTest {
  private static final List<BearingFamily> FAMILIES = List.of(BearingFamily.values());
  private static final List<ContaminationLevel> LEVELS = List.of(ContaminationLevel.values());
  private static final List<Cleanliness> OILS = List.of(Cleanliness.values());

  private final Random random = new Random(Effort.SEED);

  private double between(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  private BearingFamily family() {
    return FAMILIES.get(random.nextInt(FAMILIES.size()));
  }

  private Contamination dirt() {
    return switch (random.nextInt(3)) {
      case 0 -> Contamination.ofFactor(random.nextDouble());
      case 1 -> Contamination.of(LEVELS.get(random.nextInt(LEVELS.size())));
      default -> Contamination.of(OILS.get(random.nextInt(OILS.size())));
    };
  }

  private LoadRatings ratings() {
    Force c = new Force(between(1e3, 1e6));
    return new LoadRatings(family(), c, c.times(between(0.5, 2)), c.times(between(0.03, 0.2)), OuterRing.HOUSED);
  }

  @Test
  void theRequiredViscosityGivesTheLife() {
    int answered = 0;
    for (int i = 0; i < 20_000; i++) {
      LoadRatings ratings = ratings();
      Force load = ratings.dynamic().times(between(0.02, 0.5));
      RotationalSpeed speed = new RotationalSpeed(between(1, 1e4));
      Length pitch = new Length(between(10, 1000));
      Contamination dirt = dirt();
      // Often so short a life that the thinnest film will do.
      OperatingTime life = new OperatingTime(
          BasicLifeKernel.hours(BasicLifeKernel.l10(ratings.family(), ratings.dynamic().newton(), load.newton()), speed.rpm())
              * between(0.01, 3));
      KinematicViscosity viscosity;
      try {
        viscosity = RatingLife.requiredViscosity(ratings, load, Reliability.L10, life, speed, pitch, dirt);
      } catch (InputException e) {
        continue;
      }
      answered++;
      Lubrication film = Lubrication.of(viscosity, speed, pitch);
      ModifiedLife back = RatingLife.modified(ratings, load, Reliability.L10, film, dirt);
      assertTrue(back.hours(speed).hours() >= life.hours() * (1 - 1e-9), () -> back + " of " + life);
    }
    assertTrue(answered > 5_000, answered + " answers");
  }

  @Test
  void theAllowableLoadGivesTheLife() {
    for (int i = 0; i < 10_000; i++) {
      LoadRatings ratings = ratings();
      Lubrication film = Lubrication.ofKappa(between(0.1, 4), new Length(between(10, 1000)));
      Lubrication lubrication = random.nextBoolean() ? film.withProvenAdditives() : film;
      Contamination dirt = dirt();
      Reliability reliability = Reliability.ofPercent(50 + 49 * random.nextDouble());
      RotationalSpeed speed = new RotationalSpeed(between(1, 1e4));
      OperatingTime life = new OperatingTime(between(10, 1e5));
      Force load = RatingLife.allowableLoad(ratings, life, speed, reliability, lubrication, dirt);
      double hours = RatingLife.modified(ratings, load, reliability, lubrication, dirt).hours(speed).hours();
      assertTrue(hours >= life.hours() * (1 - 1e-9), hours + " of " + life);
      double more = RatingLife.modified(ratings, load.times(1.0001), reliability, lubrication, dirt).hours(speed).hours();
      assertTrue(more < life.hours() * (1 + 1e-9), "and no more load is allowed: " + more + " of " + life);
      Force basic = RatingLife.allowableLoad(ratings, life, speed, reliability);
      double rated = RatingLife.basic(ratings, basic).millionRevolutions() * reliability.a1() * 1e6 / 60 / speed.rpm();
      assertEquals(life.hours(), rated, 1e-9 * life.hours());
    }
  }

  @Test
  void theBasicLifeTurnsRound() {
    for (int i = 0; i < 10_000; i++) {
      BearingFamily family = family();
      double p = between(1, 1e6);
      double life = between(1e-3, 1e6);
      double c = BasicLifeKernel.requiredRating(family, p, life);
      assertEquals(life, BasicLifeKernel.l10(family, c, p), 1e-12 * life);
      assertEquals(p, BasicLifeKernel.allowableLoad(family, c, life), 1e-12 * p);
      double hours = between(1, 1e6);
      double rpm = BasicLifeKernel.allowableSpeed(life, hours);
      assertEquals(hours, BasicLifeKernel.hours(life, rpm), 1e-12 * hours);
      assertEquals(life, BasicLifeKernel.millionRevolutions(hours, rpm), 1e-12 * life);
    }
  }

  @Test
  void theRequiredKappaGivesTheLife() {
    for (int i = 0; i < 10_000; i++) {
      BearingFamily family = family();
      double eC = random.nextDouble();
      double wanted = LifeModificationKernel.life(family, 3e4, 2e3, 5e3, 90, between(0.1, 4), eC);
      double kappa = InverseLifeKernel.requiredKappa(family, 3e4, 2e3, 5e3, 90, k -> eC, wanted);
      assertTrue(LifeModificationKernel.life(family, 3e4, 2e3, 5e3, 90, kappa, eC) >= wanted * (1 - 1e-12));
    }
  }

  @Test
  void reliabilityViscosityAndFitsTurnRound() {
    for (int i = 0; i < 10_000; i++) {
      double percent = 50 + 49.9 * random.nextDouble();
      assertEquals(percent, ReliabilityKernel.percent(ReliabilityKernel.a1(percent)), 1e-9);
      double at40 = between(10, 3000);
      double index = 200 * random.nextDouble();
      try {
        double at100 = ViscosityKernel.at100(at40, index);
        assertTrue(Math.abs(ViscosityKernel.viscosityIndex(at40, at100) - index) < 0.6, at40 + ", " + index);
      } catch (InputException e) {
        assertEquals("viscosity at 40 °C", e.parameter());
      }
      double celsius = -50 + 300 * random.nextDouble();
      double hole = between(1, 1000);
      double alpha = 1e-6 + 3e-5 * random.nextDouble();
      assertEquals(hole, ThermalFitKernel.sizeAt20(ThermalFitKernel.sizeAt(hole, alpha, celsius), alpha, celsius), 1e-12 * hole);
      double shaft = hole * (1 + 1e-3 * random.nextDouble());
      double both = ThermalFitKernel.uniformTemperature(hole, alpha + 1e-5, shaft, alpha, 0);
      assertEquals(0, both > 1e4 ? 0 : ThermalFitKernel.clearance(hole, alpha + 1e-5, both, shaft, alpha, both), 1e-11 * hole);
      double p = between(1e-6, 0.5);
      boolean normal = random.nextBoolean();
      double other = between(0.01, 10);
      double quantile = ClearanceDistributionKernel.quantile(p, 3, 1, normal, other, true);
      assertEquals(p, ClearanceDistributionKernel.probability(quantile, 3, 1, normal, other, true), 1e-9 * p);
    }
  }
}
