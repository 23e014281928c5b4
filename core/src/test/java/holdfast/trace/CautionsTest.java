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
    assertEquals(List.of(isolate.get(9), isolate.get(0)), Cautions.about("isolate", 10, 1));
  }

  @Test
  void topicsComeOnceInTheOrderOfTheTable() {
    List<String> topics = List.copyOf(Cautions.topics());
    assertEquals(List.of("isolate", "stored energy", "protective equipment", "press"), topics.subList(0, 4));
    assertEquals("grease", topics.get(topics.size() - 1));
  }

  @Test
  void everyCautionPointsToItsRule() {
    assertEquals(SourceRef.published("29 CFR 1910.147", "(d)(2)"), Cautions.about("isolate", 1).get(0).source());
    assertEquals(
        SourceRef.published("29 CFR 1910 Subpart I", "29 CFR 1910.132(d)"),
        Cautions.about("protective equipment", 1).get(0).source());
    assertEquals(
        SourceRef.published("Army TM 5-3810-307-24-1-1", "whole document"), Cautions.about("drive", 5).get(0).source());
    assertEquals(SourceRef.commonPractice("workshop practice"), Cautions.about("stored energy", 2).get(0).source());
    assertEquals(
        SourceRef.memory("29 CFR 1910.147", "(c)(6)(i), memory; state summary"), Cautions.about("isolate", 10).get(0).source());
  }

  @Test
  void unknownTopicsAndNumbersAreRefusedWithTheKnownOnes() {
    InputException e = assertThrows(InputException.class, () -> Cautions.about("juggle"));
    assertTrue(e.getMessage().startsWith("topic ('juggle') must be one of [isolate, stored energy,"), e.getMessage());
    for (int number : new int[] {0, 11}) {
      e = assertThrows(InputException.class, () -> Cautions.about("isolate", number));
      assertEquals("number (" + number + ") must be from 1 to 10; cautions on 'isolate'", e.getMessage());
    }
  }
}
