// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.contact.TrackCapacity;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Speed;
import holdfast.rollers.RollerSpeedKernel;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * A track roller as its maker states it.
 *
 * @param ratings load ratings, which say whether they hold for a rigid or a deflecting outer ring
 * @param outsideDiameter outside diameter D
 * @param crowned whether the outer ring is crowned
 * @param dynamicLimit greatest radial load while turning that the outer ring bears; null if not stated
 * @param staticLimit greatest radial load at standstill that the outer ring bears; null if not stated
 * @param studLimit greatest radial load that the stud or pin bears; null if not stated
 * @param trackCapacity load that a track of 40 HRC bears; null if not stated
 * @param speedLimit greatest speed; null if not stated
 */
public record TrackRoller(
    LoadRatings ratings,
    Length outsideDiameter,
    boolean crowned,
    Force dynamicLimit,
    Force staticLimit,
    Force studLimit,
    Force trackCapacity,
    RotationalSpeed speedLimit)
    implements Serializable {

  // Refuses ratings of bearings that are not track rollers.
  public TrackRoller {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    if (!ratings.outerRing().trackRoller()) {
      throw Refusal.of("outer ring", ratings.outerRing(), "RIGID or DEFLECTING", "use LoadRatings.trackRoller");
    }
    Check.positive(outsideDiameter.mm(), "outside diameter D", "mm", "a roller has a diameter");
    positive(dynamicLimit, "greatest radial load of the turning ring");
    positive(staticLimit, "greatest radial load of the ring at standstill");
    positive(studLimit, "greatest radial load of the stud");
    positive(trackCapacity, "track capacity at 40 HRC");
    if (speedLimit != null) {
      BasicLifeKernel.checkSpeed(speedLimit.rpm());
    }
  }

  /**
   * A track roller without further limits.
   *
   * @param ratings load ratings of a track roller
   * @param outsideDiameter outside diameter D
   * @param crowned whether the outer ring is crowned
   * @return the roller
   * @throws holdfast.quantity.InputException if the ratings are not those of a track roller
   */
  public static TrackRoller of(LoadRatings ratings, Length outsideDiameter, boolean crowned) {
    return new TrackRoller(ratings, outsideDiameter, crowned, null, null, null, null, null);
  }

  /**
   * The same roller with the limits of its outer ring.
   *
   * @param turning greatest radial load while turning
   * @param standing greatest radial load at standstill
   * @return the roller
   * @throws holdfast.quantity.InputException if a limit is not above zero
   */
  public TrackRoller withRingLimits(Force turning, Force standing) {
    Objects.requireNonNull(turning, "turning");
    Objects.requireNonNull(standing, "standing");
    return new TrackRoller(ratings, outsideDiameter, crowned, turning, standing, studLimit, trackCapacity, speedLimit);
  }

  /**
   * The same roller with the limit of its stud or pin.
   *
   * @param limit greatest radial load
   * @return the roller
   * @throws holdfast.quantity.InputException if the limit is not above zero
   */
  public TrackRoller withStudLimit(Force limit) {
    Objects.requireNonNull(limit, "limit");
    return new TrackRoller(ratings, outsideDiameter, crowned, dynamicLimit, staticLimit, limit, trackCapacity, speedLimit);
  }

  /**
   * The same roller with the capacity of a track of 40 HRC.
   *
   * @param at40Hrc load that such a track bears
   * @return the roller
   * @throws holdfast.quantity.InputException if the capacity is not above zero
   */
  public TrackRoller withTrackCapacity(Force at40Hrc) {
    Objects.requireNonNull(at40Hrc, "at40Hrc");
    return new TrackRoller(ratings, outsideDiameter, crowned, dynamicLimit, staticLimit, studLimit, at40Hrc, speedLimit);
  }

  /**
   * The same roller with a greatest speed.
   *
   * @param limit greatest speed
   * @return the roller
   * @throws holdfast.quantity.InputException if the speed is not above zero
   */
  public TrackRoller withSpeedLimit(RotationalSpeed limit) {
    Objects.requireNonNull(limit, "limit");
    return new TrackRoller(ratings, outsideDiameter, crowned, dynamicLimit, staticLimit, studLimit, trackCapacity, limit);
  }

  /**
   * Speed of the outer ring on a track.
   *
   * @param trackSpeed speed along the track, over 0
   * @return n
   * @throws holdfast.quantity.InputException if the speed is not above zero
   */
  public RotationalSpeed speedOnTrack(Speed trackSpeed) {
    Objects.requireNonNull(trackSpeed, "trackSpeed");
    Check.positive(trackSpeed.mmPerS(), "track speed v", "mm/s", "a roller that stands still is checked statically");
    return new RotationalSpeed(RollerSpeedKernel.onTrack(trackSpeed.mmPerS(), outsideDiameter.mm()));
  }

  /**
   * Speed of the outer ring on a cam.
   *
   * @param camSpeed speed of the cam, over 0
   * @param camDiameter diameter of the cam where the roller runs, over 0
   * @return n
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public RotationalSpeed speedOnCam(RotationalSpeed camSpeed, Length camDiameter) {
    Objects.requireNonNull(camSpeed, "camSpeed");
    Objects.requireNonNull(camDiameter, "camDiameter");
    BasicLifeKernel.checkSpeed(camSpeed.rpm());
    return new RotationalSpeed(RollerSpeedKernel.onCam(camSpeed.rpm(), camDiameter.mm(), outsideDiameter.mm()));
  }

  /**
   * Life under a radial load; the outer ring turns, the load stands, which the life equation counts like the usual
   * turning inner ring.
   *
   * @param load radial load, over 0
   * @return L10
   * @throws holdfast.quantity.InputException if the load is not above zero
   */
  public BasicLife life(Force load) {
    Objects.requireNonNull(load, "load");
    return RatingLife.basic(ratings, load);
  }

  /**
   * Least load for rolling without sliding.
   *
   * @return 0.0167 C0
   */
  public Force minimumLoad() {
    return new Force(MinimumLoadKernel.trackRoller(ratings.staticRating().newton()));
  }

  /**
   * Where the least load comes from.
   *
   * @return document, locator and provenance
   */
  public static SourceRef minimumLoadSource() {
    return BearingSources.LEAST_LOAD;
  }

  /**
   * What a track of a hardness bears.
   *
   * @param hrc hardness in HRC, from 20 to 58
   * @return the load, if the capacity at 40 HRC is stated
   * @throws holdfast.quantity.InputException if the hardness is outside the range
   */
  public Optional<TrackCapacity> trackCapacityAt(double hrc) {
    return Optional.ofNullable(trackCapacity).map(capacity -> new TrackCapacity(capacity, hrc, crowned));
  }

  private static void positive(Force limit, String name) {
    if (limit != null) {
      Check.positive(limit.newton(), name, "N", "a limit is a force above zero; leave it out if it is not stated");
    }
  }
}
