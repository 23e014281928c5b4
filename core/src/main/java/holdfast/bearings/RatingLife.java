// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Force;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.Length;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/** Rating lives of one bearing, under a constant load or a duty in steps, and the questions turned round. */
public final class RatingLife {
  private RatingLife() {}

  /**
   * Basic rating life L10 (90 %).
   *
   * @param ratings load ratings
   * @param load dynamic equivalent load P, over 0
   * @return the life
   * @throws holdfast.quantity.InputException if the load is not above zero
   */
  public static BasicLife basic(LoadRatings ratings, Force load) {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(load, "load");
    return BasicLife.of(ratings, load, Reliability.L10);
  }

  /**
   * Basic rating life at a reliability.
   *
   * @param ratings load ratings
   * @param load dynamic equivalent load P, over 0
   * @param reliability reliability
   * @return Ln = a1 L10
   * @throws holdfast.quantity.InputException if the load is not above zero
   */
  public static BasicLife basic(LoadRatings ratings, Force load, Reliability reliability) {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(reliability, "reliability");
    return BasicLife.of(ratings, load, reliability);
  }

  /**
   * Modified rating life Lnm.
   *
   * @param ratings load ratings; without fatigue load limit it is estimated from C0
   * @param load dynamic equivalent load P, over 0
   * @param reliability reliability
   * @param lubrication lubrication, κ at least 0.1
   * @param contamination contamination
   * @return Lnm = a1 aISO L10
   * @throws holdfast.quantity.InputException if the load is not above zero or κ is below 0.1
   */
  public static ModifiedLife modified(
      LoadRatings ratings, Force load, Reliability reliability, Lubrication lubrication, Contamination contamination) {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(lubrication, "lubrication");
    Objects.requireNonNull(contamination, "contamination");
    return ModifiedLife.of(ratings, load, reliability, lubrication, contamination);
  }

  /**
   * Basic rating life under a duty in steps.
   *
   * @param ratings load ratings
   * @param spectrum the duty
   * @param reliability reliability
   * @return the life
   * @throws holdfast.quantity.InputException if no step loads the turning bearing
   */
  public static SpectrumLife basic(LoadRatings ratings, LoadSpectrum spectrum, Reliability reliability) {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(spectrum, "spectrum");
    Objects.requireNonNull(reliability, "reliability");
    return SpectrumLife.basic(ratings, spectrum, reliability);
  }

  /**
   * Modified rating life under a duty in steps: κ, eC and aISO step by step, then the sum of damages.
   *
   * @param ratings load ratings; without fatigue load limit it is estimated from C0
   * @param spectrum the duty
   * @param reliability reliability
   * @param lubrication one for each step, in the order of the steps
   * @param contamination one for each step, in the order of the steps
   * @return the life
   * @throws holdfast.quantity.InputException if the lists do not fit the steps or κ of a step is below 0.1
   */
  public static SpectrumLife modified(LoadRatings ratings, LoadSpectrum spectrum, Reliability reliability,
      List<Lubrication> lubrication, List<Contamination> contamination) {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(spectrum, "spectrum");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(lubrication, "lubrication");
    Objects.requireNonNull(contamination, "contamination");
    return SpectrumLife.modified(ratings, spectrum, reliability, lubrication, contamination);
  }

  /**
   * Modified rating life under a duty in steps with one viscosity and one contamination; κ follows the speed of each
   * step.
   *
   * @param ratings load ratings; without fatigue load limit it is estimated from C0
   * @param spectrum the duty; every step turns
   * @param reliability reliability
   * @param viscosity viscosity ν at operating temperature
   * @param pitchDiameter pitch diameter Dpw
   * @param contamination contamination
   * @return the life
   * @throws holdfast.quantity.InputException if a step stands still or κ of a step is below 0.1
   */
  public static SpectrumLife modified(LoadRatings ratings, LoadSpectrum spectrum, Reliability reliability,
      KinematicViscosity viscosity, Length pitchDiameter, Contamination contamination) {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(spectrum, "spectrum");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    Objects.requireNonNull(contamination, "contamination");
    List<Lubrication> films =
        spectrum.steps().stream().map(step -> Lubrication.of(viscosity, step.speed(), pitchDiameter)).toList();
    return modified(ratings, spectrum, reliability, films, Collections.nCopies(films.size(), contamination));
  }

