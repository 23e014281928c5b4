// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class FromTablesTest {
  @Test
  void nothingIsReadBeforeItIsAskedForAndNothingTwice() {
    AtomicInteger readings = new AtomicInteger();
    FromTables<Object> holder = FromTables.of(tables -> new Object[] {readings.incrementAndGet()});
    assertEquals(0, readings.get());
    assertSame(holder.get(), holder.get());
    assertEquals(1, readings.get());
  }

  @Test
  void aReadingThatFailsIsTriedAgain() {
    AtomicInteger readings = new AtomicInteger();
    FromTables<Integer> holder = FromTables.of(tables -> {
      if (readings.incrementAndGet() < 3) {
        throw new IllegalStateException("not yet");
      }
      return readings.get();
    });
    assertThrows(IllegalStateException.class, holder::get);
    assertThrows(IllegalStateException.class, holder::get);
    assertEquals(3, holder.get());
    assertEquals(3, holder.get());
  }

  @Test
  void nullIsNoReading() {
    FromTables<Object> holder = FromTables.of(tables -> null);
    assertThrows(NullPointerException.class, holder::get);
    assertThrows(NullPointerException.class, () -> FromTables.of(null));
  }
}
