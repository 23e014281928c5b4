// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a small table set into a folder: one subject, one good table, which a test then spoils. */
final class Folder {
  static final String CSV =
      """
      over_mm,up_to_mm,grade,value,provenance,confirmed_by,note
      0,3,IT6,6,,reprint,
      3,6,IT6,8,,reprint;sheet,
      0,3,IT7,10,memory,,recalled
      3,6,IT7,12,,,
      """;
  static final String DESCRIPTOR =
      """
      title = Standard tolerances
      document = ISO 286-1:2010
      locator = Table 1
      provenance = published
      key = over_mm, up_to_mm, grade
      ranges = over_mm..up_to_mm
      address = over {over_mm} up to {up_to_mm} mm, {grade}
      column.over_mm = number mm
      column.up_to_mm = number mm
      column.grade = text
      column.value = number µm
      column.provenance = provenance optional
      column.confirmed_by = sources optional
      column.note = text optional
      """;
  private static final String SOURCES =
      """
      id,title,kind,note
      ISO 286-1:2010,ISO code system for tolerances,standard,
      reprint,A reprint,handbook,
      sheet,A sheet,reference page,
      """;

  private final Path path;

  Folder(Path path) {
    this.path = path;
    file("table-set.properties", "version = 7\nsubjects = fits\n");
    file("fits/sources.csv", SOURCES);
    file("fits/contents.txt", "# tables\niso/tolerances\n");
    file("fits/iso/tolerances.csv", CSV);
    file("fits/iso/tolerances.properties", DESCRIPTOR);
  }

  Folder file(String name, String text) {
    return file(name, text.getBytes(StandardCharsets.UTF_8));
  }

  Folder file(String name, byte[] content) {
    try {
      Files.createDirectories(path.resolve(name).getParent());
      Files.write(path.resolve(name), content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  Folder csv(String text) {
    return file("fits/iso/tolerances.csv", text);
  }

  Folder descriptor(String old, String replacement) {
    return file("fits/iso/tolerances.properties", DESCRIPTOR.replace(old, replacement));
  }

  TableSet load() {
    return TableSet.load(path);
  }

  Table table() {
    return load().table("fits/iso/tolerances");
  }
}
