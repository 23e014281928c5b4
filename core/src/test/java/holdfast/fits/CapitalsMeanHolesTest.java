// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.installation.ExampleJobs;
import holdfast.installation.InstallationPlan;
import holdfast.quantity.InputException;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Capital letters mean a hole, small ones a shaft, wherever a class is taken. */
class CapitalsMeanHolesTest {
  private static final TolerancedSize HOLE = TolerancedSize.of(mm(18), "S6");
  private static final TolerancedSize SHAFT = TolerancedSize.of(mm(18), "s6");

  private static void refused(Executable call) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.getMessage().contains("capital letters mean a hole, small ones a shaft"), e.getMessage());
  }

  @Test
  void aFitOfTwoPartsTakesAHoleAndAShaft() {
    refused(() -> Fit.of(SHAFT, SHAFT));
    refused(() -> Fit.of(HOLE, HOLE));
    refused(() -> Fit.of(SHAFT, HOLE));
    refused(() -> new Fit("s6/h7", SHAFT, TolerancedSize.of(mm(18), "h7")));
    TolerancedSize stated = TolerancedSize.given(mm(18), SHAFT.deviations(), "ring", GivenDeviations.CALLER);
    assertEquals(SHAFT.upper(), Fit.of(stated, SHAFT).hole().upper(), "stated deviations are those of either");
  }

  @Test
  void aFitOfInchDeviationsTakesThePartsInOrder() {
    Fit fit = Fit.of("5/8 in FN2");
    refused(() -> Fit.of(fit.shaft(), fit.shaft()));
  }

  @Test
  void aRoundedClassKeepsItsFeature() {
    TolerancedSize js = RoundedSymmetricClass.of(ToleranceClass.of("js7")).at(mm(18));
    refused(() -> Fit.of(js, SHAFT));
  }

  @Test
  void aPlugGoesIntoAHoleAndARingOverAShaft() {
    refused(() -> GaugeLimits.plug(SHAFT));
    refused(() -> GaugeLimits.ring(HOLE));
    refused(() -> new GaugeLimits(HOLE, Feature.SHAFT));
  }

  @Test
  void theKernelKnowsTheCodesOfHolesAndShafts() {
    int hole = ToleranceClass.of("H7").code();
    int shaft = ToleranceClass.of("p6").code();
    refused(() -> LimitDeviationsKernel.minimumClearance(18, shaft, shaft));
    refused(() -> LimitDeviationsKernel.maximumClearance(18, hole, hole));
    refused(() -> LimitDeviationsKernel.fit(18, shaft, hole, new double[4]));
    assertEquals(-29, LimitDeviationsKernel.minimumClearance(18, hole, shaft), "ISO 286-1:2010, H7/p6 at 18 mm: 0 - 29 µm");
  }

  @Test
  void theBoreOfAMemberIsAHole() {
    refused(() -> InstallationPlan.example().withBore("s6"));
    assertThrows(InputException.class, () -> InstallationPlan.example().withBore("S66"), "what is no class");
    assertThrows(InputException.class, () -> InstallationPlan.example().withBore("quatsch"), "what is no class");
  }

  @Test
  void theBoresOfAForkAreHoles() {
    refused(() -> ExampleJobs.yokeInFork().withEars("n7"));
  }

  @Test
  void oneSizeInInchesAndMillimetresIsOneSize() {
    for (int n = 1; n <= 128; n++) {
      TolerancedSize bore = TolerancedSize.given(
          inch(n / 32.0), new LimitDeviations(um(0), um(1)), "bore", GivenDeviations.CALLER);
      // n/32 in = n · 0.79375 mm, written out as a decimal.
      double millimetres = new BigDecimal("0.79375").multiply(new BigDecimal(n)).doubleValue();
      TolerancedSize pin =
          TolerancedSize.given(mm(millimetres), new LimitDeviations(um(-1), um(0)), "pin", GivenDeviations.CALLER);
      assertEquals(um(2), Fit.of(bore, pin).maximumClearance(), n + "/32 in");
      double third = mm(millimetres).mm() * (1 + 4e-16);
      TolerancedSize computed = TolerancedSize.given(mm(third), pin.deviations(), "pin", GivenDeviations.CALLER);
      assertEquals(um(2), Fit.of(bore, computed).maximumClearance(), n + "/32 in, a rounding off");
    }
    assertThrows(InputException.class, () -> Fit.of(TolerancedSize.of(mm(19), "H7"), TolerancedSize.of(mm(19.05), "h6")));
  }
}
