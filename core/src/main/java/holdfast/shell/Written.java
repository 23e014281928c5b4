// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes files whole or not at all, and never over a file that this program did not write. */
final class Written {
  /** Stands in every file that may be written over. */
  static final String MARK = "holdfast-paper";

  private Written() {}

  /** Writes a paper; a paper written before is replaced. */
  static void paper(Path file, String text) throws IOException {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new FileAlreadyExistsException(file.toString(), null, "it is no plain file");
    }
    if (Files.exists(file) && !Files.readString(file, StandardCharsets.ISO_8859_1).contains(MARK)) {
      throw new FileAlreadyExistsException(file.toString(), null, "it was not written by this program; choose another name");
    }
    write(file, text);
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
