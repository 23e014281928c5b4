// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.RatingLife;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
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
 * What the play of a stud in its seat can cost in life: play, face and bending lean the stud; the rollers see the lean, or
 * what a crowned ring leaves of it; the load goes to the ends of the rollers; life falls. The figure to use is the life ratio
 * against the same bearing under the same load without tilt. The absolute reference life beside it is recalled (memory).
 *
 * <p>The lean taken is the greater of two: with the nut tight, where the clamped face sets it, and with the play used up,
 * where the stud touches both mouths of the bore because the nut came loose or the face does not hold. All contributions
 * lean the same way, in the plane of the load: the load on an overhung roller leans its stud in that plane.
 *
 * <p>Rating basis: the load ratings are used as the maker states them, whether for a rigid or for a deflecting outer ring;
 * each life ratio is independent of them, because the rating of every contact is proportional to C. The load distribution
 * is that of rigid rings in both cases. The elastic bending of the outer ring on its track, which changes the distribution
 * over the rollers, is not covered, and neither is its ovality over the width: a warning says so.
 *
 * <p>No print at hand states a life factor for a tilted stud roller, so the ratio is a computation without outside value;
 * limits of misalignment are published, and the tilts are compared with them.
 *
 * @param interior inside of the roller
 * @param bearing the roller, with the motion of its rings
 * @param load radial load, over 0
 * @param speed speed of the outer ring, over 0
 * @param pairs the pairs of stud and bore, the loosest first
 * @param play how the clearances were found; null if they were given
 */
public record SeatPrice(
    RollerInterior interior, TiltedBearing bearing, Force load, RotationalSpeed speed, List<PricedPair> pairs, Play play)
    implements Traced, Serializable {

  // Keeps an unmodifiable copy.
  public SeatPrice {
    Objects.requireNonNull(interior, "interior");
    Objects.requireNonNull(bearing, "bearing");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(pairs, "pairs");
    if (pairs.isEmpty()) {
      throw new InputException("pairs of stud and bore", "none", "at least one", "the loosest of them governs");
    }
    pairs = List.copyOf(pairs);
  }

  /**
   * How clearances were found.
   *
   * @param derivation their derivation
   * @param warnings warnings that go with it
   */
  public record Play(Derivation derivation, List<Warning> warnings) implements Serializable {
    // Keeps an unmodifiable copy.
    public Play {
      Objects.requireNonNull(derivation, "derivation");
      Objects.requireNonNull(warnings, "warnings");
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * Starts with a roller.
   *
   * @param interior inside of the roller
   * @param ratings load ratings as the maker states them
   * @return a builder; the inner ring stands still and the outer ring rotates until other motions are stated
   */
  public static SeatPriceBuilder of(RollerInterior interior, LoadRatings ratings) {
    Objects.requireNonNull(interior, "interior");
    Objects.requireNonNull(ratings, "ratings");
    return new SeatPriceBuilder(interior, ratings);
  }

  /**
   * Starts with all that a plan knows: fit at 20 °C or at work, whichever is looser, seat, load, speed, ring, the slope of
   * the stud by bending, and the
   * squareness of the face if it is stated. A duty of several steps is taken at its mean load; a stated misalignment of the
   * track is not in the price.
   *
   * @param plan the plan
   * @param interior inside of its roller
   * @return a builder
   */
  public static SeatPriceBuilder of(InstallationPlan plan, RollerInterior interior) {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(interior, "interior");
    StudRoller roller = plan.roller();
    SeatPriceBuilder price = of(interior, roller.ratings())
        .duty(plan.duty().constant() ? plan.duty().load() : plan.meanLoad(), plan.duty().speed())
        .seat(roller.studDiameter(), plan.member().seatLength())
        .ring(roller.outsideDiameter(), roller.crownRadius())
        .bending(plan.deflection().tilt());
    // The looser of both: a machine starts at the temperature of the shop.
    boolean looserAtWork = plan.fitAtWork().maximumClearance().compareTo(plan.fit().maximumClearance()) > 0;
    if (looserAtWork) {
      price.fit(plan.fitAtWork());
    } else {
      price.fit(plan.fit());
    }
    plan.member().statedRunOut().ifPresent(runOut -> price.face(runOut, roller.flangeDiameter()));
    return price;
  }

  /**
   * The pair that costs most: the loosest.
   *
   * @return the first pair
   */
  public PricedPair loosest() {
    return pairs.get(0);
  }

  /**
   * The pair that costs least: the tightest, or the only one if one clearance was given.
   *
   * @return the last pair
   */
  public PricedPair tightest() {
    return pairs.get(pairs.size() - 1);
  }

  /**
   * The pair in the middle.
   *
   * @return the pair of mean clearance; empty if one clearance was given
   */
  public Optional<PricedPair> mean() {
    return pairs.size() == 3 ? Optional.of(pairs.get(1)) : Optional.empty();
  }

  /**
   * Life ratio of the loosest pair at its greatest lean.
   *
   * @return life over the life of the aligned bearing
   */
  public double lifeRatio() {
    return loosest().lifeRatio();
  }

  /**
   * Basic rating life of the aligned roller, on which the ratio may be put.
   *
   * @return L10 of the ratings
   */
  public BasicLife alignedLife() {
    return RatingLife.basic(bearing.ratings(), load);
  }

  /**
   * Basic rating life of the aligned roller times the life ratio of a pair.
   *
   * @param pair one of the pairs
   * @return hours
   */
  public OperatingTime hours(PricedPair pair) {
    Objects.requireNonNull(pair, "pair");
    return alignedLife().hours(speed).times(pair.lifeRatio());
  }

  /**
   * Leans and tilts of all pairs against the published limits of misalignment: of track rollers with a flat ring (lean of
   * the stud against the track), of needle rollers and of profiled cylindrical rollers (tilt between the raceways), at the
   * load in question.
   *
   * @return the comparisons, pair by pair
   */
  public List<MisalignmentCheck> comparison() {
    double share = load.ratio(bearing.ratings().dynamic());
    return pairs.stream().flatMap(pair -> MisalignmentCheck.of(pair, share).stream()).toList();
  }

  @Override
  public Derivation explain() {
    return SeatPriceNotes.explain(this);
  }

  @Override
  public List<SourceRef> sources() {
    Set<SourceRef> sources = new LinkedHashSet<>(explain().sources());
    sources.addAll(alignedLife().sources());
    comparison().forEach(check -> sources.add(check.limit().source()));
    return List.copyOf(sources);
  }

  @Override
  public List<Warning> warnings() {
    return SeatPriceNotes.warnings(this);
  }

  /** The pairs, one a line. */
  @Override
  public String toString() {
    return String.join("\n", pairs.stream().map(PricedPair::toString).toList());
  }
}
