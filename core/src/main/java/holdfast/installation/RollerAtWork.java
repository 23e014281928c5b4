// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.bearings.Contamination;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.Lubrication;
import holdfast.bearings.PermissibleLoad;
import holdfast.bearings.RatedLife;
import holdfast.bearings.RatingLife;
import holdfast.bearings.TrackRoller;
import holdfast.quantity.Force;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.rollers.SpeedLimit;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A roller under its duty, whatever holds it: life, lubricating film, permissible loads and speed.
 *
 * @param roller the roller
 * @param duty what it has to do
 */
public record RollerAtWork(MountedRoller roller, Duty duty) implements Serializable {
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
   * Modified rating life: lubrication and contamination counted.
   *
   * @return the life with the wanted reliability
   */
  public RatedLife modifiedLife() {
    Contamination contamination = Contamination.of(duty.contamination());
    if (!duty.constant()) {
      return RatingLife.modified(roller.ratings(), duty.spectrum(), duty.reliability(), duty.viscosity(),
          roller.meanDiameter(), contamination);
    }
    LoadSpectrum.Step step = duty.spectrum().steps().get(0);
    return RatingLife.modified(roller.ratings(), step.load(), duty.reliability(), lubrication(), contamination);
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
   * Hours after which the roller is replaced: the modified life with the wanted reliability.
   *
   * @return operating time of the duty
   */
  public OperatingTime replaceAfter() {
    return modifiedLife().hours(duty.speed());
  }
}
