// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.trace.Warning;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class BasicLifeTest {
  private static final LoadRatings ROLLER = LoadRatings.radialRoller(kN(14.2), kN(17.5));

  @Test
  void lifeOfARollerBearingInHours() {
    BasicLife life = RatingLife.basic(ROLLER, kN(2.1));
    // (14.2/2.1)^(10/3), by logarithms
    double expected = Math.exp(10.0 / 3 * Math.log(14.2 / 2.1));
    assertEquals(expected, life.millionRevolutions(), 1e-9 * expected);
    assertEquals(expected * 1e6 / 60 / 180, life.hours(rpm(180)).hours(), 1e-6 * expected);
    assertEquals("L10 = 584.7 million revolutions (P = 2.1 kN)", life.toString());
    assertTrue(life.warnings().isEmpty());
  }

  @Test
  void aPrintedExample() {
    // ISO form: C/P = 4 gives 64 (ball).
    assertEquals(64, RatingLife.basic(LoadRatings.radialBall(kN(4), kN(3)), kN(1)).millionRevolutions(), 1e-12);
  }

  @Test
  void theDerivationEndsInTheResult() {
    BasicLife life = RatingLife.basic(ROLLER, kN(2.1)).at(Reliability.ofPercent(99));
    assertEquals(life.millionRevolutions(), life.explain().result().value());
    assertEquals("L1", life.explain().result().symbol());
  }

  @Test
  void errorsNameParameterAndRange() {
    InputException zeroLoad = assertThrows(InputException.class, () -> RatingLife.basic(ROLLER, kN(0)));
    assertTrue(zeroLoad.getMessage().startsWith("dynamic equivalent load P (0 N) must be over 0 N"), zeroLoad.getMessage());
    InputException standing = assertThrows(InputException.class, () -> RatingLife.basic(ROLLER, kN(1)).hours(rpm(0)));
    assertTrue(standing.getMessage().startsWith("speed n (0 rpm) must be over 0 rpm"), standing.getMessage());
    InputException reliability = assertThrows(InputException.class, () -> Reliability.ofPercent(99.99));
    assertTrue(reliability.getMessage().startsWith("reliability S (99.99 %) must be from 50 % to 99.95 %"),
        reliability.getMessage());
    assertThrows(InputException.class, () -> Reliability.ofPercent(49.9));
    assertThrows(InputException.class, () -> Reliability.ofPercent(Double.NaN));
    InputException ring =
        assertThrows(InputException.class, () -> LoadRatings.trackRoller(kN(10), kN(12), OuterRing.HOUSED));
    assertTrue(ring.getMessage().contains("RIGID or DEFLECTING"), ring.getMessage());
    assertThrows(InputException.class, () -> LoadRatings.radialBall(kN(-1), kN(1)));
  }

  @Test
  void warningsForHighLoadAndRigidRing() {
    assertEquals(List.of("load-above-half-C"), codes(RatingLife.basic(ROLLER, kN(8)).warnings()));
    assertEquals(List.of("load-above-C", "load-above-C0"), codes(RatingLife.basic(ROLLER, kN(18)).warnings()));
    LoadRatings rigid = LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.RIGID);
    assertEquals(List.of("rigid-ring-rating"), codes(RatingLife.basic(rigid, kN(2)).warnings()));
    assertEquals(List.of("reliability-below-table"),
        codes(RatingLife.basic(ROLLER, kN(2), Reliability.MEDIAN).warnings()));
  }

  @Test
  void a1AtTheEnds() {
    assertEquals(1, Reliability.L10.a1());
    assertEquals(0.077, Reliability.ofPercent(99.95).a1(), 0.0005);
    assertEquals("L0.05", Reliability.ofPercent(99.95).lifeSymbol());
  }

  @Property
  void lifeFallsWithLoadAndScalesWithTheRatio(
      @ForAll @DoubleRange(min = 10, max = 1e6) double p, @ForAll @DoubleRange(min = 1.01, max = 50) double factor,
      @ForAll BearingFamily family) {
    double c = 1e5;
    double life = BasicLifeKernel.l10(family, c, p);
    assertTrue(BasicLifeKernel.l10(family, c, p * factor) < life);
    assertEquals(life, BasicLifeKernel.l10(family, c * factor, p * factor), 1e-9 * life);
    assertEquals(Math.pow(factor, family.lifeExponent()) * BasicLifeKernel.l10(family, c, p * factor), life, 1e-9 * life);
  }

  @Property
  void inversesGoBack(@ForAll @DoubleRange(min = 10, max = 1e5) double p, @ForAll BearingFamily family) {
    double c = 1e5;
    double life = BasicLifeKernel.l10(family, c, p);
    assertEquals(p, BasicLifeKernel.allowableLoad(family, c, life), 1e-9 * p);
    assertEquals(c, BasicLifeKernel.requiredRating(family, p, life), 1e-9 * c);
    double hours = BasicLifeKernel.hours(life, 250);
    assertEquals(250, BasicLifeKernel.allowableSpeed(life, hours), 1e-9);
    assertEquals(life, BasicLifeKernel.millionRevolutions(hours, 250), 1e-9 * life);
  }

  @Property
  void a1FallsWithReliabilityAndInverts(@ForAll @DoubleRange(min = 50, max = 99.94) @Scale(6) double percent) {
    double a1 = ReliabilityKernel.a1(percent);
    assertTrue(ReliabilityKernel.a1(percent + 0.005) < a1);
    assertEquals(percent, ReliabilityKernel.percent(a1), 1e-9);
  }

  private static List<String> codes(List<Warning> warnings) {
    return warnings.stream().map(Warning::code).toList();
  }
}
