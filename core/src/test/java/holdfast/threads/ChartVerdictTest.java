// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Torque;
import holdfast.threads.ChartVerdict.Judgement;
import holdfast.trace.Warning;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Is my old chart right for this stud: with its bore, its strength and its nut. */
class ChartVerdictTest {
  private static final PropertyClass STUD = PropertyClass.ofMaterial("case-hardened stud", MPa(590), MPa(830));
  private static final Tightening NUT = Tightening.of(ScrewThread.of("5/8-18 UNF")).bore(inch("1/8"));

  private static ChartVerdict verdict(Torque torque) {
    return new ChartTorque(NUT, torque).verdict(STUD);
  }

  private static List<String> codes(ChartVerdict verdict) {
    return verdict.warnings().stream().map(Warning::code).toList();
  }

  @Test
  void aTorqueInInchPoundsSuitsTheStud() {
    ChartVerdict v = verdict(inLbf(325));
    assertEquals(Judgement.SUITS, v.judgement());
    assertEquals(List.of("chart-condition"), codes(v));
    assertEquals(Optional.empty(), v.otherReading());
    assertEquals(v.greatestUse(), v.explain().result().value());
  }

  /** 325 lbf·ft instead of 325 lbf·in: twelve times the stress, and a word about the unit. */
  @Test
  void footPoundsForInchPoundsAreNoticed() {
    ChartVerdict v = verdict(ftLbf(325));
    assertEquals(Judgement.TOO_HIGH, v.judgement());
    assertEquals(12 * verdict(inLbf(325)).greatestUse(), v.greatestUse(), 1e-9);
    assertEquals(List.of("chart-condition", "chart-torque-unsuited", "chart-unit-slip"), codes(v));
    assertEquals(325, v.otherReading().orElseThrow().in(KnownUnits.LBF_IN), 1e-9);
    assertTrue(v.toString().contains("too high: the stud yields, oiled or not"), v.toString());
  }

  @Test
  void inchPoundsForFootPoundsAreNoticed() {
    ChartVerdict v = verdict(inLbf(60));
    assertEquals(Judgement.TOO_LOW, v.judgement());
    assertEquals(60, v.otherReading().orElseThrow().in(KnownUnits.LBF_FT), 1e-9);
    assertTrue(codes(v).contains("chart-unit-slip"));
  }

  @Test
  void theJudgementGoesByBothEndsOfTheFriction() {
    double atYield = 1 / verdict(inLbf(325)).greatestUse();
    assertEquals(Judgement.SUITS, verdict(inLbf(325 * 0.89 * atYield)).judgement());
    assertEquals(Judgement.ONLY_UNOILED, verdict(inLbf(325 * 0.95 * atYield)).judgement());
    assertEquals(Judgement.YIELDS_OILED, verdict(inLbf(325 * 1.05 * atYield)).judgement());
    assertFalse(codes(verdict(inLbf(325 * 1.05 * atYield))).contains("chart-unit-slip"));
  }

  /** With the implied friction the torque makes the usual preload, exactly. */
  @Test
  void theImpliedFrictionGivesTheUsualPreload() {
    ChartVerdict v = verdict(ftLbf(100));
    double mu = v.impliedFriction().orElseThrow();
    assertEquals(1, NUT.friction(mu, mu).preload(ftLbf(100)).leastPreload().ratio(v.usualPreload()), 1e-9);
    assertTrue(verdict(Nm(5)).impliedFriction().isEmpty(), "without friction 5 N·m do not reach it");
  }

  @Test
  void theBoreCounts() {
    ChartVerdict solid = new ChartTorque(NUT.bore(mm(0)), inLbf(900)).verdict(STUD);
    ChartVerdict wide = new ChartTorque(NUT.bore(mm(9)), inLbf(900)).verdict(STUD);
    assertTrue(wide.greatestUse() > 1.3 * solid.greatestUse());
    assertTrue(wide.usualPreload().compareTo(solid.usualPreload()) < 0);
  }

  /** What turns a locking nut pulls nothing. */
  @Test
  void aPrevailingTorqueIsTakenOff() {
    ChartTorque free = new ChartTorque(NUT, inLbf(265));
    ChartTorque locked = new ChartTorque(NUT.prevailing(inLbf(60)), inLbf(325));
    assertEquals(free.preloadBy(0.2).newton(), locked.preloadBy(0.2).newton(), 1e-9);
    assertEquals(free.stressBy(0.15).megapascal(), locked.stressBy(0.15).megapascal(), 1e-9);
    assertEquals(
        free.shareOfGeneralChart(PropertyClass.of("grade 5"), 0.2),
        locked.shareOfGeneralChart(PropertyClass.of("grade 5"), 0.2), 1e-12);
    assertEquals(
        free.verdict(STUD).impliedFriction().orElseThrow(), locked.verdict(STUD).impliedFriction().orElseThrow(), 1e-12);
  }

  @Test
  void theFaceComesFromTheTable() {
    assertEquals(Hexagon.standardFace(NUT.thread()).orElseThrow(), ChartTorque.of(NUT.thread(), inLbf(325)).nut().face());
  }
}
