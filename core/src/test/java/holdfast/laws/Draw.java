// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import holdfast.seats.Band;
import java.lang.reflect.Array;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/**
 * Draws arguments of the types of the public API: ordinary ones, ones at an edge, absurd ones. Objects come from a stock
 * that grows with what calls have returned.
 */
final class Draw {
  private static final double[] ODD = {
    Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 0, -0.0, Double.MIN_VALUE, -Double.MIN_VALUE,
    Double.MIN_NORMAL, Double.MAX_VALUE, -Double.MAX_VALUE, 1e300, -1e300, 1e-300, 1e30, 1e-30, 1e18, 1e-18
  };
  private static final double[] EDGES = {
    1, -1, 0.5, 2, 10, 90, 95, 99.95, 100, 500, 3150, -273.15, 293.15, 0.1, 0.2, 4, 25.4, Math.PI / 2, Math.PI / 4, Math.PI,
    1.0 / 3
  };
  private static final int[] COUNTS = {
    0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 20, 50, 100, 1000, -1, -100, Integer.MAX_VALUE, Integer.MIN_VALUE
  };
  private static final String[] WORDS = {
    "", " ", "?", "H7", "H7/g6", "k6", "js6", "IT7", "25 mm", "1 in", "M16x1.5", "M20", "1/2-13 UNC", "1/2-20 UNF-2A", "8.8",
    "10.9", "6g", "RC 4", "FN 2", "50 N·m", "20 °C", "-300 °C", "1e400 mm", "NaN mm", "25,4 mm", "100 rpm", "steel", "12 µm",
    "kN", "İ", "x".repeat(300), "0 mm", "-5 mm", "1 1/2 in"
  };
  private static final int MOST_OF_A_KIND = 60;

  private final Random random;
  private final Map<Class<?>, List<Object>> stock = new HashMap<>();
  private int length;

  Draw(Random random) {
    this.random = random;
  }

  /** Arguments of one call, null for what is not in stock; arrays of one call are mostly of one length. */
  Object[] all(Type[] types) {
    length = random.nextInt(5);
    Object[] arguments = new Object[types.length];
    for (int i = 0; i < types.length; i++) {
      arguments[i] = one(types[i]);
    }
    if (types.length > 1 && random.nextInt(10) == 0) {
      nearlyEqual(types, arguments);
    }
    return arguments;
  }

  /** A copy of arguments that were answered, with one or two drawn anew or moved a little. */
  Object[] changed(Type[] types, Object[] answered) {
    Object[] arguments = copies(answered);
    for (int n = random.nextInt(2); n >= 0 && types.length > 0; n--) {
      int i = random.nextInt(types.length);
      arguments[i] =
          arguments[i] instanceof Double x && random.nextInt(3) == 0 ? Double.valueOf(nudged(x)) : one(types[i]);
    }
    if (types.length > 1 && random.nextInt(12) == 0) {
      nearlyEqual(types, arguments);
    }
    return arguments;
  }

  /** One argument, or null if nothing of the type is in stock. */
  Object one(Type type) {
    if (type instanceof ParameterizedType generic) {
      return parameterised((Class<?>) generic.getRawType(), generic.getActualTypeArguments());
    }
    if (type instanceof WildcardType wildcard) {
      return one(wildcard.getUpperBounds()[0]);
    }
    if (!(type instanceof Class<?> plain)) {
      return null;
    }
    if (plain == double.class || plain == Double.class) {
      return number();
    } else if (plain == int.class) {
      return random.nextInt(6) == 0 ? random.nextInt(20_000) : COUNTS[random.nextInt(COUNTS.length)];
    } else if (plain == long.class) {
      return random.nextLong();
    } else if (plain == boolean.class) {
      return random.nextBoolean();
    } else if (plain == char.class) {
      return "abcdefghjkHJGF?İ\0".charAt(random.nextInt(17));
    } else if (plain == String.class || plain == CharSequence.class) {
      return word();
    } else if (plain == DoubleUnaryOperator.class) {
      double constant = number();
      return (DoubleUnaryOperator) x -> constant;
    } else if (plain.isArray()) {
      return array(plain.getComponentType());
    } else if (plain.isEnum()) {
      return plain.getEnumConstants()[random.nextInt(plain.getEnumConstants().length)];
    }
    return stocked(plain);
  }

