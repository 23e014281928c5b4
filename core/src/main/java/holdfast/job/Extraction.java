// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.reference.RollerProfile;
import holdfast.installation.Duty;
import holdfast.installation.FleetDuty;
import holdfast.installation.Fork;
import holdfast.installation.InstallationPlan;
import holdfast.installation.MachineMember;
import holdfast.installation.MakersLimits;
import holdfast.installation.MountedRoller;
import holdfast.installation.MountingPlan;
import holdfast.installation.Nut;
import holdfast.installation.NutLocking;
import holdfast.installation.Pin;
import holdfast.installation.RollerInterior;
import holdfast.installation.StudEndurance;
import holdfast.installation.StudRoller;
import holdfast.installation.YokePlan;
import holdfast.installation.YokeRoller;
import holdfast.quantity.Length;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import java.math.BigDecimal;
import java.util.Optional;

/** Takes the values of a job's file from the job. */
final class Extraction {
  private final Values values = new Values();

  private Extraction() {}

  static Values of(MountingPlan job) {
    Extraction extraction = new Extraction();
    extraction.values.put(Schema.JOB, job.job()).put(Schema.UNITS, job.units()).put(Schema.IN_FORK, job instanceof YokePlan);
    if (job instanceof YokePlan plan) {
      extraction.yokeRoller(plan.roller());
      extraction.pin(plan.pin());
      extraction.fork(plan.fork());
    } else if (job instanceof InstallationPlan plan) {
      extraction.studRoller(plan.roller());
      extraction.member(plan.member());
      extraction.nut(plan.nut());
    }
    extraction.duty(job.duty());
    Optional.ofNullable(job.fleet()).ifPresent(extraction::fleet);
    return extraction.values;
  }

  private <T> void unless(Key<T> key, T value, T usual) {
    if (!value.equals(usual)) {
      values.put(key, value);
    }
  }

  private void length(Key<Length> key, Length value) {
    if (value.mm() != 0) {
      values.put(key, value);
    }
  }

  private void common(MountedRoller roller) {
    values.put(Schema.ROLLER, roller.name()).put(Schema.OUTSIDE, roller.outsideDiameter())
        .put(Schema.WIDTH, roller.ringWidth()).put(Schema.CROWN, roller.crownRadius()).put(Schema.ELEMENTS, roller.kind())
        .put(Schema.SEALS, roller.sealed()).put(Schema.MEASURES, roller.system())
        .put(Schema.DYNAMIC, roller.ratings().dynamic()).put(Schema.STATIC, roller.ratings().staticRating())
        .put(Schema.RING, roller.ratings().outerRing())
        .putIf(Schema.FATIGUE_LIMIT, roller.ratings().knownFatigueLimit())
        .put(Schema.RATINGS_FROM, roller.ratingsFrom());
    MakersLimits limits = roller.limits();
    values.put(Schema.TEMPERATURES, new Kind.Range<>(limits.coldest(), limits.hottest()))
        .putIf(Schema.TURNING, Optional.ofNullable(limits.turning()))
        .putIf(Schema.STANDING, Optional.ofNullable(limits.standing()))
        .putIf(Schema.HOLDER, Optional.ofNullable(limits.stud()))
        .putIf(Schema.TRACK_CAPACITY, Optional.ofNullable(limits.trackAt40Hrc()))
        .putIf(Schema.SPEED_LIMIT, limits.statedSpeed());
    roller.knownInterior().ifPresent(this::interior);
  }

  private void interior(RollerInterior interior) {
    values.put(Schema.Z, interior.rollers().count()).put(Schema.DWE, interior.rollers().diameter())
        .put(Schema.LWE, interior.rollers().length()).put(Schema.ROLLERS_FROM, interior.rollersFrom())
        .put(Schema.ROWS, interior.rollers().rows());
    length(Schema.ROW_SPACING, interior.rollers().rowSpacing());
    values.put(Schema.DPW, interior.rollers().pitchDiameter()).put(Schema.DPW_FROM, interior.pitchFrom())
        .put(Schema.CLEARANCE, interior.clearance()).put(Schema.CLEARANCE_FROM, interior.clearanceFrom())
        .put(Schema.PROFILE_FROM, interior.profileFrom());
    RollerProfile profile = interior.rollers().profile();
    if (profile instanceof RollerProfile.Crowned crowned) {
      values.put(Schema.PROFILE, Schema.ProfileKind.CROWNED).put(Schema.PROFILE_RADIUS, crowned.radius());
    } else if (profile instanceof RollerProfile.Given given) {
      values.put(Schema.PROFILE, Schema.ProfileKind.GIVEN).put(Schema.PROFILE_DROPS, given.drops());
    } else {
      values.put(Schema.PROFILE, profile instanceof RollerProfile.Flat ? Schema.ProfileKind.STRAIGHT
          : Schema.ProfileKind.LOGARITHMIC);
    }
  }

