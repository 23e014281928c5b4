package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.quantity.KnownUnits;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Pressing;
import holdfast.seats.ServiceState;
import holdfast.seats.TemperatureCeiling;
import holdfast.seats.ThermalAssembly;
import holdfast.seats.YieldRule;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;

/** Slip, press or heat: how the stud gets into its bore. */
final class SeatSection {
  private static final SourceRef MAKER = SourceRef.commonPractice("as stated by the maker of the roller");

  private SeatSection() {}

  static Section of(InstallationPlan plan) {
    return plan.fit().kind() == FitKind.CLEARANCE ? slip(plan) : press(plan, plan.seat().orElseThrow());
  }

  private static Section slip(InstallationPlan plan) {
    return Section.of("Slip in")
        .entry("Tilt that the clearance allows", "up to " + plan.tilt().byClearance(), plan.tilt().sources())
        .notice(
            Block.Weight.CAUTION,
            "Oil lightly and push the stud in by hand. Never hammer on the flange or the ring.",
            SourceRef.published("Needle roller bearing catalogue", "mounting of cam followers"))
        .build();
  }

  private static Section press(InstallationPlan plan, InterferenceFit seat) {
    Pressing pressing = seat.pressing(plan.member().pressingFriction());
    ThermalAssembly heat =
        seat.thermalAssembly()
            .ceiling(new TemperatureCeiling("the roller", plan.roller().hottest(), MAKER))
            .studFloor(plan.roller().coldest())
            .build();
    Section.Builder section =
        Section.of("Press or heat")
            .entry("Joint pressure", seat.pressure().toString(), seat.sources())
            .entry("Press force at the end of the stroke", pressing.pressIn().toString(), pressing.sources())
            .entry("Friction while pressing", pressing.friction().toString(), pressing.friction().source())
            .entry("Limits under the tightest pair", seat.limits(YieldRule.VON_MISES).toString(), seat.sources())
            .entry("Heating the member for a cold stud", heat.advice(), heat.sources());
    if (plan.fit().kind() == FitKind.TRANSITION) {
      section.entry("Tilt that the loosest pair allows", "up to " + plan.tilt().byClearance(), plan.tilt().sources());
    }
    ServiceState work = plan.seatAtWork().orElseThrow();
    section.entry("At work, " + plan.duty().workingTemperature(), "joint pressure " + work.pressure(), work.sources());
    work.lossTemperature()
        .ifPresent(loss -> section.entry("The loosest pair lets go at", loss + ", both parts alike", work.sources()));
    return section
        .warnings(seat.warnings())
        .warnings(work.warnings())
        .cautions(Cautions.about("press", 2, 3, 4, 5))
        .cautions(Cautions.about("drive", 2))
        .blank("Greatest press force seen", KnownUnits.KN.symbol())
        .build();
  }
}
