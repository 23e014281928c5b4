// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.io.PrintStream;

/** A line on a terminal if a command takes longer than a second; nothing in a pipe. */
final class Progress {
  private static final long PATIENCE_MS = 1000;
  private static final String WORD = "computing ...";

  private final Thread watch;

  private Progress(Thread watch) {
    this.watch = watch;
  }

  static Progress of(Help command, PrintStream err) {
    // The questions wait for their answers; nothing is computed meanwhile.
    return of(command != Help.ASK && Terminal.interactive(), PATIENCE_MS, err);
  }

  static Progress of(boolean shown, long patience, PrintStream err) {
    Thread watch = new Thread(() -> {
      try {
        Thread.sleep(patience);
        err.println(WORD);
        err.flush();
        Thread.sleep(Long.MAX_VALUE);
      } catch (InterruptedException end) {
        return;
      }
    }, "progress");
    watch.setDaemon(true);
    if (shown) {
      watch.start();
    }
    return new Progress(watch);
  }

  /** The command has its answer. */
  void end() {
    watch.interrupt();
  }
}
