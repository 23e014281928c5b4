// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.Reliability;
import holdfast.bearings.reference.RollerProfile;
import holdfast.fleet.FleetPosition;
import holdfast.installation.Duty;
import holdfast.installation.DutyBuilder;
import holdfast.installation.FleetDuty;
import holdfast.installation.Fork;
import holdfast.installation.InstallationPlan;
import holdfast.installation.MachineMember;
import holdfast.installation.MountedRoller;
import holdfast.installation.MountingPlan;
import holdfast.installation.Nut;
import holdfast.installation.NutLocking;
import holdfast.installation.Pin;
import holdfast.installation.PlanBuilder;
import holdfast.installation.RollerBuilder;
import holdfast.installation.RollerInterior;
import holdfast.installation.StudRoller;
import holdfast.installation.StudRollerBuilder;
import holdfast.installation.Surroundings;
import holdfast.installation.ValueOrigin;
import holdfast.installation.YokePlan;
import holdfast.installation.YokePlanBuilder;
import holdfast.installation.YokeRoller;
import holdfast.installation.YokeRollerBuilder;
import holdfast.lubrication.Openings;
import holdfast.quantity.Length;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Torque;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerSize;
import holdfast.seats.HousingShape;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.StudMaterial;
import holdfast.tables.SourceRef;
import holdfast.threads.ScrewThread;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Makes the parts of a job of the values of its file. */
final class Assembly {
  private static final Length NONE = new Length(0);

  private final Values values;
  private final Parts parts;

  /** Makes one part; empty if it was refused. */
  @FunctionalInterface
  interface Parts {
    <T> Optional<T> make(String section, Supplier<T> part);
  }

  Assembly(Values values, Parts parts) {
    this.values = values;
    this.parts = parts;
  }

  Optional<MountingPlan> job(boolean inFork) {
    return inFork ? forkJob() : studJob();
  }

  /** The roller alone. */
  MountedRoller roller(boolean inFork) {
    return inFork ? yokeRoller().build() : studRoller().build();
  }

  private Optional<MountingPlan> studJob() {
    Optional<StudRoller> roller = parts.make("roller", () -> studRoller().build());
    Optional<MachineMember> member = parts.make("member", this::member);
    Optional<Nut> nut = parts.make("nut", this::nut);
    Optional<Duty> duty = parts.make("duty", () -> duty().build());
    Optional<Optional<FleetDuty>> fleet = parts.make("fleet", this::fleet);
    if (roller.isEmpty() || member.isEmpty() || nut.isEmpty() || duty.isEmpty() || fleet.isEmpty()) {
      return Optional.empty();
    }
    return parts.make("", () -> {
      PlanBuilder plan = InstallationPlan.of(roller.get()).job(values.get(Schema.JOB)).member(member.get()).nut(nut.get())
          .duty(duty.get());
      fleet.get().ifPresent(plan::fleet);
      values.find(Schema.UNITS).ifPresent(plan::units);
      return plan.build();
    });
  }

  private Optional<MountingPlan> forkJob() {
    Optional<YokeRoller> roller = parts.make("roller", () -> yokeRoller().build());
    Optional<Pin> pin = parts.make("pin", () -> pin().build());
    Optional<Fork> fork = parts.make("fork", () -> fork().build());
    Optional<Duty> duty = parts.make("duty", () -> duty().build());
    Optional<Optional<FleetDuty>> fleet = parts.make("fleet", this::fleet);
    if (roller.isEmpty() || pin.isEmpty() || fork.isEmpty() || duty.isEmpty() || fleet.isEmpty()) {
      return Optional.empty();
    }
    return parts.make("", () -> {
      YokePlanBuilder plan = YokePlan.of(yokeRoller()).job(values.get(Schema.JOB)).pin(pin()).fork(fork()).duty(duty.get());
      fleet.get().ifPresent(plan::fleet);
      values.find(Schema.UNITS).ifPresent(plan::units);
      return plan.build();
    });
  }

  /** A value that stands in the file or in the table of the series; one of the two is there. */
  private <T> T stated(Key<T> key, Function<RollerSize, T> ofSize) {
    return values.find(key).orElseGet(() -> ofSize.apply(values.get(Schema.ROLLER_SIZE)));
  }

