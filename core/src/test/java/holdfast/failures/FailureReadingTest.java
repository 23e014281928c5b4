// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

import static holdfast.quantity.Units.mrad;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class FailureReadingTest {
  @Test
  void redRustOnTheStudIsFretting() {
    List<Finding> found = FailureReading.search("Red rust on the studs!");
    Finding first = found.get(0);
    assertEquals("5.3.3.2 fretting corrosion", first.mode().classes().get(0).toString());
    assertEquals(List.of("red", "rust", "studs"), first.inSymptom());
    assertTrue(first.mode().margins().contains(Margin.HOLDING_TORQUE));
    assertTrue(first.toString().contains("likely: stud loose"), first.toString());
  }

  @Test
  void pluralAndInflectionDoNotCount() {
    for (String words : List.of("spall edge", "Spalls at edges", "spalling, edge", "SPALLED EDGES")) {
      assertTrue(FailureReading.search(words).get(0).mode().symptom().startsWith("Spalls or bright band at one edge")
          || FailureReading.search(words).get(0).mode().symptom().startsWith("Spalls at the grease-hole edge"), words);
      assertEquals(FailureReading.search("spall edge").stream().map(Finding::mode).toList(),
          FailureReading.search(words).stream().map(Finding::mode).toList(), words);
    }
  }

  @Test
  void stemsOfWords() {
    assertEquals("spal", Words.stem("spalling"));
    assertEquals("spal", Words.stem("spall"));
    assertEquals("strip", Words.stem("stripes"));
    assertEquals("run", Words.stem("running"));
    assertEquals("dry", Words.stem("dries"));
    assertEquals("loos", Words.stem("loose"));
    assertEquals("press", Words.stem("press"));
    assertEquals("its", Words.stem("its"));
    assertEquals(List.of("noise"), Words.tokens("The noise, of it"));
  }

  @Test
  void wordsInTheSymptomRankBeforeWordsElsewhere() {
    List<Finding> found = FailureReading.search("nut loose");
    assertEquals("Nut found loose", found.get(0).mode().symptom());
    int last = Integer.MAX_VALUE;
    for (Finding finding : found) {
      assertTrue(finding.inSymptom().size() <= last);
      last = finding.inSymptom().size();
      assertTrue(finding.matches() > 0);
    }
    assertTrue(found.get(found.size() - 1).inSymptom().isEmpty());
    assertEquals(found, FailureReading.search("nut loose"));
  }

  @Test
  void unknownWordsFindNothingAndEmptyOnesAreRefused() {
    assertTrue(FailureReading.search("xylophone").isEmpty());
    InputException error = assertThrows(InputException.class, () -> FailureReading.search(" on the "));
    assertEquals("words of the symptom", error.parameter());
  }

  @Property
  void everyModeIsFirstOrTiedWhenItsOwnSymptomIsSearched(@ForAll @IntRange(min = 0, max = 31) int index) {
    FailureMode mode = FailureReading.all().get(index);
    List<Finding> found = FailureReading.search(mode.symptom().toUpperCase(Locale.ROOT));
    int most = found.get(0).inSymptom().size();
    assertTrue(found.stream().anyMatch(f -> f.mode().equals(mode) && f.inSymptom().size() == most), mode.symptom());
  }

  @Test
  void byClassAndByMargin() {
    assertEquals(32, FailureReading.all().size());
    DamageClass wear = DamageClass.of("5.2");
    assertTrue(FailureReading.ofClass(wear).size() > FailureReading.ofClass(DamageClass.of("5.2.2")).size());
    assertTrue(DamageClass.of("5.3").contains(DamageClass.of("5.3.3.2")));
    assertFalse(DamageClass.of("5.3.3.2").contains(DamageClass.of("5.3")));
    assertTrue(FailureReading.linkedTo(Margin.TILT).stream().anyMatch(m -> m.symptom().contains("one edge")));
    for (Margin margin : Margin.values()) {
      assertFalse(FailureReading.linkedTo(margin).isEmpty(), margin.toString());
    }
    InputException error = assertThrows(InputException.class, () -> DamageClass.of("9.9"));
    assertEquals("class of damage", error.parameter());
    assertThrows(InputException.class, () -> Margin.read("luck"));
  }

  @Test
  void everyModeIsComplete() {
    for (FailureMode mode : FailureReading.all()) {
      assertFalse(mode.causes().isEmpty() || mode.checks().isEmpty() || mode.corrections().isEmpty(), mode.symptom());
      assertEquals(mode.group().equals("damage"), !mode.classes().isEmpty(), mode.symptom());
      assertFalse(mode.documents().isEmpty());
    }
  }

  @Test
  void misalignmentLimitsFollowTheLoad() {
    assertEquals(mrad(1.16), MisalignmentLimit.narrowest(MisalignmentKind.CYLINDRICAL_PROFILED, 0.1).orElseThrow().limit());
    assertEquals(mrad(0.5), MisalignmentLimit.narrowest(MisalignmentKind.CYLINDRICAL_PROFILED, 0.3).orElseThrow().limit());
    assertTrue(MisalignmentLimit.narrowest(MisalignmentKind.CYLINDRICAL_PROFILED, 0.36).isEmpty());
    // At the boundary both rows hold and the narrower one governs.
    assertEquals(mrad(0.5), MisalignmentLimit.narrowest(MisalignmentKind.CYLINDRICAL_PROFILED, 0.2).orElseThrow().limit());
    MisalignmentLimit flat = MisalignmentLimit.narrowest(MisalignmentKind.TRACK_ROLLER_FLAT, 5).orElseThrow();
    assertEquals("1 mrad (track roller, flat ring; 0.001 in/in)", flat.toString().replace("0.001 rad", "1 mrad"));
    assertTrue(flat.permits(mrad(-1)));
    assertFalse(flat.permits(mrad(1.001)));
    for (MisalignmentKind kind : MisalignmentKind.values()) {
      assertFalse(MisalignmentLimit.of(kind).isEmpty(), kind.toString());
    }
    assertEquals(18, MisalignmentLimit.all().size());
    InputException error = assertThrows(InputException.class, () -> MisalignmentLimit.of(MisalignmentKind.TAPERED, -0.1));
    assertEquals("load share P/C", error.parameter());
  }
}
