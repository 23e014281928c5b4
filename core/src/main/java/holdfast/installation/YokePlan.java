// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.fits.FitAtTemperature;
import holdfast.fits.FitKind;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.PlainText;
import holdfast.seats.Band;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.PinStrength;
import holdfast.seats.SeatTilt;
import holdfast.seats.ShankSection;
import holdfast.seats.StudFatigue;
import holdfast.seats.StudFatigueCriterion;
import holdfast.sheet.Sheet;
import holdfast.sheet.SheetUnits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A yoke roller, its pin, its fork and its duty, joined. Both ends of the pin are held, so nothing is tightened through it.
 *
 * <p>The port of the duty says where grease can be brought: {@code HEAD} is the accessible end of the pin, {@code THREAD_END}
 * its other end, {@code RADIAL} a feed hole in an ear.
 *
 * @param job what the job is called on the sheet
 * @param roller the roller
 * @param pin the pin, of the nominal diameter of the roller's bore
 * @param fork the fork; its gap takes the roller
 * @param duty what the roller has to do
 * @param fleet the places that run it; null if the job is a single one
 * @param units units in which the sheet prints
 */
public record YokePlan(
    String job, YokeRoller roller, Pin pin, Fork fork, Duty duty, FleetDuty fleet, SheetUnits units)
    implements MountingPlan {

  /**
   * Refuses a plan with a part left out and a roller that does not go between the ears.
   *
   * @param job what the job is called on the sheet
   * @param roller the roller
   * @param pin the pin
   * @param fork the fork
   * @param duty what the roller has to do
   * @param fleet the places that run it; null if the job is a single one
   * @param units units in which the sheet prints
   * @throws InputException if a part is missing, or the parts do not go together
   */
  public YokePlan(
      String job, YokeRoller roller, Pin pin, Fork fork, Duty duty, FleetDuty fleet, SheetUnits units) {
    new Missing("yoke plan")
        .need(job, "job")
        .need(roller, "roller")
        .need(pin, "pin")
        .need(fork, "fork")
        .need(duty, "duty")
        .refuse();
    PlainText.name(job, "name of the job");
    Objects.requireNonNull(units, "units");
    goesBetween("ring width", roller.ringWidth(), fork.gap());
    goesBetween("width on the pin", roller.seatWidth(), fork.gap());
    if (pin.greaseBore().compareTo(roller.bore()) >= 0) {
      throw new InputException(
          "grease bore", pin.greaseBore().toString(), "below d = " + roller.bore(), "the bore is in the pin");
    }
    this.job = job;
    this.roller = roller;
    this.pin = pin;
    this.fork = fork;
    this.duty = duty;
    this.fleet = fleet;
    this.units = units;
    // Classes of bore and pin, holes and thickness of the ears meet here for the first time.
    ear().ifPresent(ear -> ear.atWork(duty.workingTemperature(), duty.workingTemperature()));
    rollerFit();
    strength();
    tilt();
  }

  private static void goesBetween(String name, Length width, Length gap) {
    if (width.compareTo(gap) > 0) {
      throw new InputException(name, width.toString(), "up to the gap of the fork, " + gap, "the roller runs between the ears");
    }
  }

  /**
   * Starts a plan.
   *
   * @param roller the description of the roller, ended or not
   * @return a builder
   */
  public static YokePlanBuilder of(YokeRollerBuilder roller) {
    return new YokePlanBuilder(roller);
  }

  @Override
  public YokePlan withUnits(SheetUnits sheetUnits) {
    Objects.requireNonNull(sheetUnits, "sheetUnits");
    return new YokePlan(job, roller, pin, fork, duty, fleet, sheetUnits);
  }

  private Fit fit(String bore) {
    return Fit.of(TolerancedSize.of(roller.bore(), bore), TolerancedSize.of(roller.bore(), pin.tolerance()));
  }

  /**
   * Fit of the pin in the ears.
   *
   * @return the fit by the tolerances of ears and pin
   * @throws InputException if a tolerance cannot be read or is not defined for the size
   */
  public Fit earFit() {
    return fit(fork.boreTolerance());
  }

  /**
   * Fit of the roller on the pin. Without inner ring its clearance is the radial internal clearance of the needles.
   *
   * @return the fit by the tolerances of roller and pin
   * @throws InputException if a tolerance cannot be read or is not defined for the size
   */
  public Fit rollerFit() {
    return fit(roller.boreTolerance());
  }

  /**
   * The pin in one ear as a press fit.
   *
   * @return the interference fit; empty if the fit is a clearance fit
   */
  public Optional<InterferenceFit> ear() {
    Fit fit = earFit();
    return fit.kind() == FitKind.CLEARANCE
        ? Optional.empty()
        : Optional.of(
            InterferenceFit.of(shaft(), fork.ear(), fit, fork.thickness()));
  }

  /**
   * The inner ring on the pin as a press fit. Its wall reaches to the inner raceway; if that is not known the ring counts as
   * endless, which presses hardest.
   *
   * @return the interference fit; empty for a clearance fit and without inner ring
   */
  public Optional<InterferenceFit> ringSeat() {
    Fit fit = rollerFit();
    return !roller.innerRing() || fit.kind() == FitKind.CLEARANCE
        ? Optional.empty()
        : Optional.of(InterferenceFit.of(shaft(), ringPart(), fit, roller.seatWidth()));
  }

  OuterPart ringPart() {
    Material steel = Material.of("100Cr6", "through-hardened");
    return roller.knownInterior()
        .map(RollerInterior::innerRaceway)
        .filter(raceway -> raceway.compareTo(roller.bore()) > 0)
        .map(raceway -> OuterPart.ring(steel, raceway))
        .orElseGet(() -> OuterPart.wide(steel));
  }

  InnerPart shaft() {
    return InnerPart.hollow(pin.material(), pin.greaseBore()).withRoughness(pin.roughness());
  }

  /**
   * All seats that hold the pin at the end of the pressing stroke.
   *
   * @return both ears and the inner ring, as far as they interfere; empty for a pin that slips in
   */
  public List<InterferenceFit> pressed() {
    List<InterferenceFit> seats = new ArrayList<>();
    ear().ifPresent(ear -> seats.addAll(List.of(ear, ear)));
    ringSeat().ifPresent(seats::add);
    return List.copyOf(seats);
  }

  /**
   * Force that presses the pin into all of them at the end of the stroke.
   *
   * @return from all at their loosest with the least friction to all at their tightest with the greatest; empty for a pin that
   *     slips in
   */
  public Optional<Band<Force>> pressForce() {
    return pressed().stream()
        .map(seat -> seat.pressInForce(fork.pressingFriction()))
        .reduce((one, other) -> new Band<>(one.least().plus(other.least()), one.greatest().plus(other.greatest())));
  }

  /**
   * How far the figures of that force hold.
   *
   * @return the worst of all seats
   */
  public InterferenceFit.Validity pressValidity() {
    return pressed().stream()
        .map(InterferenceFit::validity)
        .max(Comparator.naturalOrder())
        .orElse(InterferenceFit.Validity.ELASTIC);
  }

  /**
   * The pin under the greatest load of the duty.
   *
   * @return bending, shear and pressure in the ears
   */
  public PinStrength strength() {
    ShankSection section = new ShankSection(roller.bore(), pin.greaseBore(), pin.crossHole());
    return new PinStrength(section, duty.load(), fork.gap(), fork.thickness(), roller.seatWidth());
  }

  /**
   * Fatigue of the pin by the straight line of Goodman, if the duty states how the load changes and the pin what it endures.
   *
   * @return the margins; empty if one of them is not stated
   */
  public Optional<StudFatigue> pinFatigue() {
    return duty.statedLoadChange()
        .flatMap(change -> pin.knownEndurance().map(known ->
            strength().fatigue(change, known.notchFactor(), known.material(), StudFatigueCriterion.GOODMAN)));
  }

  /**
   * How far the pin can lean in the ears.
   *
   * @return the tilt by the clearance of the loosest pair over both ears and the gap, in the shop or at work
   */
  public SeatTilt pinTilt() {
    Length held = fork.gap().plus(fork.thickness().times(2));
    return SeatTilt.of(greatestPlay(earFit(), fork.ear().material()), roller.bore(), held).build();
  }

  /** Play of the loosest pair in the shop or at work, whichever is greater: a machine starts cold. */
  private Length greatestPlay(Fit fit, Material hole) {
    Length atWork = FitAtTemperature.uniform(fit, hole.thermalExpansion(), pin.material().thermalExpansion(),
        duty.workingTemperature()).maximumClearance();
    return fit.maximumClearance().compareTo(atWork) >= 0 ? fit.maximumClearance() : atWork;
  }

  /**
   * How far the roller can lean on its pin.
   *
   * @return the tilt by the clearance of the loosest pair, in the shop or at work; empty without inner ring, and if the ring
   *     is clamped
   */
  public Optional<SeatTilt> ringTilt() {
    return roller.innerRing() && !fork.ringClamped()
        ? Optional.of(SeatTilt.of(greatestPlay(rollerFit(), ringPart().material()), roller.bore(), roller.seatWidth()).build())
        : Optional.empty();
  }

  /**
   * Greatest lean of the roller, pin and ring leaning the same way. The pin bends alike on both sides and adds nothing.
   *
   * @return the tilt of the loosest pairs
   */
  public Angle tilt() {
    return ringTilt().map(SeatTilt::total).orElseGet(() -> new Angle(0)).plus(pinTilt().total());
  }

  @Override
  public CountedLean countedLean() {
    return CountedLean.of(this, tilt());
  }

  /**
   * What the greatest lean costs. A duty of several steps is taken at its mean load; a stated misalignment of the track is
   * not in the price.
   *
   * @return life ratio of the loosest pairs; empty if the inside of the roller is not known
   * @throws InputException if the lean or the inside of the roller is out of the range of the method
   */
  public Optional<LeanPrice> leanPrice() {
    return leanPrice(tilt());
  }

  Optional<LeanPrice> leanPrice(Angle lean) {
    Force load = duty.constant() ? duty.load() : meanLoad();
    return roller.knownInterior()
        .map(interior -> LeanPrice.of(
            interior, roller.ratings(), load, lean, roller.crownRadius(), roller.outsideDiameter()));
  }

  /**
   * The same job with other bores in the ears.
   *
   * @param boreTolerance tolerance class or limit deviations
   * @return the plan
   */
  public YokePlan withEars(String boreTolerance) {
    Objects.requireNonNull(boreTolerance, "boreTolerance");
    return new YokePlan(job, roller, pin, fork.withBore(boreTolerance), duty, fleet, units);
  }

  @Override
  public PlanLimits allLimits() {
    return PinLimits.of(this);
  }

  /**
   * Holes, grease and interval.
   *
   * @return how the roller is greased; empty for a roller lubricated for life
   */
  public Optional<PinGreasing> greasing() {
    return duty.statedFeed().map(feed -> PinGreasing.of(this, feed));
  }

  @Override
  public List<String> stops() {
    return YokeVerdict.stops(this).stream().map(Stop::text).toList();
  }

  @Override
  public PlanSummary summary() {
    return PlanSummary.of(this);
  }

  @Override
  public Sheet sheet() {
    return YokeSheet.of(this);
  }
}
