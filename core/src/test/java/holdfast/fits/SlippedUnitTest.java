// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static holdfast.quantity.Units.umPerMK;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.ThermalExpansion;
import holdfast.seats.Material;
import holdfast.seats.ThermalSeatKernel;
import holdfast.tables.SourceRef;
import holdfast.threads.JointKernel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A deviation or a coefficient of expansion of another order than any part has is a slip, and is refused as one. */
class SlippedUnitTest {
  @ParameterizedTest
  @CsvSource({"25, 0/-30 mm", "25, +21/0 mm", "25, +5/-5 in", "500, +21/0 mm", "500, +63/0 mm", "3000, +0.2/-150 mm", "5, 0/-8 mm"})
  void deviationsOfNoPartAreRefused(double nominal, String deviations) {
    InputException e = assertThrows(InputException.class, () -> TolerancedSize.of(mm(nominal), deviations));
    assertTrue(e.reason().contains("check unit and decimal point"), e.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"25, +0.5/-0.5 mm", "500, +5/0 mm", "1, +0.1/-0.1 mm", "3, 0/-0.3 mm", "4000, +10/-10 mm", "0.5, 0/-60 um"})
  void coarseDeviationsOfRealPartsAreTaken(double nominal, String deviations) {
    assertDoesNotThrow(() -> TolerancedSize.of(mm(nominal), deviations));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -25})
  void aPartHasASize(double nominal) {
    assertThrows(InputException.class, () -> TolerancedSize.of(mm(nominal), "+5/0 um"));
    LimitDeviations any = new LimitDeviations(um(0), um(5));
    assertThrows(InputException.class, () -> new Fit(mm(nominal), "stated", any, any));
  }

  @Test
  void noClassOfTheStandardIsTakenForASlip() {
    for (double size : new double[] {0.5, 1, 3, 25, 500, 3150}) {
      for (int code = 0; code < IsoTables.CLASSES; code++) {
        ToleranceClass c = ToleranceClass.at(code);
        if (c.isDefinedFor(mm(size))) {
          assertDoesNotThrow(() -> c.at(mm(size)), c + " at " + size);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {11.5, 1, 0.0115, -11.5e-6, -1})
  void aCoefficientOfNoSolidIsRefused(double perKelvin) {
    ThermalExpansion slip = new ThermalExpansion(perKelvin);
    ThermalExpansion steel = umPerMK(11.5);
    Fit fit = Fit.of(mm(25), "H7/p6");
    assertThrows(InputException.class, () -> FitAtTemperature.uniform(fit, slip, steel, degC(80)));
    assertThrows(InputException.class, () -> FitAtTemperature.uniform(fit, steel, slip, degC(80)));
    assertThrows(InputException.class, () -> FitAtTemperature.uniform(fit, slip, slip, degC(20)), "at 20 °C too");
    assertThrows(InputException.class, () -> Readings.at20(um(1), mm(25)).takenAt(degC(25), slip));
    assertThrows(InputException.class, () -> Gauge.of("7", um(1)).at(degC(20), slip));
    assertThrows(InputException.class, () -> Material.named("own", SourceRef.memory("own", "own")).expansion(slip));
    assertThrows(InputException.class, () -> ThermalSeatKernel.lossTemperature(0.02, 25, perKelvin, 11.5e-6));
    assertThrows(InputException.class, () -> JointKernel.thermalChange(20, perKelvin, 10, 11.5e-6, 20, 1e-5, 1e-5));
  }

  @Test
  void aSolidThatShrinksWhenWarmedDrawsAWarning() {
    FitAtTemperature fit =
        FitAtTemperature.uniform(Fit.of(mm(25), "H7/p6"), umPerMK(-1), umPerMK(11.5), degC(80));
    assertTrue(fit.warnings().stream().anyMatch(w -> w.code().equals("shrinks-when-warmed")), fit.warnings().toString());
  }

  @Test
  void theNextDoubleBeyondALimitShowsItsDigits() {
    Length beyond = mm(Math.nextUp(3150.0));
    InputException e = assertThrows(InputException.class, () -> ToleranceClass.of("H7").at(beyond));
    assertEquals("3150.0000000000005 mm", e.value());
  }

  @Test
  void theNextDoubleBesideAnInchIsTakenForTheSameSize() {
    assertDoesNotThrow(() -> Fit.of(TolerancedSize.of(inch(0.75), "H7"), TolerancedSize.of(mm(19.05), "h6")));
  }
}
