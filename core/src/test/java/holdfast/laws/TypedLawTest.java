// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.job.JobFileException;
import holdfast.quantity.InputException;
import holdfast.trace.Traced;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Whatever it is given, every public constructor and method answers with finite numbers or with a named error, and every
 * object it returns can be printed and explained. Arguments are what earlier calls have returned. A result whose parts were
 * put together by hand, and do not belong together, may refuse to explain itself, by a named error. Null is refused by the
 * name of the parameter unless its comment says what null means.
 */
class TypedLawTest {
  /** The reason by which {@link holdfast.quantity.Check} refuses numbers of no machine, which may arise late. */
  private static final String TOO_FAR = "no machine has such a number, and formulas would leave the range of the numbers";

  private final Map<String, String> faults = new TreeMap<>();
  private final Map<String, Integer> answers = new HashMap<>();
  private final Watched watched = new Watched();
  private final Random random = new Random(Effort.SEED);
  private final Draw draw = new Draw(random);
  private final Map<Executable, Object[]> lastAnswered = new HashMap<>();
  private final Nulls nulls = new Nulls();

  @Test
  void aFiniteAnswerOrANamedError() throws InterruptedException {
    List<Executable> api = PublicApi.typed();
    List<Executable> silent = new ArrayList<>(api);
    Ordinary.all().forEach(this::keepWithParts);
    Ordinary.words().forEach(draw::keep);
    watched.run(() -> {
      for (int i = 0; i < Effort.of(7_000); i++) {
        List<Executable> from = i % 2 == 0 || silent.isEmpty() ? api : silent;
        tryOut(from.get(random.nextInt(from.size())));
        if (i % 200 == 0) {
          silent.removeIf(call -> answers.containsKey(name(call)));
        }
      }
      api.forEach(this::tryOutWithNull);
    });
    assertEquals(Map.of(), faults, () -> faults.size() + " faults with seed " + Effort.SEED);
    assertEquals(Map.of(), nulls.faults(), "null is neither refused by the parameter's name nor documented");
    assertTrue(nulls.tried() > 0.95 * api.size(), () -> "tried with null: " + nulls.tried() + " of " + api.size());
    assertTrue(silent.size() < 0.15 * api.size(), () -> silent.size() + " of " + api.size() + " never answered: " + silent);
  }

  private void tryOut(Executable call) {
    Object on = null;
    if (call instanceof Method method && !Modifier.isStatic(method.getModifiers())) {
      on = draw.one(method.getDeclaringClass());
      if (on == null) {
        return;
      }
    }
    Type[] types = call.getGenericParameterTypes();
    Object[] last = lastAnswered.get(call);
    Object[] arguments = last == null || random.nextBoolean() ? draw.all(types) : draw.changed(types, last);
    if (Arrays.stream(arguments).anyMatch(a -> a == null)) {
      return;
    }
    Object[] before = Draw.copies(arguments);
    String name = name(call);
    watched.next(name, new Object[] {on, before});
    try {
      Object answer = call instanceof Constructor<?> constructor
          ? constructor.newInstance(arguments) : ((Method) call).invoke(on, arguments);
      answers.merge(name, 1, Integer::sum);
      lastAnswered.put(call, before);
      judge(call, on, before, answer);
    } catch (InvocationTargetException e) {
      if (!(e.getCause() instanceof InputException || e.getCause() instanceof JobFileException)) {
        fault(name, on, before, "throws " + e.getCause() + at(e.getCause()));
      }
    } catch (InstantiationException | IllegalAccessException e) {
      throw new LinkageError("a public call", e);
    }
  }

  /** With the arguments that were answered last, or any if none were. */
  private void tryOutWithNull(Executable call) {
    boolean bound = call instanceof Method method && !Modifier.isStatic(method.getModifiers());
    Object on = bound ? draw.one(call.getDeclaringClass()) : null;
    if (!bound || on != null) {
      Object[] last = lastAnswered.get(call);
      Object[] arguments = last == null ? draw.all(call.getGenericParameterTypes()) : Draw.copies(last);
      watched.next(name(call) + " with null", arguments);
      nulls.tryOut(call, on, arguments);
    }
  }

  private void judge(Executable call, Object on, Object[] arguments, Object answer) {
    String name = name(call);
    String fault = Finite.fault(answer);
    if (fault != null && !MayBeInfinite.fault(name, fault)) {
      fault(name, on, arguments, "answers " + fault);
    } else if (answer != null) {
      try {
        keep(answer, PublicApi.assembles(call));
      } catch (RuntimeException e) {
        if (e instanceof InputException input && (PublicApi.assembles(call) || input.reason().equals(TOO_FAR))) {
          return;
        }
        fault(name, on, arguments, "answers what cannot be printed or explained: " + e + at(e));
      }
    }
  }

  private void keepWithParts(Object ordinary) {
    draw.keep(ordinary);
    if (ordinary instanceof Record && Modifier.isPublic(ordinary.getClass().getModifiers())) {
      for (RecordComponent part : ordinary.getClass().getRecordComponents()) {
        try {
          Object value = part.getAccessor().invoke(ordinary);
          if (value != null && value.getClass().getName().startsWith("holdfast.")) {
            keepWithParts(value);
          }
        } catch (ReflectiveOperationException e) {
          throw new LinkageError("a public record", e);
        }
      }
    }
  }

  /** Explains an answer and keeps it; a result that was put together from any parts goes no further. */
  private void keep(Object answer, boolean assembled) {
    if (answer instanceof Collection<?> many) {
      many.stream().limit(8).filter(o -> o != null).forEach(one -> keep(one, assembled));
    } else if (answer instanceof Optional<?> maybe) {
      maybe.ifPresent(one -> keep(one, assembled));
    } else if (answer instanceof String || answer.getClass().getName().startsWith("holdfast.")) {
      String text = answer.toString();
      if (text.length() < 60 && text.indexOf('@') < 0) {
        draw.keep(text);
      }
      if (answer instanceof Traced traced) {
        assertTrue(!traced.explain().toString().isEmpty());
      }
      if (!assembled) {
        draw.keep(answer);
      }
    }
  }

  private void fault(String name, Object on, Object[] arguments, String what) {
    faults.computeIfAbsent(name, n -> (on == null ? "" : "on " + on + " ") + Arrays.deepToString(arguments) + " " + what);
  }

  private static String at(Throwable thrown) {
    StackTraceElement[] trace = thrown.getStackTrace();
    return trace.length == 0 ? "" : " at " + trace[0];
  }

  private static String name(Executable call) {
    String simple = call.getDeclaringClass().getSimpleName();
    return (call instanceof Method ? simple + "." + call.getName() : "new " + simple) + "/" + call.getParameterCount();
  }
}
