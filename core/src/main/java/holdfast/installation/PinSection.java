// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Pressing;
import holdfast.seats.ServiceState;
import holdfast.seats.TemperatureCeiling;
import holdfast.seats.ThermalAssembly;
import holdfast.seats.YieldRule;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;

/** How the pin gets through ears and roller, and what keeps it there. */
final class PinSection {
  private static final SourceRef MOUNT =
      SourceRef.published("Cam followers catalogue 2008", "mounting of yoke rollers: pin, end plates, side rails");
  private static final SourceRef ORIENT =
      SourceRef.published("Rolling bearings catalogue 17000 EN", "cam followers, mounting: the mark of the grease hole");
  private static final SourceRef BOTH =
      SourceRef.derived("the pin is tight in both ears, and in the inner ring, at the end of the stroke");
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");

  private PinSection() {}

  static Section of(YokePlan plan) {
    Section.Builder section =
        Section.of("Fit and secure the pin", plan.units())
            .notice(Block.Weight.ADVICE, "A hole in the raceway belongs beside the load: turn the inner ring and the cross hole"
                + " of the pin so. Break the edge of the first ear, or give the pin a lead-in chamfer.", ORIENT, MOUNT);
    plan.ear().ifPresentOrElse(ear -> press(section, plan, ear), () -> slip(section, plan));
    return section
        .entry("Side of the roller", plan.fork().ringClamped()
            ? "the inner ring is clamped between ears or spacers" : "guide the ring by end plates or closely fitting side rails",
            MOUNT)
        .entry("The pin is secured by", secured(plan), GIVEN)
        .blank("Roller turns freely between the ears", "")
        .blank("H3  Pin secured by", "")
        .build();
  }

  private static String secured(YokePlan plan) {
    PinSecuring securing = plan.pin().securing();
    boolean loose = plan.earFit().kind() != FitKind.INTERFERENCE;
    return securing + (loose && !securing.againstTurning() ? "; a loose pin may still turn and wear the ears: lock it" : "");
  }

  private static String atTheEnd(YokePlan plan) {
    return (plan.ear().isPresent() ? "both ears" : "")
        + (plan.ringSeat().isPresent() ? (plan.ear().isPresent() ? " and " : "") + "the inner ring" : "") + ": "
        + SeatSection.held(plan.pressValidity(), SeatSection.band(plan.pressForce().orElseThrow(), plan.units())
            + ", friction " + plan.fork().pressingFriction());
  }

  private static void slip(Section.Builder section, YokePlan plan) {
    if (plan.ringSeat().isPresent()) {
      section.entry("Press force at the end of the stroke", atTheEnd(plan), BOTH)
          .notice(Block.Weight.SERIOUS, "The tightest pair of pin and inner ring interferes: press the pin through the ring,"
              + " square and supported; never hammer on pin or ring: hardened steel chips.",
              Cautions.of("no-steel-on-steel").get(0).source());
      return;
    }
    section.notice(Block.Weight.SERIOUS,
        "Oil lightly and push the pin in by hand. Never hammer on pin or ring: hardened steel chips.",
        Cautions.of("no-steel-on-steel").get(0).source());
  }

  private static void press(Section.Builder section, YokePlan plan, InterferenceFit ear) {
    SheetUnits u = plan.units();
    Pressing one = ear.pressing(plan.fork().pressingFriction());
    // The roller sits between the ears while they are hot.
    ThermalAssembly heat =
        ear.thermalAssembly()
            .ceiling(new TemperatureCeiling("the roller", plan.roller().hottest(), RollerAtWork.MAKER))
            .build();
    ServiceState work = ear.atWork(plan.duty().workingTemperature(), plan.duty().workingTemperature());
    section
        .entry("Joint pressure in each ear", SeatSection.pressure(ear, u), ear.sources())
        .entry("Press force, in the first ear alone", SeatSection.force(one, u), one.sources())
        .entry("Press force at the end of the stroke", atTheEnd(plan), BOTH)
        .entry("Stress by the tightest pair",
            SeatSection.limits(ear.limits(YieldRule.VON_MISES), u, "pin", "ear"), ear.sources())
        .entry("Heating the fork for a cold pin",
            heat.advice("pin", "fork"), heat.sources())
        .entry("At work, " + u.text(plan.duty().workingTemperature()),
            "joint pressure " + SeatSection.atWork(work, u), work.sources());
    SeatLimits.plastic(ear).ifPresent(plastic -> section.entry("The ears yield", plastic.toString(), plastic.sources()));
    work.lossTemperature()
        .ifPresent(loss -> section.entry("The loosest pair lets go at", u.text(loss) + ", both parts alike", work.sources()));
    section
        .notice(Block.Weight.DAMAGE, "Support the ear that is pressed and put a spacer into the gap: ears bend together. Never"
            + " let the force of the press pass through the rolling elements.", MOUNT)
        .warnings(ear.warnings())
        .warnings(work.warnings())
        .warnings(SeatSection.onTheWay(heat))
        .cautions(heat.benchCautions())
        .cautions(Cautions.of("push-pin-end", "press-straight", "clear-of-ram", "force-rating", "no-steel-on-steel"))
        .blank("H2  Released for pressing by", "")
        .blank("Greatest press force seen", u.forceUnit());
  }
}
