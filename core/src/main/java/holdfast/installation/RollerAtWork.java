// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.bearings.Contamination;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.Lubrication;
import holdfast.bearings.OuterRing;
import holdfast.bearings.PermissibleLoad;
import holdfast.bearings.RatedLife;
import holdfast.bearings.RatingLife;
import holdfast.bearings.TrackRoller;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.rollers.SpeedLimit;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A roller under its duty, whatever holds it: life, lubricating film, permissible loads and speed.
 *
 * @param roller the roller
 * @param duty what it has to do
 */
public record RollerAtWork(MountedRoller roller, Duty duty) implements Serializable {
  /** Longest time for which a roller is said to run, in operating hours: eleven years and a half without a stop. */
  public static final OperatingTime LONGEST = new OperatingTime(100_000);

  /** Least printed ratio of the rating on a flat track to the rating in a housing, dimensionless. */
  public static final double LEAST_RING_RATIO = 0.672;

  /** Greatest printed ratio of the rating on a flat track to the rating in a housing, dimensionless. */
  public static final double GREATEST_RING_RATIO = 0.873;

  /** Least and greatest printed ratio of the static ratings. */
  static final double LEAST_STATIC_RATIO = 0.605;

  static final double GREATEST_STATIC_RATIO = 0.871;

  static final SourceRef WEAR = SourceRef.commonPractice("wear, corrosion and seals end a roller before fatigue after 100000 h");
  static final SourceRef RING_PAIRS = SourceRef.derived("ratio of printed ratings of like roller sets, in a housing and on a flat"
      + " track: Rolling bearings catalogue 17000 EN, pages 676 and 935 to 985");
  static final SourceRef MAKER = SourceRef.commonPractice("as stated by the maker of the roller");

  // Refuses to work without roller or duty.
  public RollerAtWork {
    Objects.requireNonNull(roller, "roller");
    Objects.requireNonNull(duty, "duty");
  }

  /**
   * The roller with the limits that its maker states.
   *
   * @return the roller as its calculation takes it
   */
  public TrackRoller trackRoller() {
    MakersLimits limits = roller.limits();
    return new TrackRoller(roller.ratings(), roller.outsideDiameter(), roller.crowned(), limits.turning(), limits.standing(),
        limits.stud(), limits.trackAt40Hrc(), limits.speed());
  }

  /**
   * The loads that ratings, maker and track permit.
   *
   * @return all of them and the one that governs
   */
  public PermissibleLoad limits() {
    return PermissibleLoad.of(
        trackRoller(), duty.wantedLife(), duty.reliability(), duty.speed(), duty.staticSafety(), duty.trackHardness());
  }

  /**
   * Greatest speed: the maker's, or else by the published factor of the rolling elements.
   *
   * @return the limit for grease
   */
  public RotationalSpeed greatestSpeed() {
    return roller.limits().statedSpeed().orElseGet(() -> speedLimit().limit());
  }

  List<SourceRef> speedSources() {
    return roller.limits().statedSpeed().isPresent() ? List.of(MAKER) : speedLimit().sources();
  }

  private SpeedLimit speedLimit() {
    SpeedLimit open = SpeedLimit.greased(roller.kind(), roller.seatDiameter());
    return roller.sealed() ? open.withSeals() : open;
  }

  /**
   * Constant load with the same basic life as the duty.
   *
   * @return the load of a duty with one step
   */
  public Force meanLoad() {
    return duty.spectrum().meanLoad(roller.ratings().family());
  }

  /**
   * Life of the roller under the duty without lubrication and contamination.
   *
   * @return basic rating life under the mean load with the wanted reliability
   */
  public BasicLife life() {
    return RatingLife.basic(roller.ratings(), meanLoad(), duty.reliability());
  }

  /**
   * How clean the lubricant stays: as stated, or as dust of the place and seals allow.
   *
   * @return the contamination that the life counts
   */
  public Contamination contamination() {
    return new DirtReading(roller, duty).counted();
  }

  /**
   * Modified rating life: lubrication and contamination counted.
   *
   * @return the life with the wanted reliability
   */
  public RatedLife modifiedLife() {
    return modifiedLife(contamination());
  }

  RatedLife modifiedLife(Contamination contamination) {
    return modifiedLife(roller.ratings(), contamination);
  }

  private RatedLife modifiedLife(LoadRatings ratings, Contamination contamination) {
    if (!duty.constant()) {
      return RatingLife.modified(ratings, duty.spectrum(), duty.reliability(), duty.viscosity(),
          roller.meanDiameter(), contamination);
    }
    LoadSpectrum.Step step = duty.spectrum().steps().get(0);
    return RatingLife.modified(ratings, step.load(), duty.reliability(), lubrication(), contamination);
  }

  /**
   * Modified rating life where it is defined: below κ = 0.1 ISO 281 has no factor, and a slow roller is there soon.
   *
   * @return the life; empty if the method does not cover the duty
   */
  public Optional<RatedLife> knownModifiedLife() {
    try {
      return Optional.of(modifiedLife());
    } catch (InputException outside) {
      return Optional.empty();
    }
  }

  /** Why there is no modified life; empty if there is one. */
  String noModifiedLife() {
    try {
      modifiedLife();
      return "";
    } catch (InputException outside) {
      return outside.getMessage();
    }
  }

  /**
   * The lubricating film at the mean speed.
   *
   * @return lubrication with its viscosity ratio κ
   */
  public Lubrication lubrication() {
    return Lubrication.of(duty.viscosity(), duty.speed(), roller.meanDiameter());
  }

  /**
   * Hours of the modified life of the aligned roller with the wanted reliability, as rolling fatigue alone would allow.
   *
   * @return operating time of the duty
   */
  public OperatingTime fatigueHours() {
    return modifiedLife().hours(duty.speed());
  }

  /**
   * Life of the aligned roller where the rating is for a rigid ring but the ring of a track roller bends: the printed ratings
   * of one roller set, in a housing and on a flat track, differ by {@link #LEAST_RING_RATIO} to {@link #GREATEST_RING_RATIO} of
   * C.
   *
   * @return least and greatest hours; empty if the rating counts the bending already
   */
  public Optional<List<OperatingTime>> hoursOfBendingRing() {
    if (roller.ratings().outerRing() != OuterRing.RIGID) {
      return Optional.empty();
    }
    return Optional.of(List.of(onTrack(LEAST_RING_RATIO, LEAST_STATIC_RATIO),
        onTrack(GREATEST_RING_RATIO, GREATEST_STATIC_RATIO)));
  }

  /** The whole duty again with lower ratings; a fatigue load limit follows the static rating. */
  private OperatingTime onTrack(double dynamic, double standing) {
    LoadRatings rigid = roller.ratings();
    LoadRatings track =
        new LoadRatings(rigid.family(), rigid.dynamic().times(dynamic), rigid.staticRating().times(standing),
            rigid.knownFatigueLimit().map(limit -> limit.times(standing)).orElse(null), OuterRing.DEFLECTING);
    return modifiedLife(track, contamination()).hours(duty.speed());
  }

  static OperatingTime cut(OperatingTime hours) {
    return hours.compareTo(LONGEST) > 0 ? LONGEST : hours;
  }
}
