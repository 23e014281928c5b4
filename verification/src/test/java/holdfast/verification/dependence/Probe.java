// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.dependence;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the probed calculations report to, and the one of them whose result is falsified. Not thread-safe on purpose. */
public final class Probe {
  /** The falsified result is so many times the right one. */
  static final double FACTOR = 1.01;

  /** Set where a calculation ran. */
  static boolean[] ran = new boolean[0];

  /** Number of the calculation whose result is falsified; -1 for none. */
  static int falsified = -1;

  private Probe() {}

  /** Called at the begin of a probed method. */
  public static void enter(int calculation) {
    ran[calculation] = true;
  }

  /** Called before a probed method returns. */
  public static double leave(double result, int calculation) {
    return calculation == falsified ? result * FACTOR : result;
  }

  /** Called before a probed method returns. */
  public static int leave(int result, int calculation) {
    return calculation == falsified ? result + 1 : result;
  }

  /** Called before a probed method returns. */
  public static boolean leave(boolean result, int calculation) {
    return calculation == falsified ? !result : result;
  }

  /** Called before a method returns that fills an array: the last one among its parameters. */
  public static void leave(double[] result, int calculation) {
    if (calculation == falsified) {
      for (int i = 0; i < result.length; i++) {
        result[i] *= FACTOR;
      }
    }
  }

  /** What the work space held when the falsified method began; nested calls of it do not occur. */
  private static Map<Field, double[]> before = Map.of();

  /** Called at the begin of a method that fills the work space of a solver, its first parameter. */
  public static void enter(Object workSpace, int calculation) {
    if (calculation == falsified) {
      before = numbers(workSpace);
    }
  }

  /** Called before such a method returns: what it changed becomes wrong. */
  public static void leave(Object workSpace, int calculation) {
    if (calculation != falsified) {
      return;
    }
    numbers(workSpace).forEach((field, now) -> {
      double[] was = before.get(field);
      for (int i = 0; i < now.length; i++) {
        if (now[i] != was[i]) {
          falsify(workSpace, field, i, now[i] * FACTOR);
        }
      }
    });
  }

  /** All doubles of an object: fields and elements of arrays, copied. */
  private static Map<Field, double[]> numbers(Object workSpace) {
    Map<Field, double[]> numbers = new LinkedHashMap<>();
    try {
      for (Class<?> type = workSpace.getClass(); type != Object.class; type = type.getSuperclass()) {
        for (Field field : type.getDeclaredFields()) {
          field.setAccessible(true);
          if (Modifier.isStatic(field.getModifiers())) {
            continue;
          }
          if (field.getType() == double.class) {
            numbers.put(field, new double[] {field.getDouble(workSpace)});
          } else if (field.getType() == double[].class) {
            numbers.put(field, ((double[]) field.get(workSpace)).clone());
          }
        }
      }
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
    return numbers;
  }

  private static void falsify(Object workSpace, Field field, int index, double value) {
    try {
      if (field.getType() == double.class) {
        field.setDouble(workSpace, value);
      } else {
        Array.setDouble(field.get(workSpace), index, value);
      }
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }
}
