// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.seats.FitLimits;
import holdfast.seats.InterferenceFit;
import holdfast.seats.YieldRule;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.util.ArrayList;
import java.util.List;

/** What a loose seat costs in life, and what other bores would cost and buy. */
final class PriceSection {
  private static final SourceRef CHOICE = SourceRef.derived("the plan computed again with this bore alone");

  private PriceSection() {}

  static Section of(InstallationPlan plan) {
    Section.Builder section = Section.of("What the seat costs");
    plan.seatPrice().ifPresent(price -> price(section, price));
    for (String bore : bores(plan)) {
      section.entry("With bore " + bore, option(plan.withBore(bore)), CHOICE);
    }
    plan.seatPrice().ifPresent(price -> section.picture(TiltPicture.of(price, plan.units())).warnings(price.warnings()));
    return section.build();
  }

  /** A tighter pair that is no better than the one before it needs no line of its own. */
  private static void price(Section.Builder section, SeatPrice price) {
    List<SourceRef> sources = price.sources();
    String before = "";
    for (PricedPair pair : price.pairs()) {
      String tight =
          pair.lifeRatioNutTight()
              .map(ratio -> ", " + Numbers.significant(ratio, 2) + " with the nut tight on a face as stated")
              .orElse("");
      String text = Numbers.significant(pair.lifeRatio(), 2) + " of the aligned life at " + pair.tilt().studTilt()
          + " of the stud" + tight;
      if (!text.equals(before)) {
        section.entry("Life ratio, " + pair.name(), text, sources);
      }
      before = text;
      sources = List.of();
    }
  }

  /** The bore of the plan, then the practices of the trade for its stud. */
  private static List<String> bores(InstallationPlan plan) {
    List<String> bores = new ArrayList<>(List.of(plan.member().boreTolerance()));
    for (String usual : SeatOptions.usual(plan.roller())) {
      if (!bores.contains(usual)) {
        bores.add(usual);
      }
    }
    return bores;
  }

  private static String option(InstallationPlan plan) {
    SheetUnits u = plan.units();
    Fit fit;
    try {
      fit = plan.fit();
    } catch (InputException undefined) {
      return "not defined for this size";
    }
    String ratio = plan.seatPrice().map(price -> ", life ratio " + Numbers.significant(price.lifeRatio(), 2)).orElse("");
    String lean = fit.maximumClearance().mm() > 0 ? "leans up to " + plan.tilt().byClearance() : "does not lean";
    return PartsSection.span(fit, u) + "; " + lean + ratio + "; "
        + plan.seat().map(seat -> pressed(plan, seat)).orElse("slips in") + "; hold " + u.text(plan.torqueToBeHeld());
  }

  private static String pressed(InstallationPlan plan, InterferenceFit seat) {
    SheetUnits u = plan.units();
    FitLimits.PartLimit member = seat.limits(YieldRule.VON_MISES).housing();
    return "press " + SeatSection.band(seat.pressing(plan.member().pressingFriction()).pressIn(), u)
        + (member.pressure().isEmpty() ? "" : " (member" + SeatSection.safety(member) + ")");
  }
}
