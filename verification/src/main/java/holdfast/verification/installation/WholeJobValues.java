// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import holdfast.bearings.Contamination;
import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.ModifiedLife;
import holdfast.bearings.RatedLife;
import holdfast.bearings.RatingLife;
import holdfast.bearings.Reliability;
import holdfast.bearings.ReliabilityKernel;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.contact.ContactPair;
import holdfast.contact.ContactSurface;
import holdfast.contact.EllipticalContact;
import holdfast.contact.LineContact;
import holdfast.contact.StressPeak;
import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.fits.TolerancedSize;
import holdfast.fleet.FleetPlan;
import holdfast.fleet.FleetPosition;
import holdfast.fleet.GroupReplacement;
import holdfast.fleet.Spares;
import holdfast.installation.FleetDuty;
import holdfast.installation.InstallationPlan;
import holdfast.installation.LimitCheck;
import holdfast.installation.MountedRoller;
import holdfast.installation.MountingPlan;
import holdfast.installation.YokePlan;
import holdfast.lubrication.FirstFill;
import holdfast.lubrication.GreaseQuantity;
import holdfast.lubrication.RelubricationInterval;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Quantity;
import holdfast.quantity.Stress;
import holdfast.quantity.Temperature;
import holdfast.seats.Band;
import holdfast.seats.FitLimits;
import holdfast.seats.FrictionBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.ServiceState;
import holdfast.seats.ThermalAssembly;
import holdfast.seats.YieldRule;
import holdfast.sheet.Block;
import holdfast.threads.TighteningState;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The numbers that a sheet prints, through the public interface, by the names of the second program. Base units. */
final class WholeJobValues {
  private static final Pattern HOURS = Pattern.compile("([0-9.]+) h$");

  private final Map<String, Double> values = new HashMap<>();

  private WholeJobValues() {}

  /**
   * All numbers of a job.
   *
   * @param plan the job
   * @param bores the bores whose alternatives are asked for
   * @return numbers in base units by name
   */
  static Map<String, Double> of(MountingPlan plan, Collection<String> bores) {
    WholeJobValues result = new WholeJobValues();
    if (plan instanceof YokePlan yoke) {
      result.yoke(yoke, bores);
    } else {
      result.stud((InstallationPlan) plan, bores);
    }
    result.common(plan);
    return result.values;
  }

  private void add(String name, double value) {
    values.put(name, value);
  }

  private void add(String name, Quantity<?> value) {
    values.put(name, value.base());
  }

  private <Q extends Quantity<Q>> void band(String name, Band<Q> band) {
    add(name + ".least", band.least());
    add(name + ".greatest", band.greatest());
  }

  private void size(String name, TolerancedSize part) {
    add(name + ".lower-limit", part.limits().lower());
    add(name + ".upper-limit", part.limits().upper());
    add(name + ".lower-deviation", part.lower());
    add(name + ".upper-deviation", part.upper());
  }

  private void clearance(String name, Fit fit) {
    add(name + ".clearance.least", fit.minimumClearance());
    add(name + ".clearance.greatest", fit.maximumClearance());
  }

  // Stud rollers

  private void stud(InstallationPlan plan, Collection<String> bores) {
    size("bore", plan.fit().hole());
    size("stud", plan.fit().shaft());
    clearance("fit", plan.fit());
    if (plan.fit().kind() != FitKind.CLEARANCE) {
      press(plan.seat().orElseThrow(), plan.seatAtWork().orElseThrow(), plan.member().pressingFriction(),
          new String[] {"press", "stud", "member"});
    }
    tighten(plan);
    add("stud.tension", plan.stud().tension());
    add("stud.cross-hole-peak", plan.stud().crossHolePeak());
    add("stud.mouth-pressure", plan.mouthPressure());
    plan.greasing().ifPresent(grease -> grease(grease.quantity(), grease.firstFill(), grease.schedule().knownInterval()));
    add("tilt.by-clearance", plan.tilt().byClearance());
    add("tilt.bending", plan.deflection().tilt());
    add("tilt.faces", plan.tilt().byFaces());
    add("tilt.total", plan.tilt().total());
    add("tilt.if-loose", plan.tilt().totalIfLoose());
    plan.seatPrice().ifPresent(price -> {
      price(price.loosest().tilt().studTilt(), price.loosest().tilt().raceways(), price.lifeRatio());
      add("price.ring-tilt", price.loosest().tilt().ring());
      add("price.contact-shift", price.loosest().tilt().contactShift());
      curves(price.bearing(), price.load());
    });
    bores.forEach(bore -> option(plan.withBore(bore), "option." + bore));
    fleet(plan);
  }

