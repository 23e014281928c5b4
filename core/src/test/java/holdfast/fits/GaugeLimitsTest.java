// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class GaugeLimitsTest {
  @Test
  void goTakesTheLimitWithMostMaterial() {
    Fit fit = Fit.of("25 H7/p6");
    GaugeLimits plug = GaugeLimits.plug(fit.hole());
    assertEquals("plug gauge for 25 H7: go 25.000 mm, no-go 25.021 mm (plain limits)", plug.toString());
    GaugeLimits ring = GaugeLimits.ring(fit.shaft());
    assertEquals("ring or gap gauge for 25 p6: go 25.035 mm, no-go 25.022 mm (plain limits)", ring.toString());
    assertEquals(plug.noGo().mm(), plug.explain().result().value(), 0);
    assertEquals(ring.noGo().mm(), ring.explain().result().value(), 0);
    assertTrue(plug.warnings().toString().contains("ISO 1938-1 are not taken off"), plug.warnings().toString());
  }

  @Test
  void inchGaugesReadInInches() {
    GaugeLimits plug = GaugeLimits.plug(Fit.of("5/8 in FN2").hole());
    assertEquals("plug gauge for 0.625 in FN2 hole: go 0.6250 in (15.875 mm), no-go 0.6257 in (15.89278 mm) (plain limits)", plug.toString());
  }

  /** A part that passes between go and no-go is within its limits, and the other way round. */
  @Property
  void goAndNoGoSpanTheTolerance(@ForAll @IntRange(min = 1, max = 500) int size, @ForAll boolean hole) {
    TolerancedSize part = TolerancedSize.of(mm(size), hole ? "N7" : "k6");
    GaugeLimits gauge = hole ? GaugeLimits.plug(part) : GaugeLimits.ring(part);
    assertEquals(part.tolerance().mm(), Math.abs(gauge.noGo().mm() - gauge.go().mm()), 1e-12);
    assertEquals(hole, gauge.go().compareTo(gauge.noGo()) < 0);
    assertTrue(part.limits().contains(gauge.go()) && part.limits().contains(gauge.noGo()));
  }
}
