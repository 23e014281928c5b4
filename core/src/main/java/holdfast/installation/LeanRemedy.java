// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Angle;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.OperatingTime;
import holdfast.seats.SeatTilt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which bore, face or clearance would leave a leaning roller the life that is wanted of it. */
final class LeanRemedy {
  private static final int HALVINGS = 30;

  private LeanRemedy() {}

  static String of(MountingPlan plan, OperatingTime aligned) {
    Angle most = greatestLean(plan, aligned);
    String lean = "the lean must stay within " + plan.units().text(rounded(most, 1e-5));
    return plan instanceof InstallationPlan stud ? lean + ofSeat(stud, most) : lean + ": take a tighter bore in the ears";
  }

  /** Bisection: the factor falls with the lean. */
  private static Angle greatestLean(MountingPlan plan, OperatingTime aligned) {
    double low = 0;
    double high = plan.countedLean().lean().radian();
    for (int i = 0; i < HALVINGS; i++) {
      double mid = (low + high) / 2;
      boolean lasts = enough(plan, CountedLean.at(plan, new Angle(mid)).of(aligned));
      low = lasts ? mid : low;
      high = lasts ? high : mid;
    }
    return new Angle(low);
  }

  static boolean enough(MountingPlan plan, OperatingTime life) {
    return life.compareTo(plan.duty().wantedLife()) >= 0;
  }

  private static String ofSeat(InstallationPlan plan, Angle most) {
    SeatTilt tilt = plan.tilt();
    double rest = most.radian() - tilt.byBending().radian()
        - plan.duty().statedTrackMisalignment().orElse(new Angle(0)).radian();
    if (rest <= 0) {
      return ", which bending and track alone take up: take a stiffer stud, less load or a straighter track";
    }
    Length clearance = rounded(new Length(rest * tilt.engagement().mm()));
    Length runOut = rounded(new Length(rest * plan.roller().flangeDiameter().mm()));
    List<String> bores = bores(plan);
    return ": a face that runs out by " + plan.units().text(runOut) + " at most, kept closed by the nut, or a clearance of "
        + plan.units().text(clearance) + " at most" + (bores.isEmpty() ? "" : ", as in bore " + String.join(" or ", bores));
  }

  /** Bores of the trade that leave the life and press nothing beyond its strength. */
  private static List<String> bores(InstallationPlan plan) {
    List<String> bores = new ArrayList<>();
    int exceeded = plan.allLimits().exceeded().size();
    for (String bore : SeatOptions.usual(plan.roller())) {
      option(plan, bore)
          .filter(option -> enough(plan, option.fatigueHours()))
          .filter(option -> option.allLimits().exceeded().size() <= exceeded)
          .ifPresent(option -> bores.add(bore));
    }
    return bores;
  }

  private static Optional<InstallationPlan> option(InstallationPlan plan, String bore) {
    try {
      return Optional.of(plan.withBore(bore));
    } catch (InputException undefined) {
      return Optional.empty();
    }
  }

  private static Length rounded(Length length) {
    return new Length(Math.floor(length.mm() * 1e4) / 1e4);
  }

  private static Angle rounded(Angle angle, double step) {
    return new Angle(Math.floor(angle.radian() / step) * step);
  }
}
