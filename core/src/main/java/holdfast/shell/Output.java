// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.IntConsumer;

/**
 * Standard output that ends the program when it can no longer be written: the reader of the pipe has gone, or the disk is
 * full. A {@link PrintStream} alone would swallow the error, and a script would run on for nobody.
 */
final class Output extends OutputStream {
  /** Exit status when the output cannot be written. */
  static final int STATUS = 3;

  private final OutputStream to;
  private final PrintStream err;
  private final IntConsumer end;

  Output(OutputStream to, PrintStream err, IntConsumer end) {
    this.to = to;
    this.err = err;
    this.end = end;
  }

  /** Halts at once: what would run at an ordinary exit may want to print as well. */
  static PrintStream of(FileOutputStream to, PrintStream err) {
    return new PrintStream(new Output(to, err, Runtime.getRuntime()::halt), true, StandardCharsets.UTF_8);
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    try {
      to.write(bytes, from, length);
    } catch (IOException e) {
      // A reader that has seen enough, as head does, is no fault.
      if (!String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT).contains("pipe")) {
        err.println("The output cannot be written: " + Texts.reason(e));
        err.flush();
      }
      end.accept(STATUS);
      throw e;
    }
  }

  @Override
  public void flush() throws IOException {
    to.flush();
  }
}
