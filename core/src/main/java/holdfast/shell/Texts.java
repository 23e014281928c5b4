// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;

/** Texts that come in, and what is said when a file cannot be read or written. */
final class Texts {
  private Texts() {}

  /** The bytes of a script as text; a byte order mark, as some editors write it, is dropped. */
  static String decoded(byte[] bytes) throws CharacterCodingException {
    String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** Why, in words for someone at a terminal. */
  static String reason(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "there is no such file or folder";
    } else if (e instanceof AccessDeniedException) {
      return "that is not permitted";
    } else if (e instanceof FileAlreadyExistsException there) {
      return "a file is in the way" + (there.getReason() == null ? "" : ": " + there.getReason());
    } else if (e instanceof CharacterCodingException) {
      return "it is not written in UTF-8";
    }
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }
}
