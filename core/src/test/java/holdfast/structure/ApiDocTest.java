// SPDX-License-Identifier: Apache-2.0
package holdfast.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What the comments of the public API say: the unit of every bare number, and every refusal of input. The compiler reads the
 * sources; nothing is compiled.
 */
class ApiDocTest {
  /**
   * Doubles whose unit stands in the comment of the method or type ("forces in N, lengths in mm") and not in their own; may
   * become fewer, never more.
   */
  private static final int MOST_WITHOUT_UNIT = 5;

  private static final Pattern UNIT =
      Pattern.compile(
          "(^|[\\s(\\[,;/·0-9])(mm|cm|m|µm|um|in|inch|thou|N|kN|lbf|MPa|GPa|psi|ksi|rad|mrad|°|deg|degrees?|°C|K|h|s|min|minutes?"
              + "|hours?|rpm|rev|km|HRC|%|g|kg|oz|ounces|cSt|mm²|mm³|mm⁴|W|J|Hz|millions?|revolutions?|days?|years?|weeks?)"
              + "($|[\\s)\\],;:./·²³⁴%-])");
  /** Beside a parameter: letters that are symbols as well, and the word in, are units only after "in". */
  private static final Pattern UNIT_BESIDE =
      Pattern.compile(
          "\\bin (m|N|K|h|s|g|J|W|in|1/\\S+)($|[\\s)\\],;:./·²³⁴%-])"
              + "|(^|[\\s(\\[,;/·0-9])(mm|cm|µm|um|inch|inches|thou|kN|lbf|MPa|GPa|psi|ksi|rad|mrad|°|deg|degrees?|°C|N·mm|N/mm|min"
              + "|minutes?|hours?|rpm|rev|km|HRC|%|kg|oz|ounces|cSt|mm²|mm³|mm⁴|Hz|millions?|revolutions?|days?|years?|weeks?)"
              + "($|[\\s)\\],;:./·²³⁴%-])");

  private static final Pattern PURE =
      Pattern.compile(
          "(?iU)\\b(ratio|factor|share|number|count|index|code|coefficient|exponent|probability|slope|relative|percent"
              + "|per cent|reliability|quantile|fraction|poisson|dimensionless|safety|friction|in the unit|same unit)\\b");

  private static final List<String> numbers = new ArrayList<>();
  private static final List<String> unitless = new ArrayList<>();
  private static final List<String> homeless = new ArrayList<>();
  private static final List<String> silent = new ArrayList<>();

  @BeforeAll
  static void read() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, null);
        Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
      List<Path> paths = sources.filter(f -> f.toString().endsWith(".java") && !f.endsWith("module-info.java")).sorted().toList();
      Iterable<? extends JavaFileObject> units = files.getJavaFileObjectsFromPaths(paths);
      JavacTask task = (JavacTask) compiler.getTask(null, files, null, List.of("-proc:none"), null, units);
      DocTrees docs = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        new Reader(docs).scan(unit, null);
      }
    }
  }

  @Test
  void everyDoubleStatesItsUnitOrThatItHasNone() {
    assertTrue(numbers.size() > 500, "public numbers found: " + numbers.size());
    assertEquals(List.of(), homeless, "neither the parameter nor its method or type states a unit, or that there is none");
    assertTrue(
        unitless.size() <= MOST_WITHOUT_UNIT,
        unitless.size() + " of " + numbers.size() + " leave the unit to the method or type:\n" + String.join("\n", unitless));
  }

  @Test
  void everyRefusalOfInputIsDocumented() {
    assertEquals(List.of(), silent, "methods that refuse input and do not say so with @throws InputException");
  }

  /** Walks through public types and their public methods. */
  private static final class Reader extends TreePathScanner<Void, Void> {
    private final DocTrees docs;

    Reader(DocTrees docs) {
      this.docs = docs;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      Tree outside = getCurrentPath().getParentPath().getLeaf();
      boolean open = type.getModifiers().getFlags().contains(Modifier.PUBLIC)
          || (outside instanceof ClassTree && outside.getKind() == Tree.Kind.INTERFACE);
      if (!open) {
        return null;
      }
      if (type.getKind() == Tree.Kind.RECORD) {
        String name = type.getSimpleName().toString();
        for (Tree member : type.getMembers()) {
          if (member instanceof VariableTree field && !field.getModifiers().getFlags().contains(Modifier.STATIC)) {
            check(name, field, docs.getDocCommentTree(getCurrentPath()), docs.getDocCommentTree(getCurrentPath()));
          }
        }
      }
      return super.visitClass(type, null);
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
      boolean open = method.getModifiers().getFlags().contains(Modifier.PUBLIC) || owner.getKind() == Tree.Kind.INTERFACE;
      DocCommentTree comment = docs.getDocCommentTree(getCurrentPath());
      if (!open || comment == null) {
        return null;
      }
      String name = owner.getSimpleName() + "#" + method.getName();
      DocCommentTree ofOwner = docs.getDocCommentTree(getCurrentPath().getParentPath());
      for (VariableTree parameter : method.getParameters()) {
        check(name, parameter, comment, ofOwner);
      }
      boolean says =
          comment.getBlockTags().stream()
              .anyMatch(t -> t instanceof ThrowsTree tag && tag.getExceptionName().toString().endsWith("InputException"));
      if (!says && refuses(method)) {
        silent.add(name);
      }
      return null;
    }

    /** Whether the method itself makes the error or asks Check, which does. */
    private static boolean refuses(MethodTree method) {
      String body = String.valueOf(method.getBody());
      return body.contains("new InputException(") || Pattern.compile("\\bCheck\\.\\w+\\(").matcher(body).find();
    }

    private void check(String name, VariableTree variable, DocCommentTree comment, DocCommentTree ofType) {
      String type = String.valueOf(variable.getType());
      if (!type.matches("double(\\[\\])?")) {
        return;
      }
      String text = comment == null ? "" : param(comment, variable.getName().toString());
      String whole = name + " " + variable.getName() + ": " + text;
      numbers.add(whole);
      if (!UNIT_BESIDE.matcher(text).find() && !PURE.matcher(text).find()) {
        String around = plain(comment + " " + ofType);
        unitless.add(whole);
        if (!UNIT.matcher(around).find()) {
          homeless.add(whole);
        }
      }
    }

    /** The compiler's tree shows letters beyond ASCII as escapes. */
    private static String plain(String text) {
      return Pattern.compile("\\\\u([0-9a-f]{4})")
          .matcher(text)
          .replaceAll(m -> String.valueOf((char) Integer.parseInt(m.group(1), 16)));
    }

    private static String param(DocCommentTree comment, String name) {
      return comment.getBlockTags().stream()
          .filter(t -> t instanceof ParamTree p && p.getName().getName().contentEquals(name))
          .map(t -> plain(((ParamTree) t).getDescription().toString()))
          .findFirst().orElse("");
    }
  }
}
