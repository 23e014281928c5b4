// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.PermissibleLoad;
import holdfast.failures.Margin;
import holdfast.failures.MisalignmentKind;
import holdfast.failures.MisalignmentLimit;
import holdfast.installation.LimitCheck.Bound;
import holdfast.installation.LimitCheck.Consequence;
import holdfast.quantity.Angle;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.quantity.Quantity;
import holdfast.seats.StudStrength;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * All limits of a plan: fatigue, static, ring, stud, track, speed, temperature, least load and tilt.
 *
 * @param checks the limits that are known
 * @param notKnown what is not among them and why
 */
public record PlanLimits(List<LimitCheck> checks, List<Warning> notKnown) implements Traced, Serializable {
  private static final SourceRef MAKER = SourceRef.commonPractice("as stated by the maker of the roller");
  private static final SourceRef RATIO = SourceRef.derived("permitted over demanded, or demanded over least; the least governs");

  // Keeps unmodifiable copies.
  public PlanLimits {
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(notKnown, "notKnown");
    if (checks.isEmpty()) {
      throw new InputException("limits of a plan", "none", "at least one", "one of them governs");
    }
    checks = List.copyOf(checks);
    notKnown = List.copyOf(notKnown);
  }

  static PlanLimits of(InstallationPlan plan) {
    List<LimitCheck> checks = new ArrayList<>();
    loads(checks, plan);
    stud(checks, plan);
    add(checks, "speed", plan.duty().greatestSpeed(), Bound.AT_MOST, plan.greatestSpeed(), Consequence.STOP, Margin.SPEED,
        plan.speedSources());
    add(checks, "least load for rolling", plan.duty().leastLoad(), Bound.AT_LEAST, plan.trackRoller().minimumLoad(),
        Consequence.WARNING, Margin.MINIMUM_LOAD, plan.limits().sources());
    temperature(checks, plan);
    List<Warning> notKnown = new ArrayList<>(plan.limits().warnings());
    tilt(checks, notKnown, plan);
    return new PlanLimits(checks, notKnown);
  }

  /** The rating life counts the mean load of the duty; everything else the greatest. */
  private static void loads(List<LimitCheck> checks, InstallationPlan plan) {
    for (PermissibleLoad.Limit limit : plan.limits().limits()) {
      boolean fatigue = limit.name().equals("fatigue");
      Margin reading =
          switch (limit.name()) {
            case "static" -> Margin.STATIC_LOAD;
            case "outer ring, turning", "outer ring, standing" -> Margin.RING_LOAD;
            case "stud" -> Margin.STUD_BENDING;
            case "track" -> Margin.TRACK_LOAD;
            default -> Margin.LIFE;
          };
      // The modified life judges fatigue; the basic one and the advice of half of C inform.
      boolean informs = fatigue || limit.name().equals("half of C");
      add(checks, limit.name(), fatigue ? plan.meanLoad() : plan.duty().load(), Bound.AT_MOST, limit.load(),
          informs ? Consequence.WARNING : Consequence.STOP, reading, List.of(limit.source()));
    }
  }

  private static void stud(List<LimitCheck> checks, InstallationPlan plan) {
    StudStrength stud = plan.stud();
    plan.roller()
        .material()
        .yieldStrength()
        .ifPresent(
            yield -> {
              List<SourceRef> sources = new ArrayList<>(stud.sources());
              sources.add(plan.roller().material().source());
              add(checks, "stud at the mouth of the seat", stud.equivalent(), Bound.AT_MOST, yield, Consequence.STOP,
                  Margin.STUD_BENDING, sources);
            });
  }

  private static void temperature(List<LimitCheck> checks, InstallationPlan plan) {
    add(checks, "temperature, hot", plan.duty().workingTemperature(), Bound.AT_MOST, plan.roller().hottest(),
        Consequence.STOP, Margin.TEMPERATURE, List.of(MAKER));
    add(checks, "temperature, cold", plan.duty().workingTemperature(), Bound.AT_LEAST, plan.roller().coldest(),
        Consequence.STOP, Margin.TEMPERATURE, List.of(MAKER));
  }

  /** A flat ring fails above its limit; for a crowned one the trade states none. */
  private static void tilt(List<LimitCheck> checks, List<Warning> notKnown, InstallationPlan plan) {
    Angle tilt = plan.tilt().total().plus(plan.duty().statedTrackMisalignment().orElse(new Angle(0)));
    Optional<MisalignmentLimit> limit = MisalignmentLimit.narrowest(MisalignmentKind.TRACK_ROLLER_FLAT, 0);
    if (limit.isEmpty()) {
      return;
    }
    SourceRef source = limit.get().source();
    if (plan.roller().crowned()) {
      notKnown.add(new Warning("crowned-ring-tilt", "the published limit of misalignment, " + limit.get().limit()
          + ", is for flat rings; a crowned ring takes more, and no number is published", source));
      return;
    }
    boolean known = plan.member().statedRunOut().isPresent() || plan.seat().isPresent();
    add(checks, "tilt of the roller", tilt, Bound.AT_MOST, limit.get().limit(),
        known ? Consequence.STOP : Consequence.WARNING, Margin.TILT, List.of(source));
    if (!known) {
      notKnown.add(new Warning("face-not-stated", "the run-out of the clamped face is not stated: the tilt counts the whole"
          + " clearance of the fit, which a square face would take away", source));
    }
    if (plan.duty().statedTrackMisalignment().isEmpty()) {
      notKnown.add(new Warning("track-misalignment-not-stated",
          "the misalignment of the track is not stated: it adds to the tilt of the roller", source));
    }
  }

  private static void add(List<LimitCheck> checks, String name, Quantity<?> demand, Bound bound, Quantity<?> permitted,
      Consequence consequence, Margin reading, List<SourceRef> sources) {
    checks.add(new LimitCheck(name, demand, bound, permitted, consequence, reading, sources));
  }

  /**
   * The limit with the least margin.
   *
   * @return the limit that governs
   */
  public LimitCheck governing() {
    return checks.stream()
        .filter(check -> check.margin().isPresent())
        .min(Comparator.comparingDouble(check -> check.margin().getAsDouble()))
        .orElseThrow();
  }

  /**
   * The limits that are exceeded.
   *
   * @return in their order; empty if all hold
   */
  public List<LimitCheck> exceeded() {
    return checks.stream().filter(check -> !check.holds()).toList();
  }

  /** Margin by margin; the last step is the least. */
  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Limits and margins");
    for (LimitCheck check : checks) {
      check
          .margin()
          .ifPresent(
              margin ->
                  steps.step("m", check.name(),
                      check.bound() == Bound.AT_MOST ? "permitted / demanded" : "demanded / least", margin, "",
                      check.sources().get(0), "demanded " + check.demand(), "permitted " + check.permitted()));
    }
    return steps
        .step("m", "governing: " + governing().name(), "least of the margins", governing().margin().getAsDouble(), "", RATIO)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(notKnown);
    for (LimitCheck check : exceeded()) {
      if (check.consequence() == Consequence.WARNING) {
        warnings.add(new Warning("limit-exceeded", "the limit '" + check.name() + "' is exceeded: " + check.demand()
            + (check.bound() == Bound.AT_MOST ? ", at most " : ", at least ") + check.permitted(), check.sources().get(0)));
      }
    }
    return List.copyOf(warnings);
  }

  /** For example {@code "governed by fatigue, margin 1.18"}. */
  @Override
  public String toString() {
    return "governed by " + governing().name() + ", margin "
        + Numbers.significant(governing().margin().getAsDouble(), 3);
  }
}
