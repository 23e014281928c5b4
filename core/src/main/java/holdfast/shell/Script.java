// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.quantity.Units;
import java.io.PrintStream;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * Runs JShell lines one after the other. The value of a line that is only an expression is printed; declarations are
 * silent. The first error ends the script.
 */
final class Script {
  /** A unit of a quotient of whole numbers: inch(5/8) would be 0 in, inch(1-1/2) 1 in. */
  private static final Pattern FRACTION = Pattern.compile("\\b(" + Stream.of(Units.class.getMethods())
      .filter(method -> Modifier.isStatic(method.getModifiers())).map(Method::getName).distinct().sorted()
      .collect(Collectors.joining("|")) + ")\\(\\s*((?:\\d+\\s*[-+]\\s*)?\\d+\\s*/\\s*\\d+)\\s*\\)");

  private final JShell shell;
  private final String name;
  private final PrintStream out;
  private final PrintStream err;

  private Script(JShell shell, String name, PrintStream out, PrintStream err) {
    this.shell = shell;
    this.name = name;
    this.out = out;
    this.err = err;
  }

  /** Exit status: 0 if every line ran, 1 otherwise. */
  static int run(String text, String name, PrintStream out, PrintStream err) {
    try (JShell shell = JShell.builder().executionEngine("local").out(out).err(err).build()) {
      shell.addToClasspath(Vocabulary.classPath());
      Script script = new Script(shell, name, out, err);
      return script.feed(Vocabulary.text()) && script.feed(text) ? 0 : 1;
    }
  }

  /** Line by line, as at the prompt; a statement may run over lines, and a line that starts with '.' continues the last. */
  private boolean feed(String text) {
    StringBuilder pending = new StringBuilder();
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      pending.append(lines.get(i)).append('\n');
      boolean continued = i + 1 < lines.size() && lines.get(i + 1).stripLeading().startsWith(".");
      if (!continued && !evaluateComplete(pending)) {
        return false;
      }
    }
    if (!pending.toString().isBlank()) {
      fail(pending.toString(), "the input ends in the middle of this");
      return false;
    }
    return true;
  }

  /** Evaluates what is complete and leaves the rest in the buffer; false after the first error. */
  private boolean evaluateComplete(StringBuilder pending) {
    while (!pending.toString().isBlank()) {
      CompletionInfo next = shell.sourceCodeAnalysis().analyzeCompletion(pending.toString());
      if (next.completeness() == SourceCodeAnalysis.Completeness.EMPTY) {
        pending.setLength(0);
        return true;
      }
      if (!next.completeness().isComplete() && next.completeness() != SourceCodeAnalysis.Completeness.UNKNOWN) {
        return true;
      }
      pending.setLength(0);
      pending.append(next.remaining());
      Matcher fraction = FRACTION.matcher(next.source());
      if (fraction.find()) {
        fail(next.source(), "Java divides whole numbers to whole numbers, so that " + fraction.group(2).strip()
            + " is no fraction; write it as a text: "
            + fraction.group(1) + "(\"" + fraction.group(2).replaceAll("\\s", "") + "\")");
        return false;
      }
      for (SnippetEvent event : shell.eval(next.source())) {
        if (!report(event)) {
          return false;
        }
      }
    }
    pending.setLength(0);
    return true;
  }

  private boolean report(SnippetEvent event) {
    Snippet snippet = event.snippet();
    if (event.status() == Snippet.Status.REJECTED) {
      StringBuilder why = new StringBuilder();
      shell.diagnostics(snippet).forEach(d -> why.append(d.getMessage(Locale.ROOT)).append('\n'));
      fail(snippet.source(), why.toString().strip());
      return false;
    }
    if (event.status() == Snippet.Status.RECOVERABLE_NOT_DEFINED) {
      List<String> unknown = shell.unresolvedDependencies((DeclarationSnippet) snippet).toList();
      fail(snippet.source(), "not known: " + String.join(", ", unknown));
      return false;
    }
    if (event.exception() != null) {
      fail(snippet.source(), message(event.exception()));
      return false;
    }
    boolean expression =
        snippet.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND
            || snippet.subKind() == Snippet.SubKind.VAR_VALUE_SUBKIND;
    if (expression && event.value() != null) {
      out.println(plain(event.value()));
    }
    return true;
  }

  private static String message(JShellException exception) {
    if (exception instanceof EvalException eval) {
      String type = eval.getExceptionClassName();
      return type.substring(type.lastIndexOf('.') + 1) + ": " + eval.getMessage();
    }
    return String.valueOf(exception.getMessage());
  }

  /** JShell quotes and escapes strings; a script prints them as they are. */
  private static String plain(String value) {
    if (!value.startsWith("\"")) {
      return value;
    }
    return value.substring(1, value.length() - 1).translateEscapes();
  }

  private void fail(String source, String why) {
    err.println(name + ": " + source.strip());
    List.of(why.split("\n", -1)).forEach(line -> err.println("  " + line));
  }
}
