// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Conformity;
import holdfast.fits.Fit;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.MeasuredFit;
import holdfast.fits.MeasuredPart;
import holdfast.fits.MeasuringScheme;
import holdfast.fits.PartAcceptance;
import holdfast.quantity.InputException;
import holdfast.quantity.Temperature;
import holdfast.seats.FitLimits;
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

/**
 * Bore and stud of a plan as measured: whether they conform, the fit they make, and what follows for the work. This is the
 * hold point before joining: nothing passes without readings, temperatures and the uncertainty of the gauges.
 *
 * @param plan the plan
 * @param bore the bore against its drawing
 * @param stud the stud against its drawing
 */
@Source(document = "ISO 14253-1:2017", locator = "decision rules", provenance = Provenance.MEMORY)
public record Acceptance(InstallationPlan plan, PartAcceptance bore, PartAcceptance stud) implements Traced, Serializable {
  private static final SourceRef DECISION = SourceRef.memory("ISO 14253-1:2017", "decision rules");

  // Refuses parts that were measured against another drawing than that of the plan.
  public Acceptance {
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(stud, "stud");
    PairAcceptance.sameDrawing("bore", bore, plan.fit().hole());
    PairAcceptance.sameDrawing("stud", stud, plan.fit().shaft());
  }

  /**
   * Judges measured parts; a proof of conformity needs three stations and two directions.
   *
   * @param plan the plan
   * @param bore what was measured at the bore
   * @param stud what was measured at the stud
   * @return the acceptance
   * @throws InputException if readings or temperatures are missing (one error names all of them) or cannot be
   */
  public static Acceptance of(InstallationPlan plan, MeasuredPart bore, MeasuredPart stud) {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(stud, "stud");
    return of(plan, bore, stud, MeasuringScheme.usual());
  }

  /**
   * Judges parts that were measured after bore, stud and gauges had come to one temperature. A temperature that a part or
   * gauge states itself goes before it; a gauge that states none counts as one of steel.
   *
   * @param plan the plan
   * @param bore what was measured at the bore
   * @param stud what was measured at the stud
   * @param room the temperature of both and of the gauges
   * @return the acceptance
   * @throws InputException if readings are missing or cannot be
   */
  public static Acceptance of(InstallationPlan plan, MeasuredPart bore, MeasuredPart stud, Temperature room) {
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(stud, "stud");
    return of(plan, bore.allAt(room), stud.allAt(room));
  }

  /**
   * Judges measured parts.
   *
   * @param plan the plan
   * @param bore what was measured at the bore
   * @param stud what was measured at the stud
   * @param scheme readings that a proof of conformity needs
   * @return the acceptance
   * @throws InputException if readings or temperatures are missing (one error names all of them) or cannot be
   */
  public static Acceptance of(InstallationPlan plan, MeasuredPart bore, MeasuredPart stud, MeasuringScheme scheme) {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(scheme, "scheme");
    new Missing("measured parts").readings("bore", bore).readings("stud", stud).refuse();
    Fit fit = plan.fit();
    return new Acceptance(
        plan,
        new PartAcceptance("bore", fit.hole(), bore, plan.member().body().material().thermalExpansion(), scheme),
        new PartAcceptance("stud", fit.shaft(), stud, plan.roller().material().thermalExpansion(), scheme));
  }

  PairAcceptance pair() {
    return new PairAcceptance(plan.fit(), bore, stud);
  }

  /**
   * The fit that the parts make at 20 °C.
   *
   * @return clearances from the readings, with uncertainty
   */
  public MeasuredFit fit() {
    return pair().fit();
  }

  /**
   * Whether the fit lies between the least and the greatest clearance of the plan. Parts that do not conform can still make
   * such a fit; it needs a concession.
   *
   * @return the verdict on the fit, with the uncertainty of the clearance as guard band
   */
  public Conformity fitConformity() {
    return pair().conformity();
  }

  /**
   * The verdict: what the hold point shows.
   *
   * @return not conforming if a part, or the fit, is shown not to conform or the pair must not be joined; conforming if both
   *     parts and the fit are shown to conform; else not proved either way
   */
  public Conformity verdict() {
    Conformity parts = bore.conformity().and(stud.conformity()).and(fitConformity());
    return stops().isEmpty() ? parts : Conformity.DISPROVED;
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
   * What follows from the fit as measured.
   *
   * @return press force, pressure, safety, holding, tilt and the state at work
   */
  public MeasuredSeat seat() {
    return new MeasuredSeat(plan, fit());
  }

  /**
   * What this pair costs in life.
   *
   * @return life ratios against the aligned roller; empty if the inside of the roller is not known
   */
  public Optional<SeatPrice> price() {
    return plan.roller().knownInterior().map(interior -> SeatPrice.of(plan, interior).fit(fit()).build());
  }

  /**
   * Reasons not to join this pair, whatever the drawing permits.
   *
   * @return one sentence each; empty if there are none
   */
  public List<String> stops() {
    Optional<FitLimits> limits = seat().limits();
    return limits.isPresent() && limits.get().housing().brittle() && limits.get().housing().exceeded()
        ? List.of("this pair would crack the " + plan.member().name() + ": " + limits.get().housing())
        : List.of();
  }

  /**
   * Sizes of a stud that make the planned fit in this bore, measured as well as this stud.
   *
   * @return the extreme sizes that it may have; empty if this bore is too uneven for any
   */
  public Optional<LimitsOfSize> matchingStud() {
    return pair().matchingShaft();
  }

  /**
   * Sizes of a bore that make the planned fit with this stud, measured as well as this bore.
   *
   * @return the extreme sizes that it may have; empty if this stud is too uneven for any
   */
  public Optional<LimitsOfSize> matchingBore() {
    return pair().matchingHole();
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
    return AcceptanceSection.of(this);
  }

  /** Sizes and margins of both parts, then the fit; the last step is the clearance of the mean sizes. */
  @Override
  public Derivation explain() {
    return Derivation.of(this.toString()).steps(bore.explain()).steps(stud.explain()).steps(fit().explain()).build();
  }

  @Override
  public List<Warning> warnings() {
    Set<Warning> warnings = new LinkedHashSet<>(bore.warnings());
    warnings.addAll(stud.warnings());
    // What the fit says about its parts, the parts have said.
    fit().warnings().stream().filter(warning -> warning.code().startsWith("kind-")).forEach(warnings::add);
    MeasuredSeat seat = seat();
    seat.press().ifPresent(press -> warnings.addAll(press.warnings()));
    seat.pressAtWork().ifPresent(work -> warnings.addAll(work.warnings()));
    warnings.addAll(seat.tilt().warnings());
    stops().forEach(stop -> warnings.add(new Warning("must-not-be-joined", stop, DECISION)));
    return List.copyOf(warnings);
  }

  @Override
  public List<SourceRef> sources() {
    Set<SourceRef> sources = new LinkedHashSet<>(explain().sources());
    seat().press().ifPresent(press -> sources.addAll(press.sources()));
    sources.addAll(seat().tilt().sources());
    remedies().forEach(remedy -> sources.add(remedy.source()));
    return List.copyOf(sources);
  }

  /** Verdict, then the fit as measured. */
  @Override
  public String toString() {
    return verdict() + " (bore " + bore.conformity() + ", stud " + stud.conformity() + ", fit " + fitConformity() + "): " + fit();
  }
}
