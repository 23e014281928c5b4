// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fleet.FleetPlan;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every value type can be written to a stream, and nothing that a result hands out changes the result. */
class ValueTypeLawTest {
  private static final int MOST_OF_A_TYPE = 3;
  private static final int MOST_CALLS = 40_000;

  /** What a program gets hold of and keeps: not builders, not working memory, not classes of functions. */
  private static boolean isValue(Class<?> type) {
    boolean state = Stream.of(type.getDeclaredFields()).map(Field::getModifiers).anyMatch(m -> !Modifier.isStatic(m));
    String name = type.getSimpleName();
    return !type.isInterface() && !Modifier.isAbstract(type.getModifiers()) && (state || type.isRecord())
        && !name.endsWith("Builder") && !name.endsWith("Workspace") && isObtained(type);
  }

  private static boolean isObtained(Class<?> type) {
    return type.isRecord() || Arrays.stream(type.getConstructors()).map(Constructor::getModifiers).anyMatch(Modifier::isPublic)
        || Arrays.stream(type.getMethods()).anyMatch(m -> m.getReturnType() == type)
        || Arrays.stream(type.getFields()).anyMatch(f -> f.getType() == type);
  }

  @Test
  void everyValueTypeIsSerializable() {
    Set<String> wrong = new TreeSet<>();
    int seen = 0;
    for (Class<?> type : PublicApi.classes()) {
      if (isValue(type)) {
        seen++;
        if (!Serializable.class.isAssignableFrom(type)) {
          wrong.add(type.getName());
        }
      }
    }
    assertEquals(Set.of(), wrong, "value types that are not Serializable");
    assertTrue(seen > 150, seen + " value types");
  }

  @Test
  void whatIsWrittenIsReadAgain() throws ReflectiveOperationException {
    Map<String, String> wrong = new TreeMap<>();
    int written = 0;
    for (Object value : reachable()) {
      // A fleet holds the survival function of the caller.
      if (value instanceof Serializable && !(value instanceof FleetPlan)) {
        written++;
        try {
          Object back = copy(value);
          if (!back.toString().equals(value.toString()) || (value instanceof Record && !back.equals(value))) {
            wrong.put(value.getClass().getName(), "reads as " + back);
          }
        } catch (IOException | ClassNotFoundException e) {
          wrong.put(value.getClass().getName(), e.toString());
        }
      }
    }
    assertEquals(Map.of(), wrong);
    assertTrue(written > 300, written + " written");
  }

  @Test
  void aFleetIsWrittenWithItsSurvivalFunction() throws IOException, ClassNotFoundException {
    FleetPlan fleet = FleetPlan.ofLike((DoubleUnaryOperator & Serializable) h -> Math.exp(-h / 9000), 3, 4000);
    FleetPlan back = (FleetPlan) copy(fleet);
    assertEquals(fleet.positions(), back.positions());
  }

  @Test
  void aUnitThatIsReadIsTheConstant() throws IOException, ClassNotFoundException {
    assertSame(KnownUnits.LBF_IN, copy(KnownUnits.LBF_IN));
    assertSame(KnownUnits.K, copy(KnownUnits.K));
    assertSame(KnownUnits.KELVIN, copy(KnownUnits.KELVIN));
  }

  @Test
  void nothingHandedOutCanBeChanged() throws ReflectiveOperationException {
    Set<String> wrong = new TreeSet<>();
    int[] collections = {0};
    walk((call, answer) -> {
      if (answer instanceof Collection<?> || answer instanceof Map<?, ?>) {
        collections[0]++;
        if (changes(answer)) {
          wrong.add(call.getDeclaringClass().getSimpleName() + "." + call.getName());
        }
      }
    });
    assertEquals(Set.of(), wrong, "accessors that hand out what can be changed");
    assertTrue(collections[0] > 200, collections[0] + " collections");
  }

  private static boolean changes(Object answer) {
    return accepts(() -> add(answer)) || (answer instanceof List<?> list && !list.isEmpty() && accepts(() -> replace(list)));
  }

  @SuppressWarnings("unchecked")
  private static void add(Object answer) {
    if (answer instanceof Map<?, ?> map) {
      ((Map<Object, Object>) map).put("key", "value");
    } else {
      ((Collection<Object>) answer).add("intruder");
    }
  }

  @SuppressWarnings("unchecked")
  private static void replace(List<?> list) {
    ((List<Object>) list).set(0, list.get(0));
  }

  /** Only this error says that nothing can be changed, whatever is put in. */
  private static boolean accepts(Runnable change) {
    try {
      change.run();
      return true;
    } catch (UnsupportedOperationException e) {
      return false;
    } catch (RuntimeException e) {
      return true;
    }
  }

  private static Object copy(Object value) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }

  private interface Visitor {
    void answered(Method call, Object answer);
  }

  private static List<Object> reachable() throws ReflectiveOperationException {
    List<Object> found = new ArrayList<>(Ordinary.all());
    walk((call, answer) -> {
      if (isOurs(answer)) {
        found.add(answer);
      }
    });
    return found;
  }

  /** Calls every public method without parameters on ordinary results, and on what these answer, a few of each type. */
  private static void walk(Visitor visitor) throws ReflectiveOperationException {
    Deque<Object> open = new ArrayDeque<>(Ordinary.all());
    Map<Class<?>, Integer> met = new HashMap<>();
    int calls = 0;
    while (!open.isEmpty() && calls < MOST_CALLS) {
      Object on = open.poll();
      if (!isOurs(on) || met.merge(on.getClass(), 1, Integer::sum) > MOST_OF_A_TYPE) {
        continue;
      }
      for (Method method : on.getClass().getMethods()) {
        if (method.getParameterCount() == 0 && !Modifier.isStatic(method.getModifiers()) && method.getDeclaringClass() != Object.class
            && Modifier.isPublic(method.getDeclaringClass().getModifiers()) && method.getReturnType() != void.class) {
          calls++;
          Object answer = call(method, on);
          if (answer != null) {
            visitor.answered(method, answer);
            parts(answer).forEach(open::add);
          }
        }
      }
    }
  }

  private static Object call(Method method, Object on) throws ReflectiveOperationException {
    try {
      return method.invoke(on);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof InputException) {
        return null;
      }
      throw e;
    }
  }

  private static Stream<?> parts(Object answer) {
    if (answer instanceof Collection<?> many) {
      return many.stream().limit(4).filter(o -> o != null);
    }
    if (answer instanceof Map<?, ?> map) {
      return map.values().stream().limit(4).filter(o -> o != null);
    }
    return answer instanceof Optional<?> maybe ? maybe.stream() : Stream.of(answer);
  }

  private static boolean isOurs(Object value) {
    return value.getClass().getName().startsWith("holdfast.") && !(value instanceof Enum);
  }
}
