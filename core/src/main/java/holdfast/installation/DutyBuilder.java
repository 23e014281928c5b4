// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.Cleanliness;
import holdfast.bearings.Contamination;
import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.lubrication.Port;
import holdfast.quantity.Angle;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Temperature;
import holdfast.seats.StudDuty;
import java.util.Objects;

/** Collects a duty. Not thread-safe. */
public final class DutyBuilder extends Description<Duty> {
  private final LoadSpectrum spectrum;
  private OperatingTime wantedLife;
  private Reliability reliability;
  private Double staticSafety;
  private Temperature workingTemperature;
  private KinematicViscosity viscosity;
  private Contamination contamination;
  private ContactSurface track;
  private double trackHardness;
  private Angle trackMisalignment;
  private Port feed;
  private final Choice greasing = new Choice("greasing");
  private boolean uprightAxis;
  private Surroundings surroundings = Surroundings.clean();
  private StudDuty loadChange;

  DutyBuilder(LoadSpectrum spectrum) {
    this.spectrum = spectrum;
  }

  /**
   * States the wanted life.
   *
   * @param hours hours that the roller shall run
   * @param wanted reliability with which it shall reach them
   * @return this builder
   */
  public DutyBuilder life(OperatingTime hours, Reliability wanted) {
    this.wantedLife = Objects.requireNonNull(hours, "hours");
    this.reliability = Objects.requireNonNull(wanted, "wanted");
    return this;
  }

  /**
   * States the wanted static safety.
   *
   * @param s0 safety, basic static load rating over greatest load, 1 to 10
   * @return this builder
   */
  public DutyBuilder staticSafety(double s0) {
    this.staticSafety = s0;
    return this;
  }

  /**
   * States the temperature at work.
   *
   * @param temperature temperature of stud and machine member
   * @return this builder
   */
  public DutyBuilder at(Temperature temperature) {
    this.workingTemperature = Objects.requireNonNull(temperature, "temperature");
    return this;
  }

  /**
   * States the lubricant. How clean it stays follows from the dirt of the place and the seals of the roller, unless it is
   * stated.
   *
   * @param atWork viscosity of the oil, or of the base oil of the grease, at the temperature of the work
   * @return this builder
   */
  public DutyBuilder lubricant(KinematicViscosity atWork) {
    this.viscosity = Objects.requireNonNull(atWork, "atWork");
    return this;
  }

  /**
   * States the lubricant and how clean it stays. A cleanness that place and seals do not allow stops the job.
   *
   * @param atWork viscosity of the oil, or of the base oil of the grease, at the temperature of the work
   * @param cleanness how clean it stays
   * @return this builder
   */
  public DutyBuilder lubricant(KinematicViscosity atWork, Contamination cleanness) {
    Objects.requireNonNull(cleanness, "cleanness");
    lubricant(atWork);
    this.contamination = cleanness;
    return this;
  }

  /**
   * States the lubricant and how clean it stays by a level of ISO 281:2007, Table 13.
   *
   * @param atWork viscosity of the oil, or of the base oil of the grease, at the temperature of the work
   * @param level the level, at the careful end of its range
   * @return this builder
   */
  public DutyBuilder lubricant(KinematicViscosity atWork, ContaminationLevel level) {
    Objects.requireNonNull(level, "level");
    return lubricant(atWork, Contamination.of(level));
  }

  /**
   * States the lubricant and how clean it stays by an equation of ISO 281:2007, Annex A.
   *
   * @param atWork viscosity of the oil, or of the base oil of the grease, at the temperature of the work
   * @param cleanliness lubrication with its cleanliness, for oil by its ISO 4406 code
   * @return this builder
   */
  public DutyBuilder lubricant(KinematicViscosity atWork, Cleanliness cleanliness) {
    Objects.requireNonNull(cleanliness, "cleanliness");
    return lubricant(atWork, Contamination.of(cleanliness));
  }

  /**
   * States the track.
   *
   * @param surface surface on which the roller runs
   * @param hrc its hardness in HRC, 20 to 58
   * @return this builder
   */
  public DutyBuilder track(ContactSurface surface, double hrc) {
    this.track = Objects.requireNonNull(surface, "surface");
    this.trackHardness = hrc;
    return this;
  }

  /**
   * States how well track and roller are aligned. Optional: without it the tilt limit sees the seat alone.
   *
   * @param angle angle between track and roller that the structure holds
   * @return this builder
   */
  public DutyBuilder trackMisalignment(Angle angle) {
    this.trackMisalignment = Objects.requireNonNull(angle, "angle");
    return this;
  }

  /**
   * States the port to which the works has access for greasing.
   *
   * @param port the port
   * @return this builder
   * @throws holdfast.quantity.InputException if the roller is said to be lubricated for life too
   */
  public DutyBuilder greaseThrough(Port port) {
    this.feed = Objects.requireNonNull(port, "port");
    greasing.make("greaseThrough");
    return this;
  }

  /**
   * States that the roller is lubricated for life and never greased again.
   *
   * @return this builder
   * @throws holdfast.quantity.InputException if a port for grease is stated too
   */
  public DutyBuilder lubricatedForLife() {
    greasing.make("lubricatedForLife");
    return this;
  }

  /**
   * States that the axis of the roller stands upright. Level if it is not stated.
   *
   * @return this builder
   */
  public DutyBuilder uprightAxis() {
    this.uprightAxis = true;
    return this;
  }

  /**
   * States dirt, water and vibration at the place. Clean, dry and quiet if they are not stated.
   *
   * @param place what they do to the grease
   * @return this builder
   */
  public DutyBuilder surroundings(Surroundings place) {
    this.surroundings = Objects.requireNonNull(place, "place");
    return this;
  }

  /**
   * States how the load on the stud changes, so that its fatigue is looked at. Optional.
   *
   * @param change static, repeated in one direction, or reversed
   * @return this builder
   */
  public DutyBuilder loadChange(StudDuty change) {
    this.loadChange = Objects.requireNonNull(change, "change");
    return this;
  }

  @Override
  void missing(Missing missing) {
    missing
        .need(spectrum, "load and speed")
        .need(wantedLife, "life")
        .need(staticSafety, "static safety")
        .need(workingTemperature, "temperature at work")
        .need(viscosity, "lubricant")
        .need(track, "track")
        .need(greasing.isMade() ? greasing : null, "port for grease (or lubricated for life)");
  }

  @Override
  Duty make() {
    return new Duty(
        spectrum,
        wantedLife,
        reliability,
        staticSafety,
        workingTemperature,
        viscosity,
        contamination,
        track,
        trackHardness,
        trackMisalignment,
        feed,
        uprightAxis,
        surroundings,
        loadChange);
  }

  /**
   * Ends the duty.
   *
   * @return the duty
   * @throws holdfast.quantity.InputException if something is missing (one error names all of it) or cannot be
   */
  public Duty build() {
    return make("duty");
  }
}
