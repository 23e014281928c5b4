// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Fit;
import holdfast.quantity.Units;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Step;
import org.junit.jupiter.api.Test;

/** Limits of a press fit show their steps, and each step its own source. */
class FitLimitsTracedTest {
  private static FitLimits limits(Material housing) {
    Material stud = Material.of("16MnCr5");
    return InterferenceFit.of(InnerPart.hollow(stud, mm(3)), OuterPart.ring(housing, mm(40)), Fit.of(mm(18), "S6/h7"), mm(16))
        .limits(YieldRule.VON_MISES);
  }

  @Test
  void theLastStepIsTheSafetyThatGoverns() {
    FitLimits limits = limits(Material.of("C45+N"));
    Derivation steps = limits.explain();
    double least = Math.min(limits.stud().safety().orElseThrow(), limits.housing().safety().orElseThrow());
    Step last = steps.steps().get(steps.steps().size() - 1);
    assertEquals(least, last.value(), 0);
    assertEquals(limits.greatestPressure().megapascal(), steps.steps().get(0).value(), 0);
    assertEquals("Boresi & Schmidt", steps.steps().get(0).source().document());
    assertTrue(limits.warnings().isEmpty());
  }

  @Test
  void aStrengthThatIsNotKnownIsSaidAndNotJudged() {
    Material unknown = Material.named("alloy", SourceRef.memory("d", "p")).elastic(Units.GPa(200), 0.3)
        .expansion(Units.umPerMK(11)).build();
    FitLimits limits = limits(unknown);
    assertEquals(1, limits.warnings().size());
    assertTrue(limits.warnings().get(0).message().contains("alloy"));
    assertTrue(limits.explain().steps().stream().noneMatch(step -> step.symbol().equals("pH")));
  }
}
