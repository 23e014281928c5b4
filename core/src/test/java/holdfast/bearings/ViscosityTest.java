// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ViscosityTest {
  @Test
  void passesThroughItsPoints() {
    Oil oil = Oil.ofTwoPoints(degC(40), mm2PerS(68), degC(100), mm2PerS(8.7));
    assertEquals(68, oil.at(degC(40)).viscosity().mm2PerS(), 1e-9);
    assertEquals(8.7, oil.at(degC(100)).viscosity().mm2PerS(), 1e-9);
    double at70 = oil.at(degC(70)).viscosity().mm2PerS();
    assertTrue(at70 > 8.7 && at70 < 68);
    assertEquals(at70, oil.at(degC(70)).explain().result().value());
    assertEquals(100, Oil.isoVg(100, 95).at(degC(40)).viscosity().mm2PerS(), 1e-9);
    assertEquals(95, Oil.isoVg(100, 95).viscosityIndex(), 1e-6);
  }

  @Test
  void referenceOilsJoinBetweenTheirRanges() {
    // The coefficients are recalled: a wrong digit would show as a step between ranges.
    for (double border : new double[] {3.8, 4.4, 5.0, 6.4, 7.0, 7.7, 9, 12, 15, 18, 22, 28, 40, 55, 70}) {
      double below = Math.nextDown(border);
      assertEquals(1, ViscosityKernel.lowReference(border) / ViscosityKernel.lowReference(below), 2e-3, "L at " + border);
      assertEquals(1, ViscosityKernel.highReference(border) / ViscosityKernel.highReference(below), 2e-3, "H at " + border);
    }
  }

  @Test
  void errorsAndWarnings() {
    assertThrows(InputException.class, () -> Oil.isoVg(50, 95));
    assertThrows(InputException.class, () -> Oil.ofTwoPoints(degC(40), mm2PerS(8), degC(100), mm2PerS(9)));
    assertThrows(InputException.class, () -> Oil.ofTwoPoints(degC(40), mm2PerS(8), degC(40), mm2PerS(8)));
    InputException hot = assertThrows(InputException.class, () -> Oil.isoVg(68, 95).at(degC(300)));
    assertTrue(hot.getMessage().startsWith("temperature (300 °C) must be from -60 °C to 250 °C"), hot.getMessage());
    assertEquals("viscosity-below-relation", Oil.isoVg(15, 95).at(degC(150)).warnings().get(0).code());
  }

  @Property(tries = 200)
  void indexGoesBack(@ForAll @DoubleRange(min = 20, max = 1500) double at40, @ForAll @DoubleRange(min = 20, max = 200) double index) {
    assertEquals(index, ViscosityKernel.viscosityIndex(at40, ViscosityKernel.at100(at40, index)), 0.3);
  }

  @Property
  void viscosityFallsWithTemperature(@ForAll @DoubleRange(min = -20, max = 190) double t) {
    Oil oil = Oil.isoVg(68, 95);
    assertTrue(oil.at(degC(t + 1)).viscosity().mm2PerS() < oil.at(degC(t)).viscosity().mm2PerS());
  }
}