  private void studRoller(StudRoller roller) {
    common(roller);
    values.putIf(Schema.TORQUE_LIMIT, roller.statedTorque()).put(Schema.STUD, roller.studDiameter())
        .put(Schema.STUD_TOLERANCE, roller.studTolerance()).put(Schema.STUD_THREAD, roller.thread())
        .put(Schema.GREASE_BORE, roller.greaseBore()).put(Schema.FLANGE, roller.flangeDiameter())
        .put(Schema.GAP, roller.ringGap());
    length(Schema.STUD_CROSS, roller.crossHole());
    Optional.ofNullable(roller.lengths())
        .ifPresent(lengths -> values.put(Schema.STUD_LENGTH, lengths.stud()).put(Schema.THREAD_LENGTH, lengths.thread()));
    material(Schema.STUD_MATERIAL, roller.material());
    length(Schema.STUD_ROUGHNESS, roller.seatRoughness());
    values.put(Schema.HEAD, roller.build().head());
    unless(Schema.FITTING, roller.build().fittingInSocket(), false);
    unless(Schema.COLLAR, roller.build().eccentricCollar(), false);
    roller.build().seenOpenings().ifPresent(seen -> values.put(Schema.OPEN_AXIAL, seen.axialBore())
        .put(Schema.OPEN_HEAD, seen.head()).put(Schema.OPEN_THREAD, seen.threadEnd()).put(Schema.OPEN_RADIAL, seen.radial()));
    roller.knownEndurance().ifPresent(known -> endurance(Schema.STUD_ENDURANCE, known));
  }

  private void yokeRoller(YokeRoller roller) {
    common(roller);
    values.put(Schema.RING_BORE, roller.bore()).put(Schema.RING_TOLERANCE, roller.boreTolerance())
        .put(Schema.RING_SEAT, roller.seatWidth()).put(Schema.INNER_RING, roller.innerRing())
        .put(Schema.RING_HOLE, roller.ringHole());
  }

  private void endurance(Schema.Endurance keys, StudEndurance known) {
    values.put(keys.endurance(), known.material().endurance()).put(keys.tensile(), known.material().tensile())
        .put(keys.yieldStrength(), known.material().yield()).put(keys.notch(), known.notchFactor());
  }

  private void material(Schema.Materials keys, Material material) {
    if (Schema.materialName(material).isPresent()) {
      values.put(keys.name(), material);
      return;
    }
    values.put(keys.ownName(), material.name()).put(keys.group(), material.group()).put(keys.ductility(), material.ductility())
        .put(keys.modulus(), material.elasticModulus()).put(keys.poisson(), material.poissonRatio())
        .put(keys.expansion(), material.thermalExpansion()).put(keys.source(), material.source().locator())
        .putIf(keys.yieldStrength(), material.yieldStrength()).putIf(keys.tensile(), material.tensileStrength());
    if (!material.condition().isBlank()) {
      values.put(keys.ownCondition(), material.condition());
    }
    material.density().ifPresent(density -> values.put(keys.density(), density));
  }

  private void body(Schema.Materials material, Key<holdfast.seats.HousingShape> shape, Key<Length> roughness, OuterPart body) {
    material(material, body.material());
    values.put(shape, body.shape());
    length(roughness, body.roughness());
  }

  private void member(MachineMember member) {
    values.put(Schema.MEMBER, member.name());
    body(Schema.MEMBER_MATERIAL, Schema.MEMBER_SHAPE, Schema.MEMBER_ROUGHNESS, member.body());
    values.put(Schema.BORE, member.boreTolerance()).put(Schema.SEAT_LENGTH, member.seatLength())
        .put(Schema.PRESSING_FRICTION, member.pressingFriction()).putIf(Schema.RUN_OUT, member.statedRunOut())
        .putIf(Schema.THICKNESS, Optional.ofNullable(member.thickness()));
    unless(Schema.FEED_HOLE, member.feedHole(), false);
  }

