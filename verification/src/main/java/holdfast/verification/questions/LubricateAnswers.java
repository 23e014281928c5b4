// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.questions;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.lbf;
import static holdfast.quantity.Units.mm;

import holdfast.bearings.ReliabilityKernel;
import holdfast.fleet.FleetPlan;
import holdfast.lubrication.GreaseQuantity;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortPlan;
import holdfast.lubrication.PortRequest;
import holdfast.lubrication.TemperatureRule;
import holdfast.quantity.KnownUnits;
import holdfast.rollers.EccentricCollar;
import holdfast.rollers.RollerSeries;

/** Answers to the questions of grease, ports, eccentric and fleet: 22 to 25. */
final class LubricateAnswers {
  private static final FleetPlan FLEET = FleetPlan.ofLike(h -> ReliabilityKernel.survival(h / 20000), 40, 1500);

  private LubricateAnswers() {}

  static double of(int question, String quantity) {
    EccentricCollar collar = new EccentricCollar(kN(12.1), mm(0.8));
    return switch (quantity) {
      case "quantity of grease" -> GreaseQuantity.throughStud(RollerSeries.METRIC.size(mm(35))).mass().gram();
      case "quantity of grease, example" -> GreaseQuantity.throughStud(mm(300), mm(102)).mass().gram();
      case "temperature factor" -> TemperatureRule.HALVE_PER_15_K_ABOVE_70.factor(90);
      case "temperature factor, other rule" -> TemperatureRule.DIVIDE_BY_1_5_PER_10_K_ABOVE_80.factor(90);
      case "adjusting torque" -> collar.adjustingTorque().in(KnownUnits.N_MM);
      case "adjusting torque in inches" -> new EccentricCollar(lbf(2720), inch("1/32")).adjustingTorque().in(KnownUnits.LBF_IN);
      case "height of the range" -> collar.range().mm();
      case "replacement at 95 %", "replacement at 95 %, by the printed factor" -> FLEET.replacementOfEach(0.95).hours();
      case "replacements in 5 years" -> FLEET.expectedReplacements(5).total();
      case "spares for the fifth year" -> FLEET.spares(4, 1, 0.95).stock();
      default -> throw QuestionSuites.unknown(question + " " + quantity);
    };
  }

  static String fitting() {
    return PortPlan.of(PortRequest.of(RollerSeries.METRIC.size(mm(35)), Port.HEAD)).state(Port.HEAD).size().get(0).size();
  }
}
