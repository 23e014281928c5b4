// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

import static holdfast.quantity.Units.mrad;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules of stems at their ends, and single rows of the tables. */
class FailureDetailsTest {
  private static List<String> symptoms(List<FailureMode> modes) {
    return modes.stream().map(FailureMode::symptom).toList();
  }

  @Test
  void atLeastThreeLettersOfAWordRemain() {
    // Of four letters "ies" leaves one; of five two and the "y".
    assertEquals("tie", Words.stem("ties"));
    assertEquals("fly", Words.stem("flies"));
    assertEquals("bar", Words.stem("bars"));
    assertEquals("gas", Words.stem("gas"));
    assertEquals("bed", Words.stem("bed"));
    assertEquals("ring", Words.stem("ring"));
    assertEquals("us", Words.stem("us"));
    assertEquals("tap", Words.stem("taps"));
    // Cut by "ed" and left with three letters; a final "e" of three letters stays.
    assertEquals("wax", Words.stem("waxed"));
    assertEquals("axe", Words.stem("axe"));
    assertEquals("hol", Words.stem("hole"));
  }

  @Test
  void aDoubledConsonantBecomesSingleAndAVowelStays() {
    assertEquals("bal", Words.stem("balls"));
    assertEquals("egg", Words.stem("egg"));
    assertEquals("rub", Words.stem("rubbed"));
    assertEquals("grip", Words.stem("gripped"));
    // "o" is no consonant; "s" is not doubled by an ending.
    assertEquals("too", Words.stem("too"));
    assertEquals("taboo", Words.stem("taboo"));
    assertEquals("press", Words.stem("presses"));
    assertEquals("bent", Words.stem("bent"));
  }

  @Test
  void aWordThatIsRepeatedCountsOnce() {
    Finding first = FailureReading.search("rust rusts RUST").get(0);
    assertEquals(List.of("rust"), first.inSymptom());
    assertEquals(1, first.matches());
  }

  @Test
  void amongEqualSymptomsThoseWithMoreWordsElsewhereComeFirst() {
    List<Finding> found = FailureReading.search("stud bent shock");
    // "Stud bent" holds two words and "shock" among its causes.
    assertEquals("Stud bent", found.get(0).mode().symptom());
    assertEquals(List.of("shock"), found.get(0).elsewhere());
    assertEquals(3, found.get(0).matches());
    for (int i = 1; i < found.size(); i++) {
      Finding before = found.get(i - 1);
      Finding after = found.get(i);
      assertTrue(before.inSymptom().size() > after.inSymptom().size()
          || (before.inSymptom().size() == after.inSymptom().size() && before.matches() >= after.matches()));
    }
  }

  @Test
  void modesOfAClassAndOfAMarginAreTheRowsOfTheTable() {
    assertEquals(List.of("Red-brown powder or rust colour in bore or on stud"),
        symptoms(FailureReading.ofClass(DamageClass.of("5.3.3.2"))));
    // Frictional corrosion holds fretting corrosion and false brinelling.
    assertEquals(2, FailureReading.ofClass(DamageClass.of(" 5.3.3 ")).size());
    assertEquals(List.of("Housing cracked at hole"), symptoms(FailureReading.linkedTo(Margin.HOOP_STRESS)));
    assertEquals(List.of("Cannot take grease", "Grease exits only from far end"),
        symptoms(FailureReading.linkedTo(Margin.GREASE_PORT)));
    assertTrue(DamageClass.of("5.3").contains(DamageClass.of("5.3")));
  }

  @Test
  void classesAreThoseOfTheStandardAndReadWithTheirNames() {
    List<DamageClass> all = DamageClass.all();
    assertEquals(21, all.size());
    assertEquals("5.1 rolling contact fatigue", all.get(0).toString());
    assertEquals("5.6.4 thermal cracking", all.get(20).toString());
  }

  @Test
  void aModeReadsWithItsClassesOrWhereTheFaultLies() {
    String broken = FailureReading.search("thread broken at nut").get(0).mode().toString();
    assertTrue(broken.startsWith("Stud thread broken at nut (5.6.2 forced fracture; 5.6.3 fatigue fracture)\n  likely: over-torque"),
        broken);
    String loose = FailureReading.search("nut found loose").get(0).mode().toString();
    assertTrue(loose.startsWith("Nut found loose (fastening)\n  likely: low torque"), loose);
    assertTrue(loose.contains("\n  check: retained torque") && loose.contains("\n  correct: clean face; retighten"), loose);
    for (Margin margin : Margin.values()) {
      assertEquals(margin, Margin.read(margin.toString()));
    }
    assertEquals(Margin.HOLDING_TORQUE, Margin.read("holding torque"));
  }

  @Test
  void aLimitHoldsUpToItselfAndItsLoadUpToItsEnds() {
    MisalignmentLimit flat = MisalignmentLimit.narrowest(MisalignmentKind.TRACK_ROLLER_FLAT, 0).orElseThrow();
    assertTrue(flat.permits(mrad(1)));
    assertTrue(flat.permits(mrad(0)));
    assertFalse(flat.permits(mrad(-1.001)));
    // A row without a range of load holds for every load.
    assertEquals(0, flat.loadFrom());
    assertEquals(Double.POSITIVE_INFINITY, flat.loadTo());
    // Bearing engineering manual, table 12: 20 % to 35 % of C.
    assertEquals(mrad(0.5), MisalignmentLimit.narrowest(MisalignmentKind.CYLINDRICAL_PROFILED, 0.35).orElseThrow().limit());
    assertEquals(3, MisalignmentLimit.of(MisalignmentKind.CYLINDRICAL_PROFILED, 0.2).size());
    assertEquals(2, MisalignmentLimit.of(MisalignmentKind.CYLINDRICAL_PROFILED, 0.19).size());
    assertEquals(1, MisalignmentLimit.of(MisalignmentKind.CYLINDRICAL_PROFILED, 0.21).size());
    assertEquals(2, MisalignmentLimit.of(MisalignmentKind.CYLINDRICAL_PROFILED, 0).size());
    assertTrue(flat.toString().contains("track roller, flat ring; 0.001 in/in"), flat.toString());
  }
}
