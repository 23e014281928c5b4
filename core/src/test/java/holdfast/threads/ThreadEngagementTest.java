// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

class ThreadEngagementTest {
  private static final ScrewThread M16 = ScrewThread.of("M16");

  private static ThreadEngagement engaged(double length, double studShear, double nutShear, double width) {
    return new ThreadEngagement(M16, "6g", "6H", mm(length), MPa(studShear), MPa(nutShear), width);
  }

  private static List<String> codes(ThreadEngagement e) {
    return e.warnings().stream().map(Warning::code).toList();
  }

  /** Areas do not depend on the strengths, so the strength of the nut sets the ratio RS. */
  @Test
  void outsideTheFittedRatiosTheCorrectionAtTheEndIsTaken() {
    ThreadEngagement even = engaged(16, 400, 400, 1.9);
    double perStrength = even.strengthRatio() / 400;
    ThreadEngagement strong = engaged(16, 400, 2.3 / perStrength, 1.9);
    assertEquals(2.3, strong.strengthRatio(), 1e-12);
    assertEquals(1.18650768 * 400 * strong.studArea(), strong.studLoad().newton(), 1e-9 * strong.studLoad().newton());
    ThreadEngagement weak = engaged(16, 400, 0.3 / perStrength, 1.9);
    assertEquals(1.055184 * 0.3 / perStrength * weak.nutArea(), weak.nutLoad().newton(), 1e-9 * weak.nutLoad().newton());
    ThreadEngagement within = engaged(16, 400, 2.1 / perStrength, 1.9);
    assertTrue(within.studLoad().newton() > 1.1 * 400 * within.studArea());
    ThreadEngagement low = engaged(16, 400, 0.45 / perStrength, 1.9);
    assertTrue(low.nutLoad().newton() > 1.05 * 0.45 / perStrength * low.nutArea());
    assertEquals(List.of("strength-ratio-outside"), codes(strong));
    assertEquals(List.of("strength-ratio-outside"), codes(weak));
    assertEquals(List.of(), codes(even));
    assertEquals(List.of(), codes(within));
    assertEquals(List.of(), codes(low));
    assertTrue(strong.warnings().get(0).message().startsWith("strength ratio 2.3 is outside 0.4 to 2.2"));
  }

  /** A stronger nut never strips earlier: no step at the end of the fitted ratios. */
  @Test
  void aStrongerNutNeverStripsEarlier() {
    double before = 0;
    for (double shear = 50; shear < 2000; shear += 1) {
      double now = engaged(16, 400, shear, 1.9).strippingLoad().newton();
      assertTrue(now >= before, shear + " MPa: " + now + " after " + before);
      before = now;
    }
  }

  /** s/d = 1.5 leaves 0.84 of the load. */
  @Test
  void aThinWalledNutStripsEarlier() {
    ThreadEngagement block = engaged(16, 400, 300, 1.9);
    ThreadEngagement nut = engaged(16, 400, 300, 1.5);
    assertEquals(0.84, nut.studLoad().ratio(block.studLoad()), 1e-12);
    assertEquals(0.84, nut.nutLoad().ratio(block.nutLoad()), 1e-12);
  }

  @Test
  void aNutIsThinBelowFourFifthsOfTheDiameter() {
    assertEquals(List.of(), codes(engaged(12.8, 400, 400, 1.9)));
    assertEquals(List.of("thin-nut"), codes(engaged(12.79, 400, 400, 1.9)));
  }

  @Test
  void basicSizesOfEitherPartWarn() {
    assertEquals(List.of("basic-sizes"), codes(new ThreadEngagement(M16, "", "6H", mm(16), MPa(400), MPa(400), 1.9)));
    assertEquals(List.of("basic-sizes"), codes(new ThreadEngagement(M16, "6g", "", mm(16), MPa(400), MPa(400), 1.9)));
  }

  @Test
  void everyPartHasAClassOfItsKind() {
    InputException e =
        assertThrows(
            InputException.class, () -> new ThreadEngagement(M16, "6g", "6g", mm(16), MPa(400), MPa(400), 1.9));
    assertEquals(
        "tolerance class of the nut ('6g') must be one of an internal thread; small letters and A are external, capitals and B"
            + " internal",
        e.getMessage());
    e = assertThrows(InputException.class, () -> new ThreadEngagement(M16, "6H", "6H", mm(16), MPa(400), MPa(400), 1.9));
    assertEquals("one of an external thread", e.permitted());
  }

  @Test
  void printsLengthAndLoad() {
    ThreadEngagement e = engaged(16, 400, 300, 1.9);
    assertEquals("M16 engaged over 16 mm: strips at " + e.strippingLoad(), e.toString());
  }
}
