// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.Reliability;
import holdfast.fits.Fit;
import holdfast.fits.LimitsOfSize;
import holdfast.lubrication.FirstFill;
import holdfast.lubrication.GreaseQuantity;
import holdfast.lubrication.GreaseSchedule;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Quantity;
import holdfast.quantity.Unit;
import holdfast.seats.FrictionBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Pressing;
import holdfast.tables.TableSet;
import holdfast.threads.TorqueWindow;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a plan comes to, in plain names, numbers and units: for a maintenance system to keep or to send on. Numbers have
 * full precision; the ids stay the same from version to version.
 *
 * @param job what the job is called
 * @param tableSet version of the table set
 * @param digest SHA-256 of the table set
 * @param install whether nothing forbids the work
 * @param stops what forbids it
 * @param values the values
 * @param limits the limits
 * @param warnings what the reader must know about limits and life
 */
public record PlanSummary(
    String job,
    String tableSet,
    String digest,
    boolean install,
    List<String> stops,
    List<Value> values,
    List<Limit> limits,
    List<String> warnings)
    implements Serializable {

  /**
   * A value.
   *
   * @param id stable name, for example {@code "tighten.window.lowest"}
   * @param value the number
   * @param unit its unit
   */
  public record Value(String id, double value, String unit) implements Serializable {
    public Value {
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(unit, "unit");
      Check.finite(value, id, unit);
    }
  }

  /**
   * A limit.
   *
   * @param name what limits
   * @param demand what the duty asks, in the unit of the limit
   * @param atMost true if the permitted value is a greatest one, false if it is a least one
   * @param permitted what is allowed, in the same unit
   * @param unit unit of both
   * @param holds whether the duty keeps it
   */
  public record Limit(String name, double demand, boolean atMost, double permitted, String unit, boolean holds)
      implements Serializable {
    public Limit {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(unit, "unit");
      Check.finite(demand, name, unit);
      Check.finite(permitted, name, unit);
    }
  }

  // Keeps unmodifiable copies.
  public PlanSummary {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(tableSet, "tableSet");
    Objects.requireNonNull(digest, "digest");
    Objects.requireNonNull(stops, "stops");
    Objects.requireNonNull(values, "values");
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(warnings, "warnings");
    stops = List.copyOf(stops);
    values = List.copyOf(values);
    limits = List.copyOf(limits);
    warnings = List.copyOf(warnings);
  }

  static PlanSummary of(InstallationPlan plan) {
    return of(plan, values(plan));
  }

  static PlanSummary of(YokePlan plan) {
    return of(plan, values(plan));
  }

  private static PlanSummary of(MountingPlan plan, List<Value> values) {
    PlanLimits limits = plan.allLimits();
    List<String> warnings = new ArrayList<>();
    limits.warnings().stream().map(Warning::message).forEach(warnings::add);
    plan.atWork().knownModifiedLife().ifPresentOrElse(
        life -> life.warnings().stream().map(Warning::message).forEach(warnings::add),
        () -> warnings.add("no modified life: " + plan.atWork().noModifiedLife()));
    plan.roller().ratingsFrom().warnings().stream().map(Warning::message).forEach(warnings::add);
    List<String> stops = plan.stops();
    TableSet tables = TableSet.bundled();
    return new PlanSummary(plan.job(), tables.version(), tables.digest(), stops.isEmpty(), stops, values,
        limits.checks().stream().map(PlanSummary::limit).toList(), warnings);
  }

  private static List<Value> values(InstallationPlan plan) {
    List<Value> values = new ArrayList<>();
    sizes(values, "bore", plan.fit().hole().limits());
    sizes(values, "stud", plan.fit().shaft().limits());
    fit(values, "fit", plan.fit());
    press(values, "press", plan.seat(), plan.member().pressingFriction());
    TorqueWindow window = plan.torqueWindow();
    add(values, "tighten.window.lowest", window.lowest(), KnownUnits.N_M);
    add(values, "tighten.window.highest", window.highest(), KnownUnits.N_M);
    add(values, "tighten.setting", plan.nut().torque(), KnownUnits.N_M);
    add(values, "tighten.preload.least", plan.loosest().leastPreload(), KnownUnits.N);
    add(values, "tighten.preload.greatest", plan.tightest().greatestPreload(), KnownUnits.N);
    add(values, "tighten.hold-at-head", plan.torqueToBeHeld(), KnownUnits.N_M);
    add(values, "tilt.stud", plan.tilt().total(), KnownUnits.MRAD);
    life(values, plan);
    plan.greasing().ifPresent(grease -> grease(values, grease.quantity(), grease.firstFill(), grease.schedule()));
    return values;
  }

  private static List<Value> values(YokePlan plan) {
    List<Value> values = new ArrayList<>();
    sizes(values, "ear", plan.earFit().hole().limits());
    sizes(values, "roller-bore", plan.rollerFit().hole().limits());
    sizes(values, "pin", plan.earFit().shaft().limits());
    fit(values, "ear-fit", plan.earFit());
    fit(values, "roller-fit", plan.rollerFit());
    // Each ear takes this force; both together twice as much.
    press(values, "press-each-ear", plan.ear(), plan.fork().pressingFriction());
    add(values, "pin.bending", plan.strength().bending(), KnownUnits.MPA);
    add(values, "pin.shear", plan.strength().shear(), KnownUnits.MPA);
    add(values, "tilt.roller", plan.tilt(), KnownUnits.MRAD);
    life(values, plan);
    plan.greasing().ifPresent(grease -> grease(values, grease.quantity(), grease.firstFill(), grease.schedule()));
    return values;
  }

  private static void sizes(List<Value> values, String part, LimitsOfSize limits) {
    add(values, part + ".lower-limit", limits.lower(), KnownUnits.MM);
    add(values, part + ".upper-limit", limits.upper(), KnownUnits.MM);
  }

  private static void fit(List<Value> values, String name, Fit fit) {
    add(values, name + ".clearance.least", fit.minimumClearance(), KnownUnits.UM);
    add(values, name + ".clearance.greatest", fit.maximumClearance(), KnownUnits.UM);
  }

  private static void press(
      List<Value> values, String name, Optional<InterferenceFit> seat, FrictionBand friction) {
    // Beyond what elastic and elastic-plastic methods cover there is no figure.
    if (seat.isPresent() && seat.get().validity() != InterferenceFit.Validity.BEYOND) {
      Pressing pressing = seat.get().pressing(friction);
      add(values, name + ".pressure.least", seat.get().attainedPressure().least(), KnownUnits.MPA);
      add(values, name + ".pressure.greatest", seat.get().attainedPressure().greatest(), KnownUnits.MPA);
      add(values, name + ".force.least", pressing.pressIn().least(), KnownUnits.N);
      add(values, name + ".force.greatest", pressing.pressIn().greatest(), KnownUnits.N);
    }
  }

  private static void life(List<Value> values, MountingPlan plan) {
    add(values, "life.basic-l10", plan.life().at(Reliability.L10).hours(plan.duty().speed()), KnownUnits.H);
    if (plan.atWork().knownModifiedLife().isPresent()) {
      replacement(values, plan);
    }
  }

  private static void replacement(List<Value> values, MountingPlan plan) {
    add(values, "life.aligned", plan.atWork().fatigueHours(), KnownUnits.H);
    CountedLean lean = plan.countedLean();
    if (lean.counted()) {
      values.add(new Value("life.lean-factor", lean.factor(), ""));
    }
    add(values, "life.replace-after", plan.replaceAfter(), KnownUnits.H);
    plan.hoursOfBendingRing().ifPresent(hours -> {
      add(values, "life.bending-ring.least", hours.get(0), KnownUnits.H);
      add(values, "life.bending-ring.greatest", hours.get(1), KnownUnits.H);
    });
    if (plan.fleet() == null) {
      return;
    }
    try {
      FleetCare care = FleetCare.of(plan);
      values.add(new Value("fleet.interval", care.together().hours(), KnownUnits.H.symbol()));
      values.add(new Value("fleet.due-now", care.due().size(), ""));
      values.add(new Value("fleet.rollers-at-hand", care.rollersAtHand(), ""));
    } catch (InputException outside) {
      // Places whose age the survival function does not reach have no common interval; the sheet says so.
      return;
    }
  }

  private static void grease(List<Value> values, GreaseQuantity quantity, FirstFill fill, GreaseSchedule schedule) {
    add(values, "grease.first-fill.least", fill.least(), KnownUnits.G);
    add(values, "grease.first-fill.greatest", fill.greatest(), KnownUnits.G);
    add(values, "grease.quantity", quantity.mass(), KnownUnits.G);
    schedule.knownInterval().ifPresent(interval -> add(values, "grease.interval", interval.interval(), KnownUnits.H));
    values.add(new Value("grease.months", schedule.months(), "months"));
  }

  private static <Q extends Quantity<Q>> void add(List<Value> values, String id, Q quantity, Unit<Q> unit) {
    values.add(new Value(id, quantity.in(unit), unit.symbol()));
  }

  private static Limit limit(LimitCheck check) {
    return new Limit(check.name(), check.demand().base(), check.bound() == LimitCheck.Bound.AT_MOST, check.permitted().base(),
        baseUnit(check.demand()), check.holds());
  }

  private static String baseUnit(Quantity<?> quantity) {
    String name = quantity.getClass().getSimpleName();
    return switch (name) {
      case "Force" -> KnownUnits.N.symbol();
      case "Stress" -> KnownUnits.MPA.symbol();
      case "RotationalSpeed" -> KnownUnits.RPM.symbol();
      case "Temperature" -> KnownUnits.DEG_C.symbol();
      case "Length" -> KnownUnits.MM.symbol();
      case "Angle" -> KnownUnits.RAD.symbol();
      default -> throw new IllegalStateException("no limit is a " + name);
    };
  }

  /**
   * The summary as JSON text (RFC 8259), names as those of the components.
   *
   * @return one object
   */
  public String json() {
    return Json.write(this);
  }
}
