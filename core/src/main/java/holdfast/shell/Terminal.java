// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.io.Console;

/** Whether someone sits at the keyboard. */
final class Terminal {
  private Terminal() {}

  /** Up to JDK 21 there is no console when input or output is piped; later ones must be asked. */
  @SuppressWarnings("SystemConsoleNull")
  static boolean interactive() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the console does not say whether it is a terminal", e);
    }
  }
}