  private StudRollerBuilder studRoller() {
    MeasureSystem system = values.find(Schema.MEASURES)
        .orElseGet(() -> values.find(Schema.ROLLER_SIZE).map(size -> size.series().system()).orElse(MeasureSystem.METRIC));
    StudRollerBuilder roller = StudRoller.named(values.get(Schema.ROLLER))
        .ring(stated(Schema.OUTSIDE, RollerSize::outsideDiameter), stated(Schema.WIDTH, RollerSize::ringWidth),
            values.find(Schema.CROWN).orElse(NONE))
        .system(system)
        .flange(stated(Schema.FLANGE, RollerSize::faceDiameter), stated(Schema.GAP, size -> size.stud().overhang()))
        .stud(stated(Schema.STUD, size -> size.stud().diameter()),
            stated(Schema.STUD_TOLERANCE, size -> StudRollerBuilder.usualStudTolerance(size.series().system())))
        .thread(stated(Schema.STUD_THREAD, size -> size.stud().threads().get(0)))
        .greaseBore(values.get(Schema.GREASE_BORE))
        .crossHole(values.find(Schema.STUD_CROSS).orElse(NONE))
        .material(material(Schema.STUD_MATERIAL), values.find(Schema.STUD_ROUGHNESS).orElse(NONE))
        .head(values.get(Schema.HEAD));
    if (values.has(Schema.STUD_LENGTH)) {
      roller.lengths(values.get(Schema.STUD_LENGTH), values.get(Schema.THREAD_LENGTH));
    } else {
      values.find(Schema.ROLLER_SIZE)
          .ifPresent(size -> roller.lengths(size.stud().length(), size.stud().threadLength()));
    }
    if (values.find(Schema.FITTING).orElse(false)) {
      roller.fittingInSocket();
    }
    if (values.find(Schema.COLLAR).orElse(false)) {
      roller.eccentricCollar();
    }
    if (values.has(Schema.OPEN_AXIAL)) {
      roller.openings(new Openings(values.get(Schema.OPEN_AXIAL), values.get(Schema.OPEN_HEAD), values.get(Schema.OPEN_THREAD),
          values.get(Schema.OPEN_RADIAL)));
    }
    values.find(Schema.HOLDER).ifPresent(roller::studLimit);
    values.find(Schema.TORQUE_LIMIT).ifPresent(roller::greatestTorque);
    endurance(Schema.STUD_ENDURANCE)
        .ifPresent(strengths -> roller.endurance(strengths, values.get(Schema.STUD_ENDURANCE.notch())));
    common(roller);
    return roller;
  }

  private YokeRollerBuilder yokeRoller() {
    YokeRollerBuilder roller = YokeRoller.named(values.get(Schema.ROLLER))
        .ring(values.get(Schema.OUTSIDE), values.get(Schema.WIDTH), values.find(Schema.CROWN).orElse(NONE))
        .system(values.find(Schema.MEASURES).orElse(MeasureSystem.METRIC));
    Length bore = values.get(Schema.RING_BORE);
    String tolerance = values.get(Schema.RING_TOLERANCE);
    Length width = values.get(Schema.RING_SEAT);
    if (values.find(Schema.INNER_RING).orElse(true)) {
      roller.bore(bore, tolerance, width);
    } else {
      roller.withoutInnerRing(bore, tolerance, width);
    }
    if (values.find(Schema.RING_HOLE).orElse(false)) {
      roller.greaseHoleInRing();
    }
    values.find(Schema.HOLDER).ifPresent(roller::pinLimit);
    common(roller);
    return roller;
  }

  private <B extends RollerBuilder<?, B>> void common(B roller) {
    LoadRatings ratings =
        LoadRatings.trackRoller(values.get(Schema.DYNAMIC), values.get(Schema.STATIC), values.get(Schema.RING));
    roller.ratings(values.find(Schema.FATIGUE_LIMIT).map(ratings::withFatigueLimit).orElse(ratings),
        values.find(Schema.RATINGS_FROM).orElse(ValueOrigin.STATED));
    roller.inside(values.get(Schema.ELEMENTS), values.get(Schema.SEALS));
    roller.temperatures(values.get(Schema.TEMPERATURES).least(), values.get(Schema.TEMPERATURES).greatest());
    if (values.has(Schema.TURNING)) {
      roller.ringLimits(values.get(Schema.TURNING), values.get(Schema.STANDING));
    }
    values.find(Schema.TRACK_CAPACITY).ifPresent(roller::trackCapacity);
    values.find(Schema.SPEED_LIMIT).ifPresent(roller::speedLimit);
    if (values.has(Schema.Z)) {
      roller.interior(interior());
    }
  }