  private void nut(Nut nut) {
    values.put(Schema.FACE_OUTER, nut.faceOuter()).put(Schema.FACE_INNER, nut.faceInner())
        .put(Schema.CONDITION, nut.condition()).put(Schema.FRICTION, new Kind.Range<>(nut.leastFriction(),
            nut.greatestFriction()))
        .put(Schema.TORQUE_SET, nut.torque()).put(Schema.WRENCH_ERROR, nut.wrenchError()).put(Schema.RESERVE, nut.reserve())
        .putIf(Schema.ENGAGED, nut.statedEngagement()).putIf(Schema.NUT_SHEAR, Optional.ofNullable(nut.shearStrength()));
    Optional.ofNullable(nut.stack())
        .ifPresent(stack -> values.put(Schema.NUT_HEIGHT, stack.height()).put(Schema.WASHER, stack.washer()));
    unless(Schema.LOCKING, nut.locking(), NutLocking.NONE);
    if (nut.locking().prevailing()) {
      values.put(Schema.PREVAILING, nut.prevailing());
    }
  }

  private void pin(Pin pin) {
    values.put(Schema.PIN_TOLERANCE, pin.tolerance());
    material(Schema.PIN_MATERIAL, pin.material());
    length(Schema.PIN_BORE, pin.greaseBore());
    length(Schema.PIN_CROSS, pin.crossHole());
    unless(Schema.PIN_THROUGH, pin.through(), false);
    length(Schema.PIN_ROUGHNESS, pin.roughness());
    pin.statedHardness().ifPresent(hrc -> values.put(Schema.PIN_HARDNESS, hrc));
    values.put(Schema.SECURING, pin.securing());
    pin.knownEndurance().ifPresent(known -> endurance(Schema.PIN_ENDURANCE, known));
  }

  private void fork(Fork fork) {
    values.put(Schema.FORK, fork.name());
    body(Schema.FORK_MATERIAL, Schema.EAR_SHAPE, Schema.EAR_ROUGHNESS, fork.ear());
    values.put(Schema.EAR_THICKNESS, fork.thickness()).put(Schema.EAR_GAP, fork.gap())
        .put(Schema.EAR_BORE, fork.boreTolerance()).put(Schema.EAR_FRICTION, fork.pressingFriction());
    unless(Schema.CLAMPED, fork.ringClamped(), false);
    unless(Schema.EAR_FEED, fork.feedHole(), false);
  }

  private void duty(Duty duty) {
    if (duty.constant()) {
      values.put(Schema.LOAD, duty.load()).put(Schema.ROTATION, duty.speed());
    } else {
      values.putItems(Schema.STEPS, duty.spectrum().steps().stream().map(Extraction::step).toList());
    }
    // Percent and share both keep the decimal digits that were stated.
    double reliability = BigDecimal.valueOf(duty.reliability().percent()).movePointLeft(2).doubleValue();
    values.put(Schema.LIFE, duty.wantedLife()).put(Schema.RELIABILITY, reliability)
        .put(Schema.STATIC_SAFETY, duty.staticSafety()).put(Schema.WORK, duty.workingTemperature())
        .put(Schema.OIL, duty.viscosity()).putIf(Schema.CLEANLINESS, duty.statedContamination()).put(Schema.TRACK_SHAPE,
            duty.track())
        .put(Schema.TRACK_HARDNESS, duty.trackHardness()).putIf(Schema.TRACK_ANGLE, duty.statedTrackMisalignment())
        .put(Schema.FEED_PORT, duty.statedFeed());
    unless(Schema.UPRIGHT, duty.uprightAxis(), false);
    values.putIf(Schema.DUST, Optional.ofNullable(duty.surroundings().dirt()))
        .putIf(Schema.WATER, Optional.ofNullable(duty.surroundings().moisture()))
        .putIf(Schema.SHAKING, Optional.ofNullable(duty.surroundings().vibration()))
        .putIf(Schema.LOAD_CHANGE, duty.statedLoadChange());
  }

  private static Values step(LoadSpectrum.Step step) {
    return new Values().put(Schema.STEP_LOAD, step.load()).put(Schema.STEP_SPEED, step.speed())
        .put(Schema.STEP_SHARE, step.share());
  }

  private void fleet(FleetDuty fleet) {
    values.putItems(Schema.PLACES, fleet.positions().stream()
        .map(place -> new Values().put(Schema.PLACE, place.name()).put(Schema.PLACE_HOURS, place.hoursPerYear())
            .put(Schema.PLACE_AGE, place.age()))
        .toList());
    values.put(Schema.FLEET_RELIABILITY, fleet.reliability()).put(Schema.LEAD_YEARS, fleet.leadYears())
        .put(Schema.SERVICE, fleet.serviceLevel());
  }
}
