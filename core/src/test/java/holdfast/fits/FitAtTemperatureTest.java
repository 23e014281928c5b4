// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.umPerMK;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.ThermalExpansion;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FitAtTemperatureTest {
  private static final Fit FIT = Fit.of("25 H7/p6");

  @Test
  void anAluminiumHubLosesItsInterference() {
    FitAtTemperature hot = FitAtTemperature.uniform(FIT, umPerMK(23), umPerMK(11.5), degC(80));
    // By hand: 25.021 (1 + 23e-6 · 60) - 25.022 (1 + 11.5e-6 · 60) = 0.016263... mm.
    assertEquals(16.263, hot.maximumClearance().in(KnownUnits.UM), 1e-3);
    assertEquals(-17.774, hot.minimumClearance().in(KnownUnits.UM), 1e-3);
    assertEquals(FitKind.TRANSITION, hot.kind());
    assertEquals(
        "25 H7/p6 with hole at 80 °C, shaft at 80 °C: transition fit, 17.77 µm interference … 16.26 µm clearance",
        hot.toString());
    assertEquals("kind-changes", hot.warnings().get(0).code());
    assertEquals(hot.minimumClearance().in(KnownUnits.UM), hot.explain().result().value(), 0);
    assertEquals(hot.maximumClearance().mm(), hot.holeLimits().upper().minus(hot.shaftLimits().lower()).mm(), 1e-12);
  }

  @Test
  void farFromTheReferenceTemperatureWarns() {
    FitAtTemperature heated = new FitAtTemperature(FIT, umPerMK(11.5), umPerMK(11.5), degC(150), degC(20));
    assertEquals(FitKind.CLEARANCE, heated.kind());
    assertTrue(heated.warnings().stream().anyMatch(w -> w.code().equals("wide-temperature-span")));
  }

  @Test
  void theUsualSpanEndsAtAHundredKelvin() {
    for (double[] pair : new double[][] {{120, 20}, {20, 120}, {-80, 20}, {20, -80}}) {
      assertFalse(warnsOfSpan(pair[0], pair[1]), pair[0] + " and " + pair[1]);
    }
    for (double[] pair : new double[][] {{120.1, 20}, {20, 120.1}, {-80.1, 20}, {20, -80.1}}) {
      assertTrue(warnsOfSpan(pair[0], pair[1]), pair[0] + " and " + pair[1]);
    }
  }

  private static boolean warnsOfSpan(double hole, double shaft) {
    return new FitAtTemperature(FIT, umPerMK(11.5), umPerMK(11.5), degC(hole), degC(shaft))
        .warnings().stream().anyMatch(w -> w.code().equals("wide-temperature-span"));
  }

  @Test
  void partsThatExpandAlikeNeverLoseContactByTemperature() {
    Fit slide = Fit.of("25 H7/g6");
    // Sizes differ by some µm, so that contact lies beyond any temperature there is.
    assertTrue(FitAtTemperature.uniform(slide, umPerMK(11.5), umPerMK(11.5), degC(20)).uniformTemperatureOfTightestContact().isEmpty());
    Fit zero = Fit.of("25 H7/h6");
    assertTrue(FitAtTemperature.uniform(zero, umPerMK(0), umPerMK(0), degC(20)).uniformTemperatureOfLoosestContact().isEmpty());
  }

  @Property
  void atTheContactTemperatureThereIsContact(
      @ForAll @DoubleRange(min = 15, max = 25) double alphaHole, @ForAll @DoubleRange(min = 9, max = 12) double alphaShaft) {
    ThermalExpansion hole = umPerMK(alphaHole);
    ThermalExpansion shaft = umPerMK(alphaShaft);
    FitAtTemperature cold = FitAtTemperature.uniform(FIT, hole, shaft, degC(20));
    FitAtTemperature loose =
        FitAtTemperature.uniform(FIT, hole, shaft, cold.uniformTemperatureOfLoosestContact().orElseThrow());
    assertEquals(0, loose.maximumClearance().mm(), 1e-12);
    FitAtTemperature tight =
        FitAtTemperature.uniform(FIT, hole, shaft, cold.uniformTemperatureOfTightestContact().orElseThrow());
    assertEquals(0, tight.minimumClearance().mm(), 1e-12);
  }

  @Property
  void sizesReturnToTwentyDegrees(
      @ForAll @DoubleRange(min = 0.1, max = 3000) double size,
      @ForAll @DoubleRange(min = -5, max = 30) double alpha,
      @ForAll @DoubleRange(min = -200, max = 500) double temperature) {
    double hot = ThermalFitKernel.sizeAt(size, alpha * 1e-6, temperature);
    assertEquals(size, ThermalFitKernel.sizeAt20(hot, alpha * 1e-6, temperature), 1e-12 * size);
    double clearance = ThermalFitKernel.clearance(size, alpha * 1e-6, temperature, size, 0, temperature);
    assertEquals(hot - size, clearance, 1e-12 * size);
  }

  @Test
  void atTwentyDegreesNothingChanges() {
    FitAtTemperature same = FitAtTemperature.uniform(FIT, umPerMK(23), umPerMK(11.5), degC(20));
    assertEquals(FIT.maximumClearance().mm(), same.maximumClearance().mm(), 1e-14);
    assertEquals(FIT.minimumClearance().mm(), same.minimumClearance().mm(), 1e-14);
    assertTrue(same.warnings().isEmpty());
  }

  @Test
  void kernelRefusesWhatIsNotASizeOrTemperature() {
    InputException size = assertThrows(InputException.class, () -> ThermalFitKernel.sizeAt(0, 1e-5, 20));
    assertEquals("size at 20 °C", size.parameter());
    assertThrows(InputException.class, () -> ThermalFitKernel.sizeAt20(Double.NaN, 1e-5, 20));
    assertThrows(InputException.class, () -> ThermalFitKernel.sizeAt(25, Double.NaN, 20));
    InputException cold = assertThrows(InputException.class, () -> ThermalFitKernel.sizeAt(25, 1e-5, -300));
    assertEquals("temperature", cold.parameter());
    assertThrows(InputException.class, () -> ThermalFitKernel.sizeAt(25, 1e-5, Double.NaN));
    assertThrows(InputException.class, () -> ThermalFitKernel.sizeAt(25, -0.1, 100));
    assertThrows(InputException.class, () -> ThermalFitKernel.clearance(-1, 1e-5, 20, 25, 1e-5, 20));
    assertThrows(InputException.class, () -> ThermalFitKernel.clearance(25, 1e-5, 20, 0, 1e-5, 20));
    assertThrows(InputException.class, () -> ThermalFitKernel.uniformTemperature(25, 1e-5, 25, Double.NaN, 0));
    assertThrows(InputException.class, () -> ThermalFitKernel.uniformTemperature(25, 1e-5, 25, 1e-5, Double.NaN));
    assertEquals(new Length(25), mm(25));
  }
}