  private RollerInterior interior() {
    return RollerInterior.describe()
        .rollers(values.get(Schema.Z), values.get(Schema.DWE), values.get(Schema.LWE), values.get(Schema.ROLLERS_FROM))
        .rows(values.find(Schema.ROWS).orElse(1), values.find(Schema.ROW_SPACING).orElse(NONE))
        .pitchDiameter(values.get(Schema.DPW), values.get(Schema.DPW_FROM))
        .clearance(values.get(Schema.CLEARANCE), values.get(Schema.CLEARANCE_FROM))
        .profile(profile(), values.get(Schema.PROFILE_FROM))
        .build();
  }

  private RollerProfile profile() {
    return switch (values.get(Schema.PROFILE)) {
      case LOGARITHMIC -> RollerProfile.logarithmic();
      case STRAIGHT -> RollerProfile.flat();
      case CROWNED -> RollerProfile.crowned(needed(Schema.PROFILE_RADIUS));
      case GIVEN -> RollerProfile.given(needed(Schema.PROFILE_DROPS).toArray(Length[]::new));
    };
  }

  private <T> T needed(Key<T> key) {
    return values.find(key).orElseThrow(() -> new holdfast.quantity.InputException(
        key.path(), "missing", key.kind().accepts(), "this profile needs it"));
  }

  private Material material(Schema.Materials keys) {
    Optional<Material> tabulated = values.find(keys.name());
    if (tabulated.isPresent()) {
      return tabulated.get();
    }
    Material.Builder own = Material.named(values.get(keys.ownName()), SourceRef.commonPractice(values.get(keys.source())))
        .kind(values.get(keys.group()), values.get(keys.ductility()))
        .elastic(values.get(keys.modulus()), values.get(keys.poisson()))
        .expansion(values.get(keys.expansion()));
    values.find(keys.ownCondition()).ifPresent(own::condition);
    values.find(keys.density()).ifPresent(own::density);
    values.find(keys.yieldStrength()).ifPresent(own::yieldStrength);
    values.find(keys.tensile()).ifPresent(own::tensileStrength);
    return own.build();
  }

  private Optional<StudMaterial> endurance(Schema.Endurance keys) {
    return values.find(keys.endurance())
        .map(limit -> new StudMaterial(limit, values.get(keys.tensile()), values.get(keys.yieldStrength())));
  }

  private OuterPart body(Schema.Materials material, Key<HousingShape> shape, Key<Length> roughness) {
    OuterPart part = OuterPart.of(material(material), values.get(shape));
    return values.find(roughness).map(part::withRoughness).orElse(part);
  }

  private MachineMember member() {
    MachineMember.Builder member = MachineMember.named(values.get(Schema.MEMBER))
        .body(body(Schema.MEMBER_MATERIAL, Schema.MEMBER_SHAPE, Schema.MEMBER_ROUGHNESS))
        .bore(values.get(Schema.BORE), values.get(Schema.SEAT_LENGTH))
        .pressingFriction(values.get(Schema.PRESSING_FRICTION));
    values.find(Schema.RUN_OUT).ifPresent(member::faceRunOut);
    values.find(Schema.THICKNESS).ifPresent(member::thickness);
    if (values.find(Schema.FEED_HOLE).orElse(false)) {
      member.feedHole();
    }
    return member.build();
  }

  private Nut nut() {
    Kind.Range<Double> friction = values.get(Schema.FRICTION);
    Nut.Builder nut = values.has(Schema.FACE_OUTER)
        ? Nut.onFace(values.get(Schema.FACE_OUTER), values.get(Schema.FACE_INNER))
        : Nut.onStandardFace(ScrewThread.of(stated(Schema.STUD_THREAD, size -> size.stud().threads().get(0))));
    nut.friction(values.get(Schema.CONDITION), friction.least(), friction.greatest())
        .wrench(values.get(Schema.TORQUE_SET), values.find(Schema.WRENCH_ERROR).orElse(0.04))
        .reserve(values.find(Schema.RESERVE).orElse(1.5));
    if (values.has(Schema.ENGAGED)) {
      nut.engaged(values.get(Schema.ENGAGED), values.get(Schema.NUT_SHEAR));
    }
    if (values.has(Schema.NUT_HEIGHT)) {
      nut.stack(values.get(Schema.NUT_HEIGHT), values.get(Schema.WASHER));
    }
    NutLocking locking = values.find(Schema.LOCKING).orElse(NutLocking.NONE);
    Optional<Torque> prevailing = values.find(Schema.PREVAILING);
    if (prevailing.isPresent() && locking.prevailing()) {
      nut.selfLocking(prevailing.get());
    } else if (prevailing.isPresent()) {
      throw new holdfast.quantity.InputException("prevailing torque", prevailing.get().toString(),
          "left out with the locking '" + locking + "'", "only a self-locking nut turns hard before it touches");
    } else {
      nut.locking(locking);
    }
    return nut.build();
  }

