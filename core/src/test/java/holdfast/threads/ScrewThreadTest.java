// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.tables.Provenance;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScrewThreadTest {
  @ParameterizedTest
  @CsvSource({
    "M18x1.5, M18x1.5, 18, 1.5, fine, ''",
    "M10, M10, 10, 1.5, coarse, ''",
    "M10x1.5, M10, 10, 1.5, coarse, ''",
    "M10x1.25-6g, M10x1.25, 10, 1.25, fine, 6g",
    "M10×1.25 - 5g6g, M10x1.25, 10, 1.25, fine, 5g6g",
    "M6-6H, M6, 6, 1, coarse, 6H",
    "5/8-18 UNF, 5/8-18 UNF, 15.875, 1.4111111111111112, UNF, ''",
    "1/4-20 UNC-2A, 1/4-20 UNC, 6.35, 1.27, UNC, 2A",
    "#10-32, #10-32 UNF, 4.826, 0.79375, UNF, ''",
    "10-32, #10-32 UNF, 4.826, 0.79375, UNF, ''",
    "No.10-24 UNC, #10-24 UNC, 4.826, 1.0583333333333333, UNC, ''",
    "1-1/2-6 UNC, 1-1/2-6 UNC, 38.1, 4.233333333333333, UNC, ''",
    "1 1/2-12 UNF-3B, 1-1/2-12 UNF, 38.1, 2.1166666666666667, UNF, 3B",
    "1-8 UN, 1-8 UN, 25.4, 3.175, 8-UN, ''",
    "1-8 8-UN-2A, 1-8 UN, 25.4, 3.175, 8-UN, 2A",
    "1-8, 1-8 UNC, 25.4, 3.175, UNC, ''",
    ".625-18 UNRF, 5/8-18 UNF, 15.875, 1.4111111111111112, UNF, ''",
    "12-24, #12-24 UNC, 5.4864, 1.0583333333333333, UNC, ''",
    "1/4-20-2A, 1/4-20 UNC, 6.35, 1.27, UNC, 2A",
    "1-8 8-UN, 1-8 UN, 25.4, 3.175, 8-UN, ''",
    "1-8 8UN-2A, 1-8 UN, 25.4, 3.175, 8-UN, 2A",
    "2-4.5 UNC, 2-4.5 UNC, 50.8, 5.644444444444445, UNC, ''",
    "1-14, 1-14 UNS, 25.4, 1.8142857142857143, UNS, ''",
    "1 3/4-12, 1-3/4-12 UN, 44.45, 2.1166666666666667, 12-UN, ''",
    "2-12 12-UN-2A, 2-12 UN, 50.8, 2.1166666666666667, 12-UN, 2A",
    "2-12 12UN 2A, 2-12 UN, 50.8, 2.1166666666666667, 12-UN, 2A",
    "2-16 UN 3B, 2-16 UN, 50.8, 1.5875, 16-UN, 3B",
    "5/8-18 UNF 2A, 5/8-18 UNF, 15.875, 1.4111111111111112, UNF, 2A",
    "M10x1.25 6g, M10x1.25, 10, 1.25, fine, 6g",
  })
  void readsDesignations(String text, String name, double d, double pitch, String series, String toleranceClass) {
    ScrewThread thread = ScrewThread.of(text);
    assertEquals(name, thread.designation());
    assertEquals(d, thread.majorDiameter().mm(), 1e-12);
    assertEquals(pitch, thread.pitch().mm(), 1e-12);
    assertEquals(series, thread.series());
    assertEquals(toleranceClass, thread.toleranceClass());
  }

  @Test
  void leftHandAndMultipleStart() {
    ScrewThread thread = ScrewThread.of("M16xPh4P2-6g-LH");
    assertEquals("M16xPh4P2-6g-LH", thread.toString());
    assertEquals(4, thread.lead().mm());
    assertEquals(2, thread.pitch().mm());
    assertTrue(thread.leftHand());
  }

  @ParameterizedTest
  @CsvSource({
    "M16-LH", "M16 LH", "M16-lh", "M16 left hand", "M16-left-hand", "M16 Left", "M16-L.H.", "M16-6g-LH", "M16-LH-6g",
    "5/8-18 UNF-2A-LH", "5/8-18 UNF LH", "5/8-18 LH", "2-12 UN left-hand 2A"
  })
  void theHandIsReadInTheUsualSpellings(String text) {
    ScrewThread thread = ScrewThread.of(text);
    assertTrue(thread.leftHand(), text);
    assertTrue(thread.toString().endsWith("-LH"), thread.toString());
    assertEquals(thread, ScrewThread.of(thread.toString()));
  }

  /** A thread that is of another kind is not sent to a constructor that would compute it as a 60° thread. */
  @Test
  void anotherKindOfThreadIsNotRecommendedAsACustomOne() {
    for (String text : List.of("1/2-14 NPT", "1-5 ACME", "1/2-14 BSPP", "G1/2", "Tr20x4")) {
      String message = assertThrows(InputException.class, () -> ScrewThread.of(text)).getMessage();
      assertFalse(message.contains("custom"), message);
    }
  }

  @Test
  void aClassOfTheOtherSystemIsRefusedAtEveryDoor() {
    assertThrows(InputException.class, () -> ScrewThread.of("M16").withToleranceClass("2A"));
    assertThrows(InputException.class, () -> ScrewThread.of("5/8-18 UNF").withToleranceClass("6H"));
    assertEquals("", ScrewThread.of("M16-6g").withToleranceClass("").toleranceClass());
  }

  @Test
  void combinationsByTheRuleOfTheirSeriesSaySo() {
    assertEquals("thread-combination-derived", ScrewThread.of("2-16 UN").warnings().get(0).code());
    assertEquals(List.of(), ScrewThread.of("2-12 UN").warnings());
  }

  /** Lengths of engagement by which the tolerances go: the diameter up to the 8-thread series, nine pitches in finer ones. */
  @Test
  void everyCombinationHasLimits() {
    for (ThreadSeries.Entry entry : ThreadSeries.UNIFIED.get()) {
      ScrewThread thread = ScrewThread.of(entry.designation());
      assertEquals(entry.designation(), thread.designation());
      assertTrue(ThreadLimits.of(thread, "2A").pitchLeast().compareTo(ThreadLimits.of(thread, "2B").pitchLeast()) < 0);
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "M18x1.4 | one of M18, M18x2, M18x1.5, M18x1",
    "M18x1.4 | ScrewThread.custom",
    "M13 | nearest: M12, M14",
    "M18y1.5 | character 4 ('y'): 'x' and the pitch, or '-' and the tolerance class, are expected after the diameter",
    "M16xPh0P2 | whole multiple",
    ".5 | an inch thread is size, '-', threads per inch",
    "No.5 | an inch thread is size, '-', threads per inch",
    "M | the end of the text",
    "Mx1 | character 2 ('x')",
    "M10x1.25-6gg | '6gg' is not a tolerance class",
    "M18x1,5 | the decimal sign is a point",
    "M18x1.5-99z | '99z' is not a tolerance class of a metric thread",
    "M18x1.5-2A | '2A' is not a tolerance class of a metric thread",
    "M18x1.5-6g-6h | one class only",
    "5/8-18 UNF-6g | '6g' is not a tolerance class of an inch thread",
    "5/8-18 UNF-4A | '4A' is not a tolerance class of an inch thread",
    "9999999999-32 | an inch thread is size, '-', threads per inch",
    "1-9999999999 | an inch thread is size, '-', threads per inch",
    "1/2-14 NPT | a taper pipe thread",
    "1/2 NPTF | a taper pipe thread",
    "1-5 ACME | an Acme thread",
    "G1/2 | a parallel pipe thread",
    "1/2-14 BSPP | a parallel pipe thread",
    "R 3/4 | a sealing pipe thread",
    "Rc1/8 | a sealing pipe thread",
    "1/2 BSW | a Whitworth thread",
    "MJ6x1 | an enlarged root radius",
    "1/4-28 UNJF | an enlarged root radius",
    "1/4-20UX | expected",
    "M16xPh3P2 | whole multiple",
    "M72 | no coarse thread M72",
    "5/8-17 | one of 5/8-11 UNC, 5/8-18 UNF, 5/8-24 UNEF",
    "5/8-18 UNC | series 'UNC' does not have this thread; it is [UNF]",
    "1/0-20 | denominator 0",
    "#99-32 | nearest",
    "#1/4-20 | a numbered size is a whole number",
    "Tr20x4 | a trapezoidal thread",
    "X20x4 | character 1 ('X')",
    "5/8 UNF | threads per inch",
    "0.51-20 | nearest: 0.5 in, 0.5625 in",
  })
  void saysWhereADesignationGoesWrong(String text, String part) {
    InputException e = assertThrows(InputException.class, () -> ScrewThread.of(text));
    assertEquals("thread designation", e.parameter());
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  @Test
  void emptyTextIsRefused() {
    assertTrue(assertThrows(InputException.class, () -> ScrewThread.of("  ")).getMessage().contains("it is empty"));
  }

  @Test
  void geometryOfM18x1point5() {
    ScrewThread thread = ScrewThread.of("M18x1.5");
    assertEquals(17.026, thread.pitchDiameter().mm(), 0.0005);
    assertEquals(16.376, thread.internalMinorDiameter().mm(), 0.0005);
    assertEquals(16.160, thread.rootDiameter().mm(), 0.0005);
    assertEquals(216.23, thread.stressArea().mm2(), 0.005);
    assertEquals(216, thread.nominalStressArea().mm2(), 1e-9);
    assertEquals(thread.stressArea().mm2(), thread.explain().result().value());
    assertTrue(thread.warnings().isEmpty());
  }

  @Test
  void geometryOfAnInchThread() {
    ScrewThread thread = ScrewThread.of("5/8-18 UNF");
    assertEquals(0.5889, thread.pitchDiameter().mm() / 25.4, 0.00005);
    assertEquals(0.256, thread.stressArea().mm2() / 645.16, 0.0005);
    assertEquals(18, thread.threadsPerInch(), 1e-12);
    assertEquals(thread.stressArea().mm2(), thread.explain().result().value());
    // Root as a section at minor diameter: area 0.240 in².
    assertEquals(0.240, ThreadGeometryKernel.ringArea(thread.rootDiameter().mm() / 25.4, 0), 0.0005);
  }

  /** The stress area of 5/8-18 is printed as 0.256 in², its diameter is D − 0.9743/n = 0.625 − 0.0541278 in. */
  @Test
  void stressSectionsOfBothSystems() {
    ScrewThread inch = ScrewThread.of("5/8-18 UNF");
    assertEquals(0.256, inch.nominalStressArea().mm2() / 645.16, 1e-12);
    assertEquals(0.5708722, inch.stressDiameter().mm() / 25.4, 1e-7);
    assertEquals((17.026 + 16.160) / 2, ScrewThread.of("M18x1.5").stressDiameter().mm(), 1e-12);
    assertEquals(
        List.of("dS = d − 0.9743·P, NASA TM-106943", "AS = (π/4)·dS², derivation"), steps(inch));
    assertEquals(
        List.of(
            "d2 = d − 0.649519·P, ISO 724:1993", "d3 = d − 1.226869·P, DIN 13-1:1986", "dS = (d2 + d3)/2, ISO 898-1:2013",
            "AS = (π/4)·dS², derivation"),
        steps(ScrewThread.of("M18x1.5")));
  }

  private static List<String> steps(ScrewThread thread) {
    return thread.explain().steps().stream().map(s -> s.symbol() + " = " + s.expression() + ", " + s.source().document()).toList();
  }

  @Test
  void aClassIsAddedAndTheRestStays() {
    ScrewThread thread = ScrewThread.of("M16xPh4P2-LH");
    assertEquals(ScrewThread.of("M16xPh4P2-6g-LH"), thread.withToleranceClass("6g"));
  }

  @Test
  void theLeadIsAtLeastThePitch() {
    InputException e =
        assertThrows(
            InputException.class,
            () ->
                new ScrewThread(
                    "x", ThreadSystem.METRIC, mm(16), mm(2), mm(1), "custom", "", false, Provenance.DERIVED));
    assertEquals("lead Ph (1 mm) must be at least the pitch, 2 mm; lead = starts · pitch", e.getMessage());
  }

  @Test
  void recalledCombinationsWarn() {
    ScrewThread metric =
        new ScrewThread("x", ThreadSystem.METRIC, mm(16), mm(2), mm(2), "fine", "", false, Provenance.MEMORY);
    assertEquals("thread-combination-recalled", metric.warnings().get(0).code());
    assertEquals("ISO 261:1998", metric.warnings().get(0).source().document());
    Warning inch = ScrewThread.of("1-1/2-14 UNS").warnings().get(0);
    assertEquals("ASME B1.1-2003", inch.source().document());
    Warning listed =
        new ScrewThread("x", ThreadSystem.METRIC, mm(16), mm(2), mm(2), "fine", "", false, Provenance.LISTING).warnings().get(0);
    assertEquals("thread-combination-listed", listed.code());
    assertEquals(Provenance.LISTING, listed.source().provenance());
    assertTrue(ScrewThread.of("1/4-32 UNEF").warnings().isEmpty());
  }

  @Test
  void customThreadsCarryAWarning() {
    ScrewThread metric = ScrewThread.custom(mm(19), mm(1.5));
    assertEquals("M19x1.5", metric.toString());
    assertEquals("thread-outside-series", metric.warnings().get(0).code());
    ScrewThread inch = ScrewThread.customUnified(inch(1), 14);
    assertEquals("1-14 UNS", inch.toString());
    assertEquals(0.6799, inch.stressArea().mm2() / 645.16, 0.00005);
  }

  @Test
  void aThreadWithoutCoreIsRefused() {
    InputException e = assertThrows(InputException.class, () -> ScrewThread.custom(mm(2), mm(2)));
    assertTrue(e.getMessage().contains("major diameter d (2 mm)"), e.getMessage());
  }
}
