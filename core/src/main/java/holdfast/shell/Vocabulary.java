// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The imports with which JShell and scripts start. */
final class Vocabulary {
  private Vocabulary() {}

  static String text() {
    try (InputStream in = Vocabulary.class.getResourceAsStream("/holdfast/shell/vocabulary.jsh")) {
      String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return words() ? all : all.replace("import static holdfast.shell.Prompt.*;\n", "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether the words of the prompt can be seen by what is typed: a module keeps them to itself, as in an image. */
  static boolean words() {
    return !Vocabulary.class.getModule().isNamed();
  }

  /** The class path of this program, for the compiler inside JShell. */
  static String classPath() {
    return System.getProperty("java.class.path");
  }
}
