// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.questions;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.N;
import static holdfast.quantity.Units.deg;
import static holdfast.quantity.Units.g;
import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.lbf;
import static holdfast.quantity.Units.mPerS;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.rpm;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.OuterRing;
import holdfast.bearings.RatingLife;
import holdfast.bearings.Reliability;
import holdfast.bearings.TrackRoller;
import holdfast.contact.ContactPair;
import holdfast.contact.ContactSurface;
import holdfast.contact.TrackCapacity;
import holdfast.quantity.Force;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollingStart;
import holdfast.rollers.SpeedLimit;
import holdfast.seats.ShankSection;
import holdfast.seats.StudLoad;
import holdfast.seats.StudStrength;

/** Answers to the questions of load, life and track: 12 to 21. */
final class LoadAnswers {
  private static final LoadRatings INCH = LoadRatings.trackRoller(lbf(9500), lbf(11000), OuterRing.DEFLECTING);
  private static final TrackRoller METRIC =
      TrackRoller.of(LoadRatings.trackRoller(kN(12.1), kN(17.9), OuterRing.DEFLECTING), mm(35), false);
  private static final LoadSpectrum DUTY =
      LoadSpectrum.builder()
          .step(lbf(1800), rpm(100), 0.2)
          .step(lbf(900), rpm(300), 0.5)
          .step(lbf(300), rpm(400), 0.3)
          .build();

  private LoadAnswers() {}

  static double of(int question, String quantity) {
    return switch (question) {
      case 12 -> StudStrength.of(
              ShankSection.solid(inch("7/8")),
              StudLoad.radial(lbf(6000), RollerSeries.INCH_STANDARD_STUD.size(inch(2)).ringWidth(), inch("1/32")))
          .bending().in(KnownUnits.KSI);
      case 14 -> new TrackCapacity(kN(1), 32, false).factor();
      case 15 -> flatOverCrowned();
      case 16 -> quantity.endsWith("over life at 90 %")
          ? hoursAt(Reliability.ofPercent(99)) / hoursAt(Reliability.L10)
          : hoursAt(Reliability.L10);
      case 17 -> quantity.equals("mean load")
          ? DUTY.meanLoad(BearingFamily.RADIAL_ROLLER).in(KnownUnits.LBF)
          : DUTY.meanSpeed().rpm();
      case 18 -> RatingLife.basic(INCH, lbf(900)).oscillating(deg(20)).millionCycles();
      case 19 -> speedLimit(quantity).limit().rpm();
      case 20 -> quantity.equals("speed of the roller") ? METRIC.speedOnCam(rpm(80), mm(300)).rpm() : sealedShare();
      case 21 -> quantity.equals("least load") ? METRIC.minimumLoad().newton() : start().newton();
      default -> throw QuestionSuites.unknown(quantity);
    };
  }

  private static double hoursAt(Reliability reliability) {
    return RatingLife.basic(INCH, lbf(900), reliability).hours(rpm(300)).hours();
  }

  private static double flatOverCrowned() {
    Length width = mm(16.8);
    Force flat = ContactPair.ofSteel(ContactSurface.cylinder(mm(35)), ContactSurface.flat()).line(N(1), width).forceAt(MPa(1200));
    Force crowned = ContactPair.ofSteel(ContactSurface.crowned(mm(35), mm(500)), ContactSurface.flat())
        .ellipse(N(1), width).forceAt(MPa(1200));
    return flat.ratio(crowned);
  }

  private static SpeedLimit speedLimit(String quantity) {
    RollerKind kind =
        switch (quantity) {
          case "speed limit, caged needles" -> RollerKind.CAGED_NEEDLE;
          case "speed limit, full complement" -> RollerKind.FULL_COMPLEMENT_NEEDLE;
          case "speed limit, two rows" -> RollerKind.DOUBLE_ROW_CYLINDRICAL;
          default -> throw QuestionSuites.unknown(quantity);
        };
    return SpeedLimit.greased(kind, mm(16));
  }

  private static double sealedShare() {
    SpeedLimit open = speedLimit("speed limit, full complement");
    return open.withSeals().limit().ratio(open.limit());
  }

  private static Force start() {
    return RollingStart.of(mm(35), mm(25), g(66), mPerS(3), mm(20)).leastLoad(0.10);
  }
}
