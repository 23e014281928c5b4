// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static holdfast.quantity.Units.umPerMK;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredFitTest {
  private static final Fit DRAWING = Fit.of("25 H7/p6");

  @Test
  void clearanceComesFromTheReadings() {
    MeasuredFit fit =
        new MeasuredFit(
            DRAWING, Readings.at20(um(2), mm(25.008), mm(25.010)), Readings.at20(um(1.5), mm(25.027), mm(25.030), mm(25.030)));
    assertEquals(-20, fit.clearance().in(KnownUnits.UM), 1e-6);
    assertEquals(-22, fit.minimumClearance().in(KnownUnits.UM), 1e-6);
    assertEquals(-17, fit.maximumClearance().in(KnownUnits.UM), 1e-6);
    assertEquals(2.5, fit.uncertainty().in(KnownUnits.UM), 1e-9);
    assertEquals(Optional.of(FitKind.INTERFERENCE), fit.certainKind());
    assertEquals(Conformity.PROVEN, fit.holeConformity());
    assertEquals(Conformity.PROVEN, fit.shaftConformity());
    assertTrue(fit.warnings().isEmpty());
    assertEquals("25 H7/p6 as measured: interference fit, 17 µm … 22 µm interference, ± 2.5 µm", fit.toString());
    assertEquals(fit.clearance().in(KnownUnits.UM), fit.explain().result().value(), 0);
  }

  @Test
  void aWarmPartIsCorrectedToTwentyDegrees() {
    // 25.0273 mm / (1 + 11.5e-6 · 8) = 25.0249977 mm.
    Readings warm = Readings.at20(um(1), mm(25.0273)).takenAt(degC(28), umPerMK(11.5));
    assertEquals(25.0249977, warm.mean().mm(), 5e-8);
    assertEquals(warm.mean(), warm.range().lower());
    assertEquals(warm.mean(), warm.range().upper());
  }

  @ParameterizedTest
  @CsvSource({
    "25.002, PROVEN",
    "25.019, PROVEN",
    "25.0015, UNDECIDED",
    "25.0195, UNDECIDED",
    "25.0225, UNDECIDED",
    "25.023, UNDECIDED",
    "24.998, UNDECIDED",
    "24.9985, UNDECIDED",
    "25.0231, DISPROVED",
    "24.9979, DISPROVED"
  })
  void uncertaintyGuardsTheLimits(double hole, Conformity expected) {
    assertEquals(expected, Readings.at20(um(2), mm(hole)).conformity(DRAWING.hole().limits()));
  }

  /** Uncertainties of 0.3 and 0.4 mm make one of 0.5 mm, which the clearance reaches but does not exceed. */
  @Test
  void aClearanceOfTheUncertaintyIsCertain() {
    Readings wide = Readings.at20(um(300), mm(25.5));
    Readings narrow = Readings.at20(um(400), mm(25));
    assertEquals(Optional.of(FitKind.CLEARANCE), new MeasuredFit(DRAWING, wide, narrow).certainKind());
    assertEquals(Optional.of(FitKind.INTERFERENCE), new MeasuredFit(DRAWING, narrow, wide).certainKind());
    Readings wider = Readings.at20(um(400.1), mm(25));
    assertEquals(Optional.empty(), new MeasuredFit(DRAWING, wide, wider).certainKind());
    assertEquals(Optional.empty(), new MeasuredFit(DRAWING, wider, wide).certainKind());
  }

  @Test
  void explanationNamesEveryReading() {
    MeasuredFit fit = new MeasuredFit(DRAWING, Readings.at20(um(0), mm(25.002), mm(25.004)), Readings.at20(um(0), mm(25.03)));
    assertEquals(
        List.of("d = 25.002 mm", "d = 25.004 mm", "alpha = 0 µm/(m·K)", "T = 20 °C"), fit.explain().steps().get(0).inputs());
    assertEquals(0, fit.uncertainty().mm());
  }

  @Test
  void doubtsAreWarnings() {
    MeasuredFit fit = new MeasuredFit(DRAWING, Readings.at20(um(2), mm(25.020)), Readings.at20(um(2), mm(25.0195)));
    assertEquals(
        List.of("hole-conformity", "shaft-conformity", "kind-uncertain", "kind-differs"),
        fit.warnings().stream().map(w -> w.code()).toList());
    assertTrue(fit.certainKind().isEmpty());
    MeasuredFit loose = new MeasuredFit(DRAWING, Readings.at20(um(1), mm(25.020)), Readings.at20(um(1), mm(25.010)));
    assertEquals(Optional.of(FitKind.CLEARANCE), loose.certainKind());
    assertEquals(Conformity.DISPROVED, loose.shaftConformity());
    assertTrue(loose.warnings().toString().contains("shaft: not conforming; readings"), loose.warnings().toString());
  }

  @Test
  void wrongReadingsAreRefused() {
    assertEquals("readings", assertThrows(InputException.class, () -> Readings.at20(um(1))).parameter());
    Readings good = Readings.at20(um(1), mm(25));
    InputException molten =
        assertThrows(InputException.class, () -> good.takenAt(degC(88704), umPerMK(11.5)));
    assertEquals("temperature", molten.parameter());
    assertEquals("over 0 mm", assertThrows(InputException.class, () -> Readings.at20(um(1), mm(0))).permitted());
    Length negative = um(-1);
    assertEquals("uncertainty", assertThrows(InputException.class, () -> Readings.at20(negative, mm(25))).parameter());
  }
}
