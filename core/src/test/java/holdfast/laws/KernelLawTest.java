// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.reference.BallWorkspace;
import holdfast.bearings.reference.LaminaWorkspace;
import holdfast.quantity.InputException;
import holdfast.threads.Friction;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Whatever numbers it is given, every public kernel answers with finite numbers or with a named error. */
class KernelLawTest {
  private final Map<String, String> faults = new TreeMap<>();
  private final Map<String, Integer> answers = new TreeMap<>();
  private final Watched watched = new Watched();
  private final Nulls nulls = new Nulls();

  @Test
  void aFiniteAnswerOrANamedError() throws InterruptedException {
    List<Executable> kernels = PublicApi.kernels();
    watched.run(() -> {
      for (Executable kernel : kernels) {
        tryOut((Method) kernel, Effort.of(60_000) / kernels.size());
      }
    });
    assertEquals(Map.of(), faults, () -> faults.size() + " faults with seed " + Effort.SEED);
    assertEquals(Map.of(), nulls.faults(), "null is not refused by the parameter's name");
    int answered = answers.values().stream().mapToInt(i -> i).sum();
    assertTrue(answered > Effort.of(15_000), "only " + answered + " answers: the inputs are too wild to try much");
  }

  private void tryOut(Method kernel, int times) {
    String name = kernel.getDeclaringClass().getSimpleName() + "." + kernel.getName() + "/" + kernel.getParameterCount();
    Draw draw = new Draw(new Random(Effort.SEED + name.hashCode()));
    draw.keep(new BallWorkspace(12));
    draw.keep(new LaminaWorkspace(12, 21));
    draw.keep(Friction.of(0.1, 0.16));
    List<Object[]> answered = new ArrayList<>(Examples.of(name));
    Random random = new Random(Effort.SEED);
    Type[] types = kernel.getGenericParameterTypes();
    for (int i = 0; i < times; i++) {
      Object[] arguments = answered.isEmpty() || random.nextInt(3) == 0
          ? draw.all(types) : draw.changed(types, answered.get(random.nextInt(answered.size())));
      String given = Arrays.deepToString(arguments);
      Object[] before = Draw.copies(arguments);
      watched.next(name, before);
      try {
        Object result = kernel.invoke(null, arguments);
        String fault = mayBeInfinite(name) && result.equals(Double.POSITIVE_INFINITY) ? null : Finite.fault(result);
        if (fault == null && result == null) {
          fault = written(before, arguments);
        }
        if (fault != null) {
          faults.putIfAbsent(name, given + " answers " + fault);
        } else if (answered.size() < 12) {
          answered.add(before);
        } else {
          answered.set(random.nextInt(12), before);
        }
        answers.merge(name, 1, Integer::sum);
        nulls.tryOut(kernel, null, before);
      } catch (InvocationTargetException e) {
        if (!(e.getCause() instanceof InputException)) {
          faults.putIfAbsent(name, given + " throws " + e.getCause());
        }
      } catch (IllegalAccessException e) {
        throw new LinkageError("a public kernel", e);
      }
    }
    if (!answers.containsKey(name)) {
      faults.putIfAbsent(name, "never answered");
    }
  }

  /** Kernels whose documented answer is infinity where a thing never happens. */
  private static boolean mayBeInfinite(String kernel) {
    return switch (kernel) {
      // No speed opens a seat that loses nothing by turning.
      case "RotationKernel.lossSpeed/2" -> true;
      // No common temperature opens, or closes, parts that grow alike.
      case "ThermalSeatKernel.lossTemperature/4", "ThermalFitKernel.uniformTemperature/5" -> true;
      // Steps without damage, given as steps of infinite life, wear nothing out.
      case "DutyKernel.damageLife/2" -> true;
      default -> false;
    };
  }

  /** What a kernel without result has written into its arrays must be finite; entries it left alone may be anything. */
  private static String written(Object[] before, Object[] after) {
    for (int i = 0; i < after.length; i++) {
      if (after[i] instanceof double[] array) {
        for (int j = 0; j < array.length; j++) {
          if (!Double.isFinite(array[j]) && Double.compare(array[j], ((double[]) before[i])[j]) != 0) {
            return "argument " + i + ", entry " + j + ": " + array[j];
          }
        }
      }
    }
    return null;
  }
}