  private Pin.Builder pin() {
    Pin.Builder pin = Pin.of(values.get(Schema.PIN_TOLERANCE), material(Schema.PIN_MATERIAL))
        .drilled(values.find(Schema.PIN_BORE).orElse(NONE), values.find(Schema.PIN_CROSS).orElse(NONE),
            values.find(Schema.PIN_THROUGH).orElse(false))
        .securedBy(values.get(Schema.SECURING));
    values.find(Schema.PIN_ROUGHNESS).ifPresent(pin::roughness);
    values.find(Schema.PIN_HARDNESS).ifPresent(pin::hardness);
    endurance(Schema.PIN_ENDURANCE).ifPresent(strengths -> pin.endurance(strengths, values.get(Schema.PIN_ENDURANCE.notch())));
    return pin;
  }

  private Fork.Builder fork() {
    Fork.Builder fork = Fork.named(values.get(Schema.FORK))
        .ears(body(Schema.FORK_MATERIAL, Schema.EAR_SHAPE, Schema.EAR_ROUGHNESS), values.get(Schema.EAR_THICKNESS),
            values.get(Schema.EAR_GAP))
        .bore(values.get(Schema.EAR_BORE))
        .pressingFriction(values.get(Schema.EAR_FRICTION));
    if (values.find(Schema.CLAMPED).orElse(false)) {
      fork.ringClamped();
    }
    if (values.find(Schema.EAR_FEED).orElse(false)) {
      fork.feedHole();
    }
    return fork;
  }

  private LoadSpectrum spectrum() {
    List<Values> steps = values.items(Schema.STEPS);
    if (steps.isEmpty()) {
      return LoadSpectrum.constant(values.get(Schema.LOAD), values.get(Schema.ROTATION));
    }
    return new LoadSpectrum(steps.stream()
        .map(step -> new LoadSpectrum.Step(step.get(Schema.STEP_LOAD), step.get(Schema.STEP_SPEED), step.get(Schema.STEP_SHARE)))
        .toList());
  }

  private DutyBuilder duty() {
    DutyBuilder duty = Duty.of(spectrum())
        .life(values.get(Schema.LIFE), new Reliability(100 * values.find(Schema.RELIABILITY).orElse(0.9)))
        .staticSafety(values.get(Schema.STATIC_SAFETY))
        .at(values.get(Schema.WORK))
        .track(values.get(Schema.TRACK_SHAPE), values.get(Schema.TRACK_HARDNESS))
        .surroundings(new Surroundings(values.find(Schema.DUST).orElse(null), values.find(Schema.WATER).orElse(null),
            values.find(Schema.SHAKING).orElse(null)));
    values.find(Schema.CLEANLINESS).ifPresentOrElse(
        level -> duty.lubricant(values.get(Schema.OIL), level), () -> duty.lubricant(values.get(Schema.OIL)));
    values.find(Schema.TRACK_ANGLE).ifPresent(duty::trackMisalignment);
    values.get(Schema.FEED_PORT).ifPresentOrElse(duty::greaseThrough, duty::lubricatedForLife);
    if (values.find(Schema.UPRIGHT).orElse(false)) {
      duty.uprightAxis();
    }
    values.find(Schema.LOAD_CHANGE).ifPresent(duty::loadChange);
    return duty;
  }

  private Optional<FleetDuty> fleet() {
    List<FleetPosition> places = values.items(Schema.PLACES).stream()
        .map(place -> new FleetPosition(place.get(Schema.PLACE), place.get(Schema.PLACE_HOURS),
            place.find(Schema.PLACE_AGE).orElse(new OperatingTime(0))))
        .toList();
    return places.isEmpty()
        ? Optional.empty()
        : Optional.of(new FleetDuty(places, values.get(Schema.FLEET_RELIABILITY), values.get(Schema.LEAD_YEARS),
            values.get(Schema.SERVICE)));
  }
}
