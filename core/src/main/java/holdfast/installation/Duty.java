// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.Contamination;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.lubrication.Port;
import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Temperature;
import holdfast.seats.StudDuty;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * What the roller has to do.
 *
 * @param spectrum radial loads and speeds of the outer ring in steps; at least one step with load and speed
 * @param wantedLife hours that it shall run, standstill of the spectrum included, over 0
 * @param reliability reliability with which it shall reach them
 * @param staticSafety wanted safety S0 of the greatest load against the basic static load rating, 1 to 10
 * @param workingTemperature temperature of stud and machine member at work
 * @param viscosity viscosity of the oil, or of the base oil of the grease, at that temperature
 * @param contamination how clean the lubricant stays; null if it follows from place and seals
 * @param track surface on which the roller runs
 * @param trackHardness hardness of the track in HRC, 20 to 58
 * @param trackMisalignment angle between track and roller that the structure holds; null if it is not stated
 * @param feed the port through which the roller is greased; null for a roller lubricated for life
 * @param uprightAxis whether the axis of the roller stands upright
 * @param surroundings dirt, water and vibration at the place, which shorten the life of the grease
 * @param loadChange how the load on stud or pin changes; null if it is not stated, then its fatigue is not looked at
 */
public record Duty(
    LoadSpectrum spectrum,
    OperatingTime wantedLife,
    Reliability reliability,
    double staticSafety,
    Temperature workingTemperature,
    KinematicViscosity viscosity,
    Contamination contamination,
    ContactSurface track,
    double trackHardness,
    Angle trackMisalignment,
    Port feed,
    boolean uprightAxis,
    Surroundings surroundings,
    StudDuty loadChange)
    implements Serializable {

  // Refuses a duty without load, speed or time.
  public Duty {
    Objects.requireNonNull(wantedLife, "wantedLife");
    Objects.requireNonNull(spectrum, "spectrum");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(workingTemperature, "workingTemperature");
    Objects.requireNonNull(viscosity, "viscosity");
    Objects.requireNonNull(track, "track");
    Objects.requireNonNull(surroundings, "surroundings");
    if (spectrum.steps().stream().noneMatch(step -> step.load().newton() > 0 && step.speed().rpm() > 0)) {
      throw new InputException("load spectrum", "no step with load and speed", "at least one",
          "a roller without load, or one that stands, has no rating life");
    }
    Check.positive(viscosity.mm2PerS(), "viscosity ν", "mm²/s", "a lubricant has a viscosity");
    Check.positive(wantedLife.hours(), "wanted life", "h", "it is a time");
    Check.within(staticSafety, 1, 10, "static safety S0", "", "1 to 2 normal, 2 to 3 impact");
    Check.within(trackHardness, 20, 58, "hardness of the track", "HRC", "range of the hardness factors");
    if (trackMisalignment != null) {
      Check.notNegative(trackMisalignment.radian(), "misalignment of the track", "rad", "its size counts");
    }
  }

  /**
   * Starts a duty with one load and one speed.
   *
   * @param load radial load on the roller, over 0
   * @param speed speed of the outer ring, over 0
   * @return a builder
   * @throws InputException if load or speed is negative
   */
  public static DutyBuilder of(Force load, RotationalSpeed speed) {
    return new DutyBuilder(LoadSpectrum.constant(load, speed));
  }

  /**
   * Starts a duty in steps.
   *
   * @param steps radial loads, speeds of the outer ring and shares of time
   * @return a builder
   */
  public static DutyBuilder of(LoadSpectrum steps) {
    Objects.requireNonNull(steps, "steps");
    return new DutyBuilder(steps);
  }

  /**
   * The greatest load, which the limits are compared with.
   *
   * @return the greatest load of all steps
   */
  public Force load() {
    return spectrum.steps().stream().map(LoadSpectrum.Step::load).max(Force::compareTo).orElseThrow();
  }

  /**
   * The least load while the roller turns, which must keep it rolling.
   *
   * @return the least load of all steps that turn
   */
  public Force leastLoad() {
    return spectrum.steps().stream()
        .filter(step -> step.speed().rpm() > 0)
        .map(LoadSpectrum.Step::load)
        .min(Force::compareTo)
        .orElseThrow();
  }

  /**
   * The greatest speed.
   *
   * @return the greatest speed of all steps
   */
  public RotationalSpeed greatestSpeed() {
    return spectrum.steps().stream().map(LoadSpectrum.Step::speed).max(RotationalSpeed::compareTo).orElseThrow();
  }

  /**
   * The mean speed over the whole time, which turns revolutions into hours.
   *
   * @return the speed of a duty with one step
   */
  public RotationalSpeed speed() {
    return spectrum.meanSpeed();
  }

  /**
   * Whether load and speed stay the same.
   *
   * @return true for a duty of one step
   */
  public boolean constant() {
    return spectrum.steps().size() == 1;
  }

  /**
   * How clean the lubricant stays, if it is stated.
   *
   * @return the contamination; empty if it follows from place and seals
   */
  public Optional<Contamination> statedContamination() {
    return Optional.ofNullable(contamination);
  }

  /**
   * The port through which the roller is greased.
   *
   * @return the port; empty for a roller lubricated for life
   */
  public Optional<Port> statedFeed() {
    return Optional.ofNullable(feed);
  }

  /**
   * How the load on stud or pin changes, if it is stated.
   *
   * @return static, repeated or reversed
   */
  public Optional<StudDuty> statedLoadChange() {
    return Optional.ofNullable(loadChange);
  }

  /**
   * The misalignment of the track, if it is stated.
   *
   * @return the angle
   */
  public Optional<Angle> statedTrackMisalignment() {
    return Optional.ofNullable(trackMisalignment);
  }
}
