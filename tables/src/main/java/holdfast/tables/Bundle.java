package holdfast.tables;

import java.io.ByteArrayInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * The files of the bundled set. In a folder of classes they stand by themselves; in the jar they stand in one archive, which
 * any tool opens: 170 entries with long paths would weigh more than what they hold.
 */
final class Bundle {
  private static final String FOLDER = "data/";
  private static final String ARCHIVE = "tables-data.jar";

  private Bundle() {}

  private static final class Archive {
    static final Map<String, byte[]> FILES = read();

    private static Map<String, byte[]> read() {
      Map<String, byte[]> files = new HashMap<>();
      try (InputStream in = Bundle.class.getResourceAsStream(ARCHIVE)) {
        if (in != null) {
          ZipInputStream zip = new ZipInputStream(in);
          for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            files.put(entry.getName(), zip.readAllBytes());
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      return files;
    }
  }

  static InputStream open(String path) throws IOException {
    InputStream stream = Bundle.class.getResourceAsStream(FOLDER + path);
    if (stream != null) {
      return stream;
    }
    byte[] file = Archive.FILES.get(path);
    if (file == null) {
      throw new FileNotFoundException(path);
    }
    return new ByteArrayInputStream(file);
  }
}
