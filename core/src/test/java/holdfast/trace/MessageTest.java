// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sentence keeps its quantities until it is printed, and its names as they are. */
class MessageTest {
  @Test
  void quantitiesBecomeTextInTheUnitsOfThePrinter() {
    Message arm = Message.of("lever 6 mm plate: arm ", Units.mm(25.4), ", factor ", 1.5);
    assertEquals("lever 6 mm plate: arm 25.4 mm, factor 1.5", arm.toString());
    assertEquals("lever 6 mm plate: arm 1 in, factor 1.5", arm.text(q -> ((Length) q).text(KnownUnits.INCH, 0)));
  }

  @Test
  void messagesJoin() {
    assertEquals(Message.of("a ", Units.mm(1), " b"), Message.of("a ", Message.of(Units.mm(1), " b")));
    assertThrows(InputException.class, () -> new Message(List.of(1)));
    assertThrows(NullPointerException.class, () -> Message.of("a", null));
  }
}
