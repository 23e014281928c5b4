// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Housings that yield. */
class PlasticRingLawsTest {
  private static final double STUD = ThickRingKernel.innerCompliance(0, 30, 210_000, 0.3);

  @Property
  void zoneAndPressureInvertEachOther(
      @ForAll @DoubleRange(min = 0, max = 0.95) double q, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    double k = 300;
    double zeta = 1 + share * (PlasticRingKernel.greatestPlasticRatio(q) - 1);
    double p = PlasticRingKernel.pressure(zeta, q, k);
    assertEquals(zeta, PlasticRingKernel.plasticRatio(p, q, k), 1e-6);
    double u = PlasticRingKernel.interference(zeta, q, 30, STUD, 169_000, 0.275, k);
    assertEquals(zeta, PlasticRingKernel.plasticRatioOfInterference(u, q, 30, STUD, 169_000, 0.275, k), 1e-9);
  }

  @Property
  void startsWhereTheElasticRingEnds(@ForAll @DoubleRange(min = 0, max = 0.95) double q) {
    double k = 300;
    double p = PlasticRingKernel.pressure(1, q, k);
    assertEquals(k * (1 - q * q) / 2, p, 1e-9);
    double outside = q == 0 ? Double.POSITIVE_INFINITY : 30 / q;
    assertEquals(
        ThickRingKernel.interference(p, 30, 0, outside, 210_000, 0.3, 169_000, 0.275),
        PlasticRingKernel.interference(1, q, 30, STUD, 169_000, 0.275, k),
        1e-12);
    assertEquals(1, PlasticRingKernel.plasticRatio(0.99 * p, q, k), 0);
  }

  @Property
  void stressesAreContinuousBalancedAndAtTheLimitInTheZone(
      @ForAll @DoubleRange(min = 0.05, max = 0.9) double q, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    double k = 300;
    double zeta = 1 + share * 0.999 * (PlasticRingKernel.greatestPlasticRatio(q) - 1);
    double p = PlasticRingKernel.pressure(zeta, q, k);
    assertEquals(-p, PlasticRingKernel.radialStress(1, zeta, q, k), 1e-9 * k);
    assertEquals(0, PlasticRingKernel.radialStress(1 / q, zeta, q, k), 1e-9 * k);
    double beyond = Math.min(zeta * (1 + 1e-12), 1 / q);
    assertEquals(
        PlasticRingKernel.radialStress(zeta, zeta, q, k), PlasticRingKernel.radialStress(beyond, zeta, q, k), 1e-6 * k);
    assertEquals(
        k, PlasticRingKernel.hoopStress(1, zeta, q, k) - PlasticRingKernel.radialStress(1, zeta, q, k), 1e-9 * k);
  }

  @Property
  void neverMoreThanFullyPlastic(
      @ForAll @DoubleRange(min = 0, max = 0.95) double q, @ForAll @DoubleRange(min = 0, max = 2) double u) {
    double zeta = PlasticRingKernel.plasticRatioOfInterference(u, q, 30, STUD, 169_000, 0.275, 300);
    double p = PlasticRingKernel.pressure(zeta, q, 300);
    assertTrue(p <= PlasticRingKernel.fullyPlasticPressure(q, 300) * (1 + 1e-9));
    double share = PlasticRingKernel.plasticShare(zeta, q);
    assertTrue(share >= 0 && share <= 1);
  }

  @Test
  void likeMaterialsAndASolidStudGiveTheRecalledFormula() {
    // U = 2/√3 · R_e/E · ζ² · D, DIN 7190.
    double k = PlasticRingKernel.yieldDifference(YieldRule.MODIFIED_SHEAR, 320);
    assertEquals(
        2 / Math.sqrt(3) * 320 / 210_000 * 1.3 * 1.3 * 30,
        PlasticRingKernel.interference(1.3, 0.5, 30, STUD, 210_000, 0.3, k),
        1e-12);
    assertEquals(320, PlasticRingKernel.yieldDifference(YieldRule.TRESCA, 320), 0);
    assertThrows(InputException.class, () -> PlasticRingKernel.yieldDifference(YieldRule.VON_MISES, 320));
  }

