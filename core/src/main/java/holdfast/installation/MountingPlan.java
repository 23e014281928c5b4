// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.BasicLife;
import holdfast.bearings.Lubrication;
import holdfast.bearings.PermissibleLoad;
import holdfast.bearings.RatedLife;
import holdfast.bearings.TrackRoller;
import holdfast.quantity.Force;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.sheet.Sheet;
import holdfast.sheet.SheetUnits;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/** What every plan answers, whether a stud or a pin in a fork holds the roller. */
public sealed interface MountingPlan extends Serializable permits InstallationPlan, YokePlan {
  /**
   * What the job is called on the sheet.
   *
   * @return the name
   */
  String job();

  /**
   * The roller.
   *
   * @return a stud or yoke roller
   */
  MountedRoller roller();

  /**
   * What the roller has to do.
   *
   * @return the duty
   */
  Duty duty();

  /**
   * The places that run it.
   *
   * @return the places; null if the job is a single one
   */
  FleetDuty fleet();

  /**
   * Units in which the sheet prints.
   *
   * @return the units
   */
  SheetUnits units();

  /**
   * The same job with a sheet in other units.
   *
   * @param sheetUnits the units
   * @return the plan
   */
  MountingPlan withUnits(SheetUnits sheetUnits);

  /**
   * Every limit beside what the duty asks.
   *
   * @return the limits with their margins
   */
  PlanLimits allLimits();

  /**
   * Reasons not to install.
   *
   * @return what must be changed first; empty if nothing forbids the work
   */
  List<String> stops();

  /**
   * The plan in plain names, numbers and units.
   *
   * @return what a maintenance system keeps or sends on
   */
  PlanSummary summary();

  /**
   * The sheet for the bench.
   *
   * @return the sheet; the same plan gives the same sheet
   */
  Sheet sheet();

  /**
   * The card for the bench: one side of paper, numbers rounded to the safe side.
   *
   * @return the card; the same plan gives the same card
   */
  default BenchCard card() {
    return BenchCard.of(this);
  }

  /**
   * The roller under its duty: life, film, permissible loads and speed, whatever holds it.
   *
   * @return the roller at work
   */
  default RollerAtWork atWork() {
    return new RollerAtWork(roller(), duty());
  }

  /**
   * The roller with the limits that its maker states.
   *
   * @return the roller as its calculation takes it
   */
  default TrackRoller trackRoller() {
    return atWork().trackRoller();
  }

  /**
   * The loads that ratings, maker and track permit.
   *
   * @return all of them and the one that governs
   */
  default PermissibleLoad limits() {
    return atWork().limits();
  }

  /**
   * Greatest speed: the maker's, or else by the published factor of the rolling elements.
   *
   * @return the limit for grease
   */
  default RotationalSpeed greatestSpeed() {
    return atWork().greatestSpeed();
  }

  /**
   * Constant load with the same basic life as the duty.
   *
   * @return the load of a duty with one step
   */
  default Force meanLoad() {
    return atWork().meanLoad();
  }

  /**
   * Life of the roller under the duty without lubrication and contamination.
   *
   * @return basic rating life under the mean load with the wanted reliability
   */
  default BasicLife life() {
    return atWork().life();
  }

  /**
   * Modified rating life: lubrication and contamination counted.
   *
   * @return the life with the wanted reliability
   */
  default RatedLife modifiedLife() {
    return atWork().modifiedLife();
  }

  /**
   * The lubricating film at the mean speed.
   *
   * @return lubrication with its viscosity ratio κ
   */
  default Lubrication lubrication() {
    return atWork().lubrication();
  }

  /**
   * What the lean of the roller leaves of its life, for the loosest pair in the shop or at work and the nut as stated.
   *
   * @return the factor that every time of this plan counts, or why it counts none
   */
  CountedLean countedLean();

  /**
   * Hours of the modified life with the wanted reliability, the lean counted, as rolling fatigue alone would allow. The same of
   * the aligned roller is {@link RollerAtWork#fatigueHours()}.
   *
   * @return operating time of the duty
   */
  default OperatingTime fatigueHours() {
    return countedLean().of(atWork().fatigueHours());
  }

  /**
   * Hours after which the roller is replaced: the modified life with the wanted reliability, the lean counted, but never more
   * than {@link RollerAtWork#LONGEST}, because wear, corrosion and seals end a roller before fatigue then.
   *
   * @return operating time of the duty
   */
  default OperatingTime replaceAfter() {
    return RollerAtWork.cut(fatigueHours());
  }

  /**
   * The same where the rating is for a rigid ring but the ring of a track roller bends.
   *
   * @return least and greatest hours, the lean counted; empty if the rating counts the bending already
   */
  default Optional<List<OperatingTime>> hoursOfBendingRing() {
    CountedLean lean = countedLean();
    return atWork().hoursOfBendingRing()
        .map(hours -> hours.stream().map(lean::of).map(RollerAtWork::cut).toList());
  }
}
