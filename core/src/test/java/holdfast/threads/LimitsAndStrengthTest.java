// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.tables.Provenance;
import holdfast.trace.Step;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class LimitsAndStrengthTest {
  @Test
  void metricLimitsOfExternalAndInternalThreads() {
    ThreadLimits stud = ThreadLimits.of(ScrewThread.of("M10-6g"));
    assertEquals("M10-6g: d 9.732 … 9.968, d2 8.862 … 8.994 mm", stud.toString());
    ThreadLimits nut = ThreadLimits.of(ScrewThread.of("M10"), "6H");
    assertEquals("M10-6H: D1 8.376 … 8.676, D2 9.026 … 9.206 mm", nut.toString());
    assertEquals(stud.pitchLeast().mm(), stud.explain().result().value());
    ThreadLimits mixed = ThreadLimits.of(ScrewThread.of("M10-5g6g"));
    assertEquals(stud.crestLeast(), mixed.crestLeast());
    assertTrue(mixed.pitchLeast().compareTo(stud.pitchLeast()) > 0);
    assertTrue(ThreadLimits.of(ScrewThread.of("M10"), "6h").pitchGreatest().compareTo(stud.pitchGreatest()) > 0);
    assertTrue(ThreadLimits.of(ScrewThread.of("M10"), "6G").pitchLeast().compareTo(nut.pitchLeast()) > 0);
    assertTrue(stud.warnings().isEmpty());
  }

  /** Position G lifts both diameters by its deviation, 32 µm at P = 1.5 mm. */
  @Test
  void positionGLiftsBothDiameters() {
    ThreadLimits g = ThreadLimits.of(ScrewThread.of("M10"), "6G");
    assertEquals("M10-6G: D1 8.408 … 8.708, D2 9.058 … 9.238 mm", g.toString());
    assertEquals(
        List.of("D1,max", "D1,min", "D2,max", "D2,min"), g.explain().steps().stream().map(Step::symbol).toList());
    assertEquals("ISO 965-1:2013", g.explain().result().source().document());
    ThreadLimits inch = ThreadLimits.of(ScrewThread.of("1/2-13 UNC"), "2A");
    assertEquals(
        List.of("d,max", "d,min", "d2,max", "d2,min"), inch.explain().steps().stream().map(Step::symbol).toList());
    assertEquals("ASME B1.1-2003", inch.explain().result().source().document());
  }

  /** Pitch diameter tolerance of grade 6 at P = 1.5 mm: 132 µm over 5.6 up to 11.2 mm, 140 µm over 11.2 up to 22.4 mm. */
  @Test
  void rangesOfDiametersEndAtTheirUpperEnd() {
    assertEquals(132, MetricToleranceKernel.externalPitch(6, 11.2, 1.5));
    assertEquals(140, MetricToleranceKernel.externalPitch(6, Math.nextUp(11.2), 1.5));
    assertEquals(140, MetricToleranceKernel.externalPitch(6, 22.4, 1.5));
    message(() -> MetricToleranceKernel.externalPitch(6, 5.6, 1.5), "tolerance grade (6 at P = 1.5 mm, d = 5.6 mm)");
    message(() -> MetricToleranceKernel.externalPitch(10, 10, 1.5), "tolerance grade (? at P = 1.5 mm, d = 10 mm)");
    message(() -> MetricToleranceKernel.externalPitch(-1, 10, 1.5), "tolerance grade (? at");
  }

  /** 5/8-24 UNEF engages over 9·p; #6 is the first size with limits to 0.001 in. Recalled. */
  @Test
  void extraFineAndNumberedSizes() {
    assertEquals(
        "5/8-24 UNEF-2A: d 0.6166 … 0.6238, d2 0.5927 … 0.5967 in",
        ThreadLimits.of(ScrewThread.of("5/8-24 UNEF"), "2A").toString());
    assertEquals(
        "#6-32 UNC-2B: D1 0.1040 … 0.1140, D2 0.1177 … 0.1214 in", ThreadLimits.of(ScrewThread.of("#6-32"), "2B").toString());
    assertEquals(
        "#5-40 UNC-2B: D1 0.0979 … 0.1062, D2 0.1088 … 0.1121 in", ThreadLimits.of(ScrewThread.of("#5-40"), "2B").toString());
  }

  @Test
  void unifiedLimitsOfAllClasses() {
    ScrewThread half = ScrewThread.of("1/2-13 UNC");
    assertEquals("1/2-13 UNC-2A: d 0.4876 … 0.4985, d2 0.4435 … 0.4485 in", ThreadLimits.of(half, "2A").toString());
    assertEquals("1/2-13 UNC-2B: D1 0.4170 … 0.4340, D2 0.4500 … 0.4565 in", ThreadLimits.of(half, "2B").toString());
    // Recalled: 3A and 3B of 1/2-13.
    assertEquals("1/2-13 UNC-3A: d 0.4891 … 0.5000, d2 0.4463 … 0.4500 in", ThreadLimits.of(half, "3A").toString());
    assertEquals("1/2-13 UNC-3B: D1 0.4170 … 0.4284, D2 0.4500 … 0.4548 in", ThreadLimits.of(half, "3B").toString());
    assertEquals("thread-class-recalled", ThreadLimits.of(half, "3B").warnings().get(0).code());
    assertTrue(ThreadLimits.of(half, "1A").crestLeast().compareTo(ThreadLimits.of(half, "2A").crestLeast()) < 0);
    assertTrue(ThreadLimits.of(half, "1B").pitchGreatest().compareTo(ThreadLimits.of(half, "2B").pitchGreatest()) > 0);
  }

  @Test
  void toleranceClassesThatDoNotExistAreRefused() {
    ScrewThread m10 = ScrewThread.of("M10");
    message(() -> ThreadLimits.of(m10), "tolerance class ('') must be such as 6g");
    message(() -> ThreadLimits.of(m10, "2A"), "such as 6g");
    message(() -> ThreadLimits.of(m10, "5g6H"), "small letters are external");
    message(() -> ThreadLimits.of(m10, "5g"), "tolerance grade (5 at P = 1.5 mm)");
    message(() -> ThreadLimits.of(m10, "6k"), "such as 6g");
    message(() -> ThreadLimits.of(ScrewThread.of("M1.6"), "6e"), "tolerance position (e at P = 0.35 mm)");
    message(() -> ThreadLimits.of(ScrewThread.of("1/4-20"), "6g"), "1A, 2A, 3A, 1B, 2B or 3B");
    message(() -> ThreadLimits.of(ScrewThread.of("M1.6"), "8g"), "at P = 0.35 mm");
  }

  @Test
  void strengthByClassAndSize() {
    PropertyClass c = PropertyClass.of("8.8");
    assertEquals(640, c.yieldStress(ScrewThread.of("M16")).megapascal());
    assertEquals(660, c.yieldStress(ScrewThread.of("M18x1.5")).megapascal());
    assertEquals(720, PropertyClass.of("9.8").yieldStress(ScrewThread.of("M16")).megapascal());
    assertEquals(92, PropertyClass.of("grade 5").yieldStress(ScrewThread.of("5/8-18")).megapascal() / 6.894757293, 1e-6);
    assertEquals(81, PropertyClass.of("SAE J429 Grade 5").yieldStress(ScrewThread.of("1-1/8-7")).megapascal() / 6.894757293, 1e-6);
    assertEquals("ASTM A193 B7", PropertyClass.of("A193 B7").toString());
    assertEquals(Provenance.MEMORY, PropertyClass.of("A4-100").source(ScrewThread.of("M10")).provenance());
    assertTrue(PropertyClass.names().containsAll(List.of("4.6", "12.9", "A2-70", "SAE J429 grade 8", "ASTM A574")));
  }

  @Test
  void classesThatDoNotCoverTheSizeAreRefused() {
    message(() -> PropertyClass.of("8.9"), "property class ('8.9') must be one of 4.6");
    message(() -> PropertyClass.of("9.8").yieldStress(ScrewThread.of("M18")), "thread for class 9.8 (M18) must be over 0 mm up to 16 mm");
    message(() -> PropertyClass.of("8.8").yieldStress(ScrewThread.of("M42")), "up to 39 mm");
    message(() -> PropertyClass.of("A2-70").proofStress(ScrewThread.of("M10")), "proof stress of class A2-70 (not stated)");
    message(() -> PropertyClass.of("grade 5").yieldStress(ScrewThread.of("#10-32")), "over 6.3246 mm");
    message(() -> PropertyClass.ofMaterial("x", MPa(800), MPa(700)), "at least the yield stress, 800 MPa");
  }

  @Test
  void loadsAreThePrintedOnesWhereFound() {
    RatedLoad printed = PropertyClass.of("8.8").proofLoad(ScrewThread.of("M16"));
    assertTrue(printed.printed());
    assertEquals(91000, printed.force().newton());
    RatedLoad product = PropertyClass.of("8.8").proofLoad(ScrewThread.of("M16x1.5"));
    assertFalse(product.printed());
    assertEquals(167 * 580, product.force().newton(), 1e-9);
    assertEquals(product.force().newton(), product.explain().result().value());
    assertTrue(PropertyClass.of("A574").ultimateLoad(ScrewThread.of("1/4-20")).printed());
    assertEquals(25500, PropertyClass.of("A574").ultimateLoad(ScrewThread.of("1/2-13")).force().newton() / 4.4482216152605, 1e-6);
    assertEquals("proof load 91 kN", printed.toString());
    assertEquals("read from the load table", printed.explain().result().expression());
    assertEquals("stress area times stress", product.explain().result().expression());
    assertEquals(
        "thread-outside-series",
        PropertyClass.of("8.8").proofLoad(ScrewThread.custom(mm(17), mm(1.5))).warnings().get(0).code());
    assertEquals(480, StrengthKernel.shearStrength(800, 0.6), 1e-12);
  }

  @Test
  void frictionClassesAndNutFactorsAndLockingNuts() {
    assertEquals(Friction.of(0.08, 0.16), FrictionClass.B.friction());
    assertEquals(Friction.of(0.3, 0.45), FrictionClass.E.friction(0.45));
    assertFalse(FrictionClass.C.conditions().isEmpty());
    message(FrictionClass.E::friction, "friction class (E)");
    message(() -> FrictionClass.B.friction(0.05), "at least the least, 0.08");
    assertEquals(32, PrevailingTorques.of(ScrewThread.of("5/8-18")).get(0).least().newtonMillimetre() / 112.9848290276167, 1e-9);
    assertEquals(4, PrevailingTorques.of(ScrewThread.of("5/8-18")).size());
    assertTrue(PrevailingTorques.of(ScrewThread.of("M10")).isEmpty());
  }

  private static void message(Executable call, String part) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }
}
