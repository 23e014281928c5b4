// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The texts in the compiled classes of a module: string constants and the values of annotations. */
final class ConstantPool {
  private ConstantPool() {}

  /** All texts of the classes that lie beside a class, in a folder or in a jar. */
  static Set<String> textsOfModuleWith(Class<?> type) throws IOException {
    Path place;
    try {
      place = Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IOException(e);
    }
    Set<String> texts = new HashSet<>();
    if (Files.isDirectory(place)) {
      collect(place, texts);
    } else {
      try (FileSystem jar = FileSystems.newFileSystem(URI.create("jar:" + place.toUri()), Map.of())) {
        collect(jar.getPath("/"), texts);
      }
    }
    return texts;
  }

  private static void collect(Path root, Set<String> texts) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      files.filter(file -> file.toString().endsWith(".class")).forEach(file -> read(file, texts));
    }
  }

  /** The layout of the class file: The Java Virtual Machine Specification, 4.4. */
  private static void read(Path file, Set<String> texts) {
    try (InputStream in = Files.newInputStream(file);
        DataInputStream data = new DataInputStream(in)) {
      data.skipNBytes(8);
      int count = data.readUnsignedShort();
      for (int i = 1; i < count; i++) {
        int tag = data.readUnsignedByte();
        switch (tag) {
          case 1 -> texts.add(data.readUTF());
          case 3, 4, 9, 10, 11, 12, 17, 18 -> data.skipNBytes(4);
          case 5, 6 -> {
            data.skipNBytes(8);
            i++; // long and double take two places
          }
          case 7, 8, 16, 19, 20 -> data.skipNBytes(2);
          case 15 -> data.skipNBytes(3);
          default -> throw new IOException("constant of unknown kind " + tag + " in " + file);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
