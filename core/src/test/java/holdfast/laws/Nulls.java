// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Gives null to every parameter in turn that can be null: the error must name it. */
final class Nulls {
  private final Map<String, String> faults = new TreeMap<>();
  private final Set<Executable> tried = new HashSet<>();

  /** What was wrong, by call and parameter. */
  Map<String, String> faults() {
    return faults;
  }

  /** How many calls were tried. */
  int tried() {
    return tried.size();
  }

  /** Repeats a call that was answered with one argument missing; once for each call. */
  void tryOut(Executable call, Object on, Object[] answered) {
    if (!tried.add(call)) {
      return;
    }
    Class<?>[] types = call.getParameterTypes();
    List<String> names = ParameterNames.of(call);
    for (int i = 0; i < types.length; i++) {
      if (!types[i].isPrimitive() && !unread(call)) {
        Object[] arguments = Draw.copies(answered);
        arguments[i] = null;
        List<String> missing =
            IntStream.range(0, names.size()).filter(j -> arguments[j] == null).mapToObj(names::get).toList();
        String fault = fault(call, on, arguments, missing, ParameterNames.mayBeNull(call, names.get(i)));
        if (fault != null) {
          faults.put(call.getDeclaringClass().getSimpleName() + "." + call.getName() + Arrays.toString(types) + " " + names.get(i),
              fault);
        }
      }
    }
  }

  /** The texts of a check, constants in every kernel, are read when it refuses, and then refused themselves. */
  private static boolean unread(Executable call) {
    return call.getDeclaringClass() == Check.class;
  }

  private static String fault(Executable call, Object on, Object[] arguments, List<String> missing, boolean documented) {
    try {
      Object answer = call instanceof Constructor<?> constructor
          ? constructor.newInstance(arguments) : ((Method) call).invoke(on, arguments);
      return documented ? null : "accepted" + (answer == null ? "" : ", gives a " + answer.getClass().getSimpleName());
    } catch (InvocationTargetException e) {
      Throwable thrown = e.getCause();
      if (thrown instanceof InputException) {
        return null;
      }
      boolean named = thrown instanceof NullPointerException && missing.contains(thrown.getMessage())
          && thrown.getStackTrace()[0].getClassName().equals(Objects.class.getName());
      return named ? null : (documented ? "documented to take null, " : "") + thrown + " at " + thrown.getStackTrace()[0];
    } catch (InstantiationException | IllegalAccessException e) {
      throw new LinkageError("a public call", e);
    }
  }
}
