// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes files whole or not at all, and never over a file that this program did not write. */
final class Written {
  /** Stands in the head of every page. */
  private static final String MARK = "<meta name=\"generator\" content=\"Holdfast\">";

  private Written() {}

  /** Writes a paper; a paper written before is replaced. */
  static void paper(Path file, String text) throws IOException {
    if (Files.exists(file) && !isPage(file)) {
      throw new FileAlreadyExistsException(file.toString(), null, "it is no page of this program, so it is not written over");
    }
    write(file, text);
  }

  private static boolean isPage(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(1000), StandardCharsets.UTF_8).contains(MARK);
    }
  }

  /** Writes a file that is not there yet. */
  static void fresh(Path file, String text) throws IOException {
    if (Files.exists(file)) {
      throw new FileAlreadyExistsException(file.toString(), null, "choose another name");
    }
    write(file, text);
  }

  private static void write(Path file, String text) throws IOException {
    Path part = file.resolveSibling("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    try {
      Files.writeString(part, text);
      try {
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
