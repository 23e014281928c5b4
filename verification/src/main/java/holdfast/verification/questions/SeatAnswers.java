// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.questions;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;

import holdfast.fits.Fit;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.Force;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.rollers.RollerSeries;
import holdfast.seats.FrictionBand;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.SeatTilt;

/** Answers to the questions of seat, press and heat: 1 to 7. */
final class SeatAnswers {
  private static final Material STEEL = Material.of("steel");

  private SeatAnswers() {}

  static double of(int question, String quantity) {
    return switch (question) {
      case 1 -> inchSeat(quantity);
      case 3 -> quantity.startsWith("upper")
          ? h7().hole().deviations().upper().in(KnownUnits.UM)
          : h7().maximumClearance().in(KnownUnits.UM);
      case 4 -> SeatTilt.of(h7().maximumClearance(), mm(16), RollerSeries.METRIC.size(mm(35)).stud().shankLength())
          .build().total().in(KnownUnits.MRAD);
      case 5 -> SeatTilt.squareness(KnownUnits.MRAD.of(1), 0.5, RollerSeries.METRIC.size(mm(35)).safeFaceDiameter()).mm();
      case 6 -> press(quantity);
      case 7 -> heat();
      default -> throw QuestionSuites.unknown(quantity);
    };
  }

  private static Fit h7() {
    return Fit.of(mm(16), "H7/h7");
  }

  private static double inchSeat(String quantity) {
    TolerancedSize reamed = TolerancedSize.of(inch("5/8"), "+0.0005/0 in");
    Fit slip = Fit.of(reamed, TolerancedSize.of(inch("5/8"), "+0.001/0 in"));
    Fit f7 = Fit.of(TolerancedSize.of(inch("5/8"), "F7"), TolerancedSize.of(inch("5/8"), "+0.025/0 mm"));
    return switch (quantity) {
      case "upper limit of the reamed hole" -> reamed.limits().upper().in(KnownUnits.INCH);
      case "greatest interference, reamed hole" -> slip.maximumInterference().in(KnownUnits.INCH);
      case "greatest clearance, reamed hole" -> slip.maximumClearance().in(KnownUnits.INCH);
      case "greatest clearance, hole F7" -> f7.maximumClearance().mm();
      case "greatest interference, hole F7" -> f7.maximumInterference().mm();
      default -> throw QuestionSuites.unknown(quantity);
    };
  }

  private static double press(String quantity) {
    InterferenceFit fit = tight(inch("5/8"), inch("1-1/4"), inch(0.001), mm(19));
    if (quantity.equals("pressure")) {
      return fit.pressure().greatest().megapascal();
    }
    double friction = Double.parseDouble(quantity.substring(quantity.lastIndexOf(' ') + 1));
    Force force = fit.pressInForce(FrictionBand.of(friction, friction)).greatest();
    return force.in(KnownUnits.KN);
  }

  private static double heat() {
    InterferenceFit fit = tight(mm(16), mm(32), um(25), mm(15.5));
    return fit.thermalAssembly().clearance(um(20)).build().housingTemperature().celsius() - 20;
  }

  private static InterferenceFit tight(Length joint, Length outside, Length interference, Length length) {
    return InterferenceFit.of(InnerPart.solid(STEEL), OuterPart.ring(STEEL, outside),
        InterferenceBand.of(joint, interference, interference), length);
  }
}
