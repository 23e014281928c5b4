// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

/** Runs many calls in a thread of their own and names the call that does not end. */
final class Watched {
  private static final long PATIENCE_MS = 300_000;

  private volatile Object called = "nothing yet";
  private volatile Object[] arguments = {};

  /** To be told before each call, with an array of its own. */
  void next(Object what, Object[] with) {
    called = what;
    arguments = with;
  }

  /** Runs a task that reports its calls here. */
  void run(Runnable task) throws InterruptedException {
    AtomicReference<Throwable> thrown = new AtomicReference<>();
    Thread worker = new Thread(task, "laws");
    worker.setDaemon(true);
    worker.setUncaughtExceptionHandler((thread, e) -> thrown.set(e));
    worker.start();
    Object[] before = null;
    while (worker.isAlive()) {
      worker.join(PATIENCE_MS);
      if (worker.isAlive() && arguments == before) {
        List<StackTraceElement> where = List.of(worker.getStackTrace());
        fail("no answer after five minutes: " + called + " " + Arrays.deepToString(arguments) + " at " + where);
      }
      before = arguments;
    }
    if (thrown.get() != null) {
      throw new AssertionError(thrown.get());
    }
  }
}
