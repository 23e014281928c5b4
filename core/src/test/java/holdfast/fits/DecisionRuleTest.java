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
import holdfast.tables.Provenance;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Two rules of decision by name; what is at hand of ISO 14253-1 is memory, and says so. */
class DecisionRuleTest {
  @Test
  void aReadingAtTheEdgeOfTheAcceptanceZoneConformsWithTheProbabilityOfTheRule() {
    // U = 2 u, so u = 5 µm; the share of the normal distribution on the right side of one limit.
    NormalDistribution reading = new NormalDistribution(0, 5);
    assertEquals(0.95, reading.cumulativeProbability(DecisionRule.PROBABILITY_95.guardBand(um(10)).mm() * 1000), 1e-12);
    assertEquals(0.97725, reading.cumulativeProbability(DecisionRule.WHOLE_UNCERTAINTY.guardBand(um(10)).mm() * 1000), 1e-5);
  }

  @Test
  void betweenTheTwoGuardBandsTheRulesDiffer() {
    assertEquals(Conformity.UNDECIDED, Conformity.of(um(9), um(10)));
    assertEquals(Conformity.UNDECIDED, Conformity.of(um(9), um(10), DecisionRule.WHOLE_UNCERTAINTY));
    assertEquals(Conformity.PROVEN, Conformity.of(um(9), um(10), DecisionRule.PROBABILITY_95));
    assertEquals(Conformity.UNDECIDED, Conformity.of(um(-9), um(10)));
    assertEquals(Conformity.DISPROVED, Conformity.of(um(-9), um(10), DecisionRule.PROBABILITY_95));
    assertEquals(Conformity.UNDECIDED, Conformity.of(um(8.2), um(10), DecisionRule.PROBABILITY_95));
  }

  @Test
  void theCautiousRuleIsTheDefaultAndThePartNamesTheRuleItWasJudgedBy() {
    Gauge gauge = Gauge.of("bore gauge 7", um(2)).steelAt(degC(20));
    MeasuredPart measured = MeasuredPart.by(gauge).station(mm(25.0017)).at(degC(20));
    MeasuringScheme one = new MeasuringScheme(1, 1);
    assertEquals(DecisionRule.WHOLE_UNCERTAINTY, one.rule());
    assertEquals(DecisionRule.WHOLE_UNCERTAINTY, MeasuringScheme.usual().rule());
    TolerancedSize drawing = TolerancedSize.of(mm(25), "H7");
    PartAcceptance cautious = new PartAcceptance("bore", drawing, measured, umPerMK(11.5), one);
    PartAcceptance default2017 =
        new PartAcceptance("bore", drawing, measured, umPerMK(11.5), one.by(DecisionRule.PROBABILITY_95));
    assertEquals(Conformity.UNDECIDED, cautious.conformity());
    assertEquals(Conformity.PROVEN, default2017.conformity());
    assertTrue(default2017.acceptanceZone().orElseThrow().tolerance().compareTo(cautious.acceptanceZone().orElseThrow().tolerance()) > 0);
    var last = default2017.explain().result();
    assertTrue(last.toString().contains("95 % conformance probability"), last.toString());
    assertEquals(Provenance.MEMORY, last.source().provenance());
  }

  @Test
  void anUncertaintyBelowNothingIsRefusedByBoth() {
    assertThrows(InputException.class, () -> Conformity.of(um(9), um(-1), DecisionRule.PROBABILITY_95));
  }
}
