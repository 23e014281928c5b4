// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import java.util.List;
import org.junit.jupiter.api.Test;

class CautionsTest {
  @Test
  void aTopicGivesItsCautionsInTheOrderOfTheTable() {
    List<Caution> isolate = Cautions.about("isolate");
    assertEquals(10, isolate.size());
    assertTrue(isolate.get(0).text().startsWith("Stop the machine with its normal stopping procedure"), isolate.toString());
    assertTrue(isolate.get(9).text().startsWith("Inspect the energy-control procedures"), isolate.toString());
    assertEquals(List.of(isolate.get(9), isolate.get(0)), Cautions.of("inspect-yearly", "stop-normally"));
  }

  @Test
  void topicsComeOnceInTheOrderOfTheTable() {
    List<String> topics = List.copyOf(Cautions.topics());
    assertEquals(List.of("isolate", "stored energy", "protective equipment", "prepare", "press"), topics.subList(0, 5));
    assertEquals("grease", topics.get(topics.size() - 1));
  }

  @Test
  void everyCautionPointsToItsRule() {
    assertEquals(SourceRef.published("29 CFR 1910.147", "(d)(2)"), Cautions.of("stop-normally").get(0).source());
    assertEquals(
        SourceRef.published("29 CFR 1910 Subpart I", "29 CFR 1910.132(d)"),
        Cautions.of("assess-hazards").get(0).source());
    assertEquals(
        SourceRef.published("Army TM 5-3810-307-24-1-1", "whole document"), Cautions.of("no-hammer-on-sleeves").get(0).source());
    assertEquals(SourceRef.commonPractice("workshop practice"), Cautions.of("slacken-ropes").get(0).source());
    assertEquals(
        SourceRef.memory("29 CFR 1910.147", "(c)(6)(i), memory; state summary"), Cautions.of("inspect-yearly").get(0).source());
  }

  @Test
  void anIdFindsItsCautionWhereverItsRowStands() {
    assertTrue(Cautions.of("personal-lock").get(0).text().startsWith("Fit a personal lock"));
    assertTrue(Cautions.of("push-stud-middle").get(0).text().startsWith("Push only on the middle of the head"));
    assertEquals(Cautions.about("grease").get(5), Cautions.of("back-pressure").get(0));
  }

  @Test
  void unknownTopicsAndIdsAreRefusedWithTheKnownOnes() {
    InputException e = assertThrows(InputException.class, () -> Cautions.about("juggle"));
    assertTrue(e.getMessage().startsWith("topic ('juggle') must be one of [isolate, stored energy,"), e.getMessage());
    e = assertThrows(InputException.class, () -> Cautions.of("personal-lock", "personal-look"));
    assertTrue(e.getMessage().startsWith("id of a caution ('personal-look') must be one of [stop-normally,"), e.getMessage());
  }
}
