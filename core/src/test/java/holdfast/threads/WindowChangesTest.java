// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Force;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a change states as enough opens the window when it is made, and a little less does not. */
class WindowChangesTest {
  private static final Friction BANDS = new Friction(0.10, 0.16, 0.08, 0.14);
  private static final Tightening STUD =
      Tightening.of(ScrewThread.of("M18x1.5")).bore(mm(3)).bearingFace(mm(24), mm(18)).friction(BANDS);
  private static final PropertyClass STEEL = PropertyClass.of("8.8");
  private static final Scatter TOOL = Scatter.of(0.06);
  private static final WindowRules USUAL = WindowRules.usual();

  /** Five per cent more than the window bears. */
  private static Force slightlyTooMuch(WindowRules rules) {
    return STUD.window(JointDemand.ofClamp(N(1)), STEEL, TOOL, rules).bearable().times(1.05);
  }

  private static TorqueWindow window(Tightening nut, Force need, Scatter tool, WindowRules rules) {
    return nut.window(JointDemand.ofClamp(need), STEEL, tool, rules);
  }

  private static WindowChange change(TorqueWindow window, String code) {
    assertFalse(window.isOpen());
    return window.changes().stream().filter(c -> c.code().equals(code)).findFirst().orElseThrow();
  }

  private static List<String> codes(TorqueWindow window) {
    return window.changes().stream().map(WindowChange::code).toList();
  }

  private static double number(WindowChange change, String regex) {
    assertTrue(change.opens(), change.toString());
    Matcher m = Pattern.compile(regex).matcher(change.change());
    assertTrue(m.find(), change.change());
    return Double.parseDouble(m.group(1));
  }

  @Test
  void narrowerFriction() {
    Force need = slightlyTooMuch(USUAL);
    WindowChange change = change(window(STUD, need, TOOL, USUAL), "narrower-friction");
    double thread = number(change, "μG 0.1 … ([0-9.]+),");
    double face = number(change, "μK 0.08 … ([0-9.]+) ");
    assertEquals(thread - 0.10, face - 0.08, 1e-9);
    assertEquals(Math.rint(1000 * thread), 1000 * thread, 1e-9, "no digits that friction does not have");
    assertTrue(window(STUD.friction(new Friction(0.10, thread, 0.08, face)), need, TOOL, USUAL).isOpen());
    assertFalse(window(STUD.friction(new Friction(0.10, thread + 1e-3, 0.08, face + 1e-3)), need, TOOL, USUAL).isOpen());
  }

  @Test
  void betterTool() {
    Force need = slightlyTooMuch(USUAL);
    double percent = number(change(window(STUD, need, TOOL, USUAL), "better-tool"), "at most ± ([0-9.]+) %");
    assertTrue(window(STUD, need, Scatter.of(percent / 100 * 0.99), USUAL).isOpen());
    assertFalse(window(STUD, need, Scatter.of(percent / 100 * 1.01), USUAL).isOpen());
  }

  @Test
  void largerFace() {
    WindowRules rules = USUAL.facePressure(MPa(150));
    Force need = slightlyTooMuch(rules);
    double times = number(change(window(STUD, need, TOOL, rules), "larger-face"), "at least ([0-9.]+) times");
    assertEquals(1.05, times, 1e-9);
    assertTrue(window(STUD, need, TOOL, USUAL.facePressure(MPa(150 * 1.051))).isOpen());
    assertFalse(window(STUD, need, TOOL, USUAL.facePressure(MPa(150 * 1.049))).isOpen());
  }

  @Test
  void longerEngagement() {
    WindowRules rules = USUAL.engagement(nut(3), 2);
    Force need = slightlyTooMuch(rules);
    assertEquals(1.05, number(change(window(STUD, need, TOOL, rules), "longer-engagement"), "at least ([0-9.]+) times"), 1e-9);
    assertTrue(window(STUD, need, TOOL, USUAL.engagement(nut(3 * 1.051), 2)).isOpen());
    assertFalse(window(STUD, need, TOOL, USUAL.engagement(nut(3 * 1.049), 2)).isOpen());
  }

