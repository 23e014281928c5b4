// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.installation.ExampleJobs;
import holdfast.tables.EditionException;
import holdfast.tables.TableFormatException;
import holdfast.tables.TableSet;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** Entry of the executable jar. */
public final class Main {
  private Main() {}

  /** Not a constant: the names of the bundled jobs need tables, which may be unusable. */
  private static String usage() {
    return String.format(
        """
        Holdfast
          java -jar holdfast.jar                      open JShell with the vocabulary imported
          java -jar holdfast.jar SCRIPT               run a script of JShell lines and end
        on a job, which is a text file, '-' for standard input, or one of the bundled invented jobs %s:
        %s
          each of them with --help tells its options
        on the tables:
          … tables diff A B                           what changes from one edition of the table set to another; each a
                                                      folder, a jar, or 'bundled'
          … version                                   versions of the code and of the table set
        Lines piped in are run like a script.
        java -Dholdfast.tables=EDITION -jar … computes with the tables of that folder or jar.
        Exit status: 0 it ran; 1 an error in a script, differences, or a job that must not be installed; 2 the command
        line, a file or the tables cannot be used; 3 the output cannot be written any longer.""",
        String.join(", ", ExampleJobs.all().keySet()),
        Help.list());
  }

  /**
   * Runs the command line.
   *
   * @param args see the usage text
   * @throws Exception if JShell cannot be started
   */
  public static void main(String[] args) throws Exception {
    // The console may not be UTF-8; the sheet and its symbols are.
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    PrintStream out = Output.of(new FileOutputStream(FileDescriptor.out), err);
    System.setOut(out);
    System.setErr(err);
    try {
      TableSet.bundled();
    } catch (EditionException | TableFormatException | UncheckedIOException e) {
      err.println("The tables cannot be used: " + e.getMessage());
      System.exit(2);
    }
    int status;
    try {
      status = run(args, out, err);
    } catch (IOException e) {
      err.println("Holdfast cannot go on: " + Texts.reason(e));
      status = 2;
    }
    System.exit(status);
  }

  /**
   * Exit status: 0 if it ran, 1 after an error in a script or with differences, 2 if the command line or a file cannot be
   * used; see also {@link Output#STATUS}.
   */
  static int run(String[] args, PrintStream out, PrintStream err) throws Exception {
    if (args.length == 0) {
      if (Terminal.interactive()) {
        Interactive.open(out);
        return 0;
      }
      return script(System.in.readAllBytes(), "standard input", out, err);
    }
    for (Help command : Help.values()) {
      if (command.word().equals(args[0])) {
        return JobCommands.run(command, List.of(args).subList(1, args.length), out, err, System.in);
      }
    }
    switch (args[0]) {
      case "tables" -> {
        return TablesCommand.run(args, out, err);
      }
      case "version" -> {
        out.println(Versions.text());
        return 0;
      }
      case "help", "-h", "--help" -> {
        out.println(usage());
        return 0;
      }
      default -> {
        return script(args, out, err);
      }
    }
  }

  private static int script(String[] args, PrintStream out, PrintStream err) {
    if (args.length > 1) {
      err.println("one script at a time; given: " + String.join(" ", args));
      err.println(usage());
      return 2;
    }
    try {
      return script(Files.readAllBytes(Path.of(args[0])), args[0], out, err);
    } catch (NoSuchFileException | InvalidPathException e) {
      err.println("no script '" + args[0] + "'");
      err.println(usage());
    } catch (IOException e) {
      err.println("script '" + args[0] + "' cannot be read: " + Texts.reason(e));
    }
    return 2;
  }

  private static int script(byte[] text, String name, PrintStream out, PrintStream err) {
    try {
      return Script.run(Texts.decoded(text), name, out, err);
    } catch (CharacterCodingException e) {
      err.println("script '" + name + "' cannot be read: " + Texts.reason(e));
      return 2;
    }
  }
}
