// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Torque;
import holdfast.seats.FitLimits;
import holdfast.seats.FrictionBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.SeatTilt;
import holdfast.seats.YieldRule;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a loose seat costs in life, and what other bores would cost and buy. */
final class PriceSection {
  private static final SourceRef CHOICE = SourceRef.derived("the plan computed again with this bore alone");

  private static final String NO_PRICE = "The lean has no price in life: lean, load or inside of the roller are out of the range"
      + " of the method.";
  private static final String UNDEFINED = "not defined for this size";

  private PriceSection() {}

  static Section of(InstallationPlan plan) {
    Section.Builder section = Section.of("What the seat costs", plan.units());
    Optional<SeatPrice> known = price(plan);
    if (known.isEmpty() && plan.roller().knownInterior().isPresent()) {
      section.notice(Block.Weight.NOTE, NO_PRICE, CHOICE);
    }
    known.ifPresent(price -> price(section, price));
    for (String bore : bores(plan.roller().studDiameter(), plan.member().boreTolerance(),
        SeatOptions.usual(plan.roller()))) {
      section.entry("With bore " + bore, defined(() -> plan.withBore(bore)).map(PriceSection::option).orElse(UNDEFINED), CHOICE);
    }
    known.ifPresent(price -> section.picture(TiltPicture.of(price, plan.units())).warnings(price.warnings()));
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

  static Section of(YokePlan plan) {
    Section.Builder section = Section.of("What the seat costs", plan.units());
    Optional<LeanPrice> price = price(plan);
    if (price.isEmpty() && plan.roller().knownInterior().isPresent()) {
      section.notice(Block.Weight.NOTE, NO_PRICE, CHOICE);
    }
    price.ifPresent(known -> section.entry("Life ratio, loosest pairs", Numbers.significant(known.lifeRatio(), 2)
        + " of the aligned life at " + known.tilt().studTilt() + " of the roller on its pin", known.sources()));
    for (String bore : bores(plan.roller().bore(), plan.fork().boreTolerance(),
        SeatOptions.usualFor(plan.roller().bore(), plan.pin().tolerance()))) {
      section.entry("With ears " + bore, defined(() -> plan.withEars(bore)).map(PriceSection::option).orElse(UNDEFINED), CHOICE);
    }
    price.ifPresent(known ->
        section.picture(TiltPicture.of(known, "loosest pairs", plan.units())).warnings(known.warnings()));
    return section.build();
  }

  /** No price where lean or roller are out of the range of the method. */
  private static Optional<SeatPrice> price(InstallationPlan plan) {
    return defined(plan::seatPrice).flatMap(Function.identity());
  }

  private static Optional<LeanPrice> price(YokePlan plan) {
    return defined(plan::leanPrice).flatMap(Function.identity());
  }

  /** The bore of the plan, then the practices of the trade for its stud or pin; each once. */
  private static List<String> bores(Length size, String planned, List<String> usual) {
    List<String> bores = new ArrayList<>(List.of(planned));
    bores.addAll(usual);
    return SeatOptions.distinct(size, bores);
  }

  private static String option(InstallationPlan plan) {
    SheetUnits u = plan.units();
    Fit fit = plan.fit();
    return PartsSection.span(fit, u) + "; " + lean(plan.tilt())
        + ratio(price(plan).map(SeatPrice::lifeRatio)) + "; "
        + plan.seat().map(seat -> pressed(seat, plan.member().pressingFriction(), "member", u)).orElse("slips in")
        + "; " + hold(plan.torqueToBeHeld(), u);
  }

  private static String hold(Torque torque, SheetUnits u) {
    return torque.newtonMillimetre() == 0 ? "the seat holds the stud" : "hold " + u.text(torque);
  }

  private static String option(YokePlan plan) {
    SheetUnits u = plan.units();
    Fit fit = plan.earFit();
    return PartsSection.span(fit, u) + "; " + lean(plan.pinTilt())
        + ratio(price(plan).map(LeanPrice::lifeRatio)) + "; "
        + plan.ear().map(ear -> "each ear: " + pressed(ear, plan.fork().pressingFriction(), "ear", u)).orElse("slips in");
  }

  private static <P> Optional<P> defined(Supplier<P> plan) {
    try {
      return Optional.of(plan.get());
    } catch (InputException undefined) {
      return Optional.empty();
    }
  }

  private static String lean(SeatTilt tilt) {
    return tilt.byClearance().radian() > 0 ? "its play lets it lean up to " + tilt.byClearance() : "no play to lean in";
  }

  private static String ratio(Optional<Double> lifeRatio) {
    return lifeRatio.map(ratio -> ", life ratio " + Numbers.significant(ratio, 2)).orElse("");
  }

  private static String pressed(InterferenceFit seat, FrictionBand friction, String outer, SheetUnits u) {
    FitLimits.PartLimit limit = seat.limits(YieldRule.VON_MISES).housing();
    return "press " + SeatSection.held(seat.validity(), SeatSection.band(seat.pressing(friction).pressIn(), u))
        + (limit.knownStrength().isEmpty() ? "" : " (" + outer + SeatSection.safety(limit) + ")");
  }
}
