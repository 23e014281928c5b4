// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Chooses, once for a program, the tables with which the calculations work. */
final class BundledTables {
  private static final String PROPERTY = "holdfast.tables";

  private static volatile TableSet chosen;

  private BundledTables() {}

  /** Not a static initializer: its error would reach the caller in a wrapping, and only once. */
  static TableSet get() {
    TableSet set = chosen;
    if (set == null) {
      synchronized (BundledTables.class) {
        if (chosen == null) {
          String place = System.getProperty(PROPERTY);
          chosen = place == null ? ofTheLibrary() : fit(named(place), ofTheLibrary());
        }
        set = chosen;
      }
    }
    return set;
  }

  private static TableSet named(String place) {
    try {
      return TableSet.load(Path.of(place));
    } catch (InvalidPathException e) {
      String fault = "system property " + PROPERTY + ": '" + place + "' is no path: " + e.getReason();
      throw new UncheckedIOException(fault, new IOException(e));
    }
  }

  private static TableSet ofTheLibrary() {
    return TableSet.load(
        path -> {
          InputStream stream = TableSet.class.getResourceAsStream("/" + TableSet.FOLDER + path);
          if (stream == null) {
            throw new FileNotFoundException(path);
          }
          return stream;
        },
        SourceRegister.of(List.of()));
  }

  /** Refuses an edition that would make a calculation fail half way, or that hides behind the name of another. */
  static TableSet fit(TableSet other, TableSet own) {
    Edition wanted = own.edition();
    Edition found = other.edition();
    String edition = "the edition" + (other.place().isEmpty() ? "" : " in " + other.place());
    if (found.version().equals(wanted.version()) && !found.equals(wanted)) {
      throw new EditionException(
          wanted, found, edition + " has the version of the library's tables and other files: two editions have one version");
    }
    for (Table table : own.all()) {
      String id = table.descriptor().id();
      if (!other.ids().contains(id)) {
        throw new EditionException(wanted, found, edition + " lacks the table '" + id + "', which calculations read");
      }
      for (Column column : table.descriptor().columns().values()) {
        Column there = other.table(id).descriptor().columns().get(column.name());
        boolean same = there != null && there.type() == column.type() && there.unit().equals(column.unit());
        if (!same || (there.optional() && !column.optional())) {
          throw new EditionException(
              wanted, found, "table '" + id + "': calculations read " + column + ", " + edition + " has " + there);
        }
      }
    }
    return other;
  }
}