  /**
   * Basic dynamic load rating that a wanted life needs.
   *
   * @param family family of the bearing
   * @param load dynamic equivalent load P, over 0
   * @param life wanted L10h, over 0
   * @param speed speed n, over 0
   * @return C
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public static Force requiredRating(BearingFamily family, Force load, OperatingTime life, RotationalSpeed speed) {
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(life, "life");
    Objects.requireNonNull(speed, "speed");
    double l10 = BasicLifeKernel.millionRevolutions(life.hours(), speed.rpm());
    return new Force(BasicLifeKernel.requiredRating(family, load.newton(), l10));
  }

  /**
   * Greatest load with a wanted basic life.
   *
   * @param ratings load ratings
   * @param life wanted life, over 0
   * @param speed speed n, over 0
   * @param reliability reliability of the life
   * @return P
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public static Force allowableLoad(LoadRatings ratings, OperatingTime life, RotationalSpeed speed, Reliability reliability) {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(life, "life");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(reliability, "reliability");
    double l10 = BasicLifeKernel.millionRevolutions(life.hours(), speed.rpm()) / reliability.a1();
    return new Force(BasicLifeKernel.allowableLoad(ratings.family(), ratings.dynamic().newton(), l10));
  }

  /**
   * Greatest load with a wanted modified life, at given lubrication and contamination.
   *
   * @param ratings load ratings; without fatigue load limit it is estimated from C0
   * @param life wanted life, over 0
   * @param speed speed n, over 0
   * @param reliability reliability of the life
   * @param lubrication lubrication
   * @param contamination contamination
   * @return P
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static Force allowableLoad(LoadRatings ratings, OperatingTime life, RotationalSpeed speed, Reliability reliability,
      Lubrication lubrication, Contamination contamination) {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(life, "life");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(lubrication, "lubrication");
    Objects.requireNonNull(contamination, "contamination");
    double wanted = BasicLifeKernel.millionRevolutions(life.hours(), speed.rpm());
    double cu = ModifiedLife.fatigueLimit(ratings, lubrication.pitchDiameter()).newton();
    double eC = contamination.factor(lubrication.kappa(), lubrication.pitchDiameter());
    return new Force(InverseLifeKernel.allowableLoad(ratings.family(), ratings.dynamic().newton(), cu, reliability.percent(),
        lubrication.kappa(), eC, lubrication.provenAdditives(), contamination.factor(1, lubrication.pitchDiameter()), wanted));
  }

  /**
   * Greatest speed with a wanted life in hours.
   *
   * @param life life in revolutions under the load
   * @param wanted wanted life in hours, over 0
   * @return n; for a modified life at the κ of that life
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public static RotationalSpeed allowableSpeed(RatedLife life, OperatingTime wanted) {
    Objects.requireNonNull(life, "life");
    Objects.requireNonNull(wanted, "wanted");
    return new RotationalSpeed(BasicLifeKernel.allowableSpeed(life.millionRevolutions(), wanted.hours()));
  }

  /**
   * Least viscosity at operating temperature with a wanted modified life.
   *
   * @param ratings load ratings; without fatigue load limit it is estimated from C0
   * @param load dynamic equivalent load P, over 0
   * @param reliability reliability of the life
   * @param life wanted life, over 0
   * @param speed speed n, over 0
   * @param pitchDiameter pitch diameter Dpw
   * @param contamination contamination
   * @return ν
   * @throws holdfast.quantity.InputException if no viscosity gives this life, or an argument is outside its range
   */
  public static KinematicViscosity requiredViscosity(LoadRatings ratings, Force load, Reliability reliability,
      OperatingTime life, RotationalSpeed speed, Length pitchDiameter, Contamination contamination) {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(life, "life");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    Objects.requireNonNull(contamination, "contamination");
    double wanted = BasicLifeKernel.millionRevolutions(life.hours(), speed.rpm());
    double cu = ModifiedLife.fatigueLimit(ratings, pitchDiameter).newton();
    double kappa = InverseLifeKernel.requiredKappa(ratings.family(), ratings.dynamic().newton(), cu, load.newton(),
        reliability.percent(), k -> contamination.factor(k, pitchDiameter), wanted);
    double reference = LubricationKernel.referenceViscosity(speed.rpm(), pitchDiameter.mm());
    double viscosity = kappa * reference;
    // The product may round below what it was asked for, and below κ = 0.1 no life is defined.
    while (viscosity / reference < kappa) {
      viscosity = Math.nextUp(viscosity);
    }
    return new KinematicViscosity(viscosity);
  }
}
