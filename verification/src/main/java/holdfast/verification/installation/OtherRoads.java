// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import holdfast.bearings.DutyKernel;
import holdfast.bearings.WeibullKernel;
import holdfast.contact.EllipticalContactKernel;
import holdfast.contact.LineContactKernel;
import holdfast.rollers.RollerSpeedKernel;
import holdfast.seats.SeatGeometryKernel;
import holdfast.seats.StudBeamKernel;
import holdfast.seats.StudBendingKernel;
import holdfast.seats.ThickRingKernel;
import holdfast.verification.CalculationSuite;
import holdfast.verification.NamedInputs;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Parts of a job against values that general-purpose libraries reach by another road. */
final class OtherRoads {
  private static final Map<String, ToDoubleFunction<NamedInputs>> CALCULATIONS = Map.ofEntries(
      Map.entry("force of a line contact",
          x -> LineContactKernel.forceAtPressure(x.get("p"), x.get("L"), x.get("R"), x.get("E"))),
      Map.entry("force of an elliptical contact",
          x -> EllipticalContactKernel.forceAtPressure(x.get("p"), x.get("E"), x.get("B"), x.get("A"))),
      Map.entry("Weibull scale", x -> WeibullKernel.scale(x.get("life"), x.get("share"), x.get("beta"), x.get("gamma"))),
      Map.entry("squareness", x -> SeatGeometryKernel.squareness(x.get("phi"), x.get("share"), x.get("DF"))),
      Map.entry("driving moment", x -> RollerSpeedKernel.drivingMoment(x.get("mu"), x.get("F"), x.get("D"))),
      Map.entry("sinusoid", x -> DutyKernel.sinusoid(x.get("p"), x.get("Pmax"))),
      Map.entry("linear rule", x -> DutyKernel.linearRule(x.get("Pmin"), x.get("Pmax"))),
      Map.entry("stationary and rotating", x -> DutyKernel.stationaryAndRotating(x.get("F1"), x.get("F2"))),
      Map.entry("slope of a beam", x -> StudBeamKernel.slopeOfForce(x.get("F"), x.get("a"), x.get("x"), x.get("EI"))),
      Map.entry("bending stress", x -> StudBendingKernel.bendingStress(x.get("M"), x.get("d"), x.get("di"))),
      Map.entry("displacement of a closed ring", x -> ThickRingKernel.radialDisplacementClosed(
          x.get("r"), x.get("a"), x.get("b"), x.get("pi"), x.get("po"), x.get("E"), x.get("nu"))));

  private OtherRoads() {}

  static Suite suite() {
    return CalculationSuite.of(
        "installation/other-roads", "Parts of a job against values reached by another road", CALCULATIONS,
        List.of("holdfast.contact.EllipticalContactKernel#forceAtPressure", "holdfast.contact.LineContactKernel#forceAtPressure",
            "holdfast.bearings.WeibullKernel#scale", "holdfast.seats.SeatGeometryKernel#squareness",
            "holdfast.rollers.RollerSpeedKernel#drivingMoment", "holdfast.bearings.DutyKernel#sinusoid",
            "holdfast.bearings.DutyKernel#linearRule", "holdfast.bearings.DutyKernel#stationaryAndRotating",
            "holdfast.seats.StudBeamKernel#slopeOfForce", "holdfast.seats.StudBendingKernel#bendingStress",
            "holdfast.seats.ThickRingKernel#radialDisplacementClosed"));
  }
}
