// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.failures.Margin;
import holdfast.installation.LimitCheck.Bound;
import holdfast.installation.LimitCheck.Consequence;
import holdfast.quantity.Stress;
import holdfast.quantity.Temperature;
import holdfast.seats.ElasticPlasticFit;
import holdfast.seats.FitLimits;
import holdfast.seats.InterferenceFit;
import holdfast.seats.YieldRule;
import holdfast.tables.SourceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a press fit asks of both parts, at the bench and at work: yield of either, fracture of a part that does not yield. */
final class SeatLimits {
  /** A part that breaks without warning keeps this safety. */
  private static final double BRITTLE_SAFETY = 2;

  private static final SourceRef PRACTICE =
      SourceRef.commonPractice("a press fit in a part that breaks without yielding keeps a safety of 2 against fracture");

  private SeatLimits() {}

  /**
   * The greatest pressure counts, whether the parts are in the shop or at work. A housing that yields presses less than an
   * elastic one; the inner part is judged by the elastic pressure all the same, because a housing whose yield strength lies
   * above the least value stated does not yield so early.
   */
  static void add(LimitList limits, InterferenceFit seat, Temperature working, String inner, String outer) {
    Stress shop = seat.atWork(InstallationPlan.SHOP, InstallationPlan.SHOP).pressure().greatest();
    Stress work = seat.atWork(working, working).pressure().greatest();
    Stress greatest = shop.compareTo(work) >= 0 ? shop : work;
    FitLimits elastic = seat.limits(YieldRule.VON_MISES);
    Stress unrelieved = seat.pressure().greatest();
    part(limits, inner, elastic.stud(), greatest.compareTo(unrelieved) >= 0 ? greatest : unrelieved, seat, Consequence.STOP);
    boolean plastic = work.compareTo(shop) <= 0 && plastic(seat).isPresent();
    part(limits, outer, elastic.housing(), greatest, seat, plastic ? Consequence.WARNING : Consequence.STOP);
  }

  private static void part(LimitList limits, String name, FitLimits.PartLimit limit, Stress pressure, InterferenceFit seat,
      Consequence consequence) {
    if (limit.pressure().isEmpty()) {
      limits.unknown("strength-not-known", limit.criterion() + ": what the press fit does to the " + name + " is not judged",
          PRACTICE);
      return;
    }
    List<SourceRef> sources = new ArrayList<>(seat.sources());
    if (limit.brittle()) {
      sources.add(PRACTICE);
      limits.add("press fit, " + name + ", half of its fracture", pressure, Bound.AT_MOST,
          limit.limitPressure().dividedBy(BRITTLE_SAFETY), Consequence.STOP, Margin.HOOP_STRESS, sources);
    } else {
      limits.add("press fit, " + name + " yields", pressure, Bound.AT_MOST, limit.limitPressure(), consequence,
          Margin.HOOP_STRESS, sources);
    }
  }

  /** The fit with a housing that yields, if it does and stays within what the method allows. */
  static Optional<ElasticPlasticFit> plastic(InterferenceFit seat) {
    FitLimits.PartLimit housing = seat.limits(YieldRule.VON_MISES).housing();
    if (housing.brittle() || !housing.exceeded()) {
      return Optional.empty();
    }
    ElasticPlasticFit fit = ElasticPlasticFit.of(seat, YieldRule.TRESCA);
    return fit.warnings().isEmpty() ? Optional.of(fit) : Optional.empty();
  }
}
