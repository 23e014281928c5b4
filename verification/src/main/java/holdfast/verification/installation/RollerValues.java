// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import holdfast.fleet.SparesKernel;
import holdfast.installation.CrownKernel;
import holdfast.lubrication.GreaseQuantityKernel;
import holdfast.lubrication.RelubricationKernel;
import holdfast.rollers.EccentricKernel;
import holdfast.rollers.RollerSpeedKernel;
import holdfast.verification.CalculationSuite;
import holdfast.verification.NamedInputs;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Rollers, grease and spares against values of general-purpose libraries, by another road where there is one. */
final class RollerValues {
  private static final Map<String, ToDoubleFunction<NamedInputs>> CALCULATIONS = Map.ofEntries(
      Map.entry("speed on a track", x -> RollerSpeedKernel.onTrack(x.get("v"), x.get("D"))),
      Map.entry("speed of two rings", x -> RollerSpeedKernel.ofRings(x.get("inner"), x.get("outer"))),
      Map.entry("driving moment", x -> RollerSpeedKernel.drivingMoment(x.get("mu"), x.get("F"), x.get("D"))),
      Map.entry("load of an eccentric", x -> EccentricKernel.load(x.get("T"), x.get("e"), x.angle("angle"))),
      Map.entry("shift on a crown", x -> CrownKernel.shift(x.get("R"), x.get("tilt"))),
      Map.entry("service level", x -> SparesKernel.serviceLevel(x.get("mean"), (int) x.get("stock"))),
      Map.entry("free volume", x -> GreaseQuantityKernel.freeVolume(x.get("D"), x.get("d"), x.get("B"), x.get("M"))),
      Map.entry("mass of grease", x -> GreaseQuantityKernel.massOfVolume(x.get("V"))),
      Map.entry("grease in ounces", x -> GreaseQuantityKernel.shopOunces(x.get("D"), x.get("B"))),
      Map.entry("viscosity for a ratio", x -> GreaseQuantityKernel.viscosity(x.get("kappa"), x.get("nu1"))),
      Map.entry("empirical interval", x -> RelubricationKernel.empirical(x.get("K"), x.get("n"), x.get("d"))),
      Map.entry("speed without interval", x -> RelubricationKernel.greatestSpeed(x.get("d"))),
      Map.entry("speed for a turning outer ring",
          x -> RelubricationKernel.outerRingSpeed(x.get("n"), x.get("D"), x.get("d"))),
      Map.entry("interval from the life of the grease", x -> RelubricationKernel.fromGreaseLife(x.get("tfG"))));

  private RollerValues() {}

  static Suite suite() {
    return CalculationSuite.of(
        "installation/computed-values", "Rollers, grease and spares against values of general-purpose libraries", CALCULATIONS,
        List.of("holdfast.rollers.RollerSpeedKernel#onTrack", "holdfast.rollers.EccentricKernel#load",
            "holdfast.installation.CrownKernel#shift", "holdfast.fleet.SparesKernel#serviceLevel",
            "holdfast.lubrication.GreaseQuantityKernel", "holdfast.lubrication.RelubricationKernel"));
  }
}
