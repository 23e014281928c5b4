// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.ftLbf;
import static holdfast.quantity.Units.g;
import static holdfast.quantity.Units.inLbf;
import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.ksi;
import static holdfast.quantity.Units.mPerS;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mrad;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class SheetUnitsTest {
  @Test
  void aQuantityIsPrintedInTheUnitsAskedFor() {
    assertEquals("25.4 mm", SheetUnits.METRIC.text(mm(25.4)));
    assertEquals("1.0000 in", SheetUnits.INCH.text(mm(25.4)));
    assertEquals("25.4 mm (1.0000 in)", SheetUnits.METRIC_AND_INCH.text(mm(25.4)));
    assertEquals("1.0000 in (25.4 mm)", SheetUnits.INCH_AND_METRIC.text(mm(25.4)));
    assertEquals("212 °F", SheetUnits.INCH.text(degC(100)));
    assertEquals("2.5 mrad", SheetUnits.INCH.text(mrad(2.5)), "angles have one form");
    assertEquals("224.8 lbf", SheetUnits.INCH.text(kN(1)));
    // 1 N·m = 8.8507 lbf·in; one unit a quantity, however large it is.
    assertEquals("88.51 lbf·in", SheetUnits.INCH.text(Nm(10)));
    assertEquals("885.1 lbf·in", SheetUnits.INCH.text(Nm(100)));
    assertEquals("1 kN … 2 kN (224.8 lbf … 449.6 lbf)", SheetUnits.METRIC_AND_INCH.span(kN(1), kN(2)));
  }

  @Test
  void smallAndLargeStressesAndTorques() {
    assertEquals("1 ksi", SheetUnits.INCH.text(ksi(1)));
    assertEquals("0.999 ksi", SheetUnits.INCH.text(ksi(0.999)));
    assertEquals("480 lbf·in", SheetUnits.INCH.text(ftLbf(40)));
    assertEquals("479.9 lbf·in", SheetUnits.INCH.text(inLbf(479.9)));
    // An ounce is 28.349523125 g; 1 m/s = 60/0.3048 ft/min.
    assertEquals("10 oz", SheetUnits.INCH.text(g(283.49523125)));
    assertEquals("196.9 ft/min", SheetUnits.INCH.text(mPerS(1)));
  }

  @Test
  void unitsToWriteIn() {
    assertEquals("kN (lbf)", SheetUnits.METRIC_AND_INCH.forceUnit());
    assertEquals("lbf·in (N·m)", SheetUnits.INCH_AND_METRIC.torqueUnit());
    assertEquals("°F", SheetUnits.INCH.temperatureUnit());
    assertEquals("2.5 mrad", SheetUnits.METRIC_AND_INCH.text(mrad(2.5)), "what has one form is said once");
    assertEquals(
        List.of("metric false", "inch true", "metric (inch) false", "inch (metric) true"),
        Arrays.stream(SheetUnits.values()).map(units -> units + " " + units.inchFirst()).toList());
    assertEquals("17.900 mm … 18.000 mm", SheetUnits.METRIC.limits(mm(17.9), mm(18)));
  }

  @Test
  void deviationsCarryTheirSigns() {
    assertEquals("-25 µm / -36 µm", SheetUnits.METRIC.deviations(um(-25), um(-36)));
    assertEquals("+0.0005 in / 0.0000 in", SheetUnits.INCH.deviations(inch(0.0005), mm(0)));
    assertTrue(SheetUnits.INCH_AND_METRIC.inchFirst());
  }

  @Test
  void exactLimitsStayExact() {
    assertEquals("17.964 mm … 17.975 mm", SheetUnits.METRIC.limits(mm(17.964), mm(17.975)));
    assertEquals("0.6250 in … 0.6260 in", SheetUnits.INCH.limits(inch("5/8"), inch(0.626)));
    assertEquals("6.0025 mm … 6.0105 mm", SheetUnits.METRIC.limits(mm(6.0025), mm(6.0105)), "half micrometres");
  }

  @Property
  void convertedLimitsNeverAcceptMore(
      @ForAll @DoubleRange(min = 1, max = 500) double low,
      @ForAll @Scale(3) @DoubleRange(min = 0.005, max = 1) double tolerance) {
    String[] inches = SheetUnits.INCH.limits(mm(low), mm(low + tolerance)).replace(" in", "").split(" … ", -1);
    BigDecimal exactLow = new BigDecimal(low).divide(new BigDecimal("25.4"), MathContext.DECIMAL128);
    BigDecimal exactHigh = new BigDecimal(low + tolerance).divide(new BigDecimal("25.4"), MathContext.DECIMAL128);
    BigDecimal dust = new BigDecimal("1e-9");
    assertTrue(new BigDecimal(inches[0]).add(dust).compareTo(exactLow) >= 0);
    assertTrue(new BigDecimal(inches[1]).subtract(dust).compareTo(exactHigh) <= 0);
  }
}
