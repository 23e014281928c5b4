// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What hinders reading or writing, in words. */
final class Problems {
  private Problems() {}

  static String of(IOException e) {
    if (e instanceof NoSuchFileException missing) {
      return "there is no " + missing.getFile();
    }
    if (e instanceof AccessDeniedException denied) {
      return "not permitted: " + denied.getFile();
    }
    if (e instanceof FileAlreadyExistsException there) {
      return there.getFile() + " is there already: " + there.getReason();
    }
    if (e instanceof FileSystemException other && other.getReason() != null) {
      return other.getFile() + ": " + other.getReason();
    }
    return String.valueOf(e.getMessage());
  }
}
