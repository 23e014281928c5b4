// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.DecisionRule;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.SizeDistribution;
import holdfast.fits.ThermalFitKernel;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.verification.NamedInputs;

/** Our values for the quantities of fits in the reference computations. */
final class FitValues {
  private FitValues() {}

  static double value(String quantity, NamedInputs a) {
    return switch (quantity) {
      case "temperature of a clearance" ->
          ThermalFitKernel.uniformTemperature(
              a.get("hole"), a.get("alpha_h") * 1e-6, a.get("shaft"), a.get("alpha_s") * 1e-6, a.get("clearance"));
      case "guard band" -> DecisionRule.PROBABILITY_95.guardBand(KnownUnits.UM.of(a.get("U"))).in(KnownUnits.UM);
      case "share of a normal process outside its limits" -> {
        LimitsOfSize limits = limits(a, "lower", "upper");
        SizeDistribution.Side side = SizeDistribution.Side.valueOf(a.word("side"));
        boolean centred = a.get("Cp") == a.get("Cpk");
        SizeDistribution process =
            centred
                ? SizeDistribution.centred(limits, a.get("Cp"))
                : SizeDistribution.capable(limits, a.get("Cp"), a.get("Cpk"), side);
        yield process.shareOutside(limits);
      }
      case "share of an even process outside other limits" ->
          SizeDistribution.uniform(limits(a, "lower", "upper")).shareOutside(limits(a, "low", "high"));
      default -> throw new IllegalArgumentException("no such quantity: " + quantity);
    };
  }

  private static LimitsOfSize limits(NamedInputs a, String lower, String upper) {
    return new LimitsOfSize(new Length(a.get(lower)), new Length(a.get(upper)));
  }
}