  double number() {
    double u = random.nextDouble();
    return switch (random.nextInt(16)) {
      case 0, 1 -> ODD[random.nextInt(ODD.length)];
      case 2 -> nudged(EDGES[random.nextInt(EDGES.length)]);
      case 3 -> random.nextInt(30);
      case 4, 5, 6 -> u;
      case 7 -> 1 + 99 * u;
      case 8 -> 5 + 45 * u;
      case 9, 10 -> Math.pow(10, 7 * u);
      case 11 -> Math.pow(10, -7 * u);
      case 12 -> -Math.pow(10, 12 * u - 6);
      case 13 -> 2e5 * (0.5 + u);
      case 14 -> Math.pow(10, 60 * u - 30);
      default -> 0.5 * u;
    };
  }

  private double nudged(double x) {
    return switch (random.nextInt(5)) {
      case 0 -> Math.nextUp(x);
      case 1 -> Math.nextDown(x);
      case 2 -> x * (1 + 1e-9 * random.nextGaussian());
      case 3 -> x * (0.5 + random.nextDouble());
      default -> x;
    };
  }

  private void nearlyEqual(Type[] types, Object[] arguments) {
    int from = random.nextInt(types.length);
    int to = random.nextInt(types.length);
    if (types[from] == double.class && types[to] == double.class) {
      arguments[to] = nudged((double) arguments[from]);
    } else if (types[from] == types[to]) {
      arguments[to] = arguments[from];
    }
  }

  private String word() {
    List<Object> seen = stock.getOrDefault(String.class, List.of());
    boolean new_ = seen.isEmpty() || random.nextInt(3) == 0;
    String word = new_ ? WORDS[random.nextInt(WORDS.length)] : (String) seen.get(random.nextInt(seen.size()));
    if (random.nextInt(12) == 0 && !word.isEmpty()) {
      int at = random.nextInt(word.length());
      word = word.substring(0, at) + (char) (32 + random.nextInt(400)) + word.substring(at + 1);
    }
    return word;
  }

  private Object array(Class<?> component) {
    int n = random.nextInt(12) == 0 ? random.nextInt(6) : length;
    Object array = Array.newInstance(component, n);
    boolean tame = random.nextInt(4) != 0;
    for (int i = 0; i < n; i++) {
      Object element = tame && component == double.class ? Double.valueOf(0.01 + 100 * random.nextDouble()) : one(component);
      if (element == null) {
        return null;
      }
      Array.set(array, i, element);
    }
    return array;
  }

  private Object parameterised(Class<?> raw, Type[] of) {
    int n = random.nextInt(4);
    if (raw == Optional.class) {
      return random.nextBoolean() ? Optional.empty() : Optional.ofNullable(one(of[0]));
    } else if (raw == List.class || raw == Collection.class || raw == Iterable.class) {
      List<Object> list = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        add(list, one(of[0]));
      }
      return list;
    } else if (raw == Set.class) {
      Set<Object> set = new LinkedHashSet<>();
      for (int i = 0; i < n; i++) {
        add(set, one(of[0]));
      }
      return set;
    } else if (raw == Map.class) {
      Map<Object, Object> map = new LinkedHashMap<>();
      for (int i = 0; i < n; i++) {
        Object key = one(of[0]);
        Object value = one(of[1]);
        if (key != null && value != null) {
          map.put(key, value);
        }
      }
      return map;
    }
    Object found = stocked(raw);
    for (int i = 0; i < 20 && found instanceof Band<?> band && of[0] instanceof Class<?> part; i++) {
      if (part.isInstance(band.least())) {
        return found;
      }
      found = stocked(raw);
    }
    return found instanceof Band ? null : found;
  }

  private static void add(Collection<Object> to, Object element) {
    if (element != null) {
      to.add(element);
    }
  }

  private Object stocked(Class<?> type) {
    List<Object> all = stock.get(type);
    return all == null ? null : all.get(random.nextInt(all.size()));
  }

  /** Puts an object into the stock under all its types; an old one leaves when there are many. */
  void keep(Object object) {
    for (Class<?> type : typesOf(object.getClass(), new HashSet<>())) {
      List<Object> all = stock.computeIfAbsent(type, t -> new ArrayList<>());
      if (all.size() < MOST_OF_A_KIND) {
        all.add(object);
      } else {
        all.set(random.nextInt(MOST_OF_A_KIND), object);
      }
    }
  }

  private static Set<Class<?>> typesOf(Class<?> type, Set<Class<?>> into) {
    if (type != null && into.add(type)) {
      typesOf(type.getSuperclass(), into);
      for (Class<?> face : type.getInterfaces()) {
        typesOf(face, into);
      }
    }
    return into;
  }

  /** The same arguments in arrays of their own. */
  static Object[] copies(Object[] arguments) {
    Object[] copies = arguments.clone();
    for (int i = 0; i < copies.length; i++) {
      if (copies[i] instanceof double[] numbers) {
        copies[i] = numbers.clone();
      }
    }
    return copies;
  }
}
