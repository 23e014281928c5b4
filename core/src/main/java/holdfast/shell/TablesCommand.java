// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.tables.EditionDiff;
import holdfast.tables.TableFormatException;
import holdfast.tables.TableSet;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Compares two editions of the table set: {@code tables diff A B}. */
final class TablesCommand {
  private static final String USAGE =
      "tables diff A B: A and B are each a folder or a jar with a table set, or 'bundled' for the tables in use";

  private TablesCommand() {}

  /** Exit status as of a comparison of files: 0 without a difference, 1 with one, 2 if a set cannot be used. */
  static int run(String[] args, PrintStream out, PrintStream err) {
    if (args.length != 4 || !args[1].equals("diff")) {
      err.println(USAGE);
      return 2;
    }
    try {
      EditionDiff diff = EditionDiff.between(set(args[2]), set(args[3]));
      out.print(diff.text());
      return diff.changes().isEmpty() ? 0 : 1;
    } catch (UncheckedIOException | TableFormatException e) {
      err.println(e.getMessage());
      err.println(USAGE);
      return 2;
    } catch (InvalidPathException e) {
      err.println("'" + e.getInput() + "' is no name of a file: " + e.getReason());
      return 2;
    }
  }

  private static TableSet set(String name) {
    return name.equals("bundled") ? TableSet.bundled() : TableSet.load(Path.of(name));
  }
}
