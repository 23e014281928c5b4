// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.bearings.ClearanceGroup;
import holdfast.fits.BearingRing;
import holdfast.fits.GeneralTolerance;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.seats.SeatRecommendation;
import holdfast.verification.CalculationSuite;
import holdfast.verification.NamedInputs;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Rings, clearances, general tolerances and seats against other copies of their tables, or recalled a second time. */
final class PartnerLookUps {
  private static final Map<String, ToDoubleFunction<NamedInputs>> LOOK_UPS = Map.of(
      "clearance least", x -> micrometres(ClearanceGroup.valueOf(x.word("group")).least(size(x, "d"))),
      "clearance greatest", x -> micrometres(ClearanceGroup.valueOf(x.word("group")).greatest(size(x, "d"))),
      "ring bore", x -> micrometres(BearingRing.bore(size(x, "d")).deviations().lower()),
      "ring outside", x -> micrometres(BearingRing.outside(size(x, "d")).deviations().lower()),
      "general tolerance", x -> GeneralTolerance.valueOf(x.word("class")).deviation(size(x, "size")).mm(),
      "seat upper deviation", PartnerLookUps::seat);

  private PartnerLookUps() {}

  static Suite suite() {
    return CalculationSuite.of(
        "fits/partner-look-ups", "Rings, clearances, general tolerances and seats against other copies", LOOK_UPS,
        List.of("holdfast.bearings.ClearanceGroup", "holdfast.fits.BearingRing", "holdfast.fits.GeneralTolerance",
            "holdfast.seats.SeatRecommendation"));
  }

  private static double seat(NamedInputs x) {
    Length diameter = size(x, "d");
    return SeatRecommendation.of(x.word("seat"), diameter).stream()
        .filter(row -> row.bearing().equals(x.word("bearing")))
        .filter(row -> row.loadCase().equals(x.word("case")) && row.load().equals(x.word("load")))
        .map(row -> micrometres(row.standardClass().orElseThrow().limitDeviations(diameter).upper()))
        .findFirst().orElseThrow();
  }

  private static Length size(NamedInputs x, String name) {
    return new Length(x.get(name));
  }

  private static double micrometres(Length length) {
    return length.in(KnownUnits.UM);
  }
}
