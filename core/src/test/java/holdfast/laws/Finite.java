// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Looks for numbers that are none inside an answer: in arrays, collections and the components of records. */
final class Finite {
  private static final ClassValue<Method[]> ACCESSORS =
      new ClassValue<>() {
        @Override
        protected Method[] computeValue(Class<?> type) {
          Method[] accessors =
              Stream.of(type.getRecordComponents()).map(RecordComponent::getAccessor).toArray(Method[]::new);
          Stream.of(accessors).forEach(accessor -> accessor.setAccessible(true));
          return accessors;
        }
      };

  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

  private Finite() {}

  /** The path to the first NaN or infinity in an answer, or null. */
  static String fault(Object answer) {
    return new Finite().fault(answer, "");
  }

  private String fault(Object x, String path) {
    if (x instanceof Double d) {
      return Double.isFinite(d) ? null : path + " is " + d;
    } else if (x instanceof OptionalDouble o) {
      return o.isPresent() ? fault(o.getAsDouble(), path) : null;
    } else if (x instanceof double[] numbers) {
      for (double number : numbers) {
        if (!Double.isFinite(number)) {
          return path + "[] holds " + number;
        }
      }
      return null;
    } else if (x == null || x instanceof Path || !seen.add(x)) {
      return null;
    } else if (x instanceof Optional<?> o) {
      return fault(o.orElse(null), path);
    } else if (x instanceof Object[] array) {
      return inAll(java.util.Arrays.asList(array), path);
    } else if (x instanceof Map<?, ?> map) {
      String keys = inAll(map.keySet(), path + ".keys");
      return keys != null ? keys : inAll(map.values(), path + ".values");
    } else if (x instanceof Iterable<?> all) {
      return inAll(all, path);
    }
    return x instanceof Record ? inRecord(x, path) : null;
  }

  private String inAll(Iterable<?> all, String path) {
    for (Object one : all) {
      String fault = fault(one, path + "[]");
      if (fault != null) {
        return fault;
      }
    }
    return null;
  }

  private String inRecord(Object x, String path) {
    for (Method accessor : ACCESSORS.get(x.getClass())) {
      try {
        String fault = fault(accessor.invoke(x), path + "." + accessor.getName());
        if (fault != null) {
          return fault;
        }
      } catch (InvocationTargetException | IllegalAccessException e) {
        return path + "." + accessor.getName() + " throws " + e;
      }
    }
    return null;
  }
}
