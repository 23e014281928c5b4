// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * All tables together: a version, the register of documents and a digest of every byte. Thread-safe.
 *
 * <p>A set is a folder with {@code table-set.properties} (entries {@code version} and {@code subjects}); each subject
 * is a folder with {@code sources.csv} (a {@link Document} a line) and {@code contents.txt}, which lists its
 * tables, one path a line without the ending. A table is two files, {@code <path>.csv} and {@code <path>.properties}.
 * All files are read, and the digest is taken, when the set is opened: what happens to the files later does not matter.
 * Tables are parsed and validated when first asked for; {@link #all()} does it for all.
 */
public final class TableSet {
  /** Where a jar holds its set. */
  static final String FOLDER = "holdfast/tables/data/";

  private static final String FRAME = "table-set.properties";

  private final String place;
  private final String version;
  private final Set<String> tableFiles = new LinkedHashSet<>();
  private final SourceRegister register;
  private final SetFiles files;
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

  /** All files are read now and parsed when asked for; what happens to them later does not matter. */
  private TableSet(Opener opener, Collection<Document> knownDocuments, String place) {
    this.place = place;
    SetFiles.Reading reading = new SetFiles.Reading(opener);
    Entries frame = Entries.read(FRAME, reading.text(FRAME));
    for (String name : frame.names()) {
      if (!name.equals("version") && !name.equals("subjects")) {
        throw frame.fault(name, "unknown entry '" + name + "'; known: version, subjects");
      }
    }
    this.version = frame.required("version");
    if (!Edition.VERSION.matcher(version).matches()) {
      throw frame.fault("version", "version '" + version + "' must be " + Edition.RULE);
    }
    Map<String, Document> documents = new LinkedHashMap<>();
    knownDocuments.forEach(document -> documents.put(document.id(), document));
    Set<String> seen = new HashSet<>();
    for (String subject : frame.required("subjects").split("\\s*,\\s*", -1)) {
      if (!SetFiles.isName(subject) || !seen.add(subject)) {
        throw frame.fault("subjects", "subject '" + subject + "' is listed twice, or not " + SetFiles.RULE);
      }
      readDocuments(reading, subject + "/sources.csv", documents);
      readContents(reading, subject);
    }
    for (String table : tableFiles) {
      reading.read(table + ".csv");
      reading.read(table + ".properties");
    }
    this.files = reading.done();
    this.register = SourceRegister.of(documents.values());
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
    if (!Files.isRegularFile(place)) {
      return load(path -> Files.newInputStream(place.resolve(path)), place);
    }
    try (ZipFile jar = new ZipFile(place.toFile())) {
      return load(path -> entry(jar, FOLDER + path), place);
    } catch (IOException e) {
      throw new UncheckedIOException("table set " + place + ": cannot be read as a jar: " + e.getMessage(), e);
    }
  }

  private static TableSet load(Opener opener, Path place) {
    try {
      return new TableSet(opener, List.of(), place.toString());
    } catch (TableFormatException e) {
      throw e.in(place.toString());
    } catch (UncheckedIOException e) {
      throw new UncheckedIOException(e.getMessage() + " (in " + place + ")", e.getCause());
    }
  }

  private static InputStream entry(ZipFile jar, String name) throws IOException {
    ZipEntry entry = jar.getEntry(name);
    if (entry == null) {
      throw new FileNotFoundException(name);
    }
    return jar.getInputStream(entry);
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
    return new TableSet(opener, known.documents(), "");
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
   * Which edition this is.
   *
   * @return version and digest
   */
  public Edition edition() {
    return new Edition(version, files.digest());
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
    return List.copyOf(tables);
  }

  /**
   * SHA-256 over every file of the set, of the bytes that were read when the set was opened: for each path in alphabetical
   * order the path, a zero byte, and the content.
   *
   * @return 64 hexadecimal digits
   */
  public String digest() {
    return files.digest();
  }

  /**
   * SHA-256 of each file of the set, of the bytes that were read when the set was opened.
   *
   * @return 64 hexadecimal digits by the path below the set's folder, in alphabetical order; unmodifiable
   */
  public SortedMap<String, String> digests() {
    return files.digests();
  }

  /** Where the set was loaded from; empty if it came through an {@link Opener}. */
  String place() {
    return place;
  }

  private Table read(String id) {
    String csv = id + ".csv";
    String properties = id + ".properties";
    try {
      TableDescriptor descriptor = TableDescriptor.read(id, Entries.read(properties, files.text(properties)));
      Table table = TableReader.read(csv, descriptor, register, files.text(csv));
      files.forget(csv);
      files.forget(properties);
      return table;
    } catch (TableFormatException e) {
      throw place.isEmpty() ? e : e.in(place);
    }
  }

  private static void readDocuments(SetFiles.Reading reading, String file, Map<String, Document> documents) {
    List<CsvRecord> records = TableReader.records(file, reading.text(file));
    List<String> columns = records.get(0).getFields();
    if (!Document.COLUMNS.containsAll(columns) || !columns.containsAll(Document.REQUIRED)) {
      throw new TableFormatException(
          file,
          records.get(0).getStartingLineNumber(),
          "columns must be of " + String.join(",", Document.COLUMNS) + "; required: " + String.join(", ", Document.REQUIRED));
    }
    for (CsvRecord line : records.subList(1, records.size())) {
      Document document;
      try {
        document = Document.of(columns, line.getFields());
      } catch (IllegalArgumentException e) {
        throw new TableFormatException(file, line.getStartingLineNumber(), e.getMessage());
      }
      if (documents.put(document.id(), document) != null) {
        throw new TableFormatException(
            file, line.getStartingLineNumber(), "document '" + document.id() + "' is registered twice");
      }
    }
  }

  private void readContents(SetFiles.Reading reading, String subject) {
    String file = subject + "/contents.txt";
    int before = tableFiles.size();
    int number = 0;
    for (String line : reading.text(file).lines().map(String::strip).toList()) {
      number++;
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      if (!SetFiles.isName(line)) {
        throw new TableFormatException(file, number, "table '" + line + "' is not " + SetFiles.RULE);
      }
      if (!tableFiles.add(subject + "/" + line)) {
        throw new TableFormatException(file, number, "table '" + line + "' is listed twice");
      }
    }
    if (tableFiles.size() == before) {
      throw new TableFormatException(file, 0, "the file lists no table");
    }
  }
}
