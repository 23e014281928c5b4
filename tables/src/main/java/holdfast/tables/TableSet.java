// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * All tables together: a version, the register of documents and a digest of every byte. Thread-safe.
 *
 * <p>A set is a folder with {@code table-set.properties} (entries {@code version} and {@code subjects}); each subject
 * is a folder with {@code sources.csv} (columns id, title, kind, note) and {@code contents.txt}, which lists its
 * tables, one path a line without the ending. A table is two files, {@code <path>.csv} and {@code <path>.properties}.
 * Tables are read and validated when first asked for; {@link #all()} reads them all.
 */
public final class TableSet {
  /** Where a jar holds its set. */
  static final String FOLDER = "holdfast/tables/data/";

  private static final String FRAME = "table-set.properties";

  private final Opener opener;
  private final String version;
  private final List<String> subjects;
  private final Set<String> tableFiles;
  private final SourceRegister register;
  private final Map<String, Table> loaded = new ConcurrentHashMap<>();

  /** Opens a file of a set by its path below the set's folder. */
  @FunctionalInterface
  public interface Opener {
    /**
     * Opens a file.
     *
     * @param path path below the folder, with forward slashes; never starts with one
     * @return the bytes of the file
     * @throws IOException if there is no such file or it cannot be read
     */
    InputStream open(String path) throws IOException;
  }

  private TableSet(Opener opener, Collection<Document> knownDocuments) {
    this.opener = opener;
    Properties p = new Properties();
    Reader frame = reader(FRAME);
    try {
      p.load(frame);
    } catch (IOException | IllegalArgumentException e) {
      throw new TableFormatException(FRAME, 0, e.getMessage());
    }
    this.version = required(p, "version");
    this.subjects = List.of(required(p, "subjects").split("\\s*,\\s*", -1));
    Map<String, Document> documents = new LinkedHashMap<>();
    knownDocuments.forEach(document -> documents.put(document.id(), document));
    this.tableFiles = new LinkedHashSet<>();
    Set<String> seen = new HashSet<>();
    for (String subject : subjects) {
      if (subject.isEmpty() || !seen.add(subject)) {
        throw new TableFormatException(FRAME, 0, "entry 'subjects': '" + subject + "' is empty or listed twice");
      }
      readDocuments(subject + "/sources.csv", documents);
      readContents(subject);
    }
    this.register = SourceRegister.of(documents.values());
  }

  private static String required(Properties p, String name) {
    String value = p.getProperty(name, "").strip();
    if (value.isEmpty()) {
      throw new TableFormatException(FRAME, 0, "entry '" + name + "' is missing or empty");
    }
    return value;
  }

  /**
   * The tables with which the calculations of this program work: those of the library, unless the program was started with
   * the system property {@code holdfast.tables}. It names another edition, as for {@link #load(Path)}, and holds for the
   * whole program; sheets and audits print the edition that they used.
   *
   * @return the set; always the same one
   * @throws EditionException if the other edition lacks a table or column of the library's, or has its version but not its
   *     digest
   * @throws TableFormatException if a file of the other edition cannot be used
   * @throws UncheckedIOException if the other edition cannot be read
   */
  public static TableSet bundled() {
    return BundledTables.get();
  }

  /**
   * Opens a table set of your own, or another edition of the library's.
   *
   * @param place folder laid out as described for this class, or a jar of tables of this library
   * @return the set; its tables are validated when first asked for
   * @throws TableFormatException if a file of the set's frame cannot be used
   * @throws UncheckedIOException if a file cannot be read
   */
  public static TableSet load(Path place) {
    Opener opener =
        Files.isRegularFile(place) ? path -> entry(place, FOLDER + path) : path -> Files.newInputStream(place.resolve(path));
    return load(opener, SourceRegister.of(List.of()));
  }

  private static InputStream entry(Path jar, String name) throws IOException {
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      ZipEntry entry = zip.getEntry(name);
      if (entry == null) {
        throw new FileNotFoundException(name + " in " + jar);
      }
      return new ByteArrayInputStream(zip.getInputStream(entry).readAllBytes());
    }
  }

  /**
   * Opens a table set of your own from anywhere, for example from the resources of your module.
   *
   * @param opener opens the files of the set
   * @param known documents that its tables may cite besides those of its own {@code sources.csv} files
   * @return the set; its tables are validated when first asked for
   * @throws TableFormatException if a file of the set's frame cannot be used
   * @throws UncheckedIOException if a file cannot be read
   */
  public static TableSet load(Opener opener, SourceRegister known) {
    return new TableSet(opener, known.documents());
  }

  /**
   * Version of the set, apart from the version of the code.
   *
   * @return the version
   */
  public String version() {
    return version;
  }

  /**
   * Which edition this is. Computes the digest anew.
   *
   * @return version and digest
   */
  public Edition edition() {
    return new Edition(version, digest());
  }

  /**
   * Makes sure that this is the edition a program was written, checked or approved for.
   *
   * @param wanted that edition
   * @return this set
   * @throws EditionException if version or digest differ
   */
  public TableSet pinned(Edition wanted) {
    Edition found = edition();
    if (!found.equals(wanted)) {
      throw new EditionException(wanted, found, "not the pinned edition of the tables");
    }
    return this;
  }

  /**
   * Ids of all tables.
   *
   * @return the ids in the order of the set
   */
  public List<String> ids() {
    return List.copyOf(tableFiles);
  }

  /**
   * The documents that the tables, formulas and checks cite.
   *
   * @return the register
   */
  public SourceRegister sources() {
    return register;
  }

  /**
   * A table.
   *
   * @param id its id, for example {@code "fits/iso-286-1/2010/standard-tolerances"}
   * @return the table, validated
   * @throws IllegalArgumentException if the set holds no such table
   * @throws TableFormatException if its files cannot be used
   */
  public Table table(String id) {
    if (!tableFiles.contains(id)) {
      throw new IllegalArgumentException("the table set has no table '" + id + "'; it has " + ids());
    }
    return loaded.computeIfAbsent(id, this::read);
  }

  /**
   * All tables.
   *
   * @return the tables, validated, in the order of the set
   * @throws TableFormatException if a file cannot be used
   */
  public List<Table> all() {
    List<Table> tables = new ArrayList<>();
    for (String id : tableFiles) {
      tables.add(table(id));
    }
    return tables;
  }

  /**
   * SHA-256 over every file of the set: for each path in alphabetical order the path, a zero byte, and the content.
   *
   * @return 64 hexadecimal digits
   */
  public String digest() {
    TreeSet<String> paths = new TreeSet<>();
    paths.add(FRAME);
    for (String subject : subjects) {
      paths.add(subject + "/sources.csv");
      paths.add(subject + "/contents.txt");
    }
    for (String table : tableFiles) {
      paths.add(table + ".csv");
      paths.add(table + ".properties");
    }
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      for (String path : paths) {
        sha.update(path.getBytes(StandardCharsets.UTF_8));
        sha.update((byte) 0);
        try (InputStream in = opener.open(path)) {
          sha.update(in.readAllBytes());
        }
      }
      return HexFormat.of().formatHex(sha.digest());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private Table read(String id) {
    try {
      TableDescriptor descriptor = TableDescriptor.read(id, id + ".properties", reader(id + ".properties"));
      return TableReader.read(id + ".csv", descriptor, register, reader(id + ".csv"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void readDocuments(String file, Map<String, Document> documents) {
    List<CsvRecord> records = TableReader.records(file, reader(file));
    if (!records.get(0).getFields().equals(List.of("id", "title", "kind", "note"))) {
      throw new TableFormatException(file, records.get(0).getStartingLineNumber(), "columns must be id,title,kind,note");
    }
    for (CsvRecord line : records.subList(1, records.size())) {
      Document document;
      try {
        document = new Document(line.getField(0), line.getField(1), line.getField(2), line.getField(3));
      } catch (IllegalArgumentException e) {
        throw new TableFormatException(file, line.getStartingLineNumber(), e.getMessage());
      }
      if (documents.put(document.id(), document) != null) {
        throw new TableFormatException(
            file, line.getStartingLineNumber(), "document '" + document.id() + "' is registered twice");
      }
    }
  }

  private void readContents(String subject) {
    String file = subject + "/contents.txt";
    int number = 0;
    for (String line : content(file).lines().map(String::strip).toList()) {
      number++;
      if (!line.isEmpty() && !line.startsWith("#") && !tableFiles.add(subject + "/" + line)) {
        throw new TableFormatException(file, number, "table '" + line + "' is listed twice");
      }
    }
  }

  private Reader reader(String path) {
    return new StringReader(content(path));
  }

  /** A file as text. A byte order mark, as spreadsheets write it, is dropped. */
  private String content(String path) {
    try (InputStream in = opener.open(path)) {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(in.readAllBytes())).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new TableFormatException(path, 0, "the file is not written in UTF-8");
    } catch (IOException e) {
      throw new UncheckedIOException("table set: cannot read " + path, e);
    }
  }
}