  private static ThreadEngagement nut(double length) {
    return ThreadEngagement.ofNut(STUD.thread(), mm(length), MPa(480), MPa(300));
  }

  @Test
  void strongerParts() {
    WindowRules rules = USUAL.greatestPreload(kN(30));
    assertTrue(change(window(STUD, slightlyTooMuch(rules), TOOL, rules), "stronger-parts").opens());
  }

  /** A demand beyond what the stud bears without any scatter: no change of one thing alone is enough. */
  @Test
  void whatIsNotEnoughIsSaid() {
    WindowRules rules = USUAL.facePressure(MPa(100));
    Force need = kN(200);
    TorqueWindow empty = window(STUD, need, TOOL, rules);
    assertEquals(
        List.of(
            "not enough alone: friction exactly at the low end of the band",
            "not enough alone: a tool without any deviation",
            "not enough alone: a stronger stud, up to 20 times the yield stress",
            "opens the window: a required preload of at most " + empty.bearable() + " instead of 200 kN",
            "not enough alone: a stud without the axial bore of 3 mm",
            "not enough alone: a bearing area up to 100 times as large (hardened washer)"),
        empty.changes().stream().map(WindowChange::toString).toList());
  }

  @Test
  void nothingIsProposedThatIsThere() {
    Tightening solid = STUD.bore(mm(0)).friction(0.12, 0.12);
    TorqueWindow empty = window(solid, kN(200), Scatter.of(0), USUAL);
    assertEquals(List.of("stronger-stud", "less-demand"), codes(empty));
    TorqueWindow halfExact = window(STUD.friction(new Friction(0.12, 0.12, 0.1, 0.14)), kN(200), Scatter.of(0), USUAL);
    assertEquals(List.of("narrower-friction", "stronger-stud", "less-demand", "solid-stud"), codes(halfExact));
    TorqueWindow otherHalf = window(STUD.friction(new Friction(0.1, 0.14, 0.12, 0.12)), kN(200), Scatter.of(0), USUAL);
    assertTrue(codes(otherHalf).contains("narrower-friction"));
  }

  /** The working load comes on top of the preload under the face and in the thread. */
  @Test
  void workingLoadsCountUnderTheFaceAndInTheThread() {
    JointDemand pull = JointDemand.ofClamp(kN(1)).axialLoad(kN(20), 0.5);
    TorqueWindow face = STUD.window(pull, STEEL, Scatter.of(0), USUAL.facePressure(MPa(200)));
    assertEquals("face-pressure", face.highLimit().code());
    double area = Math.PI / 4 * (24 * 24 - 18 * 18);
    assertEquals(200 * area - 10_000, STUD.preload(face.highest()).greatestPreload().newton(), 1e-6);
    ThreadEngagement thin = nut(4);
    TorqueWindow strip = STUD.window(pull, STEEL, Scatter.of(0), USUAL.engagement(thin, 2));
    assertEquals("stripping", strip.highLimit().code());
    assertEquals(
        thin.strippingLoad().newton() / 2 - 10_000, STUD.preload(strip.highest()).greatestPreload().newton(), 1e-6);
  }

  @Test
  void theSettingStaysInANarrowWindow() {
    Force need = STUD.window(JointDemand.ofClamp(N(1)), STEEL, TOOL, USUAL).bearable().times(1 - 1e-9);
    TorqueWindow narrow = window(STUD, need, TOOL, USUAL);
    assertTrue(narrow.isOpen());
    assertTrue(narrow.wrenchSetting().orElseThrow().compareTo(narrow.lowest()) >= 0);
    assertTrue(narrow.wrenchSetting().orElseThrow().compareTo(narrow.highest()) <= 0);
    assertTrue(
        narrow.highLimit().meaning().endsWith("while tightening at 594 MPa (ν = 0.9 of the yield stress)"),
        narrow.highLimit().meaning());
    assertEquals(
        "torque " + narrow.lowest() + " … " + narrow.highest() + " (joint-closed … stud-stress)", narrow.toString());
  }
}
