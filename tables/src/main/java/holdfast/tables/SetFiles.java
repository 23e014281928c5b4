// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** The files of a set. Each is read once, so that the bytes that are hashed are those that are parsed. Thread-safe. */
final class SetFiles {
  /** Far beyond any table, far below what hurts: a packed file can hold a thousand times its size. */
  static final int MOST_BYTES_OF_A_FILE = 8 << 20;

  static final long MOST_BYTES = 64L << 20;

  static final String RULE =
      "a path below the folder: names of A-Z, a-z, 0-9, '_', '-' and, not in front, '.', divided by '/'";

  /** The same on every system: no way out of the folder, nothing invisible, one spelling. */
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-][A-Za-z0-9._-]*+(/[A-Za-z0-9_-][A-Za-z0-9._-]*+)*+");

  private final Map<String, byte[]> contents = new ConcurrentHashMap<>();
  private final SortedMap<String, String> digests = new TreeMap<>();
  private final String digest;

  private SetFiles(SortedMap<String, byte[]> read) {
    MessageDigest all = sha256();
    read.forEach((path, content) -> {
      all.update(path.getBytes(StandardCharsets.UTF_8));
      all.update((byte) 0);
      all.update(content);
      digests.put(path, HexFormat.of().formatHex(sha256().digest(content)));
    });
    digest = HexFormat.of().formatHex(all.digest());
    contents.putAll(read);
  }

  /** Reads files one by one, as the frame of the set names them. */
  static final class Reading {
    private final TableSet.Opener opener;
    private final SortedMap<String, byte[]> read = new TreeMap<>();
    private long total;

    Reading(TableSet.Opener opener) {
      this.opener = opener;
    }

    String text(String path) {
      read(path);
      return decoded(path, read.get(path));
    }

    void read(String path) {
      byte[] content;
      try (InputStream in = opener.open(path)) {
        content = in.readNBytes(MOST_BYTES_OF_A_FILE + 1);
      } catch (IOException e) {
        throw new UncheckedIOException("table set: cannot read " + path + ": " + e, e);
      }
      if (content.length > MOST_BYTES_OF_A_FILE) {
        throw new TableFormatException(path, 0, "the file is longer than " + MOST_BYTES_OF_A_FILE + " bytes");
      }
      total += content.length;
      if (total > MOST_BYTES) {
        throw new TableFormatException(path, 0, "with this file the set is longer than " + MOST_BYTES + " bytes");
      }
      read.put(path, content);
    }

    SetFiles done() {
      return new SetFiles(read);
    }
  }

  static boolean isName(String path) {
    return NAME.matcher(path).matches();
  }

  /** A file as text; a byte order mark, as spreadsheets write it, is dropped. */
  String text(String path) {
    return decoded(path, contents.get(path));
  }

  /** The text of a file that was read into a table is needed no longer. */
  void forget(String path) {
    contents.remove(path);
  }

  String digest() {
    return digest;
  }

  SortedMap<String, String> digests() {
    return Collections.unmodifiableSortedMap(digests);
  }

  private static String decoded(String path, byte[] content) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
      String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
      Printable.requireLines(path, plain);
      return plain;
    } catch (CharacterCodingException e) {
      throw new TableFormatException(path, 0, "the file is not written in UTF-8");
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
