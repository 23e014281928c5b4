// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Conformity;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.MeasuredFit;
import holdfast.fits.MeasuredPart;
import holdfast.fits.MeasuringScheme;
import holdfast.fits.PartAcceptance;
import holdfast.fits.ThermalFitKernel;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.seats.Band;
import holdfast.seats.FitLimits;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.SeatTilt;
import holdfast.seats.YieldRule;
import holdfast.sheet.Section;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Both ears, pin and roller bore of a yoke plan as measured: whether they conform, the fits they make, and what follows. This
 * is the hold point before joining: nothing passes without readings, temperatures and the uncertainty of the gauges.
 *
 * @param plan the plan
 * @param firstEar the bore of the ear through which the pin enters, against the drawing
 * @param secondEar the bore of the other ear
 * @param pin the pin
 * @param rollerBore the bore of the roller, or the inscribed circle of its needles
 */
@Source(document = "ISO 14253-1:2017", locator = "decision rules", provenance = Provenance.MEMORY)
public record YokeAcceptance(
    YokePlan plan, PartAcceptance firstEar, PartAcceptance secondEar, PartAcceptance pin, PartAcceptance rollerBore)
    implements Traced, Serializable {
  // Refuses parts that were measured against another drawing than that of the plan.
  public YokeAcceptance {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(firstEar, "firstEar");
    Objects.requireNonNull(secondEar, "secondEar");
    Objects.requireNonNull(pin, "pin");
    Objects.requireNonNull(rollerBore, "rollerBore");
    PairAcceptance.sameDrawing("firstEar", firstEar, plan.earFit().hole());
    PairAcceptance.sameDrawing("secondEar", secondEar, plan.earFit().hole());
    PairAcceptance.sameDrawing("pin", pin, plan.earFit().shaft());
    PairAcceptance.sameDrawing("rollerBore", rollerBore, plan.rollerFit().hole());
  }

  /**
   * Judges parts that were measured after all of them and the gauges had come to one temperature. A temperature that a part
   * or gauge states itself goes before it; a gauge that states none counts as one of steel.
   *
   * @param plan the plan
   * @param firstEar what was measured at the ear through which the pin enters
   * @param secondEar what was measured at the other ear
   * @param pin what was measured at the pin
   * @param rollerBore what was measured at the bore of the roller
   * @param room the temperature of all
   * @return the acceptance; a proof of conformity needs three stations and two directions
   * @throws holdfast.quantity.InputException if readings are missing or cannot be
   */
  public static YokeAcceptance of(YokePlan plan, MeasuredPart firstEar, MeasuredPart secondEar, MeasuredPart pin,
      MeasuredPart rollerBore, Temperature room) {
    Objects.requireNonNull(firstEar, "firstEar");
    Objects.requireNonNull(secondEar, "secondEar");
    Objects.requireNonNull(pin, "pin");
    Objects.requireNonNull(rollerBore, "rollerBore");
    return of(plan, firstEar.allAt(room), secondEar.allAt(room), pin.allAt(room), rollerBore.allAt(room),
        MeasuringScheme.usual());
  }

  /**
   * Judges measured parts.
   *
   * @param plan the plan
   * @param firstEar what was measured at the ear through which the pin enters
   * @param secondEar what was measured at the other ear
   * @param pin what was measured at the pin
   * @param rollerBore what was measured at the bore of the roller, which counts as bearing steel
   * @param scheme readings that a proof of conformity needs
   * @return the acceptance
   * @throws holdfast.quantity.InputException if readings or temperatures are missing (one error names all of them) or cannot be
   */
  public static YokeAcceptance of(YokePlan plan, MeasuredPart firstEar, MeasuredPart secondEar, MeasuredPart pin,
      MeasuredPart rollerBore, MeasuringScheme scheme) {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(firstEar, "firstEar");
    Objects.requireNonNull(secondEar, "secondEar");
    Objects.requireNonNull(pin, "pin");
    Objects.requireNonNull(rollerBore, "rollerBore");
    Objects.requireNonNull(scheme, "scheme");
    new Missing("measured parts")
        .readings("first ear", firstEar)
        .readings("second ear", secondEar)
        .readings("pin", pin)
        .readings("roller bore", rollerBore)
        .refuse();
    Material fork = plan.fork().ear().material();
    return new YokeAcceptance(
        plan,
        new PartAcceptance("first ear", plan.earFit().hole(), firstEar, fork.thermalExpansion(), scheme),
        new PartAcceptance("second ear", plan.earFit().hole(), secondEar, fork.thermalExpansion(), scheme),
        new PartAcceptance("pin", plan.earFit().shaft(), pin, plan.pin().material().thermalExpansion(), scheme),
        new PartAcceptance("roller bore", plan.rollerFit().hole(), rollerBore,
            Material.of("100Cr6", "through-hardened").thermalExpansion(), scheme));
  }

  /**
   * The parts.
   *
   * @return both ears, pin and roller bore
   */
  public List<PartAcceptance> parts() {
    return List.of(firstEar, secondEar, pin, rollerBore);
  }

  /**
   * The pin in the ears.
   *
   * @return the fit in the first ear, then that in the second
   */
  public List<PairAcceptance> ears() {
    return List.of(new PairAcceptance(plan.earFit(), firstEar, pin), new PairAcceptance(plan.earFit(), secondEar, pin));
  }

  /**
   * The roller on the pin.
   *
   * @return the fit
   */
  public PairAcceptance ring() {
    return new PairAcceptance(plan.rollerFit(), rollerBore, pin);
  }

  private Stream<PairAcceptance> pairs() {
    return Stream.concat(ears().stream(), Stream.of(ring()));
  }

  /**
   * Whether all three fits lie within those of the plan. Parts that do not conform can still make such fits; they need a
   * concession.
   *
   * @return the verdict on the fits
   */
  public Conformity fitConformity() {
    return pairs().map(PairAcceptance::conformity).reduce(Conformity::and).orElseThrow();
  }

  /**
   * The verdict: what the hold point shows.
   *
   * @return not conforming if a part or a fit is shown not to conform or the parts must not be joined; conforming if all of
   *     them are shown to conform; else not proved either way
   */
  public Conformity verdict() {
    Conformity all = parts().stream().map(PartAcceptance::conformity).reduce(fitConformity(), Conformity::and);
    return stops().isEmpty() ? all : Conformity.DISPROVED;
  }

  /**
   * Whether the parts may be joined.
   *
   * @return true only if conformity is proved
   */
  public boolean accepted() {
    return verdict() == Conformity.PROVEN;
  }

  /**
   * The pin in each ear as a press fit.
   *
   * @return pressure, stresses and limits, the first ear first; empty for an ear with clearance everywhere, the uncertainty
   *     counted
   */
  public List<Optional<InterferenceFit>> presses() {
    InnerPart inner = plan.shaft();
    return ears().stream()
        .map(ear -> least(ear.fit()).mm() >= 0
            ? Optional.<InterferenceFit>empty()
            : Optional.of(InterferenceFit.of(
                inner, plan.fork().ear(), InterferenceBand.of(ear.fit()), plan.fork().thickness())))
        .toList();
  }

  /** Both ears and the inner ring, as far as they interfere. */
  List<InterferenceFit> pressed() {
    return Stream.concat(presses().stream(), Stream.of(ringPress())).flatMap(Optional::stream).toList();
  }

  private Optional<InterferenceFit> ringPress() {
    return least(ring().fit()).mm() >= 0 || !plan.roller().innerRing()
        ? Optional.empty()
        : Optional.of(InterferenceFit.of(
            plan.shaft(), plan.ringPart(), InterferenceBand.of(ring().fit()), plan.roller().seatWidth()));
  }

  /**
   * Force that presses the pin into both ears and the inner ring at the end of the stroke.
   *
   * @return the sum of all; empty without interference in any
   */
  public Optional<Band<Force>> pressForce() {
    return pressed().stream()
        .map(ear -> ear.pressing(plan.fork().pressingFriction()).pressIn())
        .reduce((one, other) -> new Band<>(one.least().plus(other.least()), one.greatest().plus(other.greatest())));
  }

  /**
   * Greatest lean of the roller, pin and ring leaning the same way: the looser ear over both, in the shop or at work, the
   * uncertainty counted.
   *
   * @return the tilt of these parts
   */
  public Angle tilt() {
    Material fork = plan.fork().ear().material();
    Length looser = ears().stream().map(ear -> greatest(ear.fit(), fork)).max(Length::compareTo).orElseThrow();
    Angle ofPin = lean(looser, plan.pinTilt());
    return plan.ringTilt().map(ring -> lean(greatest(ring().fit(), plan.ringPart().material()), ring).plus(ofPin)).orElse(ofPin);
  }

  private static Angle lean(Length clearance, SeatTilt planned) {
    return SeatTilt.of(clearance, planned.stud(), planned.engagement()).build().total();
  }

  private static Length least(MeasuredFit fit) {
    return fit.minimumClearance().minus(fit.uncertainty());
  }

  private Length greatest(MeasuredFit fit, Material hole) {
    double celsius = plan.duty().workingTemperature().celsius();
    Length atWork = new Length(ThermalFitKernel.clearance(fit.hole().range().upper().mm(), hole.thermalExpansion().perKelvin(),
        celsius, fit.shaft().range().lower().mm(), plan.pin().material().thermalExpansion().perKelvin(), celsius));
    Length inShop = fit.maximumClearance();
    return (inShop.compareTo(atWork) >= 0 ? inShop : atWork).plus(fit.uncertainty());
  }

  /**
   * What the lean of these parts costs in life.
   *
   * @return life ratio against the aligned roller; empty if the inside of the roller is not known
   */
  public Optional<LeanPrice> price() {
    return plan.leanPrice(tilt());
  }

  /**
   * Reasons not to join these parts, whatever the drawing permits.
   *
   * @return one sentence each; empty if there are none
   */
  public List<String> stops() {
    Stream<String> cracked =
        presses().stream()
            .flatMap(Optional::stream)
            .map(press -> press.limits(YieldRule.VON_MISES).housing())
            .filter(ear -> ear.brittle() && ear.exceeded())
            .map((FitLimits.PartLimit ear) -> "this pin would crack an ear of the " + plan.fork().name() + ": " + ear);
    boolean bound = !plan.roller().innerRing() && least(ring().fit()).mm() <= 0;
    return Stream.concat(
            cracked, bound ? Stream.of("the needles may bind on this pin: no clearance is shown") : Stream.empty())
        .distinct()
        .toList();
  }

  /**
   * Sizes of a pin that make all planned fits with these bores, measured as well as this pin.
   *
   * @return the extreme sizes that it may have; empty if no pin suits all
   */
  public Optional<LimitsOfSize> matchingPin() {
    return pairs()
        .map(PairAcceptance::matchingShaft)
        .reduce((one, other) -> one.flatMap(a -> other.flatMap(b -> PairAcceptance.zone(
            a.lower().compareTo(b.lower()) >= 0 ? a.lower() : b.lower(),
            a.upper().compareTo(b.upper()) <= 0 ? a.upper() : b.upper()))))
        .orElseThrow();
  }

  /**
   * What can be done about parts that do not pass.
   *
   * @return the advice; empty if the parts are accepted
   */
  public List<Remedy> remedies() {
    return Remedies.of(this);
  }

  /**
   * The parts as measured, for the sheet.
   *
   * @return the section
   */
  public Section section() {
    return YokeAcceptanceSection.of(this);
  }

  /** Sizes and margins of all parts, then the fits; the last step is the clearance of the roller on the pin. */
  @Override
  public Derivation explain() {
    Derivation.Builder all = Derivation.of(this.toString());
    parts().forEach(part -> all.steps(part.explain()));
    pairs().forEach(pair -> all.steps(pair.fit().explain()));
    return all.build();
  }

  @Override
  public List<Warning> warnings() {
    Set<Warning> warnings = new LinkedHashSet<>();
    parts().forEach(part -> warnings.addAll(part.warnings()));
    // What a fit says about its parts, the parts have said.
    pairs().flatMap(pair -> pair.fit().warnings().stream()).filter(warning -> warning.code().startsWith("kind-"))
        .forEach(warnings::add);
    presses().stream().flatMap(Optional::stream).forEach(press -> warnings.addAll(press.warnings()));
    stops().forEach(stop -> warnings.add(new Warning("must-not-be-joined", stop, AcceptanceEntries.DECISION)));
    return List.copyOf(warnings);
  }

  @Override
  public List<SourceRef> sources() {
    Set<SourceRef> sources = new LinkedHashSet<>(explain().sources());
    presses().stream().flatMap(Optional::stream).forEach(press -> sources.addAll(press.sources()));
    remedies().forEach(remedy -> sources.add(remedy.source()));
    return List.copyOf(sources);
  }

  /** Verdict, then what it rests on. */
  @Override
  public String toString() {
    return verdict() + " (" + restsOn() + ")";
  }

  String restsOn() {
    StringBuilder text = new StringBuilder();
    parts().forEach(part -> text.append(part.name()).append(' ').append(part.conformity()).append(", "));
    return text.append("fits ").append(fitConformity()).toString();
  }
}
