// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** A unit that is only spelled in another way is named; nothing is guessed. */
class MeantUnitTest {
  private static InputException refused(Function<String, ?> parse, String text) {
    InputException e = assertThrows(InputException.class, () -> parse.apply(text));
    assertEquals("'" + text + "'", e.value(), "what was typed");
    return e;
  }

  private static void meant(String unit, Function<String, ?> parse, String text) {
    String reason = refused(parse, text).reason();
    assertTrue(reason.endsWith("did you mean " + unit + "?"), reason);
  }

  @Test
  void capitalsAndSignsAreNamed() {
    meant("N·m", Torque::parse, "60 nm");
    meant("lbf·in", Torque::parse, "325 LBF-IN");
    meant("lbf·ft", Torque::parse, "40 Ft Lbs");
    meant("rpm", RotationalSpeed::parse, "120 RPM");
    meant("lbf", Force::parse, "600 LBF");
    meant("kN", Force::parse, "3 KN");
    meant("mm", Length::parse, "25 MM");
    meant("MPa", Stress::parse, "590 Mpa");
    assertEquals(325, Torque.parse("325 lbfin").in(KnownUnits.LBF_IN), 1e-9);
    assertEquals(40, Torque.parse("40 ftlb").in(KnownUnits.LBF_FT), 1e-9);
  }

  @Test
  void nothingIsGuessed() {
    assertFalse(refused(Force::parse, "3 apples").reason().contains("mean"));
    assertFalse(refused(Force::parse, "3").reason().contains("mean"));
    assertEquals("the decimal sign is a point", refused(Force::parse, "2,1 kN").reason());
  }
}