  private void press(InterferenceFit seat, ServiceState work, FrictionBand friction, String[] names) {
    band(names[0] + ".pressure", seat.pressure());
    band(names[0] + ".force", seat.pressing(friction).pressIn());
    FitLimits limits = seat.limits(YieldRule.VON_MISES);
    part("press." + names[1], limits.stud());
    part("press." + names[2], limits.housing());
    ThermalAssembly heat = seat.thermalAssembly().build();
    add("press.heat", heat.housingTemperature());
    band("press.at-work.pressure", work.pressure());
    work.lossTemperature().ifPresent(loss -> add("press.lets-go", loss));
  }

  private void part(String name, FitLimits.PartLimit limit) {
    add(name + ".limit", limit.limitPressure());
    add(name + ".stress", limit.stress());
    limit.safety().ifPresent(safety -> add(name + ".safety", safety));
  }

  private void tighten(InstallationPlan plan) {
    add("tighten.window.lowest", plan.torqueWindow().lowest());
    add("tighten.window.highest", plan.torqueWindow().highest());
    add("tighten.required-preload", plan.torqueWindow().demand().requiredPreload());
    add("tighten.closed-from", plan.faceClosedFrom());
    if (plan.torqueWindow().rules().engagement() != null) {
      add("tighten.stripping-load", plan.torqueWindow().rules().engagement().strippingLoad());
    }
    add("tighten.setting", plan.nut().torque());
    add("tighten.wrench.least", plan.nut().leastTorque());
    add("tighten.wrench.greatest", plan.nut().greatestTorque());
    add("tighten.preload.least", plan.loosest().leastPreload());
    add("tighten.preload.greatest", plan.tightest().greatestPreload());
    TighteningState state = plan.tightest().greatest();
    add("tighten.stress", state.combinedStress());
    add("tighten.stress-of-yield", state.combinedStress().ratio(plan.roller().material().yieldStrength().orElseThrow()));
    add("tighten.through-stud", plan.torqueThroughStud());
    add("tighten.hold-at-head", plan.torqueToBeHeld());
  }

  private void option(InstallationPlan plan, String name) {
    clearance(name, plan.fit());
    add(name + ".lean", plan.tilt().byClearance());
    plan.seatPrice().ifPresent(price -> add(name + ".life-ratio", price.lifeRatio()));
    plan.seat().ifPresent(seat -> pressed(seat, plan.member().pressingFriction(), name, "member"));
    add(name + ".hold-at-head", plan.torqueToBeHeld());
  }

  private void pressed(InterferenceFit seat, FrictionBand friction, String name, String outer) {
    band(name + ".force", seat.pressing(friction).pressIn());
    seat.limits(YieldRule.VON_MISES).housing().safety().ifPresent(safety -> add(name + "." + outer + "-safety", safety));
  }

  // Yoke rollers

  private void yoke(YokePlan plan, Collection<String> bores) {
    size("ear", plan.earFit().hole());
    size("pin", plan.earFit().shaft());
    size("roller-bore", plan.rollerFit().hole());
    clearance("ear-fit", plan.earFit());
    clearance("roller-fit", plan.rollerFit());
    plan.ear().ifPresent(ear -> {
      Temperature atWork = plan.duty().workingTemperature();
      press(ear, ear.atWork(atWork, atWork), plan.fork().pressingFriction(), new String[] {"press-each-ear", "pin", "ear"});
      ThermalAssembly cold = ear.thermalAssembly().studAt(new Temperature(-196)).build();
      add("press.heat-with-cold", cold.housingTemperature());
    });
    plan.greasing().ifPresent(grease -> grease(grease.quantity(), grease.firstFill(), grease.schedule().knownInterval()));
    add("tilt.pin", plan.pinTilt().total());
    add("tilt.ring", plan.ringTilt().map(tilt -> tilt.total().base()).orElse(0.0));
    add("tilt.total", plan.tilt());
    plan.pressForce().ifPresent(force -> band("press.force-at-the-end", force));
    add("pin.bending", plan.strength().bending());
    add("pin.shear", plan.strength().shear());
    plan.leanPrice().ifPresent(price -> {
      price(price.tilt().studTilt(), price.tilt().raceways(), price.lifeRatio());
      curves(price.life().bearing(), price.tilt().load());
    });
    for (String bore : bores) {
      YokePlan option = plan.withEars(bore);
      String name = "option." + bore;
      clearance(name, option.earFit());
      add(name + ".lean", option.pinTilt().byClearance());
      option.leanPrice().ifPresent(price -> add(name + ".life-ratio", price.lifeRatio()));
      option.ear().ifPresent(ear -> pressed(ear, plan.fork().pressingFriction(), name, "ear"));
    }
  }

  // Both

  private void price(Angle lean, Angle raceways, double ratio) {
    add("price.lean", lean);
    add("price.raceway-tilt", raceways);
    add("price.life-ratio", ratio);
  }

