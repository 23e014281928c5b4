// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeParameterTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The names and comments of parameters as the sources have them; classes keep none. */
final class ParameterNames {
  private static final Map<String, String> COMMENTS = new HashMap<>();
  private static final Map<String, List<String>> NAMES = read();

  private ParameterNames() {}

  /** Whether the comment of a parameter of a public method or constructor says that it may be null, and when. */
  static boolean mayBeNull(Executable call, String name) {
    return COMMENTS.getOrDefault(key(call) + " " + name, "").matches("(?s).*\\bnull\\b.*");
  }

  /** The names of the parameters of a public method or constructor, in their order. */
  static List<String> of(Executable call) {
    List<String> names = NAMES.get(key(call));
    if (names == null) {
      throw new IllegalStateException("not found in the sources: " + call);
    }
    return names;
  }

  private static String key(Executable call) {
    String types = Stream.of(call.getParameterTypes()).map(Class::getSimpleName).collect(Collectors.joining(","));
    return key(call.getDeclaringClass().getSimpleName(), call instanceof Constructor ? "<init>" : call.getName(), types);
  }

  private static Map<String, List<String>> read() {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    Map<String, List<String>> names = new HashMap<>();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, null);
        Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
      Iterable<? extends JavaFileObject> units =
          files.getJavaFileObjectsFromPaths(sources.filter(f -> f.toString().endsWith(".java")).sorted().toList());
      JavacTask task = (JavacTask) compiler.getTask(null, files, null, List.of("-proc:none"), null, units);
      DocTrees docs = DocTrees.instance(task);
      task.parse().forEach(unit -> new Reader(docs, names).scan(unit, null));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return names;
  }

  private static String key(String type, String method, String parameterTypes) {
    return type + "." + method + "(" + parameterTypes + ")";
  }

  /** Walks through types and their methods; a type variable counts as what it extends. */
  private static final class Reader extends TreePathScanner<Void, Void> {
    private final DocTrees docs;
    private final Map<String, List<String>> names;

    Reader(DocTrees docs, Map<String, List<String>> names) {
      this.docs = docs;
      this.names = names;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      if (type.getKind() == Tree.Kind.RECORD) {
        List<VariableTree> components = type.getMembers().stream()
            .filter(member -> member instanceof VariableTree field && !field.getModifiers().getFlags().contains(Modifier.STATIC))
            .map(VariableTree.class::cast).toList();
        keep(type, "<init>", components, type.getTypeParameters());
      }
      return super.visitClass(type, null);
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      ClassTree type = (ClassTree) getCurrentPath().getParentPath().getLeaf();
      List<TypeParameterTree> variables = new ArrayList<>(type.getTypeParameters());
      variables.addAll(method.getTypeParameters());
      keep(type, method.getName().toString(), method.getParameters(), variables);
      return super.visitMethod(method, null);
    }

    private void keep(
        ClassTree type, String method, List<? extends VariableTree> parameters, List<? extends TypeParameterTree> variables) {
      Map<String, String> bounds = new HashMap<>();
      variables.forEach(variable -> bounds.put(variable.getName().toString(),
          variable.getBounds().isEmpty() ? "Object" : plain(variable.getBounds().get(0).toString(), bounds)));
      String types = parameters.stream().map(p -> plain(p.getType().toString(), bounds)).collect(Collectors.joining(","));
      String key = key(type.getSimpleName().toString(), method, types);
      names.put(key, parameters.stream().map(VariableTree::getName).map(Object::toString).toList());
      DocCommentTree comment = docs.getDocCommentTree(getCurrentPath());
      if (comment != null) {
        comment.getBlockTags().forEach(tag -> {
          if (tag instanceof ParamTree param) {
            COMMENTS.put(key + " " + param.getName(), param.getDescription().toString());
          }
        });
      }
    }

    private static String plain(String written, Map<String, String> bounds) {
      String raw = written.replaceAll("<.*>", "").replace("...", "[]");
      String simple = raw.substring(raw.lastIndexOf('.') + 1);
      return bounds.getOrDefault(simple, simple);
    }
  }
}