  @Test
  void thickHousingsAreBoundByFlowOfTheBore() {
    assertEquals(300 * Math.log(2), PlasticRingKernel.fullyPlasticPressure(0.5, 300), 1e-9);
    assertEquals(300, PlasticRingKernel.fullyPlasticPressure(0.2, 300), 0);
    assertEquals(2, PlasticRingKernel.greatestPlasticRatio(0.5), 1e-12);
    assertEquals(Math.exp(0.5), PlasticRingKernel.greatestPlasticRatio(0), 1e-12);
    assertThrows(InputException.class, () -> PlasticRingKernel.pressure(2.1, 0.5, 300));
    assertThrows(InputException.class, () -> PlasticRingKernel.plasticRatio(301, 0.2, 300));
    assertThrows(InputException.class, () -> PlasticRingKernel.radialStress(2.1, 1.5, 0.5, 300));
    assertThrows(InputException.class, () -> PlasticRingKernel.fullyPlasticPressure(1, 300));
  }

  @Test
  void theFitReportsZoneShareAndSafety() {
    InterferenceFit fit =
        InterferenceFit.of(
                InnerPart.solid(Material.of("42CrMo4+QT", "quenched and tempered, over 16")),
                OuterPart.ring(Material.of("C45+N"), mm(60)),
                InterferenceBand.of(mm(30), um(50), um(75)),
                mm(30))
            .withSmoothing(RoughnessRule.NONE);
    ElasticPlasticFit plastic = fit.elasticPlastic(YieldRule.MODIFIED_SHEAR);
    assertTrue(plastic.yields());
    assertFalse(plastic.exhausted());
    assertTrue(plastic.pressure().base() < fit.pressure().greatest().base());
    assertEquals(plastic.plasticRatio() * 15, plastic.plasticRadius().mm(), 1e-12);
    assertTrue(plastic.safety() > 1);
    assertEquals(plastic.pressure().base(), plastic.explain().result().value(), 0);
    assertTrue(plastic.toString().contains("yields"));
    ElasticPlasticFit elastic =
        new InterferenceFit(
                fit.stud(), fit.housing(), InterferenceBand.of(mm(30), um(5), um(10)), mm(30), RoughnessRule.NONE)
            .elasticPlastic(YieldRule.TRESCA);
    assertFalse(elastic.yields());
    assertEquals(elastic.fit().pressure().greatest(), elastic.pressure());
    assertTrue(elastic.warnings().isEmpty());
    assertEquals(0, elastic.plasticShare(), 0);
  }

  @Test
  void warnsOfLimitedDuctilityGreatZonesAndExhaustion() {
    InterferenceFit fit =
        InterferenceFit.of(
            InnerPart.hollow(Material.of("C45+N"), mm(12)),
            OuterPart.ring(Material.of("EN-GJS-500-7"), mm(45)),
            InterferenceBand.of(mm(30), um(300), um(400)),
            mm(30));
    assertEquals(
        java.util.List.of("not-ductile-enough", "plastic-share", "exhausted"),
        fit.elasticPlastic(YieldRule.MODIFIED_SHEAR).warnings().stream().map(w -> w.code()).filter(
            c -> !c.equals("stud-yields")).toList());
    InputException brittle =
        assertThrows(
            InputException.class,
            () ->
                InterferenceFit.of(
                        InnerPart.solid(Material.of("C45+N")),
                        OuterPart.ring(Material.of("EN-GJL-250"), mm(60)),
                        InterferenceBand.of(mm(30), um(10), um(20)),
                        mm(30))
                    .elasticPlastic(YieldRule.TRESCA));
    assertEquals("housing material", brittle.parameter());
    assertEquals(MPa(250), Material.of("EN-GJL-250").tensileStrength().orElseThrow());
  }
}