  private void curves(TiltedBearing bearing, Force load) {
    for (double share : new double[] {0.5, 1, 2}) {
      for (int tilt = 1; tilt <= 2; tilt++) {
        String name = "price.curve." + (share < 1 ? "0.5" : "" + (int) share) + "-load." + tilt + "-mrad";
        add(name, bearing.life(load.times(share), new Angle(tilt * 1e-3)).lifeRatio());
      }
    }
  }

  private void grease(GreaseQuantity quantity, FirstFill fill, Optional<RelubricationInterval> known) {
    add("grease.quantity", quantity.mass());
    add("grease.first-fill.least", fill.least());
    add("grease.first-fill.greatest", fill.greatest());
    known.ifPresent(interval -> {
      add("grease.interval-before-factors", interval.begin().interval());
      add("grease.interval", interval.interval());
    });
  }

  private void common(MountingPlan plan) {
    add("life.mean-load", plan.meanLoad());
    add("life.basic", plan.life().at(Reliability.L10).millionRevolutions());
    add("life.basic.hours", plan.life().at(Reliability.L10).hours(plan.duty().speed()));
    add("life.kappa", plan.lubrication().kappa());
    RatedLife modified = plan.modifiedLife();
    add("life.modified", modified.millionRevolutions());
    if (modified instanceof ModifiedLife one) {
      add("life.aiso", one.modification());
      add("life.fatigue-limit", one.fatigueLimit());
    } else {
      // Estimated from C0 alone, whatever the load.
      add("life.fatigue-limit", RatingLife.modified(plan.roller().ratings(), plan.meanLoad(), plan.duty().reliability(),
          plan.lubrication(), Contamination.of(ContaminationLevel.NORMAL_CLEANLINESS)).fatigueLimit());
    }
    otherReading(plan);
    add("life.modified.hours", modified.hours(plan.duty().speed()));
    plan.hoursOfBendingRing().ifPresent(hours -> {
      add("life.bending-ring.least", hours.get(0));
      add("life.bending-ring.greatest", hours.get(1));
    });
    if (plan.countedLean().counted()) {
      add("life.lean-factor", plan.countedLean().factor());
    }
    add("life.replace-after", plan.replaceAfter());
    add("life.times-wanted", plan.replaceAfter().ratio(plan.duty().wantedLife()));
    for (LimitCheck check : plan.allLimits().checks()) {
      String name = "limit." + check.name();
      add(name + ".demand", check.demand());
      add(name + ".permitted", check.permitted());
      check.margin().ifPresent(margin -> add(name + ".margin", margin));
    }
    add("limit.governing.margin", plan.allLimits().governing().margin().orElseThrow());
    track(plan);
  }

  /** The sheet alone prints it: the life with the dirt read by the other part of the standard. */
  private void otherReading(MountingPlan plan) {
    plan.sheet().sections().stream()
        .flatMap(section -> section.blocks().stream())
        .filter(block -> block instanceof Block.Entry entry && entry.label().startsWith("The same by the other reading"))
        .map(block -> ((Block.Entry) block).value())
        .findFirst()
        .map(HOURS::matcher)
        .filter(Matcher::find)
        .ifPresent(found -> add("life.modified.other-reading", Double.parseDouble(found.group(1))));
  }

  private void track(MountingPlan plan) {
    MountedRoller roller = plan.roller();
    ContactPair pair =
        ContactPair.ofSteel(
            roller.crowned()
                ? ContactSurface.crowned(roller.outsideDiameter(), roller.crownRadius())
                : ContactSurface.cylinder(roller.outsideDiameter()),
            plan.duty().track());
    if (roller.crowned()) {
      EllipticalContact contact = pair.ellipse(plan.duty().load(), roller.ringWidth());
      peak(contact.peakPressure(), contact.largestShear());
    } else {
      LineContact contact = pair.line(plan.duty().load(), roller.ringWidth());
      peak(contact.peakPressure(), contact.largestShear());
    }
  }

  private void peak(Stress peak, StressPeak shear) {
    add("track.peak", peak);
    add("track.shear", shear.stress());
    add("track.shear-depth", shear.depth());
  }

  private void fleet(InstallationPlan plan) {
    FleetDuty fleet = plan.fleet();
    if (fleet == null) {
      return;
    }
    double l10 = plan.replaceAfter().hours() / plan.duty().reliability().a1();
    FleetPlan places = FleetPlan.of(h -> ReliabilityKernel.survival(h / l10), fleet.positions());
    GroupReplacement together = places.groupReplacement(fleet.reliability());
    add("fleet.together.years", together.years());
    add("fleet.together.hours", together.hours());
    add("fleet.each.years", places.replacementOfEach(plan.duty().reliability().percent() / 100).years());
    List<FleetPosition> due = places.due(together);
    add("fleet.due-now", due.size());
    Spares spares = places.renewed(due).spares(0, fleet.leadYears(), fleet.serviceLevel());
    add("fleet.spares.demand", spares.meanDemand());
    add("fleet.spares.stock", spares.stock());
    add("fleet.spares.served", spares.reached());
  }
}
