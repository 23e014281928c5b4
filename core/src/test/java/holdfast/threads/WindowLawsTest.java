// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class WindowLawsTest {
  private static final String[] THREADS = {"M8", "M10x1.25", "M12x1.5", "M16x1.5", "M18x1.5", "M20", "M24x2", "M30x1.5"};
  private static final String[] CLASSES = {"5.6", "8.8", "10.9", "12.9"};

  /** At the upper end the stress over the whole friction band reaches the limit and nowhere passes it. */
  @Property(tries = 200)
  void theUpperEndIsHitAndNowherePassed(
      @ForAll @IntRange(max = 7) int t,
      @ForAll @IntRange(max = 3) int c,
      @ForAll @Scale(4) @DoubleRange(min = 0.04, max = 0.2) double low,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.2) double width,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.15) double tool,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.4) double bore) {
    ScrewThread thread = ScrewThread.of(THREADS[t]);
    Tightening nut = Tightening.of(thread).bore(thread.rootDiameter().times(bore)).friction(low, low + width);
    PropertyClass strength = PropertyClass.of(CLASSES[c]);
    TorqueWindow w = nut.window(kN(1), strength, Scatter.of(tool));
    double limit = 0.9 * strength.yieldStress(thread).megapascal();
    assertEquals(limit, nut.preload(w.highest().times(1 + tool)).greatestStress().megapascal(), 1e-9 * limit);
    for (double g = 0; g <= 1; g += 0.25) {
      for (double k = 0; k <= 1; k += 0.25) {
        double muG = low + g * width;
        double muK = low + k * width;
        TighteningState s =
            new TighteningState(nut, muG, muK, nut.preloadAt(w.highest().times(1 + tool), muG, muK));
        assertTrue(s.combinedStress().megapascal() <= limit * (1 + 1e-9));
      }
    }
    assertEquals(1000, w.preload(w.lowest()).worstCaseLeast().newton(), 1e-9 * 1000);
  }

  /** More demand, more friction scatter and a worse tool never widen the window; more strength never narrows it. */
  @Property(tries = 100)
  void theWindowIsMonotone(
      @ForAll @IntRange(max = 7) int t,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.1) double width,
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.1) double tool) {
    Tightening nut = Tightening.of(ScrewThread.of(THREADS[t])).friction(0.1, 0.1 + width);
    TorqueWindow w = nut.window(kN(5), PropertyClass.of("8.8"), Scatter.of(tool));
    TorqueWindow wider = nut.friction(0.1, 0.12 + width).window(kN(5), PropertyClass.of("8.8"), Scatter.of(tool));
    TorqueWindow worse = nut.window(kN(5), PropertyClass.of("8.8"), Scatter.of(tool + 0.02));
    TorqueWindow more = nut.window(kN(6), PropertyClass.of("8.8"), Scatter.of(tool));
    TorqueWindow strong = nut.window(kN(5), PropertyClass.of("10.9"), Scatter.of(tool));
    assertTrue(wider.lowest().compareTo(w.lowest()) > 0);
    assertTrue(worse.lowest().compareTo(w.lowest()) > 0 && worse.highest().compareTo(w.highest()) < 0);
    assertTrue(more.lowest().compareTo(w.lowest()) > 0);
    assertTrue(strong.highest().compareTo(w.highest()) > 0);
  }

  /** Drilling a stud lowers the assembly preload; a bore of nothing changes nothing. */
  @Property(tries = 200)
  void drillingCosts(
      @ForAll @IntRange(max = 7) int t, @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.9) double bore) {
    ScrewThread thread = ScrewThread.of(THREADS[t]);
    PropertyClass c = PropertyClass.of("8.8");
    Tightening solid = Tightening.of(thread).friction(0.12, 0.12);
    double full = solid.assemblyPreload(c, 0.9).preload().newton();
    assertTrue(solid.bore(thread.rootDiameter().times(bore)).assemblyPreload(c, 0.9).preload().newton() < full);
    assertEquals(full, solid.bore(mm(1e-6)).assemblyPreload(c, 0.9).preload().newton(), 1e-9 * full);
  }

  @Property(tries = 200)
  void areasGrowWithTheDiameter(
      @ForAll @Scale(4) @DoubleRange(min = 4, max = 200) double d,
      @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 3) double pitch,
      @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 10) double more) {
    ScrewThread small = ScrewThread.custom(mm(d), mm(pitch));
    ScrewThread large = ScrewThread.custom(mm(d + more), mm(pitch));
    assertTrue(large.stressArea().compareTo(small.stressArea()) > 0);
    assertTrue(small.rootDiameter().compareTo(small.internalMinorDiameter()) < 0);
    assertTrue(small.internalMinorDiameter().compareTo(small.pitchDiameter()) < 0);
    assertTrue(large.helixAngle().compareTo(small.helixAngle()) < 0);
  }

  @Example
  void resultsSurviveSerialization() throws IOException, ClassNotFoundException {
    Tightening nut = Tightening.of(ScrewThread.of("M18x1.5")).friction(0.1, 0.14);
    TorqueWindow w = nut.window(kN(20), PropertyClass.of("8.8"), Scatter.torqueWrench(Nm(200)));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(w);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(w, in.readObject());
    }
  }
}
