// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.quantity.Numbers;
import holdfast.quantity.Quantity;
import holdfast.seats.Band;
import holdfast.seats.CriticalStress;
import holdfast.seats.FitLimits;
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
import holdfast.trace.Warning;
import java.util.List;

/** Slip, press or heat: how the stud gets into its bore. */
final class SeatSection {
  private static final SourceRef MAKER = SourceRef.commonPractice("as stated by the maker of the roller");
  private static final SourceRef ORIENT =
      SourceRef.published("Rolling bearings catalogue 17000 EN", "cam followers, mounting: the mark of the grease hole");

  private static final String NO_FIGURE =
      "no figure: a part is beyond its limit, and no method at hand covers what it does then";

  private SeatSection() {}

  static Section of(InstallationPlan plan) {
    return plan.fit().kind() == FitKind.CLEARANCE ? slip(plan) : press(plan, plan.seat().orElseThrow());
  }

  private static Section slip(InstallationPlan plan) {
    return orient(Section.of("Slip in", plan.units()))
        .entry("Tilt that the clearance allows", "up to " + plan.tilt().byClearance(), plan.tilt().sources())
        .notice(
            Block.Weight.SERIOUS,
            "Oil lightly and push the stud in by hand. Never hammer on the flange or the ring.",
            SourceRef.commonPractice("no blows on flange or ring while mounting"))
        .build();
  }

  private static Section press(InstallationPlan plan, InterferenceFit seat) {
    SheetUnits u = plan.units();
    Pressing pressing = seat.pressing(plan.member().pressingFriction());
    ThermalAssembly heat =
        seat.thermalAssembly()
            .ceiling(new TemperatureCeiling("the roller", plan.roller().hottest(), MAKER))
            .studFloor(plan.roller().coldest())
            .build();
    Section.Builder section =
        orient(Section.of("Press or heat", plan.units()))
            .entry("Joint pressure", pressure(seat, u), seat.sources())
            .entry("Press force at the end of the stroke", force(pressing, u), pressing.sources())
            .entry("Stress by the tightest pair",
                limits(seat.limits(YieldRule.VON_MISES), u, "stud", "member"), seat.sources())
            .entry("Heating the member for a cold stud", heat.advice("stud", "member"), heat.sources());
    if (plan.fit().kind() == FitKind.TRANSITION) {
      section.entry("Tilt that the loosest pair allows", "up to " + plan.tilt().byClearance(), plan.tilt().sources());
    }
    SeatLimits.plastic(seat).ifPresent(plastic -> section.entry("The member yields", plastic.toString(), plastic.sources()));
    ServiceState work = plan.seatAtWork().orElseThrow();
    section.entry(
        "At work, " + u.text(plan.duty().workingTemperature()), "joint pressure " + atWork(work, u), work.sources());
    work.lossTemperature()
        .ifPresent(loss ->
            section.entry("The loosest pair lets go at", u.text(loss) + ", both parts alike", work.sources()));
    return section
        .warnings(seat.warnings())
        .warnings(work.warnings())
        .warnings(onTheWay(heat))
        .cautions(heat.benchCautions())
        .cautions(Cautions.of("push-stud-middle", "support-member", "press-straight", "clear-of-ram", "force-rating",
            "soft-drift-on-stud", "no-steel-on-steel", "feeler-at-shoulder"))
        .blank("H2  Released for pressing by", "")
        .blank("Greatest press force seen", u.forceUnit())
        .build();
  }

  private static Section.Builder orient(Section.Builder section) {
    return section.notice(
        Block.Weight.ADVICE,
        "The mark on the head shows the grease hole of the raceway: turn it away from the loaded side.",
        ORIENT);
  }

  /** Warnings on the way by heat or cold that is open; if none is, the advice has said it. */
  static List<Warning> onTheWay(ThermalAssembly heat) {
    return heat.workable().map(ThermalAssembly::warnings).orElse(List.of());
  }

  static <Q extends Quantity<Q>> String band(Band<Q> band, SheetUnits u) {
    return u.span(band.least(), band.greatest());
  }

  /** No elastic figure is printed beyond yield: the elastic-plastic one, or none. */
  static String pressure(InterferenceFit seat, SheetUnits u) {
    return held(seat.validity(), band(seat.attainedPressure(), u));
  }

  static String force(Pressing pressing, SheetUnits u) {
    return held(pressing.fit().validity(), band(pressing.pressIn(), u) + ", friction " + pressing.friction());
  }

  static String atWork(ServiceState work, SheetUnits u) {
    return held(work.validity(), band(work.pressure(), u));
  }

  static String held(InterferenceFit.Validity validity, String figure) {
    return switch (validity) {
      case ELASTIC -> figure;
      case ELASTIC_PLASTIC -> figure + ", the outer part yields: elastic-plastic figure";
      case BEYOND -> NO_FIGURE;
    };
  }

  static String limits(FitLimits limits, SheetUnits u, String inner, String outer) {
    return inner + " " + part(limits.stud(), u) + "; " + outer + " " + part(limits.housing(), u);
  }

  /** Empty where smoothing leaves no pressure, so that the safety has no number. */
  static String safety(FitLimits.PartLimit limit) {
    return limit.safety().isPresent() ? ", safety " + Numbers.significant(limit.safety().getAsDouble(), 3) : "";
  }

  private static String place(CriticalStress.Place place) {
    return switch (place) {
      case STUD_AXIS -> "on its axis";
      case HOLE_WALL -> "at the wall of its hole";
      case STUD_JOINT -> "at its surface";
      case HOUSING_BORE -> "at its bore";
      case HOUSING_OUTSIDE -> "at its outside";
    };
  }

  private static String part(FitLimits.PartLimit limit, SheetUnits u) {
    String stress = u.text(limit.stress()) + " " + place(limit.place()) + " (" + limit.measure() + ")";
    return limit.knownStrength()
        .map(strength -> (limit.exceeded() ? "would have " : "") + stress + ", " + limit.strengthName() + " "
            + u.text(strength) + safety(limit) + (limit.exceeded() ? " — EXCEEDED, elastic figure" : ""))
        .orElse(stress + ", " + limit.criterion());
  }
}
